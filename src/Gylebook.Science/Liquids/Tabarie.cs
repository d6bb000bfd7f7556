namespace Gylebook.Science.Liquids;

/// <summary>Gravity of beer, from what is dissolved in it and the alcohol beside it.</summary>
/// <remarks>
/// <para>SG(beer) = SG(real extract in water) + SG(alcohol in water) − 1</para>
/// <para>Symbols: each SG is 20/20 °C in air over its own table's water, so that nothing dissolved is exactly 1;
/// real extract in °P; alcohol in per cent by mass.</para>
/// <para>Source: Tabarié's rule, the basis of the distillation methods <c>asbc-beer-4</c> and <c>asbc-beer-5</c>; the
/// rule itself from memory. <see cref="SucroseSolution"/> and <see cref="EthanolWater"/> give the two parts.</para>
/// <para>Valid for: beer from worts up to 20 °P.</para>
/// <para>Accuracy: worts fermented by Balling land on Balling's own apparent extract within 0.0004 of gravity up to
/// 16 °P and 0.0006 up to 20 °P; tests hold it there. Above, the two part ways: 0.002 at 30 °P.</para>
/// <para>Notes: adding the specific volumes of ethanol, water and sugar is not the same and is wrong by 0.0037 for a
/// beer of 1.050 and 1.012, because the two liquids shrink when they mix.</para>
/// </remarks>
public static class Tabarie
{
    /// <summary>The strongest wort, °P, for which rule and Balling's tables agree within 0.0006.</summary>
    public const double StrongestCheckedOriginalPlato = 20;

    /// <summary>Gravity in air of a beer of that real extract in °P and that alcohol in per cent by mass.</summary>
    public static double GravityOf(double realExtractPlato, double alcoholPercentByMass) =>
        SucroseSolution.GravityAt(realExtractPlato) + (EthanolWater.GravityAt20C(alcoholPercentByMass) - 1);

    /// <summary>Real extract in °P of a beer of that gravity and that alcohol in per cent by mass.</summary>
    public static double RealExtractOf(double gravity, double alcoholPercentByMass) =>
        SucroseSolution.PlatoAt(gravity - (EthanolWater.GravityAt20C(alcoholPercentByMass) - 1));
}
