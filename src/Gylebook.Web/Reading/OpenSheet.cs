using Gylebook.Store;
using Gylebook.Store.Rows;

namespace Gylebook.Web.Reading;

/// <summary>A sheet of the book while somebody edits it: saved as they go, one save at a time, never over another's change.</summary>
/// <param name="sheets">Where it belongs.</param>
/// <param name="id">Which one; null for one that the first save is to make.</param>
/// <param name="revision">The revision that was read; 0 for a new one.</param>
/// <typeparam name="TRow">Its row.</typeparam>
public sealed class OpenSheet<TRow>(BookSheets<TRow> sheets, Guid? id, long revision)
    where TRow : SheetRow, new()
{
    private readonly string _tab = Guid.CreateVersion7().ToString();
    private readonly bool _isMadeHere = id is null;
    private long _revision = revision;
    private bool _isSaving;
    private bool _isChanged;

    /// <summary>Which one; null until the first save of a new one.</summary>
    public Guid? Id { get; private set; } = id;

    /// <summary>The book's text and ours, when somebody else changed the sheet meanwhile; null while all is well.</summary>
    public DraftSave.Stale? Clash { get; private set; }

    /// <summary>Saves; what was typed while a save runs goes with the next.</summary>
    /// <param name="document">The text as it is when its turn comes.</param>
    public async Task SaveAsync(Func<string> document)
    {
        _isChanged = true;
        if (_isSaving || Clash is not null)
        {
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
        }
        finally
        {
            _isSaving = false;
        }
    }

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
        bool isOurMaking = _isMadeHere && change.Revision == 1;
        return change.Id == Id && change.TabId != _tab && change.Revision >= _revision && !isOurMaking && !_isSaving && Clash is null;
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
