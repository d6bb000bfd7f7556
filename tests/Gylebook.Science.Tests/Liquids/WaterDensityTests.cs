using CsCheck;
using Gylebook.Science.Liquids;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Liquids;

public class WaterDensityTests
{
    private const string Table = "data/liquids/water-density.csv";

    public static IEnumerable<object[]> Formula => RepositoryFile.Numbers(Table, "celsius", "bettin_spieweck");

    public static IEnumerable<object[]> Cipm =>
        RepositoryFile.Numbers(Table, "celsius", "cipm").Where(RepositoryFile.IsComplete);

    public static IEnumerable<object[]> Kell => RepositoryFile.Numbers(Table, "celsius", "kell");

    public static IEnumerable<object[]> Measured =>
        RepositoryFile.Numbers(Table, "celsius", "table", "rounding").Where(RepositoryFile.IsComplete);

    // bettin-spieweck-1990; half a unit of the last digit given (15.556 °C: three decimals).
    [Theory, MemberData(nameof(Formula))]
    public void The_formula_gives_its_own_printed_values(double celsius, double expected)
    {
        double rounding = celsius == 15.556 ? 0.0005 : 0.00005;
        Near.Equal(expected, 1000 * WaterDensity.KilogramsPerLitreAt(celsius), rounding);
    }

    // tanaka-2001, to 40 °C.
    [Theory, MemberData(nameof(Cipm))]
    public void The_metrologists_formula_gives_its_own_printed_values(double celsius, double expected)
    {
        double rounding = celsius == 15.556 ? 0.0005 : 0.00005;
        Near.Equal(expected, 1000 * WaterDensityCipm.KilogramsPerLitreAt(celsius), rounding);
    }

    // Independent tables; the formula's quoted uncertainty 0.006 kg/m³ and the table's own rounding.
    [Theory, MemberData(nameof(Measured))]
    public void It_agrees_with_independent_tables(double celsius, double expected, double rounding) =>
        Near.Equal(expected, 1000 * WaterDensity.KilogramsPerLitreAt(celsius), 0.006 + rounding);

    // kell-1975 is on IPTS-68; the two scales are 0.026 K apart at 100 °C, 0.74 kg/m³ a kelvin there.
    [Theory, MemberData(nameof(Kell))]
    public void The_older_form_of_the_same_formula_agrees(double celsius, double kell) =>
        Near.Equal(kell, 1000 * WaterDensity.KilogramsPerLitreAt(celsius), 0.0005 + (0.026 * 0.74 * celsius / 100));

    // Measured absolute density, Metrologia: 998.9468 ± 0.0006 kg/m³ at 16 °C.
    [Fact]
    public void Both_meet_the_measured_density_at_16_degrees()
    {
        Near.Equal(998.9468, 1000 * WaterDensity.KilogramsPerLitreAt(16), 0.006 + 0.0006);
        Near.Equal(998.9468, 1000 * WaterDensityCipm.KilogramsPerLitreAt(16), 0.001 + 0.0006);
    }

    // jones-harris-1992 as reprinted has 16.897850e-3 for kell-1975's 16.879850e-3.
    [Fact]
    public void The_misprinted_coefficient_of_the_older_form_would_show()
    {
        Near.Equal(998.2041, KellAt20(16.879850e-3), 0.00005);
        Near.Equal(997.936, KellAt20(16.897850e-3), 0.0005);
        Assert.True(Math.Abs(KellAt20(16.897850e-3) - 998.2031) > 0.2);
    }

    [Fact]
    public void The_constant_is_the_formula_at_20_degrees() =>
        Near.Equal(WaterDensity.KilogramsPerLitreAt(20), WaterDensity.KilogramsPerLitreAt20C, 1e-15);

    [Fact]
    public void Water_is_densest_near_4_degrees_and_falls_from_there() =>
        Gen.Double[4.1, 99.9].Sample(t =>
            WaterDensity.KilogramsPerLitreAt(t + 0.1) < WaterDensity.KilogramsPerLitreAt(t)
            && WaterDensity.KilogramsPerLitreAt(t) < WaterDensity.KilogramsPerLitreAt(4));

    // Derived in the reference: 958.34/998.20, 3.99 % from the boil.
    [Fact]
    public void A_boiling_kettle_loses_4_percent_of_its_litres_on_cooling() =>
        Near.Equal(96.01, 100 * WaterDensity.KilogramsPerLitreAt(100) / WaterDensity.KilogramsPerLitreAt20C, 0.005);

    private static double KellAt20(double denominator) =>
        (999.83952 + (16.945176 * 20) - (7.9870401e-3 * 400) - (46.170461e-6 * 8000) + (105.56302e-9 * 160000)
            - (280.54253e-12 * 3200000)) / (1 + (denominator * 20));
}
