namespace Gylebook.Engine.State;

/// <summary>Where in a brew something happens: the stage, the minute or day in it, the portion.</summary>
/// <param name="Stage">Which stage.</param>
/// <param name="Count">Minutes before the end of the boil or the stand, days after the pitch; null where the stage says it all.</param>
/// <param name="Portion">Which portion of the run; the first until the cast is divided.</param>
public readonly record struct Place(Stage Stage, double? Count = null, int Portion = 0);

/// <summary>The stages of a run, in order.</summary>
public enum Stage
{
    /// <summary>Liquor, before the grain.</summary>
    Strike,

    /// <summary>Grain and liquor together.</summary>
    Mash,

    /// <summary>The bag lifted out.</summary>
    Lift,

    /// <summary>Wort run off through the grain.</summary>
    RunOff,

    /// <summary>The grain rinsed.</summary>
    Rinse,

    /// <summary>All the wort in the kettle.</summary>
    CopperUp,

    /// <summary>Wort soured in the kettle.</summary>
    Sour,

    /// <summary>The boil.</summary>
    Boil,

    /// <summary>Flame off.</summary>
    KnockOut,

    /// <summary>Hot rest after knock-out.</summary>
    Stand,

    /// <summary>Cooled.</summary>
    Chill,

    /// <summary>In the fermenter.</summary>
    Cast,

    /// <summary>Cast divided.</summary>
    Split,

    /// <summary>Fermented.</summary>
    Ferment,

    /// <summary>Chilled to clear.</summary>
    Crash,

    /// <summary>Clear beer off its sludge.</summary>
    Rack,

    /// <summary>In bottles or keg.</summary>
    Package,

    /// <summary>Gas made or taken up.</summary>
    Condition,

    /// <summary>In the glass.</summary>
    Pour,

    /// <summary>Portions put together.</summary>
    Blend,

    /// <summary>Liquor or wort added to fill up.</summary>
    TopUp,
}

/// <summary>What can be lost, each by its own law.</summary>
public enum Loss
{
    /// <summary>Wort the spent grain holds, with the grain.</summary>
    HeldInGrain,

    /// <summary>Wort below the tun's outlet.</summary>
    TunDeadSpace,

    /// <summary>Water boiled off.</summary>
    Steam,

    /// <summary>Clear wort the kettle keeps.</summary>
    Kettle,

    /// <summary>Whole hops and the wort they hold.</summary>
    SpentHops,

    /// <summary>Break and food solids left in the kettle, and the wort they hold.</summary>
    KettleSolids,

    /// <summary>Carbon dioxide that left fermenter or souring kettle.</summary>
    Gas,

    /// <summary>What settled, and the beer it holds.</summary>
    Sludge,

    /// <summary>Clear beer the siphon or the fermenter keeps.</summary>
    Racking,
}
