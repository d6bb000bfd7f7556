using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Web.Drafting;

namespace Gylebook.Web.Features.Kits;

/// <summary>The kit that recipes are planned for until somebody says otherwise.</summary>
/// <param name="Id">Which kit of the book; null when the book has none that reads, and the built-in one serves.</param>
/// <param name="Kit">The kit.</param>
public sealed record KitInUse(Guid? Id, Kit Kit)
{
    private const string Key = "kit.inUse";

    /// <summary>The kit, if somebody described it; null for the built-in one, which stands in nobody's place.</summary>
    public Kit? Own => Id is null ? null : Kit;

    /// <summary>The kit chosen; else the first that reads; else the built-in one.</summary>
    public static async Task<KitInUse> FindAsync(Book book, CancellationToken cancellation = default)
    {
        string? chosen = await book.Settings.FindAsync(Key, cancellation);
        List<Sheet> kits = await book.Kits.ListAsync(cancellation: cancellation);
        foreach (Sheet sheet in kits.OrderByDescending(kit => kit.Id.ToString() == chosen))
        {
            if (KitFile.Read(sheet.Document).Value is { } kit)
            {
                return new KitInUse(sheet.Id, kit);
            }

            // A slip of the finger in the kit in use does not plan its recipes for another one.
            if (sheet.Id.ToString() == chosen && await LastReadable.OfAsync(book.Kits.Drafts, sheet.Id, text => KitFile.Read(text).Value, cancellation) is { } before)
            {
                return new KitInUse(sheet.Id, before);
            }
        }

        return new KitInUse(null, BuiltInKit.LanternShed);
    }

    /// <summary>Whether after that change another kit may be in use, or the same with other figures.</summary>
    public static bool MayHaveChanged(BookChange change) => change.Noun is BookNoun.Kit or BookNoun.Setting;

    /// <summary>Uses that kit from now on.</summary>
    public static Task ChooseAsync(Book book, Guid id, CancellationToken cancellation = default) =>
        book.Settings.SetAsync(Key, id.ToString(), cancellation);
}
