using Gylebook.Forecast.Report.Bitterness;
using Gylebook.Recipes.Editing;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>The rest of a hop line.</summary>
public sealed partial class HopFields
{
    private static readonly (string, string)[] Forms = [("", "unsaid"), ("whole", "whole"), ("pellet", "pellet")];

    private static readonly (string, string)[] Packs =
        [("", "unsaid"), ("open", "nothing: open to the air"), ("some air", "a barrier, some air inside"), ("airless", "a barrier, no air inside")];

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>The line, as typed.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftLine Line { get; set; }

    /// <summary>What the page calls it.</summary>
    [Parameter]
    [EditorRequired]
    public required string Name { get; set; }

    /// <summary>The line's bitterness by both models; null while it cannot be reckoned, or of an earlier text.</summary>
    private HopBitterness? Bitter => Desk.IsStale ? null : Desk.Outlook?.Forecast.BitternessBy.FirstOrDefault(hop => hop.Line == Line.Number);

    private string Field(string key) => $"{Line.Path}.{key}";
}
