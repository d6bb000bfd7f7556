using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>The tree of a recipe's edits, of which the draft stands on one.</summary>
internal static class EditTree
{
    /// <summary>Adds an edit to the log: on the edit the draft stands on, or beside that one when both make one step.</summary>
    public static async Task<EditRow> LogAsync(
        BookContext context, DraftRow draft, string document, string label, string tabId, DateTimeOffset now, CancellationToken cancellation, EditRow? joined = null) =>
        context.Edits.Add(new EditRow
        {
            RecipeId = draft.RecipeId,
            ParentId = joined is null ? draft.EditId : joined.ParentId,
            Before = joined?.Before ?? await SoundAsync(context, draft, cancellation) ?? document,
            After = document,
            Label = label,
            AtTicks = now,
            TabId = tabId,
        }).Entity;

    /// <summary>What the draft says; where the disk has changed it, what it said by the edit it stands on; null when that is damaged too.</summary>
    private static async Task<string?> SoundAsync(BookContext context, DraftRow draft, CancellationToken cancellation)
    {
        if (RowChecksum.IsSound(context, draft))
        {
            return draft.Document;
        }

        EditRow? last = await StandsOnAsync(context, draft, cancellation);
        return last is not null && RowChecksum.IsSound(context, last) ? last.After : null;
    }

    /// <summary>The edit the draft stands on, if one may be joined with it; null when they stay two.</summary>
    public static async Task<EditRow?> JoinedAsync(
        BookContext context, DraftRow draft, string document, string tabId, DateTimeOffset now, DraftJoin join, CancellationToken cancellation)
    {
        EditRow? last = await StandsOnAsync(context, draft, cancellation);
        bool isSame = last is not null && last.TabId == tabId && last.Before == join.Before;

        // Typed back to where it began, it is a step of its own: one from a text to itself would undo nothing.
        return isSame && document != join.Before && now >= last!.AtTicks && now - last.AtTicks <= DraftJoin.Within ? last : null;
    }

    /// <summary>The edit the draft stands on; null at the root.</summary>
    public static Task<EditRow?> StandsOnAsync(BookContext context, DraftRow draft, CancellationToken cancellation) =>
        context.Edits.SingleOrDefaultAsync(e => e.Id == draft.EditId, cancellation);

    /// <summary>Where redo goes; null for nowhere.</summary>
    public static Task<EditRow?> YoungestChildAsync(BookContext context, DraftRow draft, CancellationToken cancellation) =>
        context.Edits
            .Where(e => e.RecipeId == draft.RecipeId && e.ParentId == draft.EditId && !e.IsSetAside)
            .OrderByDescending(e => e.Id)
            .FirstOrDefaultAsync(cancellation);
}
