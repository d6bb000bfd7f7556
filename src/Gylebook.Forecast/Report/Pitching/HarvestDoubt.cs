using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using FoodWord = Gylebook.Science.Foods.Words.IngredientKind;

namespace Gylebook.Forecast.Report.Pitching;

/// <summary>What in a beer makes its yeast unfit to pitch again. Common practice, no source, throughout.</summary>
internal static class HarvestDoubt
{
    private const double TiringAlcohol = 8;
    private const double CoatingBitterness = 60;

    /// <summary>All that speaks against it, in plain words.</summary>
    public static IReadOnlyList<string> Of(BrewPlan brew, RunOutcome figures) =>
    [
        .. brew.Lines
            .Where(l => l.Food is not null && l.Line.At.Point is >= AdditionPoint.KnockOut and < AdditionPoint.Rack)
            .Select(l => l.Food switch
            {
                { } food when BringsPreservative(food) => $"{l.Name} brings a preservative",
                { Fat: > 0.05 } => $"{l.Name} leaves fat in the yeast",
                { Insoluble: > 0 } => $"{l.Name} settles with the yeast, and what lived on it too",
                _ => $"{l.Name} went in after the boil and may have brought other microbes",
            }),
        .. brew.Lines
            .Where(l => l.Line.Kind == IngredientKind.Hop && l.Line.At.Point is AdditionPoint.Pitch or AdditionPoint.Ferment)
            .Select(l => $"{l.Name} settles with the yeast").Distinct(),
        .. When(figures[BeerReadouts.AlcoholByVolume] > TiringAlcohol, "yeast tires in ", figures[BeerReadouts.AlcoholByVolume], " % of alcohol", TiringAlcohol),
        .. When(figures[BeerReadouts.Bitterness] > CoatingBitterness, "hop bitters coat yeast at ", figures[BeerReadouts.Bitterness], " IBU", CoatingBitterness),
        .. brew.Lines.Where(l => l.Yeast is { FermentsWhatOthersLeave: true })
            .Select(l => $"{l.Name} ferments what other yeast leaves: one cell of it in the next beer is too many").Distinct(),
    ];

    private static bool BringsPreservative(FoodMakeup food) => food.Words.Any(hit => !hit.MayContainOnly && hit.Kind
        is FoodWord.Sorbate or FoodWord.Benzoate or FoodWord.Sulphite or FoodWord.Natamycin or FoodWord.DimethylDicarbonate);

    private static IEnumerable<string> When(bool so, string before, double value, string after, double limit) =>
        so ? [Invariant($"{before}{value:0.#}{after}; limit {limit:0}")] : [];
}
