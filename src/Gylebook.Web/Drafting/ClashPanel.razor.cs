using Gylebook.Recipes.Editing;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Drafting;

/// <summary>Shows both texts of a clash and takes a choice, field by field or whole.</summary>
public sealed partial class ClashPanel
{
    private readonly string _id = FieldIds.Next();
    private readonly HashSet<int> _yours = [];
    private IReadOnlyList<MergeChoice>? _choices;

    /// <summary>The desk both texts are for.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftDesk Desk { get; set; }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        IReadOnlyList<MergeChoice>? before = _choices;
        _choices = Desk.Draft.Choices;
        if (before?.Select(choice => choice.Yours).SequenceEqual(_choices?.Select(choice => choice.Yours) ?? []) != true)
        {
            // What only this tab changed stands unless the brewer says otherwise; where both did, they have to say so.
            _yours.Clear();
            _yours.UnionWith(Enumerable.Range(0, _choices?.Count ?? 0).Where(i => !_choices![i].IsConflict));
        }
    }

    private bool IsYours(int choice) => _yours.Contains(choice);

    private string Name(int choice) => $"{_id}-{choice.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
}
