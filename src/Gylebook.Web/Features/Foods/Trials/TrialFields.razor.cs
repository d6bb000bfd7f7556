using System.Globalization;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Web.Drafting;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods.Trials;

/// <summary>The bench trials of a food, edited in place.</summary>
public sealed partial class TrialFields
{
    private const string List = "trials";

    /// <summary>The desk the food lies on.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftDesk<FileDraft<FoodSheet>> Desk { get; set; }

    /// <summary>Today.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>A trial of today, with the glass without.</summary>
    private Task AddAsync() => Desk.EditAsync(draft =>
    {
        string glasses = Invariant($"{List}[{draft.CountOf(List)}].glasses");
        DraftEdit<FileDraft<FoodSheet>> added = draft.AddItem(List, ("day", Clock.GetLocalNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)), ("beer", ""));
        return added with { After = added.After.AddItem(glasses, ("dose", TrialLadder.None)).After };
    });

    private Task AddGlassAsync(string glasses) => Desk.EditAsync(draft =>
        draft.AddItem(glasses, ("dose", TrialLadder.After(draft[Invariant($"{glasses}[{draft.CountOf(glasses) - 1}].dose")]))));
}
