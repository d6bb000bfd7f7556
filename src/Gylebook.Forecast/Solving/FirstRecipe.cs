using Gylebook.Forecast.Ingredients;
using System.Collections.ObjectModel;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Data;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>From a wish to a first recipe for one kit: malts, hops, yeast and a food weighed so that the engine's own forecast comes to it.</summary>
/// <remarks>
/// What goes in is our choice: <see cref="FirstSheet"/>. Strength, colour and bitterness are searched over whole runs at the medians, round after round
/// until none moves another; then <see cref="RecipeSolver"/> weighs all of it as a scale does. Where grain and liquor together would stand too high, some of the
/// liquor becomes a rinse, and all is weighed anew. What then still does not fit the kit binds.
/// </remarks>
/// <param name="kit">The kit to brew on.</param>
/// <param name="larder">The brewer's own sheets; asked before the tables.</param>
/// <param name="model">By which bitterness hops are weighed.</param>
public sealed class FirstRecipe(Kit kit, Larder larder, BitternessModel model = BitternessModel.TimeGravity)
{
    private const int MostRounds = 6, MostRinses = 4;
    private const double AlcoholClose = 0.001, SrmClose = 0.002;

    /// <summary>So near to the colour wished no second malt is weighed, SRM: less than an eye tells.</summary>
    private const double SrmAlike = 0.1;

    /// <summary>Of a coloured malt a search begins with so little that it colours nothing.</summary>
    private const double LeastShare = 1e-6;

    /// <summary>A rinse is measured in half litres.</summary>
    private const double RinseStep = 0.5;

    private readonly MedianRun _run = new(kit, larder, model);
    private readonly WeightSearch _search = new(new MedianRun(kit, larder, model));

    /// <summary>The draft.</summary>
    /// <param name="wish">The beer wished.</param>
    public FirstDraft Of(FirstWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        List<Finding> binding = [.. wish.Findings()];
        FoodMakeup? food = binding.Count == 0 ? FoodOf(wish, binding) : null;
        if (binding.Count > 0)
        {
            return new FirstDraft(null, [], binding);
        }

        double rinse = 0;
        for (int tries = 0; ; tries++)
        {
            FirstSheet sheet = new(wish, food, kit, SpargeOf(wish, rinse));
            if (MaltsFor(sheet, binding) is not { } malts || Weighed(sheet, malts, binding) is not { } weighed || Written(sheet, weighed, binding) is not { } draft)
            {
                return new FirstDraft(null, [], binding);
            }

            BrewForecast told = Forecaster.Forecast(draft.Recipe!, kit, larder, "draft");
            double over = OverTheBrim(told);
            if (!(over > 0) || tries == MostRinses)
            {
                Finding[] errors = [.. told.Findings.Where(finding => finding.Severity == Severity.Error)];
                return errors.Length == 0 ? draft : new FirstDraft(null, [], errors);
            }

            rinse += Math.Ceiling(over / RinseStep) * RinseStep;
        }
    }

    private FoodMakeup? FoodOf(FirstWish wish, List<Finding> binding)
    {
        if (wish.Food is not { } asked)
        {
            return null;
        }

        Found<Food> found = FoodTable.Find(asked);
        FoodMakeup? food = larder.Food(asked) ?? (found.Match is { } row ? FoodMakeups.From(row).Makeup : null);
        if (food is null)
        {
            string nearest = string.Join(", ", found.Nearest);
            binding.Add(new("draft.food", Severity.Error, "food", $"{asked}: neither a food of your own that can be reckoned with nor one of the tables. Nearest: {nearest}", asked, nearest));
        }

        return food;
    }

    private SpargePlan SpargeOf(FirstWish wish, double litres) => litres == 0
        ? SpargePlan.None
        : new SpargePlan(kit.Tun is null ? SpargeMethod.Pour : SpargeMethod.Batch, AmountText.Of(wish.Litres, litres), null);

    /// <summary>By how much grain and liquor stand higher than the brewer allows, L; below 0 where there is room.</summary>
    private double OverTheBrim(BrewForecast told) =>
        (told.Stages.FirstOrDefault(stage => stage.Stage == Stage.Mash)?.VesselLitres ?? double.NaN) - (kit.Tun?.Brim ?? kit.Kettle.Usable).Value.Litres;

    /// <summary>The base malt pale enough, and the coloured malt, if any, that brings the colour; null, and what binds, where none does.</summary>
    private Grist? MaltsFor(FirstSheet sheet, List<Finding> binding)
    {
        double srm = sheet.Wish.Colour.Value.Srm, palest = double.NaN;
        foreach (string pale in FirstSheet.Bases)
        {
            Grist alone = new(sheet.With(pale, null), 0, 0);
            binding.AddRange(WhyNot(alone.Recipe));
            if (binding.Count > 0 || Strong(sheet, alone, binding) is not { } strong)
            {
                return null;
            }

            palest = SrmOf(strong) ?? double.NaN;
            if (Math.Abs(palest - srm) <= SrmAlike)
            {
                return alone with { Recipe = strong };
            }

            if (palest < srm)
            {
                return Darkened(sheet, pale, binding);
            }
        }

        string reached = Told(sheet.Wish.Colour, palest), wished = sheet.Wish.Colour.Text;
        binding.Add(Binds("colour", $"{wished}: with {FirstSheet.Name(FirstSheet.Bases[^1])} alone, and what else goes in, the beer has {reached} at that strength", wished, $"{reached} or darker"));
        return null;
    }

    private Grist? Darkened(FirstSheet sheet, string pale, List<Finding> binding)
    {
        double darkest = double.NaN;
        foreach ((string malt, double most) in FirstSheet.Coloured)
        {
            Grist full = new(sheet.With(pale, malt), most, most);
            if (Strong(sheet, full, binding) is not { } strong)
            {
                return null;
            }

            darkest = SrmOf(strong) ?? double.NaN;
            if (darkest >= sheet.Wish.Colour.Value.Srm)
            {
                return full with { Recipe = strong };
            }
        }

        (string last, double share) = FirstSheet.Coloured[^1];
        string reached = Told(sheet.Wish.Colour, darkest), wished = sheet.Wish.Colour.Text;
        binding.Add(Binds("colour", Invariant($"{wished}: {FirstSheet.Name(last)} is used up to {100 * share:0} % of the grist, and that brings {reached}"), wished, $"{reached} or paler"));
        return null;
    }

    /// <summary>Strength, colour and bitterness together; null, and what binds, where one cannot be had.</summary>
    private Grist? Weighed(FirstSheet sheet, Grist malts, List<Finding> binding)
    {
        Grist weighed = malts;
        Bitterness bitterness = sheet.Wish.Bitterness.Value;
        for (int round = 0; round < MostRounds; round++)
        {
            weighed = weighed.Share > 0 ? InColour(sheet, weighed) : weighed;
            if (Strong(sheet, weighed, binding) is not { } strong)
            {
                return null;
            }

            weighed = weighed with { Recipe = WithYeast(_search.WithHops(strong, new BeerWish { Bitterness = bitterness }, bitterness.Ibu, binding)) };
            if (binding.Count > 0)
            {
                return null;
            }

            if (IsMet(sheet, weighed))
            {
                return weighed;
            }
        }

        string strength = Invariant($"{_run.ValueOf(weighed.Recipe, BeerReadouts.AlcoholByVolume):0.00} %");
        string colour = Told(sheet.Wish.Colour, SrmOf(weighed.Recipe) ?? double.NaN), ibu = Invariant($"{_run.ValueOf(weighed.Recipe, BeerReadouts.Bitterness):0.0} IBU");
        binding.Add(WeightSearch.Binds("draft.unsettled", "", $"strength, colour and bitterness do not settle together on this kit; the nearest found is {strength}, {colour} and {ibu}", null, null));
        return null;
    }

    /// <summary>The share of the coloured malt that brings the colour, at the strength wished.</summary>
    private Grist InColour(FirstSheet sheet, Grist grist)
    {
        SecantResult found = BracketedSecant.Search(
            share => Strong(sheet, grist with { Share = share }, []) is { } strong ? SrmOf(strong) : null,
            sheet.Wish.Colour.Value.Srm, new Bracket(LeastShare, grist.Most), grist.Share, SrmClose);
        return grist with { Share = found.At };
    }

    private bool IsMet(FirstSheet sheet, Grist grist) =>
        Math.Abs((StrengthOf(sheet, grist.Recipe) ?? double.NaN) - sheet.Strength) <= 2 * AlcoholClose
        && (grist.Share == 0 || Math.Abs((SrmOf(grist.Recipe) ?? double.NaN) - sheet.Wish.Colour.Value.Srm) <= 2 * SrmClose)
        && Math.Abs((_run.ValueOf(grist.Recipe, BeerReadouts.Bitterness) ?? double.NaN) - sheet.Wish.Bitterness.Value.Ibu) <= 2 * WeightSearch.IbuClose;

    /// <summary>The grist weighed for the strength; null, and what binds, where none makes it.</summary>
    private Recipe? Strong(FirstSheet sheet, Grist grist, List<Finding> binding)
    {
        GristShares shares = new(grist.Recipe, grist.Shares);
        SecantResult found = WeightSearch.OfGrist(shares, recipe => StrengthOf(sheet, recipe), sheet.Strength, AlcoholClose);
        if (found.Solved)
        {
            return shares.With(found.At);
        }

        (string field, string text) = sheet.Wish.Alcohol is { } alcohol ? ("alcohol", alcohol.Text) : ("gravity", sheet.Wish.OriginalGravity!.Value.Text);
        string reached = sheet.Wish.Alcohol is null ? Invariant($"{1 + (found.Reached * FirstSheet.PointsOfAlcohol / 1000):0.000}") : Invariant($"{found.Reached:0.0} %");
        binding.Add(Binds(
            field,
            !double.IsFinite(found.Reached) ? $"{text}: so much malt leaves no room for the liquor on this kit"
            : found.Reached > sheet.Strength ? $"{text}: what is not malt brings {reached} already"
            : $"{text}: no grist makes more than {reached} on this kit",
            text, double.IsFinite(found.Reached) ? reached : null));
        return null;
    }

    /// <summary>Strength as <see cref="FirstSheet.Strength"/> counts it, so that a search is as fine for the one wish as for the other.</summary>
    private double? StrengthOf(FirstSheet sheet, Recipe recipe) => sheet.Wish.Alcohol is null
        ? (_run.ValueOf(recipe, BeerReadouts.OriginalGravity) - 1) * 1000 / FirstSheet.PointsOfAlcohol
        : _run.ValueOf(recipe, BeerReadouts.AlcoholByVolume);

    private double? SrmOf(Recipe recipe) => _run.ValueOf(recipe, BeerReadouts.Colour);

    private IEnumerable<Finding> WhyNot(Recipe recipe)
    {
        BrewPlan plan = BrewPlanner.Plan(recipe, kit, larder);
        return plan.Plan is not null ? [] : plan.Findings.Where(finding => finding.Severity == Severity.Error);
    }

    /// <summary>Dry yeast for the cells that the wort wants.</summary>
    private Recipe WithYeast(Recipe recipe)
    {
        if (_run.Of(recipe) is not { } run || !(run[PackageReadouts.CellsNeeded] > 0))
        {
            return recipe;
        }

        const double Billion = 1e9;
        double grams = PitchRate.DryYeastGrams(run[PackageReadouts.CellsNeeded], run.Draw[(int)Known.PitchCellsPerGram] / Billion);
        return recipe.WithKilograms([.. recipe.Ingredients.Index().Where(entry => entry.Item.Kind == IngredientKind.Yeast).Select(entry => (entry.Index, grams / 1000))]);
    }

    /// <summary>Weighed as a scale does, and what that comes to; null, and what binds, when that cannot be.</summary>
    private FirstDraft? Written(FirstSheet sheet, Grist weighed, List<Finding> binding)
    {
        Recipe onScale = weighed.Recipe with
        {
            Ingredients = [.. weighed.Recipe.Ingredients.Select(line => line.Amount.Text.Length > 0 ? line : line with { Amount = AmountText.Of(line, line.Amount) })],
        };
        SolvedRecipe solved = new RecipeSolver(kit, larder, model).Solve(onScale, new BeerWish
        {
            KeepsRest = false,
            OriginalGravity = _run.ValueOf(weighed.Recipe, BeerReadouts.OriginalGravity) is double gravity ? SpecificGravity.FromRatio(gravity) : null,
            Bitterness = sheet.Wish.Bitterness.Value,
            Shares = weighed.Shares,
        });
        binding.AddRange(solved.Findings);
        return solved.IsMet && _run.Of(solved.Recipe) is { } run ? new FirstDraft(solved.Recipe, Reached(sheet.Wish, run), []) : null;
    }

    private static IReadOnlyList<WishReached> Reached(FirstWish wish, RunOutcome run) =>
    [
        new("packagedLitres", wish.Litres.Value.Litres, run[BeerReadouts.PackagedLitres], true),
        wish.Alcohol is { } alcohol
            ? new("alcoholByVolume", alcohol.Value.Percent, run[BeerReadouts.AlcoholByVolume], true)
            : new("originalGravity", wish.OriginalGravity!.Value.Value.Ratio, run[BeerReadouts.OriginalGravity], true),
        new("colourSrm", wish.Colour.Value.Srm, run[BeerReadouts.Colour], true),
        new("bitterness", wish.Bitterness.Value.Ibu, run[BeerReadouts.Bitterness], true),
    ];

    /// <summary>A colour in the unit of the wish.</summary>
    private static string Told(Entered<BeerColour> wish, double srm) => wish.Text.Contains("SRM", StringComparison.OrdinalIgnoreCase) || !(srm >= 0)
        ? Invariant($"{srm:0.0} SRM")
        : Invariant($"{BeerColour.FromSrm(srm).Ebc:0.0} EBC");

    private static Finding Binds(string field, string why, string? value, string? limit) => WeightSearch.Binds($"draft.{field}", field, why, value, limit);

    /// <summary>A recipe whose second line is a malt that holds a share of the grist, up to a most; 0 where it has none.</summary>
    private sealed record Grist(Recipe Recipe, double Share, double Most)
    {
        public IReadOnlyDictionary<int, double> Shares =>
            Share > 0 ? new Dictionary<int, double> { [FirstSheet.ColouredLine] = Share } : ReadOnlyDictionary<int, double>.Empty;
    }
}
