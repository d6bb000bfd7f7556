using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Solving;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Site.Recasting;

/// <summary>A published recipe weighed anew for a follower: from their package back to their water.</summary>
public sealed record Recast
{
    /// <summary>The recipe, weighed anew; as published where that cannot be.</summary>
    public required Recipe Recipe { get; init; }

    /// <summary>Its file.</summary>
    public required string RecipeText { get; init; }

    /// <summary>The follower's kit.</summary>
    public required Kit Kit { get; init; }

    /// <summary>Its file.</summary>
    public string KitText => KitFile.Write(Kit);

    /// <summary>What was asked for and what was held, and what it comes to.</summary>
    public IReadOnlyList<WishReached> Reached { get; init; } = [];

    /// <summary>The plan; null where there is none.</summary>
    public BrewPlan? Planned { get; init; }

    /// <summary>Its likely run; null where there is none.</summary>
    public BrewForecast? Forecast { get; init; }

    /// <summary>What cannot be read, what stands against it, what does not fit.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Litres that would fit, where what was asked for does not; null where it does, or nothing would.</summary>
    public double? MostLitres { get; init; }

    /// <summary>Whether it can be brewed as weighed.</summary>
    public bool CanBeBrewed => Forecast is not null && Findings.All(finding => finding.Severity != Severity.Error);

    /// <summary>Weighs a publication anew.</summary>
    /// <param name="files">Its files.</param>
    /// <param name="words">What the follower typed.</param>
    /// <returns>Null where this program cannot read those files.</returns>
    public static Recast? Of(GyleFiles files, ReaderWords words)
    {
        ArgumentNullException.ThrowIfNull(words);
        if (GyleInputs.Of(files) is not { } published)
        {
            return null;
        }

        ReaderBrew reader = ReaderBrew.Of(files, published, words);
        return reader.Kit is { } kit && reader.Recipe is { } recipe && reader.Beer is { } beer && reader.Findings.Count == 0
            ? Solved(published, reader, kit, recipe, beer)
            : new Recast { Recipe = published.Recipe, RecipeText = files.Recipe, Kit = published.Kit, Findings = reader.Findings };
    }

    private static Recast Solved(GyleInputs published, ReaderBrew reader, Kit kit, Recipe recipe, Entered<VolumeAt20C> beer)
    {
        if (BrewPlanner.Plan(recipe, kit, published.Larder) is { Plan: null } unplanned)
        {
            return new Recast { Recipe = recipe, RecipeText = reader.Draft.Text, Kit = kit, Findings = [.. unplanned.Findings.Where(finding => finding.Severity == Severity.Error)] };
        }

        BeerWish wish = new() { Package = beer };
        RecipeSolver solver = new(kit, published.Larder);
        SolvedRecipe solved = reader.HasOthers ? solver.Solve(recipe, AsPublished(wish, published)) : solver.Solve(recipe, wish, published.Kit);
        RecipeDraft file = reader.Draft.Changed("weighed anew", solved.Fields)?.After ?? reader.Draft;
        (BrewPlan planned, Gylebook.Forecast.Liquors.WaterOutcome? treated) = Forecaster.Plan(solved.Recipe, kit, published.Larder, published.Water);
        BrewForecast? forecast = solved.IsMet ? Forecaster.Forecast(planned, solved.Recipe.Name, treated) : null;
        Recast recast = new()
        {
            Recipe = solved.Recipe, RecipeText = file.Text, Kit = kit, Reached = solved.Reached, Planned = planned, Forecast = forecast,
            Findings = solved.IsMet ? [.. forecast!.Findings.Where(finding => finding.Severity != Severity.Note)] : solved.Findings,
        };
        return recast.CanBeBrewed ? recast : recast with { MostLitres = MostOf(published with { Recipe = recipe, Kit = kit }, beer.Value.Litres) };
    }

    /// <summary>Other hops and malts, or another way to mash, are weighed for the beer that was published, not for the one they would make by the old weights.</summary>
    private static BeerWish AsPublished(BeerWish wish, GyleInputs published)
    {
        if (BrewPlanner.Plan(published.Recipe, published.Kit, published.Larder).Plan is not { } plan)
        {
            return wish;
        }

        RunOutcome run = RunOutcome.Likely(plan);
        return wish with
        {
            OriginalGravity = SpecificGravity.FromRatio(run[BeerReadouts.OriginalGravity]),
            Bitterness = Bitterness.FromIbu(run[BeerReadouts.Bitterness]),
        };
    }

    /// <summary>The most beer, to half a litre, for which nothing stands against it: everything in proportion, not weighed to the gram.</summary>
    private static double? MostOf(GyleInputs inputs, double litres)
    {
        const double Step = 0.5;
        int low = 0, high = (int)(litres / Step);
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            Entered<VolumeAt20C> beer = new(VolumeAt20C.FromLitres(middle * Step), Invariant($"{middle * Step} L"));
            BrewForecast forecast = Forecaster.Forecast(inputs.Recipe.Grown(beer), inputs.Kit, inputs.Larder, "most", inputs.Water);
            (low, high) = forecast.CanBeBrewed ? (middle, high) : (low, middle);
        }

        return low > 0 ? low * Step : null;
    }
}
