using Gylebook.Engine.Makeups;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Foods;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Mashing;

/// <summary>Starch that a mash does not open, and starch that it opens and does not convert.</summary>
internal static class StarchCautions
{
    /// <summary>A food with less starch than this, kg/kg, is not mashed for its starch. Our choice.</summary>
    private const double WorthCooking = 0.1;

    private const string CookIt = "Cook it first, thick and well stirred, for it spits and burns on; cool it to the rest's heat before it meets the malt, and enter it as flakes of its kind or as a food of the family 'grain or flour, cooked'.";
    private const string Source = "Institute of Brewing and handbooks, data/mashing/gelatinisation.csv";

    /// <summary>All of them; none without a mash.</summary>
    public static IEnumerable<Caution> Of(BrewPlan brew, RunOutcome run) =>
        brew.Recipe.Mash is null ? [] : [.. Closed(brew), .. RawGrain(brew), .. OpenAndLeft(brew, run)];

    /// <summary>Foods whose starch no ordinary mash opens.</summary>
    private static IEnumerable<Caution> Closed(BrewPlan brew)
    {
        foreach (PlannedLine line in brew.Lines.Where(l => l.Line.At.Point == AdditionPoint.Mash && l.Food is { StarchIsOpen: false, Starch: > WorthCooking }))
        {
            yield return new(
                "starch.cookFirst", Stage.Mash,
                Invariant($"{line.Name}: a mash does not surely open its starch. {line.Makeup[Component.RawStarch]:0.00} kg of it are counted as raw, and none of that as converted. {CookIt} Fines that pass the bag the boil opens, and they hang in the beer as haze."),
                Source);
        }
    }

    /// <summary>Raw grain in a mash that is cooler than the end of its span.</summary>
    private static IEnumerable<Caution> RawGrain(BrewPlan brew)
    {
        double[] medians = brew.Plan!.Medians;
        foreach (PlannedLine line in brew.Lines.Where(l => l is { Line.At.Point: AdditionPoint.Mash, Malt.OpensAt: not null }))
        {
            (double low, double high) = line.Malt!.OpensAt!.Value;
            GrainOpening opening = new(low, high, brew.Plan.Mash.Rests.WarmestCelsius);
            double share = opening.ShareAt(medians);
            if (share < 1)
            {
                string counted = opening.IsBetween
                    ? Invariant($"Between these ends nothing is published: {100 * share:0} % is counted as open, and the numbers are bounds from none to all.")
                    : "None of it is counted as converted.";
                yield return new(
                    "starch.cookFirst", Stage.Mash,
                    Invariant($"{line.Name}: its starch opens at {low:0} to {high:0} °C, and the warmest rest is {opening.WarmestRest:0.#} °C. {counted} {CookIt} Or rest warmer."),
                    Source)
                {
                    Severity = opening.IsBetween ? Severity.Note : Severity.Warning,
                };
            }
        }
    }

    /// <summary>Starch that opens and finds too little enzyme: it does not go back.</summary>
    private static IEnumerable<Caution> OpenAndLeft(BrewPlan brew, RunOutcome run)
    {
        double left = run.Plan.Mash.OpenAndLeft(run.Draw, MashedStarch(run)), litres = run[BeerReadouts.PackagedLitres];
        if (1000 * left > FoodCautions.StarchWorthAWord * litres)
        {
            yield return new(
                "starch.openLeft", Stage.Mash,
                Invariant($"About {left:0.0} kg of starch opens in this mash and finds too little enzyme. It is counted as staying with the grain; what runs off, up to {1000 * left / litres:0} g/L, hangs in the beer as haze, and a diastatic or wild yeast could eat it in the package and raise the pressure. Mash it with malt that has power to spare, and test with iodine."),
                "docs/science/mashing.md; share that runs off not published");
        }
    }

    /// <summary>Open starch that goes into the mash, kg.</summary>
    internal static double MashedStarch(RunOutcome run)
    {
        double starch = 0;
        foreach (var addition in run.Plan.Additions.Where(addition => addition.Place.Stage == Stage.Mash))
        {
            starch += run.Trace.Makeup(addition.Makeup)[Component.Starch] * addition.Share;
        }

        return starch;
    }
}
