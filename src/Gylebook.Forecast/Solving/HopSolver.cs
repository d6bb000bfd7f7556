using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>What a search for an amount of hops came to.</summary>
/// <param name="Recipe">The recipe with the amount in it; null when there is none that does.</param>
/// <param name="Amount">The amount, rounded to what a scale shows; null when there is none.</param>
/// <param name="Ibu">The whole beer's bitterness with it, as it is rounded.</param>
/// <param name="Problem">Why there is none; null when there is one.</param>
public sealed record HopSolution(Recipe? Recipe, Entered<Mass>? Amount, double Ibu, Finding? Problem);

/// <summary>Finds the amount of one hop line: for a bitterness, after a move, after a swap.</summary>
/// <remarks>
/// On the whole run, at the medians, with the liquor planned anew each time: more hops hold more wort, and the liquor that makes
/// up for it thins the bitterness. To 0.005 IBU, and then to what a scale shows.
/// </remarks>
/// <param name="kit">The kit.</param>
/// <param name="larder">The brewer's own sheets; asked before the tables.</param>
/// <param name="model">By which bitterness.</param>
public sealed class HopSolver(Kit kit, Larder larder, BitternessModel model = BitternessModel.TimeGravity)
{
    private const double IbuClose = 0.005;

    /// <summary>Where the search begins; only its speed hangs on it.</summary>
    private const double FirstGramsPerLitre = 1;

    /// <summary>More than this, g per litre packaged, the recipe check refuses.</summary>
    private const double MostGramsPerLitre = 100;

    /// <summary>The amount of a hop line that brings the whole beer to so much bitterness.</summary>
    /// <param name="recipe">The recipe; its other hops stay.</param>
    /// <param name="line">Which ingredient line, from 0; a hop.</param>
    /// <param name="ibu">Bitterness wished, IBU.</param>
    public HopSolution AmountFor(Recipe recipe, int line, double ibu)
    {
        MustBeHop(recipe, line);
        if (!(ibu >= 0 && ibu <= Bitterness.Limits.High))
        {
            throw new ArgumentOutOfRangeException(nameof(ibu), ibu, Invariant($"Expected 0 to {Bitterness.Limits.High} IBU."));
        }

        if (IbuOf(recipe, line, 0) is not double without)
        {
            return new HopSolution(null, null, 0, NoRun(line));
        }

        if (without > ibu + IbuClose)
        {
            return new HopSolution(null, null, without, Problem("hop.tooBitter", line, $"even without this hop the beer has {Ibu(without)}", Ibu(ibu), Ibu(without)));
        }

        return Search(recipe, line, ibu, without);
    }

    private HopSolution Search(Recipe recipe, int line, double ibu, double without)
    {
        double litres = recipe.Package.Volume.Value.Litres;
        double most = MostGramsPerLitre * litres;
        double best = without;
        SecantResult found = BracketedSecant.Search(
            grams =>
            {
                double? reached = IbuOf(recipe, line, grams);
                best = reached < ibu ? Math.Max(best, reached.Value) : best;
                return reached;
            },
            ibu,
            new Bracket(0, most),
            FirstGramsPerLitre * litres,
            IbuClose);
        if (found.Solved)
        {
            return Weighed(recipe, line, found.At, found.Reached);
        }

        string limit = Invariant($"{most:0} g");
        return new HopSolution(null, null, best, Problem("hop.noAmount", line, $"no amount up to {limit} gives {Ibu(ibu)}; this hop at this time comes to {Ibu(best)}", Ibu(ibu), limit));
    }

    /// <summary>Moves a hop line to another time and finds the amount that keeps the beer's bitterness.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="line">Which ingredient line, from 0; a hop.</param>
    /// <param name="to">Where it goes.</param>
    public HopSolution Move(Recipe recipe, int line, AdditionTime to)
    {
        MustBeHop(recipe, line);
        return Keep(recipe, line, recipe.Ingredients[line] with { At = to });
    }

    /// <summary>Puts another hop, or another assay of the same, in a line's place and finds the amount that keeps the beer's bitterness.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="line">Which ingredient line, from 0; a hop.</param>
    /// <param name="cultivar">Id or name of the other hop.</param>
    /// <param name="alpha">Its alpha acids; null for what is usual for it.</param>
    public HopSolution Swap(Recipe recipe, int line, string cultivar, Entered<Fraction>? alpha)
    {
        MustBeHop(recipe, line);
        return Keep(recipe, line, recipe.Ingredients[line] with { Of = cultivar, Alpha = alpha, Age = null, Storage = null, As = null });
    }

    private HopSolution Keep(Recipe recipe, int line, IngredientLine other)
    {
        double grams = recipe.Ingredients[line].Amount.Mass?.Value.Grams ?? 0;
        if (IbuOf(recipe, line, grams) is not double ibu)
        {
            return new HopSolution(null, null, 0, NoRun(line));
        }

        // A hop that brings no bitterness, before and after, has no reason to weigh anything else.
        Recipe changed = recipe with { Ingredients = [.. recipe.Ingredients.Select((l, i) => i == line ? other : l)] };
        return IbuOf(changed, line, grams) is double same && Math.Abs(same - ibu) <= IbuClose
            ? new HopSolution(changed, recipe.Ingredients[line].Amount.Mass ?? AmountText.Of(recipe.Ingredients[line], 0), same, null)
            : AmountFor(changed, line, ibu);
    }

    /// <summary>What was found, as the scale shows it, and what it then comes to.</summary>
    private HopSolution Weighed(Recipe recipe, int line, double grams, double ibu)
    {
        Entered<Mass> amount = AmountText.Of(recipe.Ingredients[line], grams / 1000);
        return new HopSolution(With(recipe, line, amount), amount, IbuOf(recipe, line, amount.Value.Grams) ?? ibu, null);
    }

    /// <summary>Bitterness of the whole beer with so much of the line; null when it cannot be run.</summary>
    private double? IbuOf(Recipe recipe, int line, double grams) =>
        new MedianRun(kit, larder, model).ValueOf(With(recipe, line, new Entered<Mass>(Mass.FromGrams(grams), "")), BeerReadouts.Bitterness);

    private static Recipe With(Recipe recipe, int line, Entered<Mass> amount) => recipe with
    {
        Ingredients = [.. recipe.Ingredients.Select((l, i) => i == line ? l with { Amount = new Amount(amount, null) } : l)],
    };

    private static void MustBeHop(Recipe recipe, int line)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        if (line < 0 || line >= recipe.Ingredients.Count || recipe.Ingredients[line].Kind != IngredientKind.Hop)
        {
            throw new ArgumentOutOfRangeException(nameof(line), line, $"Expected the place of a hop among {recipe.Ingredients.Count} lines.");
        }
    }

    private static Finding NoRun(int line) =>
        Problem("hop.noRun", line, "the recipe cannot be run as it is: mend its other findings first", null, null);

    private static string Ibu(double ibu) => Invariant($"{ibu:0.0} IBU");

    private static Finding Problem(string code, int line, string why, string? value, string? limit) =>
        new(code, Severity.Error, Invariant($"ingredients[{line}].amount"), why, value, limit);
}
