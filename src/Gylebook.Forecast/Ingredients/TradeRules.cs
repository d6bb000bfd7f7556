using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Ingredients;

/// <summary>Rules of the trade that a report holds a brew against: no parameters, for nothing is reckoned with them.</summary>
internal static class TradeRules
{
    /// <summary>Share of the usable kettle above which copper-up leaves too little room for foam.</summary>
    public static double FoamShare { get; } = Of("boil.foamShare");

    /// <summary>Room a powder wants besides, litres for each g/L.</summary>
    public static double PowderHeadroom { get; } = Of("boil.powderHeadroom");

    /// <summary>Empty share of the fermenter advised.</summary>
    public static double Headspace { get; } = Of("ferment.headspace");

    /// <summary>The same with fruit or sugar added.</summary>
    public static double HeadspaceWithFruit { get; } = Of("ferment.headspaceFruit");

    /// <summary>Oxygen for an ale, mg/L.</summary>
    public static double OxygenForAle { get; } = Of("yeast.oxygen.ale");

    /// <summary>Oxygen for a lager or a strong wort, mg/L.</summary>
    public static double OxygenForStrong { get; } = Of("yeast.oxygen.strong");

    /// <summary>Most bitterness that dry hops can add, mg/L for each g/L.</summary>
    public static double DryHopMost { get; } = Of("bitterness.dryHopMost");

    private static double Of(string id) => StartingValues.Of(id).Value;
}
