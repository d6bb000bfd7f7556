namespace Gylebook.Science.Mashing;

/// <summary>Heat that malt, water and wort take up per kilogram and degree.</summary>
/// <remarks>
/// <para>Symbols: c specific heat (kJ/kg/K). Malt: 1.59·(1 − w) + 4.18·w, w its moisture (1). Wort:
/// 4.18·(1 − P/100) + 1.42·P/100, P its extract (°P).</para>
/// <para>Source: handbook mixing rules (Briggs et al. 2004), from memory.</para>
/// <para>Valid for: no range is published; used for malt of 0 to 8 % moisture and wort of 0 to 20 °P.</para>
/// <para>Accuracy: not stated. The trade's table of malt, 0.38 of water at 0 % moisture to 0.41 at 6 % (common practice, no source),
/// is up to 2 % lower.</para>
/// </remarks>
public static class WortHeat
{
    /// <summary>Specific heat of water, kJ/kg/K.</summary>
    public const double Water = 4.18;

    private const double DryMalt = 1.59;
    private const double DryExtract = 1.42;

    /// <summary>Specific heat of malt, kJ/kg/K.</summary>
    /// <param name="moisture">Its moisture, 0.04 for 4 %.</param>
    public static double OfMalt(double moisture)
    {
        Argument.MustBeWithin(moisture, 0, 1);
        return (DryMalt * (1 - moisture)) + (Water * moisture);
    }

    /// <summary>Specific heat of wort, kJ/kg/K.</summary>
    /// <param name="plato">Its extract, °P.</param>
    public static double OfWort(double plato)
    {
        Argument.MustBeWithin(plato, 0, 100);
        return (Water * (1 - (plato / 100))) + (DryExtract * plato / 100);
    }
}
