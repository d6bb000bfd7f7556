using Gylebook.Forecast.Json;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.BrewDay;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Lots;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Gyles.Plans;

/// <summary>What a gyle is brewed from: recipe, kit, water and the brewer's own sheets.</summary>
/// <param name="Recipe">The recipe.</param>
/// <param name="Kit">The kit.</param>
/// <param name="Larder">The brewer's own sheets.</param>
/// <param name="Water">The water plan; null to count liquor as pure.</param>
public sealed record GyleInputs(Recipe Recipe, Kit Kit, Larder Larder, WaterPlan? Water)
{
    /// <summary>Draws behind the bands of a plan: as many as a forecast on the terminal makes.</summary>
    public const int PlanDraws = 4000;

    /// <summary>Draws behind a live forecast: as many as the recipe's page makes.</summary>
    public const int LiveDraws = 1000;

    /// <summary>What a frozen plan was made of; null where this program can no longer read one of its files.</summary>
    public static GyleInputs? Of(GylePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(new GyleFiles(plan.Recipe, plan.Kit, plan.Water, plan.Larder)) is { } inputs ? inputs with { Larder = inputs.Larder.On(DayOf(plan.Frozen)) } : null;
    }

    /// <summary>The day on which a larder is asked for a plan that was frozen then: the same wherever the plan is read again.</summary>
    public static DateOnly DayOf(DateTimeOffset frozen) => DateOnly.FromDateTime(frozen.UtcDateTime);

    /// <summary>What those files say; null where one of them cannot be read.</summary>
    public static GyleInputs? Of(GyleFiles files)
    {
        ArgumentNullException.ThrowIfNull(files);
        Recipe? recipe = RecipeFile.Read(files.Recipe).Value;
        Kit? kit = KitFile.Read(files.Kit).Value;
        WaterPlan? water = files.Water is { } text ? WaterFile.Read(text).Value : null;
        return recipe is null || kit is null ? null : new GyleInputs(recipe, kit, new Larder(files.Larder.Select(file => LarderDraft.SheetOf(LarderDraft.Of(file))).OfType<LarderSheet>()), water);
    }

    /// <summary>Forecasts the brew and freezes all that was told.</summary>
    /// <param name="name">What the gyle is called; it is the word of the draws too.</param>
    /// <param name="version">The recipe's version in the book.</param>
    /// <param name="frozen">When.</param>
    /// <param name="files">The files as they are in the book: nothing is written anew.</param>
    /// <param name="draws">Draws behind its bands.</param>
    /// <returns>The plan; none, and why, where the recipe cannot be brewed as it is.</returns>
    public (GylePlan? Plan, IReadOnlyList<Finding> Findings) Freeze(
        string name, int version, DateTimeOffset frozen, GyleFiles files, int draws = PlanDraws)
    {
        (BrewPlan planned, BrewForecast forecast) = Drawn(name, draws);
        return (Frozen(name, version, frozen, files, planned, forecast), forecast.Findings);
    }

    /// <summary>The brew, planned, and its forecast with bands: what a plan freezes.</summary>
    /// <param name="seed">The word of its draws.</param>
    /// <param name="draws">Draws behind its bands.</param>
    public (BrewPlan Planned, BrewForecast Forecast) Drawn(string seed, int draws)
    {
        (BrewPlan planned, WaterOutcome? treated) = Forecaster.Plan(Recipe, Kit, Larder, Water);
        return (planned, Forecaster.Forecast(planned, seed, treated, ForecastRequest.Usual with { Draws = draws }));
    }

    /// <summary>A forecast that was made already, frozen as a plan; null where the recipe cannot be brewed as it is.</summary>
    /// <param name="name">What the gyle is called.</param>
    /// <param name="version">The recipe's version in the book.</param>
    /// <param name="frozen">When.</param>
    /// <param name="files">The files as they are in the book.</param>
    /// <param name="planned">The brew, planned.</param>
    /// <param name="forecast">Its forecast with draws, by that name.</param>
    public static GylePlan? Frozen(string name, int version, DateTimeOffset frozen, GyleFiles files, BrewPlan planned, BrewForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(forecast);
        return forecast.HowSure is not { } sure || !forecast.CanBeBrewed ? null : new GylePlan
        {
            Name = name, Frozen = frozen, Engine = ForecastJson.Engine, Seed = name, RecipeVersion = version,
            Recipe = files.Recipe, Kit = files.Kit, Water = files.Water, Larder = files.Larder,
            Forecast = ForecastJson.Write(forecast),
            Priors = [.. planned.Plan!.Parameters.Select((parameter, place) => Frozen(sure, place))],
            Steps = BrewSteps.Of(planned, forecast),
        };
    }

    /// <summary>The forecast of today's engine with what was read.</summary>
    /// <param name="seed">The word of its draws: the plan's.</param>
    /// <param name="readings">What was read; none for none.</param>
    /// <param name="draws">Draws behind its bands.</param>
    public BrewForecast Forecast(string seed, IReadOnlyList<TakenReading> readings, int draws = LiveDraws) => Forecaster.Forecast(
        Recipe, Kit, Larder, seed, Water,
        ForecastRequest.Usual with { Draws = draws, Readings = readings.Count > 0 ? new BrewReadings { Name = seed, Readings = readings } : null });

    private static FrozenPrior Frozen(Forecast.Report.Doubt.HowSure sure, int place)
    {
        Engine.Parameters.Parameter parameter = sure.Ensemble.Draws.Parameters[place];
        Quantiles drawn = Quantiles.Of([.. sure.Ensemble.Draws[place]]);
        return new FrozenPrior(parameter.Id, parameter.Unit, Ended(drawn.Low), Ended(parameter.Median), Ended(drawn.High));

        static double? Ended(double value) => double.IsFinite(value) ? value : null;
    }
}

/// <summary>The texts of the files a gyle is brewed from.</summary>
/// <param name="Recipe">The recipe's.</param>
/// <param name="Kit">The kit's.</param>
/// <param name="Water">The water plan's; null without one.</param>
/// <param name="Larder">The brewer's own sheets that the recipe names.</param>
public sealed record GyleFiles(string Recipe, string Kit, string? Water, IReadOnlyList<string> Larder);
