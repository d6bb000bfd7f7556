using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Planning;

/// <summary>Yeasts of which the brewer says how far they went last time: what they take of the sugars is solved for the grist in hand.</summary>
/// <param name="Yeasts">Each told yeast by its line's number.</param>
/// <param name="Findings">Where no appetite gives what was told.</param>
internal sealed record ToldYeasts(IReadOnlyDictionary<int, YeastStyle> Yeasts, IReadOnlyList<Finding> Findings)
{
    /// <summary>Apparent per cents. A hydrometer reads to a whole one.</summary>
    private const double Close = 1e-4;

    /// <summary>All maltose, all maltotriose, all dextrin: sugars are taken in that order.</summary>
    private const double MostAppetite = 3;

    private static readonly ToldYeasts None = new(new Dictionary<int, YeastStyle>(), []);

    /// <summary>Solves line after line, each for the beer of its own portion.</summary>
    /// <param name="lines">The lines of the recipe.</param>
    /// <param name="layOut">Lays it out with those yeasts.</param>
    public static ToldYeasts Solve(IReadOnlyList<PlannedLine> lines, Func<IReadOnlyDictionary<int, YeastStyle>, BrewPlan> layOut)
    {
        if (!lines.Any(line => line is { Yeast: not null, Line.Attenuation: not null }))
        {
            return None;
        }

        Dictionary<int, YeastStyle> yeasts = [];
        List<Finding> findings = [];
        BrewPlan usual = layOut(yeasts);
        foreach (PlannedLine line in usual.Plan is null ? [] : usual.Lines.Where(line => line is { Yeast: not null, Line.Attenuation: not null }))
        {
            double? Reaches(double appetite)
            {
                yeasts[line.Number] = Hungry(line, appetite);
                return AttenuationOf(layOut(yeasts), line.Line.Portion);
            }

            YeastStyle type = line.Yeast!;
            double start = type.MaltoseShare.Ratio + type.MaltotrioseShare.Ratio + type.DextrinShare.Ratio;
            double wish = line.Line.Attenuation!.Value.Value.Percent;
            SecantResult found = BracketedSecant.Search(Reaches, wish, new Bracket(type.MaltoseShare.Ratio < 1 ? 0 : 1, MostAppetite), start, Close);
            if (!found.Solved)
            {
                findings.Add(Unreached(line, found.Reached));
            }
        }

        return new ToldYeasts(yeasts, findings);
    }

    /// <summary>The type with another appetite, and a name of its own in the draws: the figure is of this brewer's yeast alone.</summary>
    private static YeastStyle Hungry(PlannedLine line, double appetite) => line.Yeast! with
    {
        Id = $"{line.Yeast!.Id}-told{(line.Line.Portion is { } portion ? "-" + portion : "")}",
        MaltoseShare = Fraction.FromRatio(Math.Clamp(appetite, 0, 1)),
        MaltotrioseShare = Fraction.FromRatio(Math.Clamp(appetite - 1, 0, 1)),
        DextrinShare = Fraction.FromRatio(Math.Clamp(appetite - 2, 0, 1)),
        Provenance = new($"{line.Line.Attenuation!.Value.Text} last time, solved for this grist", "entered"),
    };

    /// <summary>Apparent attenuation of a portion, %; of the first for a yeast that goes into all.</summary>
    private static double? AttenuationOf(BrewPlan brew, string? portion)
    {
        if (brew.Plan is not { Packaged.Length: > 0 } plan)
        {
            return null;
        }

        int place = plan.Packaged.FirstOrDefault(at => brew.PortionNames.GetValueOrDefault(at) == portion, plan.Packaged[0]);
        int row = plan.RowOf(place);
        RunPlan alone = plan with { Packaged = [place], Ferments = [plan.Ferments[row]], Packages = [plan.Packages[row]] };
        double reached = BeerReadouts.ApparentAttenuation.Of(new RunView(alone, plan.Medians, RunOutcome.Likely(plan).Trace));
        return double.IsFinite(reached) ? reached : null;
    }

    private static Finding Unreached(PlannedLine line, double reached)
    {
        string comes = double.IsFinite(reached) ? Invariant($"{reached:0.#} %") : "nothing";
        string told = line.Line.Attenuation!.Value.Text;
        return new(
            "yeast.attenuationUnreached", Severity.Warning, $"{line.Path}.attenuation",
            $"{told}; whatever {line.Name} takes of this grist's sugars, the nearest is {comes}, and that is counted", told, comes);
    }
}
