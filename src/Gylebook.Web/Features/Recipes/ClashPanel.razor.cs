using Gylebook.Recipes.Editing;
using Gylebook.Web.Features.Recipes.Drafting;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>Shows both texts of a clash and takes a choice, field by field or whole.</summary>
public sealed partial class ClashPanel
{
    private readonly string _id = FieldIds.Next();
    private readonly HashSet<int> _yours = [];
    private DraftClash? _clash;
    private DraftMerge? _merge;

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        _merge = Desk.Draft.Merge();
        if (_clash != Desk.Draft.Clash)
        {
            // What only this tab changed stands unless the brewer says otherwise; where both did, they have to say so.
            _clash = Desk.Draft.Clash;
            _yours.Clear();
            _yours.UnionWith(Enumerable.Range(0, _merge?.Choices.Count ?? 0).Where(i => !_merge!.Choices[i].IsConflict));
        }
    }

    private bool IsYours(int choice) => _yours.Contains(choice);

    private string Name(int choice) => $"{_id}-{choice.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
}
