using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Running;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Telling;

/// <summary>Forecasts a recipe on a kit: lays it out, runs it once at the medians, and tells what happened.</summary>
public static class Teller
{
    /// <summary>The forecast; with findings alone when the recipe cannot be brewed.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="kit">The kit.</param>
    /// <param name="foods">Foods that lie beside the recipe, by id; asked before the tables.</param>
    /// <param name="seed">Seed of the draws, a readable word.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public static BrewForecast Forecast(
        Recipe recipe, Kit kit, Func<string, FoodMakeup?> foods, string seed, ForecastRequest? asked = null)
    {
        ForecastRequest request = asked ?? ForecastRequest.Usual;
        LaidOut laidOut = LayOut.Of(recipe, kit, foods);
        laidOut = laidOut with { Plan = laidOut.Plan is { } plan ? plan with { Bitterness = request.Bitterness } : null };
        if (laidOut.Plan is null)
        {
            return Unrun(laidOut, seed);
        }

        RunRecord record = new();
        FullLog log = new(record);
        double[] figures = new double[laidOut.Plan.PortionCount * Figures.Count];
        Run.Through(laidOut.Plan, laidOut.Plan.Medians, figures, ref log);
        if (record.Stages.FirstOrDefault(s => !s.State.Wort.IsSound) is { } broken)
        {
            return Unrun(laidOut with { Findings = [.. laidOut.Findings, NotSound(broken)] }, seed);
        }

        return Told(laidOut, record, new HeadlineFigures(laidOut.Plan.Packaged, figures), seed, request);
    }

    private static BrewForecast Told(
        LaidOut laidOut, RunRecord record, HeadlineFigures figures, string seed, ForecastRequest asked)
    {
        PitchAdvice? pitch = PitchTold.Of(laidOut, figures, asked);
        IReadOnlyList<StageRow> stages = StageRows.Of(laidOut, record);
        return new BrewForecast
        {
            Recipe = laidOut.Recipe.Name,
            Kit = laidOut.Kit.Name,
            Seed = seed,
            Headline = Headlines.Of(laidOut, figures),
            Stages = stages,
            Losses = StageRows.LossesOf(laidOut, record),
            Additions = AdditionRows.Of(laidOut, record),
            Pitch = pitch,
            BitternessBy = BitternessRows.Of(laidOut, record, figures),
            Appearance = BeerColourTold.AppearanceOf(laidOut, figures, asked),
            ColourBy = BeerColourTold.ByLaw(laidOut, figures),
            StyleFit = asked.Style is { } style ? StyleFit.Of(style, figures) : null,
            Package = PackageOf(laidOut, figures),
            Allergens = AllergenNotice.Of(laidOut.Lines),
            Cautions = Cautions.Of(laidOut, record, figures, pitch),
            Findings = [.. laidOut.Findings, .. VesselCheck.Findings(laidOut, figures, stages)],
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
    };

    private static Finding NotSound(Reached broken) => new(
        "run.notSound", Severity.Error, Words.Of(broken.Stage),
        $"more leaves here than there is: look at evaporation, boil time and volumes");

    private static PackageOutlook PackageOf(LaidOut laidOut, HeadlineFigures figures)
    {
        PackageKind kind = LayOut.PackageOf(laidOut.Recipe, laidOut.Kit)!;
        double each = (kind.Fill ?? kind.Brim).Value.Litres;
        return new PackageOutlook(
            kind.Kind,
            figures[Figure.CarbonationVolumes],
            figures[Figure.RefermentableVolumes],
            kind.MaxVolumes?.Value.Volumes,
            laidOut.Plan!.Packages.Sum(p => p.Priming) * 1000,
            each > 0 ? (int)Math.Ceiling((figures[Figure.PackagedLitres] / each) - 1e-9) : null);
    }
}
