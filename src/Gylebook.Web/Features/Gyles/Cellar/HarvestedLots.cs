using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>Keeps the larder's lots of harvested yeast in step with the log of a gyle; see <c>docs/decisions/0034-harvested-yeast.md</c>.</summary>
/// <remarks>The log leads. A lot comes with the entry that says that it was taken out, goes when that entry is taken back, and stays once something was pitched from it.</remarks>
internal static class HarvestedLots
{
    private const string Tab = "harvest", Form = "yeast";
    private const int Tries = 5;

    /// <summary>Whether an entry may change which lots there are.</summary>
    public static bool MayChange(BrewAction action) => action.Kind is ActionKind.Harvested or ActionKind.Undone;

    /// <summary>Lets the lots follow what was just said.</summary>
    /// <param name="book">The book.</param>
    /// <param name="log">All that was said of the gyle, that among it, in its order.</param>
    /// <param name="said">What was just said.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public static async Task FollowAsync(Book book, IReadOnlyList<BrewAction> log, IReadOnlyCollection<BrewAction> said, CancellationToken cancellation)
    {
        HashSet<Guid?> fresh = [.. said.Select(action => action.EntryId)];
        BrewAction[] earlier = [.. log.Where(action => !fresh.Contains(action.EntryId))];
        HashSet<Guid> before = GyleLog.TakenBack(earlier), now = GyleLog.TakenBack(log);
        foreach (BrewAction harvest in log.Where(action => action is { Kind: ActionKind.Harvested, Lot: not null, Detail: not null, EntryId: not null }))
        {
            Guid entry = harvest.EntryId!.Value;
            bool counted = !fresh.Contains(entry) && !before.Contains(entry), counts = !now.Contains(entry);
            if (counts && !counted)
            {
                await PutAsync(book, harvest, cancellation);
            }
            else if (counted && !counts && !(await book.Readings.UsedOfLotsAsync(cancellation)).ContainsKey(harvest.Lot!))
            {
                await ChangeAsync(book, harvest.Lot!, sheet => sheet.RemoveLot(LotKey.NameIn(harvest.Lot!)), cancellation);
            }
        }
    }

    /// <summary>The sheet is made where there is none, or none any more.</summary>
    private static async Task PutAsync(Book book, BrewAction harvest, CancellationToken cancellation)
    {
        FileDraft jar = LarderDraft.Of(harvest.Detail!);
        if (!await ChangeAsync(book, harvest.Lot!, sheet => sheet.TakeLot(jar), cancellation))
        {
            await book.Larder.CreateAsync(harvest.Detail!, cancellation: cancellation);
        }
    }

    /// <summary>Edits the sheet of a lot, anew where somebody was there first.</summary>
    /// <returns>Whether there is such a sheet.</returns>
    private static async Task<bool> ChangeAsync(Book book, string key, Func<FileDraft, DraftEdit<FileDraft>?> edit, CancellationToken cancellation)
    {
        for (int i = 0; i < Tries; i++)
        {
            if (await book.Larder.FindAsync(Form, key[..key.IndexOf('/', StringComparison.Ordinal)], cancellation) is not { } sheet)
            {
                return false;
            }

            if (!WholeText.Is(sheet) || edit(LarderDraft.Of(sheet.Document)) is not { } edited
                || await book.Larder.Drafts.SaveAsync(sheet.Id, sheet.Revision, edited.After.Text, edited.Label, Tab, cancellation) is DraftSave.Saved)
            {
                return true;
            }
        }

        throw new InvalidOperationException("The sheet of the yeast was changed elsewhere again and again; try once more.");
    }
}
