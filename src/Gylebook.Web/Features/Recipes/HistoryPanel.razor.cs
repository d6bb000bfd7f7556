using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>The edit log; any text in it can be had back, as a new edit.</summary>
public sealed partial class HistoryPanel
{
    private List<DraftEdit> _edits = [];
    private long _revision;

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (_revision != Desk.Draft.Revision)
        {
            _revision = Desk.Draft.Revision;
            _edits = await Book.Drafts.HistoryAsync(Desk.Draft.Id);
        }
    }

    private Task ReturnAsync(DraftEdit edit) =>
        Desk.EditAsync(_ => new RecipeEdit(RecipeDraft.Of(edit.After), $"back to: {edit.Label}"));
}
