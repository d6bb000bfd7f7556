namespace Gylebook.Engine.State;

/// <summary>Which share of each phase leaves when a portion is parted.</summary>
/// <remarks>Phases that are not named stay. Promises stay always.</remarks>
public readonly record struct Shares
{
    /// <summary>Share of the clear liquid, with all that is dissolved in it.</summary>
    public double Liquid { get; init; }

    /// <summary>Share of the grain and of the starch in it.</summary>
    public double Grain { get; init; }

    /// <summary>Share of the foods' solids.</summary>
    public double Food { get; init; }

    /// <summary>Share of the fat.</summary>
    public double Fat { get; init; }

    /// <summary>Share of the whole hops.</summary>
    public double SpentHops { get; init; }

    /// <summary>Share of break and hop debris.</summary>
    public double Fines { get; init; }

    /// <summary>Share of the yeast.</summary>
    public double Yeast { get; init; }

    /// <summary>Everything alike.</summary>
    public static Shares Of(double share) => new()
    {
        Liquid = share, Grain = share, Food = share, Fat = share, SpentHops = share, Fines = share, Yeast = share,
    };

    /// <summary>The clear liquid alone, all of it.</summary>
    public static Shares ClearLiquid { get; } = new() { Liquid = 1 };

    /// <summary>Whether anything but liquid leaves.</summary>
    internal bool HasSolids => Grain != 0 || Food != 0 || Fat != 0 || SpentHops != 0 || Fines != 0 || Yeast != 0;

    /// <summary>The share of a phase.</summary>
    internal double this[Phase phase] => phase switch
    {
        Phase.Liquid => Liquid,
        Phase.Grain => Grain,
        Phase.Food => Food,
        Phase.Fat => Fat,
        Phase.SpentHops => SpentHops,
        Phase.Fines => Fines,
        Phase.Yeast => Yeast,
        _ => 0,
    };
}
