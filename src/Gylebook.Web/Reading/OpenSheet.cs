using Gylebook.Store;
using Gylebook.Store.Rows;

namespace Gylebook.Web.Reading;

/// <summary>A sheet of the book while somebody edits it: saved as they go, one save at a time, never over another's change.</summary>
/// <param name="sheets">Where it belongs.</param>
/// <param name="id">Which one; null for one that the first save is to make.</param>
/// <param name="revision">The revision that was read; 0 for a new one.</param>
/// <param name="saves">Hears of each save; null when nobody asks.</param>
/// <typeparam name="TRow">Its row.</typeparam>
public sealed class OpenSheet<TRow>(BookSheets<TRow> sheets, Guid? id, long revision, PageSaves? saves = null)
    where TRow : SheetRow, new()
{
    private readonly string _tab = Guid.CreateVersion7().ToString();
    private readonly PageSaves _saves = saves ?? PageSaves.Unasked();
    private long _revision = revision;
    private bool _isSaving;
    private bool _isChanged;

    /// <summary>Which one; null until the first save of a new one.</summary>
    public Guid? Id { get; private set; } = id;

    /// <summary>Whether the first save made it.</summary>
    public bool IsMadeHere { get; } = id is null;

    /// <summary>Why the last text is not on disk; null when it is, or waits for a choice.</summary>
    public string? Unsaved { get; private set; }

    /// <summary>The book's text and ours, when somebody else changed the sheet meanwhile; null while all is well.</summary>
    public DraftSave.Stale? Clash { get; private set; }

    /// <summary>Saves; what was typed while a save runs goes with the next.</summary>
    /// <param name="document">The text as it is when its turn comes.</param>
    public async Task SaveAsync(Func<string> document)
    {
        using PageSaves.Run run = _saves.Begin();
        _isChanged = true;
        if (_isSaving || Clash is not null)
        {
            run.LeavesItToOthers();
            return;
        }

        _isSaving = true;
        try
        {
            while (_isChanged && Clash is null)
            {
                _isChanged = false;
                await WriteAsync(document());
            }

            Unsaved = null;
        }
        catch (BookUnavailableException trouble)
        {
            Unsaved = trouble.Message;
        }
        finally
        {
            _isSaving = false;
        }

        run.Ends(Unsaved ?? (Clash is null ? null : "It was changed elsewhere; both texts wait for a choice."));
    }

    /// <summary>What came of the last save, in words.</summary>
    /// <param name="what">What sort of sheet, in a word: <c>kit</c>.</param>
    /// <param name="clock">The time.</param>
    public string Says(string what, TimeProvider clock) => this switch
    {
        { Clash: not null } => $"Not saved: this {what} was changed elsewhere",
        { Unsaved: { } why } => $"Not saved: {why}",
        _ => $"Saved {Instants.Clock(clock.GetUtcNow(), clock)}",
    };

    /// <summary>Ends a clash in favour of one's own text.</summary>
    /// <param name="document">The text as it is when its turn comes.</param>
    public Task OverwriteAsync(Func<string> document)
    {
        _revision = Clash!.TheirRevision;
        Clash = null;
        return SaveAsync(document);
    }

    /// <summary>Whether that change came from elsewhere and is not known here yet: another text, or a way into the bin or out of it.</summary>
    public bool IsNews(BookChange change)
    {
        // The book does not say who made a sheet.
        bool isOurMaking = IsMadeHere && change.Revision == 1;
        return change.Id == Id && change.TabId != _tab && change.Revision >= _revision && !isOurMaking && !_isSaving && Clash is null && Unsaved is null;
    }

    private async Task WriteAsync(string document)
    {
        if (Id is not { } known)
        {
            Id = await sheets.CreateAsync(document);
            _revision = 1;
            return;
        }

        switch (await sheets.SaveAsync(known, _revision, document, _tab))
        {
            case DraftSave.Saved saved:
                _revision = saved.Revision;
                break;
            case DraftSave.Stale stale:
                Clash = stale;
                break;
        }
    }
}
