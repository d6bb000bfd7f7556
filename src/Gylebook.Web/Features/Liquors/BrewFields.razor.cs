using Gylebook.Recipes.Ingredients;
using Gylebook.Web.Features.Liquors.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Liquors;

/// <summary>Litres and grist of a plan that is for no recipe.</summary>
public sealed partial class BrewFields
{
    /// <summary>The plan.</summary>
    [Parameter]
    [EditorRequired]
    public required LiquorDesk Desk { get; set; }

    private static IReadOnlyList<Malt> Find(string typed) =>
        [.. Malts.All.Where(malt => malt.Name.Contains(typed.Trim(), StringComparison.OrdinalIgnoreCase))];
}
