using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>The drafts of one noun: one for each recipe, kit, food or water plan, shared by all tabs, with a log that forgets nothing.</summary>
/// <remarks>
/// Edits form a tree. The draft stands on one edit; undo goes to its parent, redo to its youngest child. An edit made
/// after an undo becomes the younger child, so redo no longer reaches the older branch, which stays in the log. An edit that
/// makes one step with the one before grows beside it: that one becomes such an older branch.
/// </remarks>
public sealed class BookDrafts
{
    private readonly BookAccess _access;
    private readonly DraftRows _rows;

    internal BookDrafts(BookAccess access, DraftRows rows) => (_access, _rows) = (access, rows);

    /// <summary>The draft; null when there is no such owner.</summary>
    public Task<Draft?> FindAsync(Guid id, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            async context => await _rows.FindAsync(context, id, cancellation) is { } draft
                ? await ShowAsync(context, draft, cancellation)
                : null,
            cancellation);

    /// <summary>Saves the whole text, if the draft still is what the tab has read.</summary>
    /// <param name="id">Whose draft.</param>
    /// <param name="seenRevision">The revision the tab has read.</param>
    /// <param name="document">The whole new text.</param>
    /// <param name="label">What was edited, for the undo button.</param>
    /// <param name="tabId">Which tab.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <remarks>A text that comes too late is kept in the log all the same, set aside.</remarks>
    public Task<DraftSave> SaveAsync(
        Guid id, long seenRevision, string document, string label, string tabId, CancellationToken cancellation = default) =>
        SaveAsync(id, seenRevision, document, label, tabId, null, cancellation);

    /// <summary>Saves the whole text, as one step with the tab's last edit if that may be.</summary>
    /// <param name="id">Whose draft.</param>
    /// <param name="seenRevision">The revision the tab has read.</param>
    /// <param name="document">The whole new text.</param>
    /// <param name="label">What was edited, should it be a step of its own.</param>
    /// <param name="tabId">Which tab.</param>
    /// <param name="join">What it is to be joined with; null for nothing.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <remarks>Joined only while the draft still stands on that edit, and soon after it. Nothing is taken from the log.</remarks>
    public Task<DraftSave> SaveAsync(
        Guid id, long seenRevision, string document, string label, string tabId, DraftJoin? join, CancellationToken cancellation = default) =>
        SaveAsync(async context => (await _rows.RowAsync(context, id, cancellation), seenRevision), new NewText(id, document, label, tabId, join), cancellation);

    /// <summary>Puts what is not in the book yet into it with its first edit, in one go: undo leads back to the text it began with.</summary>
    /// <param name="id">Whose draft; the caller makes the id, so that trying again makes no second one.</param>
    /// <param name="before">The whole text it began with.</param>
    /// <param name="document">The whole text after the edit.</param>
    /// <param name="label">What was edited.</param>
    /// <param name="tabId">Which tab.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public Task<DraftSave> BeginAsync(Guid id, string before, string document, string label, string tabId, CancellationToken cancellation = default) =>
        SaveAsync(
            async context =>
            {
                // A first try whose answer got lost has put it in already: what it says then is somebody else's text.
                if (await _rows.FindAsync(context, id, cancellation) is { } there)
                {
                    return (there, 0);
                }

                IDraftRow begun = _rows.Add(context, id, _access.Now);
                _rows.Put(begun, before, null, _access.Now);
                await context.SaveChangesAsync(cancellation);
                return (begun, begun.Revision);
            },
            new NewText(id, document, label, tabId, null),
            cancellation);

    /// <summary>Takes the last edit back, whichever tab made it.</summary>
    public Task<DraftMove> UndoAsync(Guid id, long seenRevision, string tabId, CancellationToken cancellation = default) =>
        MoveAsync(
            id, seenRevision, tabId,
            async tree => await tree.StandsOnAsync() is { } edit ? new Step(edit, await tree.BeforeAsync(edit), edit.ParentId) : null,
            cancellation);

    /// <summary>Brings back what undo took, as long as nothing was edited in between.</summary>
    public Task<DraftMove> RedoAsync(Guid id, long seenRevision, string tabId, CancellationToken cancellation = default) =>
        MoveAsync(
            id, seenRevision, tabId,
            async tree => await tree.YoungestChildAsync() is { } edit ? new Step(edit, await tree.AfterAsync(edit), edit.Id) : null,
            cancellation);

    /// <summary>Every edit ever made, the latest first; branches that undo left behind and late texts included.</summary>
    public Task<List<DraftEdit>> HistoryAsync(Guid id, int most = 200, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            async context =>
            {
                List<EditRow> rows = await context.Edits
                    .Where(e => e.OwnerId == id)
                    .OrderByDescending(e => e.Id)
                    .Take(most)
                    .ToListAsync(cancellation);
                EditTexts texts = new(context);
                texts.Know(rows);
                List<DraftEdit> edits = [];
                foreach (EditRow row in rows)
                {
                    string? before = await texts.BeforeAsync(row, cancellation);
                    string? after = await texts.AfterAsync(row, cancellation);
                    edits.Add(new DraftEdit(
                        row.Id, row.ParentId, row.Label, row.AtTicks, row.TabId, before ?? "", after ?? "", row.IsSetAside, before is null || after is null));
                }

                return edits;
            },
            cancellation);

    /// <summary>Edits a draft within somebody else's transaction; the caller tells the tabs.</summary>
    internal async Task<IDraftRow> EditAsync(
        BookContext context, Guid id, Func<string, string> edit, string label, string tabId, CancellationToken cancellation)
    {
        IDraftRow draft = await SoundAsync(context, id, cancellation);
        string document = edit(draft.Document);
        if (draft.Document != document)
        {
            EditRow logged = await new EditTree(context, draft, cancellation).LogAsync(document, label, tabId, _access.Now);
            await context.SaveChangesAsync(cancellation);
            _rows.Put(draft, document, logged.Id, _access.Now);
        }

        return draft;
    }

    /// <summary>A draft of which something is to be made.</summary>
    /// <exception cref="BookUnavailableException">It is damaged: what is made of it would be sealed as sound.</exception>
    internal async Task<IDraftRow> SoundAsync(BookContext context, Guid id, CancellationToken cancellation)
    {
        IDraftRow draft = await _rows.RowAsync(context, id, cancellation);
        return RowChecksum.IsSound(context, draft) ? draft : throw _access.Damaged($"The draft of this {_rows.Word}", _rows.Word);
    }

    internal void Tell(Guid id, long revision, string? tabId) => _access.Changes.Tell(new BookChange(_rows.Noun, id, revision, tabId));

    private async Task<DraftSave> SaveAsync(
        Func<BookContext, Task<(IDraftRow Row, long SeenRevision)>> open, NewText text, CancellationToken cancellation)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text.Label);
        DocumentText.NameIn(text.Document, _rows.Formats);
        bool changed = false;
        DraftSave answer = await _access.WriteAsync<DraftSave>(
            async context =>
            {
                (IDraftRow draft, long seenRevision) = await open(context);

                // The same text again changes nothing: a retry whose first answer got lost is answered as saved.
                if (draft.Document == text.Document)
                {
                    return new DraftSave.Saved(draft.Revision);
                }

                EditTree tree = new(context, draft, cancellation);
                if (draft.Revision != seenRevision)
                {
                    (await tree.LogAsync(text.Document, text.Label, text.TabId, _access.Now)).IsSetAside = true;
                    return new DraftSave.Stale(draft.Document, text.Document, draft.Revision);
                }

                EditRow? joined = text.Join is null ? null : await tree.JoinedAsync(text.Document, text.TabId, _access.Now, text.Join);
                EditRow edit = await tree.LogAsync(text.Document, joined is null ? text.Label : text.Join!.Label, text.TabId, _access.Now, joined);
                await context.SaveChangesAsync(cancellation);
                _rows.Put(draft, text.Document, edit.Id, _access.Now);
                changed = true;
                return new DraftSave.Saved(draft.Revision, joined is not null);
            },
            cancellation);
        if (changed && answer is DraftSave.Saved saved)
        {
            Tell(text.OwnerId, saved.Revision, text.TabId);
        }

        return answer;
    }

    private async Task<DraftMove> MoveAsync(
        Guid id, long seenRevision, string tabId, Func<EditTree, Task<Step?>> find, CancellationToken cancellation)
    {
        DraftMove answer = await _access.WriteAsync<DraftMove>(
            async context =>
            {
                IDraftRow draft = await _rows.RowAsync(context, id, cancellation);
                if (draft.Revision != seenRevision)
                {
                    return new DraftMove.Stale(await ShowAsync(context, draft, cancellation));
                }

                if (await find(new EditTree(context, draft, cancellation)) is not { } step)
                {
                    return new DraftMove.NothingLeft();
                }

                string document = step.Document ?? throw _access.Damaged($"The edit {step.Edit.Label} of this {_rows.Word}", _rows.Word);
                _rows.Put(draft, document, step.EditId, _access.Now);
                await context.SaveChangesAsync(cancellation);
                return new DraftMove.Moved(await ShowAsync(context, draft, cancellation), step.Edit.Label);
            },
            cancellation);
        if (answer is DraftMove.Moved moved)
        {
            Tell(id, moved.Draft.Revision, tabId);
        }

        return answer;
    }

    private static async Task<Draft> ShowAsync(BookContext context, IDraftRow draft, CancellationToken cancellation)
    {
        EditTree tree = new(context, draft, cancellation);
        EditRow? undo = await tree.StandsOnAsync();
        EditRow? redo = await tree.YoungestChildAsync();
        return new Draft(
            draft.OwnerId, draft.Document, draft.Revision, draft.UpdatedTicks, undo?.Label, redo?.Label, !RowChecksum.IsSound(context, draft));
    }

    /// <summary>A text to be saved, with what is to be logged of it.</summary>
    private sealed record NewText(Guid OwnerId, string Document, string Label, string TabId, DraftJoin? Join);

    /// <summary>Where undo or redo goes; no document where it is damaged.</summary>
    private sealed record Step(EditRow Edit, string? Document, long? EditId);
}
