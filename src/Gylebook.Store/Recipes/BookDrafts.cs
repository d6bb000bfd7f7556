using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>The drafts of recipes: one each, shared by all tabs, with a log that forgets nothing.</summary>
/// <remarks>
/// Edits form a tree. The draft stands on one edit; undo goes to its parent, redo to its youngest child. An edit made
/// after an undo becomes the younger child, so redo no longer reaches the older branch, which stays in the log. An edit that
/// makes one step with the one before grows beside it: that one becomes such an older branch.
/// </remarks>
public sealed class BookDrafts
{
    private readonly BookAccess _access;

    internal BookDrafts(BookAccess access) => _access = access;

    /// <summary>The draft; null when there is no such recipe.</summary>
    public Task<Draft?> FindAsync(Guid recipeId, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            async context => await context.Drafts.FindAsync([recipeId], cancellation) is { } draft
                ? await ShowAsync(context, draft, cancellation)
                : null,
            cancellation);

    /// <summary>Saves the whole text, if the draft still is what the tab has read.</summary>
    /// <param name="recipeId">Whose draft.</param>
    /// <param name="seenRevision">The revision the tab has read.</param>
    /// <param name="document">The whole new text.</param>
    /// <param name="label">What was edited, for the undo button.</param>
    /// <param name="tabId">Which tab.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <remarks>A text that comes too late is kept in the log all the same, set aside.</remarks>
    public Task<DraftSave> SaveAsync(
        Guid recipeId, long seenRevision, string document, string label, string tabId, CancellationToken cancellation = default) =>
        SaveAsync(recipeId, seenRevision, document, label, tabId, null, cancellation);

    /// <summary>Saves the whole text, as one step with the tab's last edit if that may be.</summary>
    /// <param name="recipeId">Whose draft.</param>
    /// <param name="seenRevision">The revision the tab has read.</param>
    /// <param name="document">The whole new text.</param>
    /// <param name="label">What was edited, should it be a step of its own.</param>
    /// <param name="tabId">Which tab.</param>
    /// <param name="join">What it is to be joined with; null for nothing.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <remarks>Joined only while the draft still stands on that edit, and soon after it. Nothing is taken from the log.</remarks>
    public async Task<DraftSave> SaveAsync(
        Guid recipeId, long seenRevision, string document, string label, string tabId, DraftJoin? join, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(label);
        string name = DocumentText.NameIn(document, DocumentText.Recipe);
        bool changed = false;
        DraftSave answer = await _access.WriteAsync<DraftSave>(
            async context =>
            {
                RecipeRow recipe = await RecipeAsync(context, recipeId, cancellation);
                DraftRow draft = recipe.Draft!;

                // The same text again changes nothing: a retry whose first answer got lost is answered as saved.
                if (draft.Document == document)
                {
                    return new DraftSave.Saved(draft.Revision);
                }

                if (draft.Revision != seenRevision)
                {
                    (await EditTree.LogAsync(context, draft, document, label, tabId, _access.Now, cancellation)).IsSetAside = true;
                    return new DraftSave.Stale(draft.Document, document, draft.Revision);
                }

                EditRow? joined = join is null ? null : await EditTree.JoinedAsync(context, draft, document, tabId, _access.Now, join, cancellation);
                EditRow edit = await EditTree.LogAsync(context, draft, document, joined is null ? label : join!.Label, tabId, _access.Now, cancellation, joined);
                await context.SaveChangesAsync(cancellation);
                Put(recipe, document, name, edit.Id);
                changed = true;
                return new DraftSave.Saved(draft.Revision, joined is not null);
            },
            cancellation);
        if (changed && answer is DraftSave.Saved saved)
        {
            _access.Changes.Tell(new BookChange(BookNoun.Recipe, recipeId, saved.Revision, tabId));
        }

        return answer;
    }

    /// <summary>Takes the last edit back, whichever tab made it.</summary>
    public Task<DraftMove> UndoAsync(
        Guid recipeId, long seenRevision, string tabId, CancellationToken cancellation = default) =>
        MoveAsync(
            recipeId, seenRevision, tabId,
            async (context, draft) => await EditTree.StandsOnAsync(context, draft, cancellation) is { } edit
                ? new Step(edit, edit.Before, edit.ParentId)
                : null,
            cancellation);

    /// <summary>Brings back what undo took, as long as nothing was edited in between.</summary>
    public Task<DraftMove> RedoAsync(
        Guid recipeId, long seenRevision, string tabId, CancellationToken cancellation = default) =>
        MoveAsync(
            recipeId, seenRevision, tabId,
            async (context, draft) => await EditTree.YoungestChildAsync(context, draft, cancellation) is { } edit
                ? new Step(edit, edit.After, edit.Id)
                : null,
            cancellation);

    /// <summary>Every edit ever made, the latest first; branches that undo left behind and late texts included.</summary>
    public Task<List<DraftEdit>> HistoryAsync(Guid recipeId, int most = 200, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            async context => (await context.Edits
                .Where(e => e.RecipeId == recipeId)
                .OrderByDescending(e => e.Id)
                .Take(most)
                .ToListAsync(cancellation))
                .ConvertAll(e => new DraftEdit(
                    e.Id, e.ParentId, e.Label, e.AtTicks, e.TabId, e.Before, e.After, e.IsSetAside, !RowChecksum.IsSound(context, e))),
            cancellation);

    /// <summary>Edits a draft within somebody else's transaction; the caller tells the tabs.</summary>
    internal async Task<DraftRow> EditAsync(
        BookContext context, RecipeRow recipe, string document, string label, string tabId, CancellationToken cancellation)
    {
        DraftRow draft = recipe.Draft!;
        _access.EnsureSound(context, draft);
        if (draft.Document != document)
        {
            EditRow edit = await EditTree.LogAsync(context, draft, document, label, tabId, _access.Now, cancellation);
            await context.SaveChangesAsync(cancellation);
            Put(recipe, document, DocumentText.NameIn(document, DocumentText.Recipe), edit.Id);
        }

        return draft;
    }

    internal static async Task<RecipeRow> RecipeAsync(BookContext context, Guid recipeId, CancellationToken cancellation) =>
        await context.Recipes.Include(r => r.Draft).SingleOrDefaultAsync(r => r.Id == recipeId, cancellation)
        ?? throw new ArgumentOutOfRangeException(nameof(recipeId), recipeId, "No such recipe in the book.");

    private async Task<DraftMove> MoveAsync(
        Guid recipeId,
        long seenRevision,
        string tabId,
        Func<BookContext, DraftRow, Task<Step?>> find,
        CancellationToken cancellation)
    {
        DraftMove answer = await _access.WriteAsync<DraftMove>(
            async context =>
            {
                RecipeRow recipe = await RecipeAsync(context, recipeId, cancellation);
                if (recipe.Draft!.Revision != seenRevision)
                {
                    return new DraftMove.Stale(await ShowAsync(context, recipe.Draft, cancellation));
                }

                if (await find(context, recipe.Draft) is not { } step)
                {
                    return new DraftMove.NothingLeft();
                }

                if (!RowChecksum.IsSound(context, step.Edit))
                {
                    throw _access.Damaged($"The edit {step.Edit.Label} of this recipe");
                }

                Put(recipe, step.Document, DocumentText.NameIn(step.Document, DocumentText.Recipe), step.EditId);
                await context.SaveChangesAsync(cancellation);
                return new DraftMove.Moved(await ShowAsync(context, recipe.Draft, cancellation), step.Edit.Label);
            },
            cancellation);
        if (answer is DraftMove.Moved moved)
        {
            _access.Changes.Tell(new BookChange(BookNoun.Recipe, recipeId, moved.Draft.Revision, tabId));
        }

        return answer;
    }

    private void Put(RecipeRow recipe, string document, string name, long? editId)
    {
        DraftRow draft = recipe.Draft!;
        draft.Document = document;
        draft.EditId = editId;
        draft.Revision++;
        draft.UpdatedTicks = recipe.UpdatedTicks = _access.Now;
        recipe.Name = name;
        recipe.FoldedName = NameSearch.Fold(name);
    }

    private static async Task<Draft> ShowAsync(BookContext context, DraftRow draft, CancellationToken cancellation)
    {
        EditRow? undo = await EditTree.StandsOnAsync(context, draft, cancellation);
        EditRow? redo = await EditTree.YoungestChildAsync(context, draft, cancellation);
        return new Draft(
            draft.RecipeId, draft.Document, draft.Revision, draft.UpdatedTicks, undo?.Label, redo?.Label, !RowChecksum.IsSound(context, draft));
    }

    private sealed record Step(EditRow Edit, string Document, long? EditId);
}
