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

    /// <summary>The shares component by component, ready to multiply.</summary>
    public Wort ByComponent()
    {
        // In the order of the phases; a promise stays.
        ReadOnlySpan<double> byPhase = [Liquid, Grain, Food, Fat, SpentHops, Fines, Yeast, 0];
        Wort shares = default;
        for (int i = 0; i < Phases.Length; i++)
        {
            shares[(Component)i] = byPhase[Phases[i]];
        }

        return shares;
    }

    private static readonly int[] Phases = [.. Components.Table.Select(row => (int)row.Phase)];
}
