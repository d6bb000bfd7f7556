using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Store;
using Gylebook.Web.Drafting;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Larders;

/// <summary>The larder as it stands in the book; a forecast asks it before the tables.</summary>
public static class OwnLarder
{
    /// <summary>All sheets that stand in the book, each as it could be read last; the one last changed, should two claim an id. Asked today.</summary>
    public static async Task<Larder> OfAsync(Book book, CancellationToken cancellation = default)
    {
        List<(LarderSheet Sheet, DateTimeOffset Updated)> read = [];
        await TakeAsync(book.Foods.Drafts, await book.Foods.ListAsync(cancellation: cancellation), read);
        await TakeAsync(book.Larder.Drafts, await book.Larder.ListAsync(cancellation: cancellation), read);
        return new Larder(read.OrderBy(sheet => sheet.Updated).Select(sheet => sheet.Sheet)).On(book.Today);
    }

    /// <summary>Whether a change may have changed it.</summary>
    public static bool MayHaveChanged(BookChange change) => change.Noun is BookNoun.Food or BookNoun.Larder;

    /// <summary>What a sheet says, or said when it could be read last, for a slip of the finger is no reason to brew without it; null when it never could.</summary>
    public static async Task<LarderSheet?> ReadableAsync(BookDrafts drafts, Sheet sheet) =>
        (WholeText.Is(sheet) ? Read(sheet.Document) : null) ?? await LastReadable.OfAsync(drafts, sheet.Id, Read);

    private static async Task TakeAsync(BookDrafts drafts, List<Sheet> sheets, List<(LarderSheet Sheet, DateTimeOffset Updated)> read)
    {
        foreach (Sheet sheet in sheets)
        {
            LarderSheet? known = await ReadableAsync(drafts, sheet);
            if (known is not null)
            {
                read.Add((known, sheet.Updated));
            }
        }
    }

    private static LarderSheet? Read(string text) => LarderDraft.SheetOf(LarderDraft.Of(text));
}
