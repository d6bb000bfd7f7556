using Gylebook.Store;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>Saved when, undo and redo, versions and history.</summary>
public sealed partial class DraftBar
{
    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>Its line in the list of recipes.</summary>
    [Parameter]
    public RecipeLine? Recipe { get; set; }

    /// <summary>What is open beside the recipe.</summary>
    [Parameter]
    public string? Panel { get; set; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    private string VersionWords => Recipe?.LatestVersion is int latest ? Invariant($"Version {latest}") : "Keep a version";

    /// <summary>A link that opens a panel, and closes it when it is open.</summary>
    private string Link(string panel) =>
        Desk.Address(Panel == panel ? null : panel);
}
