using System.Globalization;
using Gylebook.Pictures;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Science.Water;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>Something that can go into a recipe.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Of">What a recipe calls it by.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Says">A few words to tell it from its neighbours, in the reader's units.</param>
public sealed record IngredientChoice(IngredientKind Kind, string Of, string Name, Func<Shown, string> Says)
{
    /// <summary>Other names it is found by.</summary>
    public IReadOnlyList<string> Also { get; init; } = [];

    /// <summary>Whether it is of the brewer's own larder.</summary>
    public bool IsOwn { get; init; }

    /// <summary>Whether it is no thing yet, but the way to a new food of that name.</summary>
    public bool IsNew { get; init; }

    /// <summary>What is offered where nothing is called so.</summary>
    public static IngredientChoice NewFood(string name) =>
        new(IngredientKind.Food, name, "New food from its label", _ => $"nothing here is called \u201C{name}\u201D") { IsNew = true };
}

/// <summary>Searches the larder and all tables as somebody types.</summary>
public sealed class IngredientSearch
{
    private static readonly CompareInfo Compare = CultureInfo.InvariantCulture.CompareInfo;

    // The tables never change while the program runs.
    private static readonly IngredientChoice[] Tables =
    [
        .. Malts.All.Select(m => new IngredientChoice(IngredientKind.Malt, m.Name, m.Name, shown => $"malt · {shown.Malt(m.Colour)}") { Also = Malts.OtherNames(m) }),
        .. HopCultivars.All.Select(h => new IngredientChoice(IngredientKind.Hop, h.Name, h.Name, shown => $"hop · {shown.Percent(h.Alpha.Percent)} alpha") { Also = HopCultivars.OtherNames(h) }),
        .. YeastStyles.All.Select(y => new IngredientChoice(IngredientKind.Yeast, y.Name, y.Name, shown => $"yeast · {shown.Celsius(y.Low.Celsius)} to {shown.Celsius(y.High.Celsius)}") { Also = YeastStyles.OtherNames(y) }),
        .. Sugars.All.Select(s => new IngredientChoice(s.Kind, s.Id, s.Name, _ => s.Kind == IngredientKind.Extract ? "malt extract" : "sugar") { Also = Sugars.OtherNames(s) }),
        .. FoodTable.All.Select(f => new IngredientChoice(f.Kind, f.Id, f.Name, _ => f.Kind == IngredientKind.Spice ? "spice" : "food") { Also = FoodTable.OtherNames(f) }),
        .. Finings.All.Select(f => new IngredientChoice(IngredientKind.Fining, f.Name, f.Name, _ => "fining") { Also = Finings.OtherNames(f) }),
        .. BrewingSalts.All.Select(s => new IngredientChoice(IngredientKind.Salt, s.Name, s.Name, _ => $"salt · {s.Formula}") { Also = [s.Formula] }),
        .. AcidAsSold.Shelf.Select(acid => new IngredientChoice(IngredientKind.Acid, acid.Name, acid.Name, _ => "acid")),
        new(IngredientKind.Water, "water", "water", _ => "plain liquor"),
    ];

    private readonly IngredientChoice[] _all;

    /// <summary>A search of the tables and that larder.</summary>
    public IngredientSearch(Larder larder) => _all = [.. larder.Sheets.Select(OwnChoice), .. Tables];

    /// <summary>
    /// All that fits, the best first: by kind in the order the stage wants them, the brewer's own before the tables, names that begin
    /// so, then words that begin so, then the rest.
    /// </summary>
    /// <param name="typed">Some letters of any of its names, whatever their case and accents; several words must all be there.</param>
    /// <param name="first">Kinds in the order the stage is for them; while nothing is typed, the first of them and what is the brewer's own.</param>
    public IReadOnlyList<IngredientChoice> Find(string typed, params IngredientKind[] first)
    {
        string[] words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. _all
            .Where(choice => words.Length > 0 || first.Length == 0 || choice.Kind == first[0] || (choice.IsOwn && first.Contains(choice.Kind)))
            .Select(choice => (Choice: choice, Best: BestName(choice, words)))
            .Where(found => found.Best.Rank >= 0)
            .OrderBy(found => Array.IndexOf(first, found.Choice.Kind) is var place && place < 0 ? first.Length : place)
            .ThenBy(found => !found.Choice.IsOwn)
            .ThenBy(found => found.Best.Rank)
            .ThenBy(found => found.Choice.Name, StringComparer.InvariantCultureIgnoreCase)
            .Select(found => found.Best.Name == found.Choice.Name ? found.Choice : Named(found.Choice, found.Best.Name))];
    }

    /// <summary>A weight to start from when something is added. Common practice, no source: it is there to be typed over.</summary>
    public static string StartingAmount(IngredientKind kind) => kind switch
    {
        IngredientKind.Malt or IngredientKind.Extract => "1 kg",
        IngredientKind.Hop => "20 g",
        IngredientKind.Yeast => "11 g",
        IngredientKind.Sugar or IngredientKind.Food => "200 g",
        IngredientKind.Water => "1 L",
        IngredientKind.Acid => "1 g",
        IngredientKind.Spice => "5 g",
        _ => "2 g",
    };

    /// <summary>When something usually goes in, added at that stage.</summary>
    public static AdditionTime StartingTime(RecipeStage stage, IngredientKind kind, double boilMinutes) => stage switch
    {
        RecipeStage.Mash => new(AdditionPoint.Mash),
        RecipeStage.Boil => new(AdditionPoint.Boil, boilMinutes),
        RecipeStage.KnockOut => new(AdditionPoint.KnockOut),
        RecipeStage.Ferment => kind == IngredientKind.Yeast ? new(AdditionPoint.Pitch) : new(AdditionPoint.Ferment, 3),
        _ => new(AdditionPoint.Package),
    };
    /// <summary>The name that fits best, and how well: 0 the best, below 0 for none.</summary>
    private static (string Name, int Rank) BestName(IngredientChoice choice, string[] words) => choice.Also
        .Prepend(choice.Name)
        .Select(name => (Name: name, Rank: RankOf(name, words)))
        .OrderBy(fit => fit.Rank < 0 ? int.MaxValue : fit.Rank)
        .First();

    private static int RankOf(string name, string[] words)
    {
        int rank = 0;
        foreach (string word in words)
        {
            int at = Compare.IndexOf(name, word, CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace);
            if (at < 0)
            {
                return -1;
            }

            rank += at == 0 ? 0 : name[at - 1] is ' ' or '-' or ',' or '(' ? 1 : 2;
        }

        return rank;
    }

    /// <summary>Found by another name than its first, it says that too.</summary>
    private static IngredientChoice Named(IngredientChoice choice, string other) =>
        choice.Says(new Shown(ReaderUnits.Metric)).Contains(other, StringComparison.Ordinal) ? choice : choice with { Says = shown => $"{choice.Says(shown)} · also {other}" };

    private static IngredientChoice OwnChoice(LarderSheet sheet) => sheet switch
    {
        MaltSheet malt => Own(IngredientKind.Malt, sheet, malt.Like),
        HopSheet hop => Own(IngredientKind.Hop, sheet, hop.Like),
        YeastSheet yeast => Own(IngredientKind.Yeast, sheet, yeast.Like),
        ShelfSheet shelf => Own(shelf.Kind, sheet, shelf.Like),
        _ => new(IngredientKind.Food, sheet.Id, sheet.Name, _ => "food · your own sheet") { IsOwn = true },
    };

    private static IngredientChoice Own(IngredientKind kind, LarderSheet sheet, string like)
    {
        string known = Tables.FirstOrDefault(row => row.Kind == kind && row.Of == like)?.Name ?? like;
        return new(kind, sheet.Id, sheet.Name, _ => $"{kind.ToString().ToLowerInvariant()} · your own, like {known}") { Also = [known], IsOwn = true };
    }
}
