namespace Gylebook.Engine.State;

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
