using Gylebook.Gyles.Vessels;

namespace Gylebook.Web.Features.Gyles;

/// <summary>What somebody wants to brew, and how.</summary>
/// <param name="RecipeId">Which recipe of the book.</param>
public sealed record GyleOrder(Guid RecipeId)
{
    /// <summary>The planned gyle that it is; null for a new one.</summary>
    public Guid? GyleId { get; init; }

    /// <summary>On which kit of the book; null for that of the planned gyle, else the one in use.</summary>
    public Guid? KitId { get; init; }

    /// <summary>What to call it; null for the planned gyle's name, else the recipe's and the day.</summary>
    public string? Name { get; init; }

    /// <summary>The vessels it is to stand in; null for those of the planned gyle, else none.</summary>
    public VesselPlan? Vessels { get; init; }

    /// <summary>Part of the demo, which is not to keep a first start waiting: its bands are of fewer draws.</summary>
    public bool IsDemo { get; init; }
}
