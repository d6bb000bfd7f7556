using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>What the parts of the kit form have in common: the kit as it stands, and the way to hand on a changed one.</summary>
public abstract class KitFields : ComponentBase
{
    /// <summary>The kit as it stands.</summary>
    [Parameter]
    [EditorRequired]
    public required Kit Kit { get; set; }

    /// <summary>A field was changed; this is the kit with it.</summary>
    [Parameter]
    public EventCallback<Kit> Edited { get; set; }

    /// <summary>What was found in the whole kit.</summary>
    [Parameter]
    public IReadOnlyList<Finding> Findings { get; set; } = [];

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public Shown? Shown { get; set; }

    /// <summary>What was found in that field.</summary>
    protected IReadOnlyList<Finding> At(string where) => [.. Findings.Where(finding => finding.Where == where)];

    /// <summary>Hands on a kit with one field changed.</summary>
    protected Task Put(Kit kit) => Edited.InvokeAsync(kit);
}
