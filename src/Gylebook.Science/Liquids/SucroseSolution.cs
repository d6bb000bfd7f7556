namespace Gylebook.Science.Liquids;

/// <summary>Gravity and density of sugar in water at 20 °C: the scale every hydrometer of the trade is marked by.</summary>
/// <remarks>
/// <para>ρ(P) = 998.234 + c₁P + c₂P² + c₃P³ + c₄P⁴, and SG = (ρ − 1.2) / (998.234 − 1.2).</para>
/// <para>Symbols: P grams of sucrose in 100 g of solution, °P; ρ density in a vacuum, kg/m³; SG gravity 20/20 °C as
/// weighed in air, 1.2 kg/m³ being the air's own density; 998.234 kg/m³ water in the table's own year.</para>
/// <para>Source: <c>nbs-c440</c>, Table 109, Plato's densities; the table is <c>data/liquids/sucrose-density-20c.csv</c>.
/// c₁ to c₄ are a least-squares fit of its 23 rows from 0 to 30 °P, each row of equal weight, held to 998.234 at
/// 0 °P; normal equations in exact fractions. A test makes the fit again from the file.</para>
/// <para>Valid for: 0 to 30 °P. Smooth and rising from −20 to 70 °P.</para>
/// <para>Accuracy: residuals as computed: worst 0.0114 kg/m³ (the row of 1 °P), next 0.0075 (2 °P), rms 0.0033;
/// from 3 °P on no row is off by more than 0.0042 kg/m³, which is less than half a unit of the fifth decimal of
/// gravity. An independent table (<c>torun-sucrose</c>) agrees within 0.022 kg/m³. Above 30 °P it is extrapolation:
/// 0.2, 1.0 and 3 kg/m³ under handbook values at 40, 50 and 60 °P, those from memory.</para>
/// <para>Notes: a cubic misses eight rows by more than half a unit of the fifth decimal, against the quartic's two.
/// The table's first two rows have a small kink that no smooth curve through the water point follows: 0.01 of a
/// gravity point.</para>
/// </remarks>
public static class SucroseSolution
{
    /// <summary>Density of water in the sucrose table, kg/m³.</summary>
    public const double WaterKilogramsPerCubicMetre = 998.234;

    /// <summary>Density of air that turns a density into what a balance in air reads, kg/m³.</summary>
    public const double AirKilogramsPerCubicMetre = 1.2;

    /// <summary>The strongest solution of the fitted table, °P.</summary>
    public const double StrongestPublishedPlato = 30;

    private const double WaterInAir = WaterKilogramsPerCubicMetre - AirKilogramsPerCubicMetre;

    private const double C1 = 3.862771151790262;
    private const double C2 = 0.01176078176156205;
    private const double C3 = 0.0001181052862740832;
    private const double C4 = -1.1210786571679939e-06;

    // Enough for 1e-12 °P from the starting formula anywhere from 0.95 to 1.33; each step doubles the digits.
    private const int NewtonSteps = 5;

    /// <summary>Gravity 20/20 °C in air of a solution of that strength in °P; exactly 1 for water.</summary>
    public static double GravityAt(double plato) => 1 + (AboveWater(plato) / WaterInAir);

    /// <summary>Strength in °P of the solution with that gravity; the way back from <see cref="GravityAt(double)"/>.</summary>
    /// <remarks>Newton's method with a fixed number of steps, sound from 0.95 to 1.33.</remarks>
    public static double PlatoAt(double gravity)
    {
        double aboveWater = (gravity - 1) * WaterInAir;
        double plato = (463 - (205 * gravity)) * (gravity - 1);
        for (int step = 0; step < NewtonSteps; step++)
        {
            plato -= (AboveWater(plato) - aboveWater) / AboveWaterPerPlato(plato);
        }

        return plato;
    }

    /// <summary>Density in a vacuum at 20 °C, kg/L, of a solution of that strength in °P.</summary>
    public static double KilogramsPerLitreAt20C(double plato) =>
        (WaterKilogramsPerCubicMetre + AboveWater(plato)) / 1000;

    /// <summary>Density in a vacuum at 20 °C, kg/L, of any liquid of that gravity in air.</summary>
    public static double KilogramsPerLitreOfGravity(double gravity) =>
        ((gravity * WaterInAir) + AirKilogramsPerCubicMetre) / 1000;

    /// <summary>Whether the fitted table reaches that strength. Above 30 °P treat the result with caution.</summary>
    public static bool IsWithinPublishedRange(double plato) => plato is >= 0 and <= StrongestPublishedPlato;

    /// <summary>Slope of density over strength, kg/L per °P, for those who solve through this curve.</summary>
    internal static double KilogramsPerLitrePerPlato(double plato) => AboveWaterPerPlato(plato) / 1000;

    private static double AboveWater(double plato) =>
        plato * (C1 + (plato * (C2 + (plato * (C3 + (plato * C4))))));

    private static double AboveWaterPerPlato(double plato) =>
        C1 + (plato * ((2 * C2) + (plato * ((3 * C3) + (plato * (4 * C4))))));
}
