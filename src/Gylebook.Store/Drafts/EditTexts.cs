using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>The texts of edits, unpacked when asked for; each once.</summary>
/// <param name="context">Where the rows are.</param>
internal sealed class EditTexts(BookContext context)
{
    private readonly Dictionary<long, EditRow> _rows = [];
    private readonly Dictionary<long, string?> _afters = [];

    /// <summary>Rows that were read already, so that they need not be read again.</summary>
    public void Know(IEnumerable<EditRow> edits)
    {
        foreach (EditRow edit in edits)
        {
            _rows[edit.Id] = edit;
        }
    }

    /// <summary>The text after an edit; null when its row, or the one it is the difference to, is damaged.</summary>
    public async Task<string?> AfterAsync(EditRow edit, CancellationToken cancellation)
    {
        if (!_afters.TryGetValue(edit.Id, out string? text))
        {
            text = RowChecksum.IsSound(context, edit) ? await UnpackAsync(edit, cancellation) : null;
            _afters[edit.Id] = text;
        }

        return text;
    }

    /// <summary>The text before an edit; null when that after it cannot be had.</summary>
    public async Task<string?> BeforeAsync(EditRow edit, CancellationToken cancellation) =>
        await AfterAsync(edit, cancellation) is { } after ? PackedText.Open(edit.Before, after) : null;

    private async Task<string?> UnpackAsync(EditRow edit, CancellationToken cancellation)
    {
        if (edit.BaseId is not { } whole)
        {
            return PackedText.Open(edit.After);
        }

        EditRow? row = _rows.GetValueOrDefault(whole) ?? await context.Edits.SingleOrDefaultAsync(e => e.Id == whole, cancellation);
        return row is { BaseId: null } && await AfterAsync(row, cancellation) is { } other ? PackedText.Open(edit.After, other) : null;
    }
}
