using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Store.Rows;

namespace Gylebook.Web.Drafting;

/// <summary>A page with a sheet of the book on its desk: a kit, a water plan.</summary>
/// <typeparam name="TRow">Its row.</typeparam>
/// <typeparam name="TDraft">Which sort of draft.</typeparam>
/// <typeparam name="TDesk">The desk it lies on.</typeparam>
public abstract class SheetPage<TRow, TDraft, TDesk> : DraftPage<TDraft, TDesk>
    where TRow : SheetRow, new()
    where TDraft : FileDraft
    where TDesk : DraftDesk<TDraft>
{
    /// <summary>Where such sheets are kept.</summary>
    protected abstract BookSheets<TRow> Sheets { get; }

    /// <summary>What the book says of it; null when it has none such.</summary>
    protected Sheet? Sheet { get; private set; }

    /// <inheritdoc/>
    protected override BookDrafts Drafts => Sheets.Drafts;

    /// <inheritdoc/>
    protected override BookVersions Versions => Sheets.Versions;

    /// <inheritdoc/>
    protected override async Task LookAsync() => Sheet = await Sheets.FindAsync(Which);

    /// <summary>Takes it out of the bin.</summary>
    protected async Task RestoreAsync()
    {
        await Sheets.RestoreAsync(Which);
        await LookAsync();
    }
}
