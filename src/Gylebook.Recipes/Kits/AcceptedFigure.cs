namespace Gylebook.Recipes.Kits;

/// <summary>A figure of a kit that finished gyles taught and its brewer accepted: a line of the kit's history.</summary>
/// <param name="Figure">Which figure.</param>
public sealed record AcceptedFigure(KitFigure Figure)
{
    /// <summary>The day it was accepted.</summary>
    public required DateOnly On { get; init; }

    /// <summary>What the kit said before.</summary>
    public required string From { get; init; }

    /// <summary>What it says since.</summary>
    public required string To { get; init; }

    /// <summary>Below it the kit's own middle lies in one case of twenty; one gyle may lie further off.</summary>
    public required string Low { get; init; }

    /// <summary>Above it the kit's own middle lies in one case of twenty.</summary>
    public required string High { get; init; }

    /// <summary>The gyles it was learned from, by the names of their readings.</summary>
    public required IReadOnlyList<string> Gyles { get; init; }
}
