using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Records;
using Gylebook.Forecast.Report.Acidity;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Bitterness;
using Gylebook.Forecast.Report.Cooling;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Forecast.Report;

/// <summary>Forecasts a recipe on a kit: plans it, runs it once at the medians, and puts the report together. The one place that knows every room of it.</summary>
public static class Forecaster
{
    /// <summary>With so many draws readings are set against a brew when nobody said how many.</summary>
    private const int DrawsForReadings = 1000;

    /// <summary>The forecast; with findings alone when the recipe cannot be brewed.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="kit">The kit.</param>
    /// <param name="larder">The brewer's own sheets; asked before the tables.</param>
    /// <param name="seed">Seed of the draws, a readable word.</param>
    /// <param name="water">The water it is brewed with; null to count liquor as pure.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public static BrewForecast Forecast(
        Recipe recipe, Kit kit, Larder larder, string seed, WaterPlan? water = null, ForecastRequest? asked = null)
    {
        (BrewPlan brew, WaterOutcome? treated) = Plan(recipe, kit, larder, water);
        return Forecast(brew, seed, treated, asked);
    }

    /// <summary>A recipe planned on its kit, with its liquor treated.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="kit">The kit.</param>
    /// <param name="larder">The brewer's own sheets; asked before the tables.</param>
    /// <param name="water">The water it is brewed with; null to count liquor as pure.</param>
    /// <returns>The plan, and what came of the water plan; null without one, or when the recipe cannot be planned.</returns>
    public static (BrewPlan Brew, WaterOutcome? Treated) Plan(
        Recipe recipe, Kit kit, Larder larder, WaterPlan? water) =>
        Reckoning.Or(
            () => Treat(recipe, kit, larder, water), "recipe",
            (finding, failure) => (BrewPlan.NotReckoned(recipe, kit, finding, failure), null));

    private static (BrewPlan Brew, WaterOutcome? Treated) Treat(
        Recipe recipe, Kit kit, Larder larder, WaterPlan? water)
    {
        BrewPlan planned = BrewPlanner.Plan(recipe, kit, larder);
        if (water is null || LiquorNeed.Of(planned) is not { } need)
        {
            return (planned, null);
        }

        WaterOutcome treated = WaterTreatment.Of(water, need);
        Recipe salted = recipe with { Ingredients = [.. recipe.Ingredients, .. WaterTreatment.RecipeLinesOf(treated)] };
        return (BrewPlanner.Plan(salted, kit, larder, WaterTreatment.LiquorsOf(treated)) with { OwnLines = recipe.Ingredients.Count }, treated);
    }

    /// <summary>The forecast of a brew that is planned already.</summary>
    /// <param name="brew">The recipe on its kit.</param>
    /// <param name="seed">Seed of the draws, a readable word.</param>
    /// <param name="treated">The liquor it was laid out with; null when liquor counts as pure.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public static BrewForecast Forecast(BrewPlan brew, string seed, WaterOutcome? treated = null, ForecastRequest? asked = null) =>
        Reckoning.Or(
            () => RunAndReport(brew, seed, treated, asked ?? ForecastRequest.Usual), "recipe",
            (finding, failure) => Unrun(brew with { Findings = [.. brew.Findings, finding], Failure = failure }, seed));

    /// <summary>A brew that is planned and weighed as it is, run with some of its figures elsewhere than likely: what if.</summary>
    /// <param name="planned">The brew, planned.</param>
    /// <param name="likely">Its forecast with draws, which knows the figures.</param>
    /// <param name="ways">By place of the figure: −1 its 5 %, 0 as likely, 1 its 95 %. Without any, the likely numbers come to the last bit.</param>
    public static BrewForecast Suppose(BrewPlan planned, BrewForecast likely, IReadOnlyDictionary<int, double> ways)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(likely);
        if (planned.Plan is not { } plan || likely.HowSure is not { } sure)
        {
            throw new ArgumentException("Only what was drawn can be moved.", nameof(likely));
        }

        return Forecast(
            planned with { Plan = plan with { Medians = sure.DrawAt(ways) } }, likely.Seed, likely.Water,
            ForecastRequest.Usual with { Bitterness = plan.Bitterness });
    }

    private static BrewForecast RunAndReport(BrewPlan planned, string seed, WaterOutcome? treated, ForecastRequest request)
    {
        BrewPlan brew = planned with { Plan = planned.Plan is { } plan ? plan with { Bitterness = request.Bitterness } : null };
        if (brew.Plan is null)
        {
            return Unrun(brew, seed);
        }

        RunRecord record = RunRecord.Of(brew.Plan, brew.Plan.Medians);
        if (record.Stages.FirstOrDefault(s => !s.Wort.IsSound) is { } broken)
        {
            return Unrun(brew with { Findings = [.. brew.Findings, NotSound(broken)] }, seed);
        }

        return request.Readings is null
            ? Compose(brew, record, record.Outcome, seed, treated, request, null)
            : After(brew, record, seed, treated, request);
    }

    private static IEnumerable<Finding> Fit(BrewPlan brew, RunOutcome run) =>
        VesselCheck.Findings(brew, run, StageRows.Of(brew, run), PackageOutlook.Of(brew, run));

    private static BrewForecast After(BrewPlan planned, RunRecord plan, string seed, WaterOutcome? treated, ForecastRequest request)
    {
        AfterReadings after = AfterReadings.Of(planned, plan.Outcome, request.Readings!, seed, request.Draws > 0 ? request.Draws : DrawsForReadings);
        RunRecord record = RunRecord.Of(after.Brew.Plan!, after.Brew.Plan!.Medians);
        return Compose(after.Brew, record, record.Outcome, seed, treated, request, after with { Mends = MendSearch.Of(planned, plan.Outcome, after, treated, Fit, seed) });
    }

    private static BrewForecast Compose(
        BrewPlan brew, RunRecord record, RunOutcome figures, string seed, WaterOutcome? water, ForecastRequest asked, AfterReadings? after)
    {
        PitchAdvice? pitch = PitchAdvice.Of(brew, figures, asked.MostStarter);
        TiringYeast? tiring = TiringYeast.Of(brew, figures);
        PhReport ph = PhReport.Of(brew, figures);
        IReadOnlyList<StageRow> stages = StageRows.Of(brew, figures);
        Chilling? chilling = Chilling.Of(brew, figures);
        PackageOutlook package = PackageOutlook.Of(brew, figures);
        MashSchedule? schedule = MashHeat.ScheduleOf(brew, figures);
        BeerCost cost = BeerCost.Of(brew, package.PrimingSugarGrams);
        HowSure? sure = after is not null ? new HowSure(figures, after.Ensemble, after.ReadUpTo) : asked.Draws > 0 ? HowSure.Of(brew, figures, seed, asked.Draws) : null;
        return new BrewForecast
        {
            Recipe = brew.Recipe.Name,
            Kit = brew.Kit.Name,
            Seed = seed,
            Headline = Headlines.Of(brew, figures, tiring, water, ph, cost, sure),
            HowSure = sure,
            AfterReadings = after,
            Stages = stages,
            Losses = StageRows.LossesOf(brew, record),
            Additions = AdditionRows.Of(brew, record),
            Pitch = pitch,
            BitternessBy = BitternessRows.Of(brew, figures),
            Appearance = ServedColour.AppearanceOf(brew, figures, asked.Glass),
            ColourBy = ServedColour.ByLaw(figures),
            StyleFit = asked.Style is { } style ? StyleFit.Of(style, figures) : null,
            Package = package,
            Ions = water is null ? null : IonTable.Of(figures),
            Water = water,
            MashSchedule = schedule,
            Chilling = chilling,
            Allergens = AllergenNotice.Of(brew.Lines),
            Cautions = Cautions.Of(brew, record, figures, water, pitch, tiring, chilling, ph),
            Findings =
            [
                .. brew.Findings,
                .. (water?.Findings ?? []).Select(f => f with { Where = $"water.{f.Where}" }),
                .. StrikeCheck.Findings(brew, schedule),
                .. VesselCheck.Findings(brew, figures, stages, package),
                .. BeerCheck.Findings(brew, figures, ph),
                .. WishCheck.Findings(brew, figures),
                .. cost.Findings,
                .. sure?.Findings ?? [],
                .. after?.Findings ?? [],
            ],
            Balance = Ledger.Of(record),
        };
    }

    private static BrewForecast Unrun(BrewPlan brew, string seed) => new()
    {
        Recipe = brew.Recipe.Name,
        Kit = brew.Kit.Name,
        Seed = seed,
        Headline = Headlines.Unknown,
        Stages = [],
        Losses = [],
        BitternessBy = [],
        Allergens = AllergenNotice.Of(brew.Lines),
        Cautions = [],
        Findings = brew.Findings,
        Failure = brew.Failure,
    };

    private static Finding NotSound(Reached broken) => new(
        "run.notSound", Severity.Error, Names.Of(broken.Stage),
        $"more leaves here than there is: look at evaporation, boil time and volumes");
}
