using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Science.Acidity;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Stages;

public sealed class SourTests
{
    private static readonly ParameterList Slots = new();
    private const double StartPh = 5.5;
    private static readonly Slot GasKept = Slots.Of(new Parameter("gas", 0, Prior.Point, "volumes", "test", "test"));

    private static readonly double[] Usual = Drawn(33.5, 0);

    private static double[] Drawn(double buffering, double gasKept)
    {
        double[] draw = [.. new double[ParameterList.KnownCount], gasKept];
        draw[(int)Known.WortBuffering] = buffering;
        return draw;
    }

    private static SourStep To(double ph, bool mixed = false) => new(ph, mixed, GasKept);

    /// <summary>Known: C6H12O6 is two of C3H6O3, 180.156 = 2 × 90.078; maltose and sucrose take one water up, 342.297 + 18.015 = 4 × 90.078.</summary>
    [Theory]
    [InlineData(Component.Glucose, 1)]
    [InlineData(Component.Fructose, 1)]
    [InlineData(Component.Sucrose, 4 * 90.078 / 342.297)]
    [InlineData(Component.Maltose, 4 * 90.078 / 342.297)]
    public void Lactic_acid_by_molar_masses(Component sugar, double perKilogram)
    {
        Near.Equal(perKilogram, Row(Reactions.Published.Souring, sugar).Makes(Component.LacticAcid), 1e-15);
        Near.Equal(perKilogram / 2, Row(Reactions.Published.MixedSouring, sugar).Makes(Component.LacticAcid), 1e-15);
    }

    /// <summary>Known: a hexose makes 90.078 of lactic acid, 46.069 of ethanol and 44.009 of carbon dioxide, together 180.156 g.</summary>
    [Fact]
    public void A_mixed_culture_makes_one_of_each()
    {
        Reaction row = Row(Reactions.Published.MixedSouring, Component.Glucose);
        Near.Equal(46.069 / 180.156, row.Makes(Component.Ethanol), 1e-15);
        Near.Equal(44.009 / 180.156, row.Makes(Component.CarbonDioxide), 1e-15);
        Assert.Equal(0, row.Makes(Component.Water));
    }

    [Fact]
    public void Each_row_sums_to_zero() =>
        Assert.All(Reactions.Published.Souring.Concat(Reactions.Published.MixedSouring), row => Near.Equal(0, row.Terms.Sum(t => t.PerKilogram), 1e-15));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_wort_comes_to_its_target_and_keeps_its_mass(bool mixed)
    {
        Wort wort = Sweet();
        double mass = wort.Mass;
        Gas log = new();
        Sour.To(ref wort, 0, To(3.4, mixed), StartPh, Reactions.Published, Usual, ref log);
        Near.Equal(3.4, WortAcidity.PhOf(AcidsCarried.Of(wort), 33.5 * wort[Component.MaltBuffer], 5.5), 0.001);
        Near.Equal(mass, wort.Mass + log.Left, 1e-12 * mass);
        Assert.Equal(0, wort[Component.CarbonDioxide]);
        Assert.Equal(mixed, log.Left > 0);
        Assert.Equal(mixed, wort[Component.Ethanol] > 0);
    }

    [Fact]
    public void Gas_that_the_wort_holds_stays()
    {
        Wort wort = Sweet();
        Gas log = new();
        Sour.To(ref wort, 0, To(3.4, true), StartPh, Reactions.Published, Drawn(33.5, 5), ref log);
        Assert.Equal(0, log.Left);
        Assert.True(wort[Component.CarbonDioxide] > 0);
    }

    [Fact]
    public void Glucose_goes_first_and_maltose_last()
    {
        Wort before = Sweet();
        Wort wort = before;
        Gas log = new();
        Sour.To(ref wort, 0, To(4.5), StartPh, Reactions.Published, Usual, ref log);
        Assert.InRange(wort[Component.Glucose], 1e-6, before[Component.Glucose]);
        Assert.Equal(before[Component.Fructose], wort[Component.Fructose]);
        wort = before;
        Sour.To(ref wort, 0, To(3.1), StartPh, Reactions.Published, Usual, ref log);
        Assert.Equal((0, 0, 0), (wort[Component.Glucose], wort[Component.Fructose], wort[Component.Sucrose]));
        Assert.InRange(wort[Component.Maltose], 1e-6, before[Component.Maltose] - 1e-6);
        Assert.Equal(before[Component.Lactose], wort[Component.Lactose]);
    }

    [Fact]
    public void Where_sugar_runs_out_less_is_made_and_nothing_falls_below_zero()
    {
        Wort wort = Sweet();
        wort[Component.Maltose] = 0.001;
        Gas log = new();
        Sour.To(ref wort, 0, To(3), StartPh, Reactions.Published, Drawn(500, 0), ref log);
        Assert.True(wort.IsSound);
        Assert.All(Reactions.Sourable, sugar => Assert.Equal(0, wort[sugar]));
    }

    [Fact]
    public void Wort_that_is_sour_already_is_let_be()
    {
        Wort wort = Sweet();
        Gas log = new();
        Sour.To(ref wort, 0, To(3.4), StartPh, Reactions.Published, Usual, ref log);
        Wort once = wort;
        Sour.To(ref wort, 0, To(3.6), StartPh, Reactions.Published, Usual, ref log);
        Assert.Equal(once[Component.LacticAcid], wort[Component.LacticAcid]);

        // The same target again finds rounding to make at most.
        Sour.To(ref wort, 0, To(3.4), StartPh, Reactions.Published, Usual, ref log);
        Near.Equal(once[Component.LacticAcid], wort[Component.LacticAcid], 1e-4);
    }

    [Fact]
    public void A_lower_target_a_stiffer_wort_and_a_higher_start_make_more_acid()
    {
        double Made(double target, double start, double buffering)
        {
            Wort wort = Sweet();
            Gas log = new();
            double[] draw = Drawn(buffering, 0);
            Sour.To(ref wort, 0, To(target), start, Reactions.Published, draw, ref log);
            return wort[Component.LacticAcid];
        }

        double usual = Made(3.5, 5.5, 33.5);
        Assert.True(Made(3.3, 5.5, 33.5) > usual);
        Assert.True(Made(3.5, 5.5, 36) > usual);
        Assert.True(Made(3.5, 5.7, 33.5) > usual);
    }

    private static Reaction Row(Reaction[] rows, Component sugar) => rows.Single(row => row.Reactant == sugar);

    private static Wort Sweet()
    {
        Wort wort = default;
        wort[Component.Water] = 18;
        wort[Component.Glucose] = 0.04;
        wort[Component.Fructose] = 0.02;
        wort[Component.Sucrose] = 0.02;
        wort[Component.Maltose] = 1;
        wort[Component.Lactose] = 0.1;
        wort[Component.Dextrin] = 0.5;
        wort[Component.MaltBuffer] = 3.5;
        return wort;
    }

    /// <summary>Keeps what left.</summary>
    private struct Gas : IRunLog
    {
        public double Left { get; private set; }

        public readonly void Added(Stage stage, int portion, in Wort added) => Assert.Fail("Souring adds nothing.");

        public void Lost(Stage stage, int portion, Loss what, in Wort lost)
        {
            Assert.Equal((Stage.Sour, Loss.Gas), (stage, what));
            Left += lost.Mass;
        }

        public readonly void Reached(Stage stage, int portion, in Portion state)
        {
        }

        public readonly void Bittered(int addition, double milligrams)
        {
        }
    }
}
