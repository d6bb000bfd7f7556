using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>Amounts that meet a wish.</summary>
/// <param name="Amounts">New texts by number of the line; empty when the wish cannot be met.</param>
/// <param name="Reached">What the recipe comes to with them, or came to at the limit.</param>
/// <param name="Binding">Which limit binds and by how much; null when the wish is met.</param>
public sealed record AmountsFound(IReadOnlyDictionary<int, string> Amounts, double Reached, string? Binding);

/// <summary>Solves amounts backwards from the beer: each trial is a whole lay-out and run, liquor planned anew.</summary>
/// <param name="recipe">The recipe as it stands.</param>
/// <param name="kit">The kit.</param>
/// <param name="foods">Foods that lie beside the recipe, by id.</param>
/// <param name="model">By which bitterness hops are weighed.</param>
public sealed class AmountSolver(
    Recipe recipe, Kit kit, Func<string, FoodMakeup?> foods, BitternessModel model = BitternessModel.TimeGravity)
{
    /// <summary>Points of gravity that no hydrometer tells from the wish.</summary>
    private const double PointsClose = 1e-3;

    private const double LeastTimes = 0.01;
    private const double MostTimes = 20;

    /// <summary>Scales malt and malt extract, all alike, to an original gravity; foods and sugars stay as weighed.</summary>
    public AmountsFound GristFor(SpecificGravity wish)
    {
        int[] grist = [.. LinesOf(IngredientKind.Malt, IngredientKind.Extract)];
        if (grist.Length == 0)
        {
            return Unmet(double.NaN, "there is no malt and no extract to weigh anew");
        }

        SecantResult found = BracketedSecant.Search(
            times => 1000 * (Gravity(grist, times) - 1), 1000 * (wish.Ratio - 1), new Bracket(LeastTimes, MostTimes), 1, PointsClose);
        double gravity = 1 + (found.Reached / 1000);
        return found.Solved
            ? new AmountsFound(Texts(grist, found.At), gravity, null)
            : Unmet(gravity, GravityBinds(gravity, wish.Ratio));
    }

    /// <summary>Weighs one line of hops so that the beer as a whole has that bitterness.</summary>
    public AmountsFound HopFor(int line, Bitterness wish)
    {
        if (recipe.Ingredients[line].Amount.Mass is not Entered<Mass> before)
        {
            return Unmet(double.NaN, "give the hops a weight to start from");
        }

        HopSolution found = new HopSolver(kit, foods, model).AmountFor(recipe, line, wish.Ibu);
        return found.Grams is double grams
            ? new AmountsFound(new Dictionary<int, string> { [line] = AmountText.Of(before, grams / 1000) }, found.Ibu, null)
            : Unmet(found.Ibu, found.Problem!.Message);
    }

    private static AmountsFound Unmet(double reached, string binding) =>
        new(new Dictionary<int, string>(), reached, binding);

    private static string GravityBinds(double reached, double wish) =>
        !double.IsFinite(reached) ? "so much malt leaves no room for the liquor"
        : reached > wish ? Invariant($"what is not malt brings {reached:0.000} alone")
        : Invariant($"{MostTimes:0} times the malt comes to {reached:0.000} only");

    private IEnumerable<int> LinesOf(params IngredientKind[] kinds) => Enumerable.Range(0, recipe.Ingredients.Count)
        .Where(i => kinds.Contains(recipe.Ingredients[i].Kind) && Kilograms(i) > 0);

    private double? Kilograms(int line) => recipe.Ingredients[line].Amount.Mass?.Value.Kilograms;

    private double? Gravity(int[] lines, double times)
    {
        Recipe scaled = recipe with { Ingredients = [.. recipe.Ingredients.Select((line, i) => lines.Contains(i) ? Times(line, times) : line)] };
        return new MedianRun(kit, foods, model).ValueOf(scaled, BeerReadouts.OriginalGravity);
    }

    private static IngredientLine Times(IngredientLine line, double times) => line with
    {
        Amount = new Amount(new Entered<Mass>(line.Amount.Mass!.Value.Value * times, ""), null),
    };

    private Dictionary<int, string> Texts(int[] lines, double times) =>
        lines.ToDictionary(i => i, i => AmountText.Of(recipe.Ingredients[i].Amount.Mass!.Value, Kilograms(i)!.Value * times));
}
