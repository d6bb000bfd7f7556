using Gylebook.Store.Rows;

namespace Gylebook.Store;

/// <summary>The brewer's sheets of malts, hops, yeasts and what else is on the shelf. Foods have a door of their own.</summary>
public sealed class BookLarder : BookSheets<LarderSheetRow>
{
    internal BookLarder(BookAccess access)
        : base(access, new LarderDraftRows())
    {
    }

    /// <summary>The sheet that recipes name so; the one last changed, should two claim the id; null when none does.</summary>
    /// <param name="form">What it is of: <c>malt</c>, <c>hop</c>, <c>yeast</c> or <c>shelf</c>.</param>
    /// <param name="sheetId">The <c>id</c> in the sheet's document.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<Sheet?> FindAsync(string form, string sheetId, CancellationToken cancellation = default)
    {
        List<Sheet> found = await ChooseAsync(
            rows => rows.Where(s => s.Form == form && s.SheetId == sheetId && s.DeletedTicks == null).OrderByDescending(s => s.UpdatedTicks).Take(1),
            cancellation);
        return found.SingleOrDefault();
    }
}
