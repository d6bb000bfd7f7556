using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>The tree of the edits of one draft, which stands on one of them.</summary>
/// <param name="context">Where the rows are.</param>
/// <param name="draft">The draft.</param>
/// <param name="cancellation">Stops waiting.</param>
internal sealed class EditTree(BookContext context, IDraftRow draft, CancellationToken cancellation)
{
    /// <summary>How many texts may be kept as differences to the same whole one, and are lost with it.</summary>
    public const int MostOnOne = 15;

    private readonly EditTexts _texts = new(context);

    /// <summary>The edit the draft stands on; null at the root.</summary>
    public Task<EditRow?> StandsOnAsync() => context.Edits.SingleOrDefaultAsync(e => e.Id == draft.EditId, cancellation);

    /// <summary>Where redo goes; null for nowhere.</summary>
    public Task<EditRow?> YoungestChildAsync() =>
        context.Edits
            .Where(e => e.OwnerId == draft.OwnerId && e.ParentId == draft.EditId && !e.IsSetAside)
            .OrderByDescending(e => e.Id)
            .FirstOrDefaultAsync(cancellation);

    /// <summary>The text before an edit; null when it is damaged.</summary>
    public Task<string?> BeforeAsync(EditRow edit) => _texts.BeforeAsync(edit, cancellation);

    /// <summary>The text after an edit; null when it is damaged.</summary>
    public Task<string?> AfterAsync(EditRow edit) => _texts.AfterAsync(edit, cancellation);

    /// <summary>The edit the draft stands on, if one may be joined with it; null when they stay two.</summary>
    public async Task<EditRow?> JoinedAsync(string document, string tabId, DateTimeOffset now, DraftJoin join)
    {
        EditRow? last = await StandsOnAsync();
        bool isSame = last is not null && last.TabId == tabId && await BeforeAsync(last) == join.Before;

        // Typed back to where it began, it is a step of its own: one from a text to itself would undo nothing.
        return isSame && document != join.Before && now >= last!.AtTicks && now - last.AtTicks <= DraftJoin.Within ? last : null;
    }

    /// <summary>Adds an edit to the log: on the edit the draft stands on, or beside that one when both make one step.</summary>
    public async Task<EditRow> LogAsync(string document, string label, string tabId, DateTimeOffset now, EditRow? joined = null)
    {
        EditRow? last = await StandsOnAsync();
        string before = (joined is null ? await SoundAsync(last) : await BeforeAsync(joined)) ?? document;
        (long? whole, byte[] after) = await PackAsync(document, joined ?? last ?? await YoungestChildAsync());
        return context.Edits.Add(new EditRow
        {
            OwnerId = draft.OwnerId,
            ParentId = joined is null ? draft.EditId : joined.ParentId,
            BaseId = whole,
            Before = PackedText.Pack(before, document),
            After = after,
            Label = label,
            AtTicks = now,
            TabId = tabId,
        }).Entity;
    }

    /// <summary>What the draft says; where the disk has changed it, what it said by the edit it stands on; null when that is damaged too.</summary>
    private async Task<string?> SoundAsync(EditRow? last) =>
        RowChecksum.IsSound(context, draft) ? draft.Document
        : last is null ? null
        : await AfterAsync(last);

    /// <summary>A text as the difference to the whole text that a near edit stands on, while few do and it is worth it; else whole.</summary>
    private async Task<(long? Base, byte[] After)> PackAsync(string document, EditRow? near)
    {
        EditRow? whole = near?.BaseId is { } id ? await context.Edits.SingleOrDefaultAsync(e => e.Id == id, cancellation) : near;
        bool hasRoom = whole is not null && await context.Edits.CountAsync(e => e.BaseId == whole.Id, cancellation) < MostOnOne;
        if (hasRoom && await AfterAsync(whole!) is { } other)
        {
            byte[] difference = PackedText.Pack(document, other);
            if (difference.Length < whole!.After.Length / 2)
            {
                return (whole.Id, difference);
            }
        }

        return (null, PackedText.Pack(document));
    }
}
