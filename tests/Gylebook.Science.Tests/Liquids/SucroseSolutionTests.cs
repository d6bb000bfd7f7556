using CsCheck;
using Gylebook.Science.Liquids;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Liquids;

public class SucroseSolutionTests
{
    private const string Table = "data/liquids/sucrose-density-20c.csv";

    // The table's first two rows kink; see the science page. Elsewhere the curve is within half a digit of the row
    // (0.005 kg/m³ is half a unit of the fifth decimal of gravity).
    private const double HalfUnitOfFifthDecimal = 0.000005;

    public static IEnumerable<object[]> Densities => RepositoryFile.Numbers(Table, "plato", "nbs");

    public static IEnumerable<object[]> Independent =>
        RepositoryFile.Numbers(Table, "plato", "torun", "torun_grams_per_litre");

    public static IEnumerable<object[]> Gravities =>
        RepositoryFile.Numbers(Table, "plato", "gravity_air", "gravity_vacuum", "nbs");

    // nbs-c440: six decimals of g/mL. From 3 °P on the fit must not move the fifth decimal of gravity by a half.
    [Theory, MemberData(nameof(Densities))]
    public void Density_follows_the_table(double plato, double expected)
    {
        double tolerance = FitTolerance(plato);
        Near.Equal(expected, SucroseSolution.KilogramsPerLitreAt20C(plato), tolerance);
    }

    // nbs-c440 through air: rounding of the printed fifth decimal and that of the fit.
    [Theory, MemberData(nameof(Gravities))]
    public void Gravity_follows_the_table_in_air(double plato, double inAir, double inVacuum, double density)
    {
        double tolerance = HalfUnitOfFifthDecimal + FitTolerance(plato);
        Near.Equal(inAir, SucroseSolution.GravityAt(plato), tolerance);
        Near.Equal(inVacuum, SucroseSolution.KilogramsPerLitreAt20C(plato) / 0.998234, tolerance);
        Near.Equal(inVacuum, density / 0.998234, HalfUnitOfFifthDecimal);
    }

    // One °P is 0.0039 of gravity, so the tolerances above over 0.0038 are those of strength.
    [Theory, MemberData(nameof(Gravities))]
    public void Strength_follows_the_table_in_air(double plato, double inAir, double inVacuum, double density)
    {
        Assert.True(inAir >= inVacuum && density > 0);
        double tolerance = (HalfUnitOfFifthDecimal + FitTolerance(plato)) / 0.0038;
        Near.Equal(plato, SucroseSolution.PlatoAt(inAir), tolerance);
    }

    // torun-sucrose against nbs-c440: the two tables are up to 0.03 kg/m³ apart; the fit adds its own.
    [Theory, MemberData(nameof(Independent))]
    public void Density_agrees_with_the_independent_table(double plato, double kilogramsPerCubicMetre, double gramsPerLitre)
    {
        double density = 1000 * SucroseSolution.KilogramsPerLitreAt20C(plato);
        Near.Equal(kilogramsPerCubicMetre, density, 0.03 + (1000 * FitTolerance(plato)));
        Near.Equal(gramsPerLitre, density * plato / 100, 0.0005 + ((0.03 + (1000 * FitTolerance(plato))) * plato / 100));
    }

    // The constants in the code are the least-squares fit of the file, made again here.
    [Fact]
    public void The_constants_are_the_fit_of_the_table()
    {
        double[][] rows = [.. Densities.Select(row => row.Cast<double>().ToArray())];
        double[] fit = ConstrainedQuartic(rows);
        foreach (double plato in new[] { -2.0, 1, 10, 30, 60 })
        {
            double expected = 998.234 + (plato * (fit[0] + (plato * (fit[1] + (plato * (fit[2] + (plato * fit[3])))))));
            Near.Equal(expected, 1000 * SucroseSolution.KilogramsPerLitreAt20C(plato), 1e-7);
        }
    }

    [Fact]
    public void Water_is_exactly_one_and_nothing()
    {
        Assert.Equal(1.0, SucroseSolution.GravityAt(0));
        Assert.Equal(0.0, SucroseSolution.PlatoAt(1));
        Assert.Equal(0.998234, SucroseSolution.KilogramsPerLitreAt20C(0), 15);
    }

    [Fact]
    public void Gravity_rises_with_strength() =>
        Gen.Double[-2, 60].Sample(p => SucroseSolution.GravityAt(p + 1e-3) > SucroseSolution.GravityAt(p));

    [Fact]
    public void Strength_to_gravity_and_back_changes_nothing() =>
        Gen.Double[-5, 62].Sample(p => Math.Abs(SucroseSolution.PlatoAt(SucroseSolution.GravityAt(p)) - p) < 1e-11);

    [Fact]
    public void Gravity_to_strength_and_back_changes_nothing() =>
        Gen.Double[0.95, 1.33].Sample(s => Math.Abs(SucroseSolution.GravityAt(SucroseSolution.PlatoAt(s)) - s) < 1e-14);

    [Fact]
    public void Density_by_strength_and_by_gravity_are_one() =>
        Gen.Double[-2, 60].Sample(p =>
        {
            double gravity = SucroseSolution.GravityAt(p);
            double density = SucroseSolution.KilogramsPerLitreAt20C(p);
            return Math.Abs(SucroseSolution.KilogramsPerLitreOfGravity(gravity) - density) < 1e-14
                && Math.Abs(SucroseSolution.KilogramsPerLitreOfGravity(gravity) - density) < 1e-14;
        });

    [Theory]
    [InlineData(-0.1, false)]
    [InlineData(0, true)]
    [InlineData(30, true)]
    [InlineData(30.1, false)]
    [InlineData(double.NaN, false)]
    public void It_says_where_the_table_ends(double plato, bool expected) =>
        Assert.Equal(expected, SucroseSolution.IsWithinPublishedRange(plato));

    [Fact]
    public void Not_a_number_stays_so_in_the_raw_door()
    {
        Assert.True(double.IsNaN(SucroseSolution.GravityAt(double.NaN)));
        Assert.True(double.IsNaN(SucroseSolution.PlatoAt(double.NaN)));
    }

    // Stated residuals in kg/L: 0.0114 at 1 °P, 0.0075 at 2 °P, below half the fifth decimal elsewhere.
    private static double FitTolerance(double plato) => plato switch
    {
        1 => 0.0000114,
        2 => 0.0000076,
        _ => HalfUnitOfFifthDecimal,
    };

    private static double[] ConstrainedQuartic(double[][] rows)
    {
        // In tens of °P and in decimals, so that the normal equations keep their digits.
        decimal[,] m = new decimal[4, 5];
        foreach (double[] row in rows)
        {
            decimal x = (decimal)row[0] / 10;
            decimal y = ((decimal)row[1] * 1000) - 998.234m;
            decimal[] powers = [x, x * x, x * x * x, x * x * x * x];
            for (int i = 0; i < 4; i++)
            {
                for (int j = 0; j < 4; j++)
                {
                    m[i, j] += powers[i] * powers[j];
                }

                m[i, 4] += powers[i] * y;
            }
        }

        return [.. Eliminated(m).Select((c, k) => (double)c / Math.Pow(10, k + 1))];
    }

    private static decimal[] Eliminated(decimal[,] m)
    {
        for (int pivot = 0; pivot < 4; pivot++)
        {
            for (int row = 0; row < 4; row++)
            {
                decimal factor = row == pivot ? 0 : m[row, pivot] / m[pivot, pivot];
                for (int column = 0; column < 5; column++)
                {
                    m[row, column] -= factor * m[pivot, column];
                }
            }
        }

        return [m[0, 4] / m[0, 0], m[1, 4] / m[1, 1], m[2, 4] / m[2, 2], m[3, 4] / m[3, 3]];
    }
}
