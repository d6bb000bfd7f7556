using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>From the beer wanted to the recipe: litres, gravity, bitterness, gas and shares at once, for one kit.</summary>
/// <remarks>
/// Litres come first: what goes in goes along in proportion, the sparge too, and a strike fixed by hand is planned anew. Then
/// malt is weighed for the gravity, the hops that boil longest for the bitterness, sugar to prime for the gas, each a search over whole
/// runs at the medians with the liquor planned anew, round after round until none moves another. Yeast goes along with the extract
/// in the fermenter, or is weighed for the cells that were asked for. Last, every weight is rounded to what a scale shows, and what is told is reckoned with those.
/// </remarks>
/// <param name="kit">The kit to brew on.</param>
/// <param name="larder">The brewer's own sheets; asked before the tables.</param>
/// <param name="model">By which bitterness hops are weighed.</param>
public sealed class RecipeSolver(Kit kit, Larder larder, BitternessModel model = BitternessModel.TimeGravity)
{
    private const int MostRounds = 6;

    private readonly WeightSearch _search = new(new MedianRun(kit, larder, model));

    /// <summary>Weighs a recipe anew.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="wish">The beer wanted.</param>
    /// <param name="weighedFor">The kit on which it makes the beer that is to stay; null for the same.</param>
    public SolvedRecipe Solve(Recipe recipe, BeerWish wish, Kit? weighedFor = null)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentNullException.ThrowIfNull(wish);
        return wish.Confidence is double confidence ? SolveSurely(recipe, wish, weighedFor, confidence) : SolveLikely(recipe, wish, weighedFor);
    }

    /// <summary>
    /// Planned for a larger package: it is the package of the file that grows, since what is there more than was wanted wants a vessel, too. First
    /// the beer is solved, then how much of it fills the package so often, then the beer anew for that.
    /// </summary>
    private SolvedRecipe SolveSurely(Recipe recipe, BeerWish wish, Kit? weighedFor, double confidence)
    {
        double litres = (wish.Package ?? recipe.Package.Volume).Value.Litres;
        SolvedRecipe likely = SolveLikely(recipe, wish with { Confidence = null }, weighedFor);
        if (!likely.IsMet)
        {
            return likely;
        }

        if (ConfidentPackage.For(likely.Recipe, kit, larder, litres, confidence) is not { } package)
        {
            return Unmet(recipe, [], WeightSearch.Binds(
                "solve.confidence", "package.volume", Invariant($"no plan up to three times {litres:0.#} L fills it in {100 * confidence:0.#} of a hundred brews: more is lost, or boiled off, than that"),
                Invariant($"{100 * confidence:0.#} %"), null));
        }

        Entered<VolumeAt20C> planned = AmountText.Of(wish.Package ?? recipe.Package.Volume, package.PlannedLitres);
        return SolveLikely(recipe, wish with { Package = planned, Confidence = null }, weighedFor) with { Confident = package, Wanted = litres };
    }

    private SolvedRecipe SolveLikely(Recipe recipe, BeerWish wish, Kit? weighedFor)
    {
        if (BeerOf(recipe, weighedFor ?? kit) is not { } before)
        {
            return Unmet(recipe, [], WeightSearch.Binds("solve.noRun", "", "the recipe cannot be run as it is: mend its other findings first", null, null));
        }

        Recipe grown = Grown(recipe, wish);
        if (WhyNotOn(kit, grown) is { Count: > 0 } why)
        {
            return Unmet(recipe, [], [.. why]);
        }

        Target wanted = Target.Of(wish, before);
        List<Finding> binding = [];
        Recipe weighed = Weighed(grown, wish, wanted, binding);
        weighed = wish.Pitch is double pitch ? Pitched(weighed, pitch, binding) : wish.KeepsRest ? WithYeast(recipe, weighed, before) : weighed;
        return binding.Count > 0 ? Unmet(recipe, [], [.. binding]) : Told(recipe, weighed, wish, wanted);
    }

    /// <summary>What stands against brewing it on that kit at all: no way to mash as it says, no package of that kind.</summary>
    private IReadOnlyList<Finding> WhyNotOn(Kit on, Recipe recipe)
    {
        BrewPlan plan = BrewPlanner.Plan(recipe, on, larder);
        return plan.Plan is not null ? [] : [.. plan.Findings.Where(finding => finding.Severity == Severity.Error)];
    }

    /// <summary>As much of everything as there is to be beer, before anything is solved.</summary>
    private static Recipe Grown(Recipe recipe, BeerWish wish)
    {
        Recipe grown = recipe.Grown(wish.Package ?? recipe.Package.Volume);
        return grown with { Package = grown.Package with { Carbonation = wish.Carbonation ?? grown.Package.Carbonation } };
    }

    private Recipe Weighed(Recipe recipe, BeerWish wish, Target wanted, List<Finding> binding)
    {
        Recipe weighed = recipe;
        for (int round = 0; round < MostRounds && binding.Count == 0; round++)
        {
            Recipe before = weighed;
            weighed = wanted.Gravity is double gravity ? _search.WithGrist(weighed, wish, gravity, binding) : WeightSearch.WithShares(weighed, wish, binding);
            weighed = wanted.Ibu is double ibu ? _search.WithHops(weighed, wish, ibu, binding) : weighed;
            weighed = wanted.Volumes is double volumes ? _search.WithPriming(weighed, volumes, binding) : weighed;
            if (ReferenceEquals(before, weighed) || (BeerOf(weighed, kit) is { } beer && wanted.IsMetBy(beer)))
            {
                break;
            }
        }

        return weighed;
    }

    /// <summary>Yeast for the extract there is in the fermenter now, where it was weighed for another.</summary>
    private Recipe WithYeast(Recipe was, Recipe weighed, Beer before)
    {
        if (BeerOf(weighed, kit) is not { } now || before.Extract <= 0)
        {
            return weighed;
        }

        double times = now.Extract / before.Extract;
        return weighed with
        {
            Ingredients = [.. weighed.Ingredients.Index().Select(entry => entry.Item.Kind == IngredientKind.Yeast ? entry.Item with { Amount = was.Ingredients[entry.Index].Amount.Times(times) } : entry.Item)],
        };
    }

    /// <summary>Yeast for so many living cells for each that the wort wants: cells grow with the amount.</summary>
    private Recipe Pitched(Recipe weighed, double wanted, List<Finding> binding)
    {
        int[] yeast = weighed.YeastLines();
        double now = BeerOf(weighed, kit)?.Cells ?? double.NaN;
        if (yeast.Length > 0 && now > 0)
        {
            return weighed.Times(yeast, wanted / now, static (_, amount) => amount);
        }

        binding.Add(WeightSearch.Binds("solve.pitch", "ingredients", yeast.Length == 0 ? "there is no yeast to weigh" : "nobody knows how many cells this yeast has: say its form, dry or slurry, or its cells", null, null));
        return weighed;
    }

    private SolvedRecipe Told(Recipe was, Recipe weighed, BeerWish wish, Target wanted)
    {
        List<(string, string?)> fields = [];
        if (wish.Package is { } package)
        {
            fields.Add(("package.volume", package.Text));
        }

        if (wish.Carbonation is { } carbonation)
        {
            fields.Add(("package.carbonation", carbonation.Text));
        }

        if (weighed.Mash?.Sparge.Volume is { } sparge && sparge != was.Mash?.Sparge.Volume)
        {
            fields.Add(("mash.sparge.volume", sparge.Text));
        }

        if (was.Liquor is not null && weighed.Liquor is null)
        {
            fields.Add(("liquor", null));
        }

        Recipe rounded = Rounded(was, weighed, fields);
        return BeerOf(rounded, kit) is not { } beer
            ? Unmet(was, [], WeightSearch.Binds("solve.noRun", "", "on this kit the recipe cannot be run", null, null))
            : new SolvedRecipe(rounded, fields, ReachedOf(wish, wanted, beer, rounded), []);
    }

    private static IReadOnlyList<WishReached> ReachedOf(BeerWish wish, Target wanted, Beer beer, Recipe recipe) =>
    [
        new("packagedLitres", recipe.Package.Volume.Value.Litres, beer.Litres, wish.Package is not null),
        .. Held("originalGravity", wanted.Gravity, beer.Gravity, wish.OriginalGravity is not null),
        .. Held("bitterness", wanted.Ibu, beer.Ibu, wish.Bitterness is not null),
        .. Held("carbonationVolumes", wanted.Volumes, beer.Volumes, wish.Carbonation is not null),
        .. Held("cells", wish.Pitch, beer.Cells, true),
    ];

    private static IEnumerable<WishReached> Held(string name, double? wanted, double reached, bool asked) =>
        wanted is double wished ? [new(name, wished, reached, asked)] : [];

    /// <summary>As a scale shows it; what did not move keeps the text it has.</summary>
    private static Recipe Rounded(Recipe was, Recipe weighed, List<(string, string?)> fields)
    {
        List<IngredientLine> lines = [];
        foreach ((int number, IngredientLine line) in weighed.Ingredients.Index())
        {
            IngredientLine before = was.Ingredients[number];
            IngredientLine told = line.Amount == before.Amount ? before : before with { Amount = AmountText.Of(before, line.Amount) };
            if (told.Amount.Text != before.Amount.Text)
            {
                fields.Add((Invariant($"ingredients[{number}].amount"), told.Amount.Text));
            }

            lines.Add(told.Amount.Text == before.Amount.Text ? before : told);
        }

        return weighed with { Ingredients = lines };
    }

    private Beer? BeerOf(Recipe recipe, Kit on)
    {
        if (new MedianRun(on, larder, model).Of(recipe) is not { } run)
        {
            return null;
        }

        double litres = run[BeerReadouts.CastLitres], plato = SucroseSolution.PlatoAt(run[BeerReadouts.CastGravity]);
        Beer beer = new(run[BeerReadouts.OriginalGravity], run[BeerReadouts.Bitterness], run[BeerReadouts.CarbonationVolumes], litres * plato)
        {
            Litres = run[BeerReadouts.PackagedLitres],
            Cells = PitchedCells.ShareOf(run),
        };
        return double.IsFinite(beer.Gravity) && double.IsFinite(beer.Ibu) ? beer : null;
    }

    private static SolvedRecipe Unmet(Recipe recipe, IReadOnlyList<WishReached> reached, params Finding[] binding) => new(recipe, [], reached, binding);

    /// <summary>What is solved for; the extract in the fermenter is what yeast is pitched for, in L·°P.</summary>
    private sealed record Beer(double Gravity, double Ibu, double Volumes, double Extract)
    {
        public double Litres { get; init; }

        public double Cells { get; init; }
    }

    /// <summary>What is solved to; null where nothing is wanted, and whatever comes is right.</summary>
    private readonly record struct Target(double? Gravity, double? Ibu, double? Volumes)
    {
        public static Target Of(BeerWish wish, Beer before) => new(
            wish.OriginalGravity?.Ratio ?? (wish.KeepsRest ? before.Gravity : null),
            wish.Bitterness?.Ibu ?? (wish.KeepsRest ? before.Ibu : null),
            wish.Carbonation is { } asked ? asked.Value.GramsPerLitre / Carbonation.GramsPerLitreInOneVolume : wish.KeepsRest ? before.Volumes : null);

        public bool IsMetBy(Beer beer) =>
            Close(beer.Gravity, Gravity, WeightSearch.GravityClose) && Close(beer.Ibu, Ibu, WeightSearch.IbuClose) && Close(beer.Volumes, Volumes, WeightSearch.VolumesClose);

        private static bool Close(double reached, double? wanted, double close) => wanted is not double wished || Math.Abs(reached - wished) <= 2 * close;
    }
}
