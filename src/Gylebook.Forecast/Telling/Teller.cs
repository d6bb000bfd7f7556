using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Treating;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Forecast.Telling;

/// <summary>Forecasts a recipe on a kit: lays it out, runs it once at the medians, and tells what happened.</summary>
public static class Teller
{
    /// <summary>The forecast; with findings alone when the recipe cannot be brewed.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="kit">The kit.</param>
    /// <param name="foods">Foods that lie beside the recipe, by id; asked before the tables.</param>
    /// <param name="seed">Seed of the draws, a readable word.</param>
    /// <param name="water">The water it is brewed with; null to count liquor as pure.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public static BrewForecast Forecast(
        Recipe recipe, Kit kit, Func<string, FoodMakeup?> foods, string seed, WaterPlan? water = null, ForecastRequest? asked = null)
    {
        (LaidOut laidOut, WaterOutcome? treated) = LaidOutWith(recipe, kit, foods, water);
        return Forecast(laidOut, seed, treated, asked);
    }

    /// <summary>A recipe laid out with its liquor treated.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="kit">The kit.</param>
    /// <param name="foods">Foods that lie beside the recipe, by id; asked before the tables.</param>
    /// <param name="water">The water it is brewed with; null to count liquor as pure.</param>
    /// <returns>The lay-out, and what came of the water plan; null without one, or when the recipe cannot be planned.</returns>
    public static (LaidOut LaidOut, WaterOutcome? Treated) LaidOutWith(
        Recipe recipe, Kit kit, Func<string, FoodMakeup?> foods, WaterPlan? water) =>
        Reckoned.Or(
            () => Treated(recipe, kit, foods, water), "recipe",
            (finding, failure) => (LaidOut.NotReckoned(recipe, kit, finding, failure), null));

    private static (LaidOut LaidOut, WaterOutcome? Treated) Treated(
        Recipe recipe, Kit kit, Func<string, FoodMakeup?> foods, WaterPlan? water)
    {
        LaidOut laidOut = LayOut.Of(recipe, kit, foods);
        if (water is null || LiquorNeed.Of(laidOut) is not { } need)
        {
            return (laidOut, null);
        }

        WaterOutcome treated = WaterTreatment.Of(water, need);
        Recipe salted = recipe with { Ingredients = [.. recipe.Ingredients, .. LinesOfTheRecipe.Of(treated)] };
        return (LayOut.Of(salted, kit, foods, WaterTreatment.LiquorsOf(treated)), treated);
    }

    /// <summary>The forecast of a recipe that is laid out already.</summary>
    /// <param name="laidOut">The recipe on its kit.</param>
    /// <param name="seed">Seed of the draws, a readable word.</param>
    /// <param name="treated">The liquor it was laid out with; null when liquor counts as pure.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public static BrewForecast Forecast(LaidOut laidOut, string seed, WaterOutcome? treated = null, ForecastRequest? asked = null) =>
        Reckoned.Or(
            () => RunAndTold(laidOut, seed, treated, asked ?? ForecastRequest.Usual), "recipe",
            (finding, failure) => Unrun(laidOut with { Findings = [.. laidOut.Findings, finding], Failure = failure }, seed));

    private static BrewForecast RunAndTold(LaidOut laidOut, string seed, WaterOutcome? treated, ForecastRequest request)
    {
        laidOut = laidOut with { Plan = laidOut.Plan is { } plan ? plan with { Bitterness = request.Bitterness } : null };
        if (laidOut.Plan is null)
        {
            return Unrun(laidOut, seed);
        }

        RunRecord record = RunRecord.Of(laidOut.Plan, laidOut.Plan.Medians);
        if (record.Stages.FirstOrDefault(s => !s.State.Wort.IsSound) is { } broken)
        {
            return Unrun(laidOut with { Findings = [.. laidOut.Findings, NotSound(broken)] }, seed);
        }

        return Told(laidOut, record, record.Outcome, seed, treated, request);
    }

    private static BrewForecast Told(
        LaidOut laidOut, RunRecord record, RunOutcome figures, string seed, WaterOutcome? water, ForecastRequest asked)
    {
        PitchAdvice? pitch = PitchTold.Of(laidOut, figures, asked);
        MashHeat heat = new(laidOut);
        PhTold ph = PhTold.Of(laidOut, record);
        IReadOnlyList<StageRow> stages = StageRows.Of(laidOut, record);
        Chilling? chilling = ChillTold.Of(laidOut, record);
        PackageOutlook package = PackageOf(laidOut, figures);
        MashSchedule? schedule = heat.Schedule(record.At(Stage.CopperUp));
        return new BrewForecast
        {
            Recipe = laidOut.Recipe.Name,
            Kit = laidOut.Kit.Name,
            Seed = seed,
            Headline = Headlines.Of(laidOut, figures, water, ph),
            Stages = stages,
            Losses = StageRows.LossesOf(laidOut, record),
            Additions = AdditionRows.Of(laidOut, record),
            Pitch = pitch,
            BitternessBy = BitternessRows.Of(laidOut, figures),
            Appearance = BeerColourTold.AppearanceOf(laidOut, figures, asked),
            ColourBy = BeerColourTold.ByLaw(laidOut, figures),
            StyleFit = asked.Style is { } style ? StyleFit.Of(style, figures) : null,
            Package = package,
            Ions = water is null ? null : IonTable.Of(record),
            Water = water,
            MashSchedule = schedule,
            Chilling = chilling,
            Allergens = AllergenNotice.Of(laidOut.Lines),
            Cautions = Cautions.Of(laidOut, record, figures, water, pitch, chilling, ph),
            Findings =
            [
                .. laidOut.Findings,
                .. (water?.Findings ?? []).Select(f => f with { Where = $"water.{f.Where}" }),
                .. StrikeCheck.Findings(laidOut, schedule),
                .. VesselCheck.Findings(laidOut, figures, stages, package),
                .. BeerCheck.Findings(laidOut, figures, ph),
            ],
            Balance = Ledger.Of(record),
        };
    }

    private static BrewForecast Unrun(LaidOut laidOut, string seed) => new()
    {
        Recipe = laidOut.Recipe.Name,
        Kit = laidOut.Kit.Name,
        Seed = seed,
        Headline = Headlines.Unknown,
        Stages = [],
        Losses = [],
        BitternessBy = [],
        Allergens = AllergenNotice.Of(laidOut.Lines),
        Cautions = [],
        Findings = laidOut.Findings,
        Failure = laidOut.Failure,
    };

    private static Finding NotSound(Reached broken) => new(
        "run.notSound", Severity.Error, Words.Of(broken.Stage),
        $"more leaves here than there is: look at evaporation, boil time and volumes");

    private static PackageOutlook PackageOf(LaidOut laidOut, RunOutcome figures)
    {
        PackageKind kind = LayOut.PackageOf(laidOut.Recipe, laidOut.Kit)!;
        double each = (kind.Fill ?? kind.Brim).Value.Litres;
        return new PackageOutlook(
            kind.Kind,
            figures[BeerReadouts.CarbonationVolumes],
            figures[BeerReadouts.RefermentableVolumes],
            kind.MaxVolumes?.Value.Volumes,
            laidOut.Plan!.Packages.Sum(p => p.Priming) * 1000,
            each > 0 ? (int)Math.Ceiling((figures[BeerReadouts.PackagedLitres] / each) - 1e-9) : null)
        {
            Keg = KegGauge.Of(laidOut, figures),
        };
    }
}
