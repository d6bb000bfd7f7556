using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Numerics;

namespace Gylebook.Forecast.Solving;

/// <summary>Weights of one sort searched for one number, each trial a whole run; or which limit binds.</summary>
/// <param name="run">How a trial is run.</param>
internal sealed class WeightSearch(MedianRun run)
{
    private const double MostTimes = 20;

    /// <summary>So close to a wished gravity is met.</summary>
    public const double GravityClose = 1e-6;

    /// <summary>So close to a wished bitterness is met, IBU.</summary>
    public const double IbuClose = 0.005;

    /// <summary>So close to the wished gas is met, volumes.</summary>
    public const double VolumesClose = 1e-4;

    /// <summary>A limit that binds.</summary>
    public static Finding Binds(string code, string where, string why, string? value, string? limit) => new(code, Severity.Error, where, why, value, limit);

    /// <summary>Malt and malt extract for a gravity, with the shares that are held.</summary>
    public Recipe WithGrist(Recipe recipe, BeerWish wish, double gravity, List<Finding> binding)
    {
        GristShares grist = new(recipe, wish.Shares);
        double points = 1000 * (gravity - 1);
        if (SharesBind(grist, wish) is { } bound)
        {
            binding.Add(bound);
            return recipe;
        }

        if (!grist.IsThere || (grist.IsAsHeld && PointsOf(recipe) is double now && Math.Abs(now - points) <= 1000 * GravityClose))
        {
            if (!grist.IsThere && wish.OriginalGravity is not null)
            {
                binding.Add(Binds("solve.noGrist", "ingredients", "there is no malt and no extract to weigh for a gravity", null, null));
            }

            return recipe;
        }

        SecantResult found = OfGrist(grist, PointsOf, points, 1000 * GravityClose);
        if (!found.Solved)
        {
            binding.Add(GravityBinds(found.Reached, points));
        }

        return found.Solved ? grist.With(found.At) : recipe;
    }

    /// <summary>How much grist brings a figure that rises with it to a wish.</summary>
    /// <param name="grist">The grist.</param>
    /// <param name="figure">The figure of a recipe; null when it cannot be run.</param>
    /// <param name="wished">What it should be.</param>
    /// <param name="close">How close is close enough.</param>
    public static SecantResult OfGrist(GristShares grist, Func<Recipe, double?> figure, double wished, double close)
    {
        Bracket range = new(Math.Max(grist.Least, 0.01 * grist.Now), MostTimes * grist.Now);
        return BracketedSecant.Search(kilograms => figure(grist.With(kilograms)), wished, range, Math.Max(grist.Now, range.Low), close);
    }

    /// <summary>Shares of a grist that weighs in all what it weighs.</summary>
    public static Recipe WithShares(Recipe recipe, BeerWish wish, List<Finding> binding)
    {
        GristShares grist = new(recipe, wish.Shares);
        if (wish.Shares.Count == 0 || !grist.IsThere)
        {
            return recipe;
        }

        if (SharesBind(grist, wish) is { } bound)
        {
            binding.Add(bound);
            return recipe;
        }

        return grist.IsAsHeld ? recipe : grist.With(Math.Max(grist.Least, grist.Now));
    }

    private static Finding? SharesBind(GristShares grist, BeerWish wish) =>
        wish.Shares.Count == 0 ? null
        : grist.Free < -1e-9 ? Binds("solve.shares", "ingredients", Invariant($"the shares come to {100 * (1 - grist.Free):0.#} %"), Invariant($"{100 * (1 - grist.Free):0.#} %"), "100 %")
        : !grist.CanGrow ? Binds("solve.shares", "ingredients", Invariant($"{100 * grist.Free:0.#} % of the grist are held by no line, and there is no other malt to take them"), Invariant($"{100 * (1 - grist.Free):0.#} %"), "100 %")
        : null;

    private static Finding GravityBinds(double reached, double wished) => Binds(
        "solve.gravity", "ingredients",
        !double.IsFinite(reached) ? "so much malt leaves no room for the liquor"
        : reached > wished ? Invariant($"what is not malt, or the shares that are held, bring {1 + (reached / 1000):0.0000} already")
        : Invariant($"{MostTimes:0} times the grist comes to {1 + (reached / 1000):0.0000} only"),
        Invariant($"{1 + (wished / 1000):0.0000}"), double.IsFinite(reached) ? Invariant($"{1 + (reached / 1000):0.0000}") : null);

    /// <summary>The hops that boil longest for a bitterness of the whole beer.</summary>
    public Recipe WithHops(Recipe recipe, BeerWish wish, double ibu, List<Finding> binding)
    {
        int[] hops = [.. BitteringHops(recipe)];
        if (IbuOf(recipe) is not double now || Math.Abs(now - ibu) <= IbuClose)
        {
            return recipe;
        }

        if (hops.Length == 0)
        {
            if (wish.Bitterness is not null)
            {
                binding.Add(Binds("solve.noHops", "ingredients", "there are no hops before the end of the stand to weigh for a bitterness", null, null));
            }

            return recipe;
        }

        SecantResult found = BracketedSecant.Search(times => IbuOf(Times(recipe, hops, times)), ibu, new Bracket(0, MostTimes), 1, IbuClose);
        if (!found.Solved)
        {
            binding.Add(Binds(
                "solve.bitterness", Invariant($"ingredients[{hops[0]}].amount"),
                found.Reached > ibu ? Invariant($"the other hops alone bring {found.Reached:0.0} IBU") : Invariant($"{MostTimes:0} times these hops come to {found.Reached:0.0} IBU only"),
                Invariant($"{ibu:0.0} IBU"), Invariant($"{found.Reached:0.0} IBU")));
        }

        return found.Solved ? Times(recipe, hops, found.At) : recipe;
    }

    /// <summary>The hops that boil longest: theirs is the bitterness, later ones are there for their smell.</summary>
    private static IEnumerable<int> BitteringHops(Recipe recipe)
    {
        (int Line, double Order)[] hops = [.. recipe.Ingredients.Index()
            .Where(entry => entry.Item is { Kind: IngredientKind.Hop, At.Point: <= AdditionPoint.Stand, Amount.Mass: not null })
            .Select(entry => (entry.Index, (100_000.0 * (int)entry.Item.At.Point) - entry.Item.At.Count))];
        double first = hops.Length > 0 ? hops.Min(hop => hop.Order) : 0;
        return hops.Where(hop => hop.Order == first).Select(hop => hop.Line);
    }

    /// <summary>Sugar to prime for so much gas.</summary>
    public Recipe WithPriming(Recipe recipe, double volumes, List<Finding> binding)
    {
        int[] priming = recipe.PrimingLines();
        if (priming.Length == 0 || VolumesOf(recipe) is not double now || Math.Abs(now - volumes) <= VolumesClose)
        {
            return recipe;
        }

        SecantResult found = BracketedSecant.Search(times => VolumesOf(Times(recipe, priming, times)), volumes, new Bracket(0, MostTimes), 1, VolumesClose);
        if (!found.Solved)
        {
            binding.Add(Binds(
                "solve.carbonation", Invariant($"ingredients[{priming[0]}].amount"),
                found.Reached > volumes ? Invariant($"without any sugar to prime the beer holds {found.Reached:0.00} volumes already") : Invariant($"{MostTimes:0} times the sugar comes to {found.Reached:0.00} volumes only"),
                Invariant($"{volumes:0.00} volumes"), Invariant($"{found.Reached:0.00} volumes")));
        }

        return found.Solved ? Times(recipe, priming, found.At) : recipe;
    }

    private static Recipe Times(Recipe recipe, int[] lines, double times) =>
        recipe.WithKilograms([.. lines.Select(line => (line, recipe.Ingredients[line].Amount.Mass!.Value.Value.Kilograms * times))]);

    private double? PointsOf(Recipe recipe) => 1000 * (run.ValueOf(recipe, BeerReadouts.OriginalGravity) - 1);

    private double? IbuOf(Recipe recipe) => run.ValueOf(recipe, BeerReadouts.Bitterness);

    private double? VolumesOf(Recipe recipe) => run.ValueOf(recipe, BeerReadouts.CarbonationVolumes);
}
