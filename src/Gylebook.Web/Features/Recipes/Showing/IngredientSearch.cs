using System.Globalization;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Water;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>Something that can go into a recipe.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Of">What a recipe calls it by.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Says">A few words to tell it from its neighbours.</param>
public sealed record IngredientChoice(IngredientKind Kind, string Of, string Name, string Says);

/// <summary>Searches all tables, and the brewer's own foods, as somebody types.</summary>
public sealed class IngredientSearch
{
    private static readonly CompareInfo Compare = CultureInfo.InvariantCulture.CompareInfo;

    // The tables never change while the program runs.
    private static readonly IngredientChoice[] Tables =
    [
        .. Malts.All.Select(m => new IngredientChoice(IngredientKind.Malt, m.Name, m.Name, $"malt · {Number(m.Colour.Ebc, 0)} EBC")),
        .. HopCultivars.All.Select(h => new IngredientChoice(IngredientKind.Hop, h.Name, h.Name, $"hop · {Number(h.Alpha.Percent, 1)} % alpha")),
        .. YeastStyles.All.Select(y => new IngredientChoice(IngredientKind.Yeast, y.Name, y.Name, $"yeast · {Number(y.Low.Celsius, 0)} to {Number(y.High.Celsius, 0)} °C")),
        .. Sugars.All.Select(s => new IngredientChoice(KindOf(s), s.Id, s.Name, KindOf(s) == IngredientKind.Extract ? "malt extract" : "sugar")),
        .. FoodTable.All.Select(f => new IngredientChoice(KindOf(f), f.Id, f.Name, KindOf(f) == IngredientKind.Spice ? "spice" : "food")),
        .. Finings.All.Select(f => new IngredientChoice(IngredientKind.Fining, f.Name, f.Name, "fining")),
        .. BrewingSalts.All.Select(s => new IngredientChoice(IngredientKind.Salt, s.Name, s.Name, $"salt · {s.Formula}")),
        .. AcidAsSold.Shelf.Select(NameOf).Distinct().Select(name => new IngredientChoice(IngredientKind.Acid, name, name, "acid")),
        new(IngredientKind.Water, "water", "water", "plain liquor"),
    ];

    private readonly IngredientChoice[] _all;

    /// <summary>A search of the tables and those foods.</summary>
    /// <param name="own">The brewer's own foods, by id and name.</param>
    public IngredientSearch(IEnumerable<(string Id, string Name)> own) =>
        _all = [.. own.Select(f => new IngredientChoice(IngredientKind.Food, f.Id, f.Name, "food · your own sheet")), .. Tables];

    /// <summary>What fits, the best first: names that begin so, then words that begin so, then the rest.</summary>
    /// <param name="typed">Some letters, whatever their case and accents; several words must all be there.</param>
    /// <param name="first">The kinds to put first where names fit alike: those the stage is for.</param>
    public IReadOnlyList<IngredientChoice> Find(string typed, params IngredientKind[] first)
    {
        string[] words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. _all
            .Select(choice => (Choice: choice, Rank: RankOf(choice, words)))
            .Where(found => found.Rank >= 0)
            .OrderBy(found => first.Contains(found.Choice.Kind) ? 0 : 1)
            .ThenBy(found => found.Rank)
            .ThenBy(found => found.Choice.Name, StringComparer.InvariantCultureIgnoreCase)
            .Select(found => found.Choice)];
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

    private static int RankOf(IngredientChoice choice, string[] words)
    {
        int rank = 0;
        foreach (string word in words)
        {
            int at = Compare.IndexOf(choice.Name, word, CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace);
            if (at < 0)
            {
                return -1;
            }

            rank += at == 0 ? 0 : choice.Name[at - 1] is ' ' or '-' or ',' or '(' ? 1 : 2;
        }

        return rank;
    }

    /// <summary>An acid as recipes name it, with the strength it is sold at: "lactic acid 88 %"; a powder goes by its name alone.</summary>
    private static string NameOf(AcidAsSold acid)
    {
        string[] id = acid.Id.Split('-');
        return id.Length > 1 && char.IsAsciiDigit(id[1][0]) ? $"{acid.Acid.Name} {id[1]} %" : acid.Acid.Name;
    }

    private static IngredientKind KindOf(Food food) =>
        food.Family.Id.Contains("spice", StringComparison.Ordinal) ? IngredientKind.Spice : IngredientKind.Food;

    private static IngredientKind KindOf(Sugar sugar) =>
        sugar.Name.Contains("extract", StringComparison.OrdinalIgnoreCase) ? IngredientKind.Extract : IngredientKind.Sugar;

    private static string Number(double value, int decimals) => Math.Round(value, decimals).ToString(CultureInfo.InvariantCulture);
}
