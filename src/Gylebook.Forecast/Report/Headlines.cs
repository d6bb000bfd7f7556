using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Acidity;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Forecast.Report.Pitching;

namespace Gylebook.Forecast.Report;

/// <summary>The headline numbers, in the order in which they are told.</summary>
public static class Headlines
{
    private const string MashPh = "mashPh";
    private const string WortPh = "wortPh";
    private const string BeerPh = "beerPh";

    /// <summary>The pH stands behind the colour, the cost at the end: neither is read off the run's state.</summary>
    private static readonly Headline[] Order =
    [
        .. BeerReadouts.Headline.TakeWhile(readout => readout != BeerReadouts.CopperUpLitres).Select(Of),
        new(MashPh, "pH of the mash", 2, null),
        new(WortPh, "pH of the wort in the fermenter", 1, null),
        new(BeerPh, "pH of the beer", 1, null),
        .. BeerReadouts.Headline.SkipWhile(readout => readout != BeerReadouts.CopperUpLitres).Select(Of),
        new("costPerLitre", "cost of a litre", 2, null),
    ];

    private static readonly Dictionary<string, Readout> ReadOff = BeerReadouts.Headline.ToDictionary(readout => readout.Id);

    /// <summary>All names, every number unknown.</summary>
    public static IReadOnlyList<Headline> Unknown => Order;

    /// <summary>The headline of a run.</summary>
    internal static IReadOnlyList<Headline> Of(BrewPlan brew, RunOutcome run, TiringYeast? tiring, WaterOutcome? water, PhReport ph)
    {
        List<RunOutcome> ends = [.. StarchEnds.Of(brew, run), .. new[] { tiring?.Early, tiring?.Never }.OfType<RunOutcome>()];
        return [.. Order.Select(line => line with
        {
            Band = line.Name switch
            {
                MashPh => water?.MashPh,
                WortPh => ph.Wort,
                BeerPh => ph.Beer,
                _ => ReadOff.TryGetValue(line.Name, out Readout? readout) && IsKnown(brew, readout, water) ? Between(run, ends, readout) : null,
            },
        })];
    }

    /// <summary>A point; or bounds, where the mash may make more or less sugar than the run counts, or the yeast may tire.</summary>
    private static Band Between(RunOutcome run, List<RunOutcome> ends, Readout readout)
    {
        double likely = run[readout];
        List<double> told = [likely, .. ends.Select(end => end[readout]).Where(double.IsFinite)];
        return told.TrueForAll(value => value == likely)
            ? Band.Point(likely, readout.Unit)
            : new(told.Min(), likely, told.Max(), readout.Unit, BandKind.Bounds);
    }

    private static Headline Of(Readout readout) => new(readout.Id, readout.Title, readout.Decimals, null);

    /// <summary>Sodium is told only where something brings some, or the liquor is known.</summary>
    private static bool IsKnown(BrewPlan brew, Readout readout, WaterOutcome? water) =>
        readout == BeerReadouts.Sodium ? water is not null || brew.Lines.Any(l => l.Makeup[Component.Sodium] > 0)
        : readout != BeerReadouts.MashYield || brew.Plan!.Mash.GristKilograms > 0;
}
