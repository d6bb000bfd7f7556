using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readings;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Learning;

/// <summary>A finished gyle set against its forecast: what it says of each of the kit's and the yeast's figures.</summary>
/// <param name="Name">The gyle's name.</param>
/// <param name="Figures">What there was to learn, by figure: evidence, or null where its readings taught nothing.</param>
/// <param name="Pairs">What its readings could not tell apart, of those figures.</param>
/// <param name="Findings">What is odd about it.</param>
internal sealed record ReadGyle(string Name, IReadOnlyList<TaughtFigure> Figures, IReadOnlyList<InseparablePair> Pairs, IReadOnlyList<Finding> Findings)
{
    private const string OfInstruments = "instrument.";

    /// <summary>Brews it in thought on the kit, and brings it to what was read.</summary>
    public static ReadGyle Of(Kit kit, FinishedGyle gyle, string seed, int draws) => Reckoning.Or(
        () => Read(kit, gyle, seed, draws), "learn",
        (finding, _) => new ReadGyle(gyle.Name, [], [], [finding with { Message = $"{gyle.Name}: {finding.Message}" }]));

    private static ReadGyle Read(Kit kit, FinishedGyle gyle, string seed, int draws)
    {
        (BrewPlan brew, _) = Forecaster.Plan(gyle.Recipe, kit, gyle.Larder, null);
        RunOutcome? likely = brew.Plan is { } plan ? RunOutcome.Likely(plan) : null;
        if (likely is null || !double.IsFinite(likely[BeerReadouts.PackagedLitres]))
        {
            return new(gyle.Name, [], [], [.. Errors(brew, gyle.Name), NotBrewed(gyle.Name, kit)]);
        }

        AfterReadings after = AfterReadings.Of(brew, likely, gyle.Readings, $"{seed} {gyle.Name}", draws);
        bool tun = RunParameters.UsesTun(gyle.Recipe, kit);
        int[] instruments = [.. after.Ensemble.Draws.Moving.ToArray().Where(place => after.Ensemble.Draws.Parameters[place].Id.StartsWith(OfInstruments, StringComparison.Ordinal))];
        TaughtFigure[] figures =
        [
            .. Enumerable.Range(0, brew.Plan!.Parameters.Length)
                .Where(place => CanBeLearned(brew.Plan.Parameters[place]))
                .Select(place => new TaughtFigure(
                    brew.Plan.Parameters[place], KitParameter.Find(brew.Plan.Parameters[place].Id, tun),
                    GyleEvidence.Of(gyle.Name, after.Before, after.Ensemble.Draws, place, instruments))),
        ];
        HashSet<string> words = [.. figures.Select(figure => ParameterWords.Of(figure.Parameter.Id)).OfType<string>()];
        return new(
            gyle.Name, figures, [.. after.Pairs.Where(pair => words.Contains(pair.One) || words.Contains(pair.Other))],
            [.. after.Findings.Select(finding => finding with { Message = $"{gyle.Name}: {finding.Message}" })]);
    }

    /// <summary>A kit's or a yeast's, and one that varies both between brewers and from gyle to gyle.</summary>
    private static bool CanBeLearned(Parameter parameter) =>
        parameter.Id.Split('.') is ["kit", ..] or ["yeast", _, _] && KitProposal.For(parameter, []) is not null;

    private static IEnumerable<Finding> Errors(BrewPlan brew, string gyle) =>
        brew.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding with { Message = $"{gyle}: {finding.Message}" });

    private static Finding NotBrewed(string gyle, Kit kit) => new(
        "learn.notBrewed", Severity.Error, "learn", $"{gyle}: this recipe cannot be brewed on the kit {kit.Name}, so nothing was learned from it", gyle, kit.Name);
}

/// <summary>What one gyle says of a figure.</summary>
/// <param name="Parameter">The parameter behind it.</param>
/// <param name="Its">Where it stands in the kit; null where no kit states it.</param>
/// <param name="Evidence">What it was in that gyle; null where the readings taught nothing about it.</param>
internal sealed record TaughtFigure(Parameter Parameter, KitParameter? Its, GyleEvidence? Evidence)
{
    /// <summary>What tells figures apart: bag and tun keep liquor each in their own way.</summary>
    public string Key => Its?.Figure.Path ?? Parameter.Id;
}
