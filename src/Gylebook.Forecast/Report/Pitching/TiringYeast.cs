using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Pitching;

/// <summary>A brew whose alcohol passes what stops its yeast as soon as it may: how it ends then, and how if nothing ever stops it.</summary>
/// <param name="Early">Every yeast stops at the low end of its row.</param>
/// <param name="Never">No yeast tires.</param>
/// <remarks>Where a yeast tires is from memory, and strains of a type differ by several per cent of alcohol: so these are bounds.</remarks>
internal sealed record TiringYeast(RunOutcome Early, RunOutcome Never)
{
    /// <summary>Alcohol that no beer reaches, % by volume.</summary>
    private const double OutOfReach = 100;

    /// <summary>Both runs; null where the alcohol stays below what any yeast in it bears.</summary>
    public static TiringYeast? Of(BrewPlan brew, RunOutcome run)
    {
        List<(int Place, double Low)> tires = [];
        foreach (YeastStyle yeast in brew.Lines.Select(line => line.Yeast).OfType<YeastStyle>())
        {
            string id = RunParameters.TiresOf(yeast).Id;
            if (Array.FindIndex(run.Plan.Parameters, parameter => parameter.Id == id) is >= 0 and var place)
            {
                tires.Add((place, yeast.AlcoholTolerance.Low));
            }
        }

        double most = run.View.Most(static (in r, p) => r.Wort(Stage.Ferment, p).AlcoholByVolumePercent);
        return tires.Exists(yeast => most > yeast.Low) ? new TiringYeast(At(yeast => yeast.Low), At(_ => OutOfReach)) : null;

        RunOutcome At(Func<(int Place, double Low), double> stops)
        {
            double[] draw = [.. run.Draw];
            tires.ForEach(yeast => draw[yeast.Place] = stops(yeast));
            return RunOutcome.At(run.Plan, draw);
        }
    }
}
