using Gylebook.Gyles;
using Gylebook.Gyles.Vessels;

namespace Gylebook.Store;

/// <summary>One gyle in the book.</summary>
/// <param name="Id">Which gyle.</param>
/// <param name="Name">What the brewer calls it.</param>
/// <param name="RecipeId">Of which recipe.</param>
/// <param name="VersionNumber">Of which version; null until it starts.</param>
/// <param name="KitId">On which kit; null for the built-in one.</param>
/// <param name="Status">How far it has come.</param>
/// <param name="Planned">For when it is planned; null when unsaid.</param>
/// <param name="Started">When it started; null until then.</param>
/// <param name="Updated">When it last changed.</param>
/// <param name="IsDemo">Part of the demo.</param>
/// <param name="Portions">Liquid that has readings of its own; empty until it starts.</param>
/// <param name="Stays">The vessels it has, or is to have.</param>
public sealed record GyleLine(
    Guid Id,
    string Name,
    Guid RecipeId,
    int? VersionNumber,
    Guid? KitId,
    GyleStatus Status,
    DateTimeOffset? Planned,
    DateTimeOffset? Started,
    DateTimeOffset Updated,
    bool IsDemo,
    IReadOnlyList<GylePortion> Portions,
    IReadOnlyList<VesselStay> Stays);

/// <summary>Liquid of a gyle in one vessel.</summary>
/// <param name="Id">Which portion.</param>
/// <param name="Name">What the brewer calls it: <c>on fruit</c>.</param>
/// <param name="Share">Share of the gyle, 0 to 1.</param>
/// <param name="FromStage">The stage after which it stands on its own; null for the whole gyle.</param>
public sealed record GylePortion(long Id, string Name, double Share, string? FromStage);

/// <summary>A gyle that somebody means to brew.</summary>
/// <param name="RecipeId">Of which recipe.</param>
/// <param name="Name">What to call it.</param>
public sealed record GyleWish(Guid RecipeId, string Name)
{
    /// <summary>On which kit; null for the built-in one.</summary>
    public Guid? KitId { get; init; }

    /// <summary>For when; null when unsaid.</summary>
    public DateTimeOffset? Planned { get; init; }

    /// <summary>Part of the demo.</summary>
    public bool IsDemo { get; init; }

    /// <summary>The vessels it wants.</summary>
    public IReadOnlyList<VesselStay> Stays { get; init; } = [];
}
