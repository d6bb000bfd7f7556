using Gylebook.Recipes.Foods;
using Gylebook.Science.Foods.Words;
using Gylebook.Store;

namespace Gylebook.Web.Features.Foods;

/// <summary>A line of the list of foods.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Family">Whose habits it borrows.</param>
/// <param name="Allergens">What it brings, as far as its row knows.</param>
/// <param name="Url">Its page.</param>
/// <param name="IsOwn">Whether it is a sheet of the brewer's own.</param>
public sealed record FoodLine(string Name, string Family, IReadOnlyList<string> Allergens, string Url, bool IsOwn);

/// <summary>Finds foods by any part of their name, family or allergens, whatever case and accents.</summary>
public static class FoodSearch
{
    private static readonly Lazy<IReadOnlyList<FoodLine>> Table = new(() =>
        [.. FoodTable.All.Select(food => new FoodLine(food.Name, food.Family.Name, food.Allergens, PageUrls.Food(food.Id), false))]);

    /// <summary>The brewer's own sheets first, then the rows of the table, as far as they fit.</summary>
    /// <param name="own">The brewer's own sheets.</param>
    /// <param name="search">Words that must all be found; blank for all.</param>
    public static IReadOnlyList<FoodLine> Find(IEnumerable<FoodLine> own, string? search)
    {
        string[] words = NameSearch.Fold(search ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        List<FoodLine> found = [.. own.Concat(Table.Value).Where(line => Fits(line, words))];

        // Other names of the trade, such as "peanut flour", are known to the table alone.
        if (words.Length > 0 && FoodTable.Find(search!).Match is { } byOtherName && found.All(line => line.Url != PageUrls.Food(byOtherName.Id)))
        {
            found.Insert(0, Table.Value.Single(line => line.Url == PageUrls.Food(byOtherName.Id)));
        }

        return found;
    }

    /// <summary>Families of foods by any words of their name.</summary>
    public static IReadOnlyList<FoodFamily> Families(string search)
    {
        string[] words = NameSearch.Fold(search).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. FoodFamilies.All.Where(family => words.All(word => NameSearch.Fold(family.Name).Contains(word, StringComparison.Ordinal)))];
    }

    /// <summary>The line of a sheet of the book; its name alone when it cannot be read.</summary>
    public static FoodLine LineOf(Sheet sheet)
    {
        FoodSheet? food = Gylebook.Recipes.Interchange.FoodFile.Read(sheet.Document).Value;
        IReadOnlyList<string> allergens = food is not null && FoodMakeups.From(food).Makeup is { } makeup
            ? Allergens.State(AllergenList.EuFourteen, [.. makeup.Words]).Contains
            : [];
        return new FoodLine(sheet.Name, food is null ? "cannot be read" : (FoodFamilies.Find(food.Family).Match ?? FoodFamilies.Of("other")).Name, allergens, PageUrls.OwnFood(sheet.Id), true);
    }

    private static bool Fits(FoodLine line, string[] words)
    {
        string text = NameSearch.Fold($"{line.Name} {line.Family} {string.Join(' ', line.Allergens)}");
        return words.All(word => text.Contains(word, StringComparison.Ordinal));
    }
}
