using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Acidity;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Forecast.Report.Pitching;

namespace Gylebook.Forecast.Report;

/// <summary>The headline numbers, in the order in which they are told.</summary>
public static class Headlines
{
    private const string MashPh = "mashPh";
    private const string WortPh = "wortPh";
    private const string BeerPh = "beerPh";
    private const string CostPerLitre = "costPerLitre";

    /// <summary>The pH stands behind the colour, the cost at the end: neither is read off the run's state.</summary>
    private static readonly Headline[] Order =
    [
        .. BeerReadouts.Headline.TakeWhile(readout => readout != BeerReadouts.CopperUpLitres).Select(Of),
        new(MashPh, "pH of the mash", 2, null),
        new(WortPh, "pH of the wort in the fermenter", 1, null),
        new(BeerPh, "pH of the beer", 1, null),
        .. BeerReadouts.Headline.SkipWhile(readout => readout != BeerReadouts.CopperUpLitres).Select(Of),
        new(CostPerLitre, "cost of a litre", 2, null),
    ];

    private static readonly Dictionary<string, Readout> ReadOff = BeerReadouts.Headline.ToDictionary(readout => readout.Id);

    /// <summary>All names, every number unknown.</summary>
    public static IReadOnlyList<Headline> Unknown => Order;

    /// <summary>The headline of a run.</summary>
    internal static IReadOnlyList<Headline> Of(BrewPlan brew, RunOutcome run, TiringYeast? tiring, WaterOutcome? water, PhReport ph, BeerCost cost, HowSure? sure)
    {
        List<RunOutcome> ends = [.. StarchEnds.Of(brew, run), .. new[] { tiring?.Early, tiring?.Never }.OfType<RunOutcome>()];
        return [.. Order.Select(line => line with
        {
            Band = line.Name switch
            {
                MashPh => water?.MashPh is { } planned ? Drawn(PhReadouts.MashPh) ?? planned : null,
                WortPh => ph.Wort is { } counted ? Drawn(PhReadouts.WortPh) ?? counted : null,
                BeerPh => ph.Beer is { } counted ? Drawn(PhReadouts.BeerPh) ?? counted : null,
                CostPerLitre => PerLitre(cost, run, ends, Drawn(BeerReadouts.PackagedLitres)),
                _ => ReadOff.TryGetValue(line.Name, out Readout? readout) && IsKnown(brew, readout, water) ? Drawn(readout) ?? Between(run, ends, readout) : null,
            },
        })];

        // Where nobody can say how much is converted, no draw says it either: bounds stay bounds.
        Band? Drawn(Readout readout) => MashCautions.ConversionIsABound(brew) ? null : sure?.BandOf(readout);
    }

    /// <summary>A point; or bounds, where the mash may make more or less sugar than the run counts, or the yeast may tire.</summary>
    private static Band Between(RunOutcome run, List<RunOutcome> ends, Readout readout)
    {
        double likely = run[readout];
        if (ends.Count == 0)
        {
            return Band.Point(likely, readout.Unit);
        }

        List<double> told = [likely, .. ends.Select(end => end[readout]).Where(double.IsFinite)];
        return told.TrueForAll(value => value == likely)
            ? Band.Point(likely, readout.Unit)
            : new(told.Min(), likely, told.Max(), readout.Unit, BandKind.Bounds);
    }

    /// <summary>The same money over the litres packaged, which may differ between the ends; null without a price, or without beer.</summary>
    private static Band? PerLitre(BeerCost cost, RunOutcome run, List<RunOutcome> ends, Band? litres)
    {
        if (cost.Total is not { } total || !(run[BeerReadouts.PackagedLitres] > 0))
        {
            return null;
        }

        if (litres is { Kind: BandKind.Quantiles, Low: > 0 })
        {
            double money = (double)total.Value;
            return new Band(money / litres.High, money / litres.Likely, money / litres.Low, $"{total.Currency}/L", BandKind.Quantiles) { Middle = money / litres.Middle };
        }

        List<double> told = [.. ends.Append(run).Select(end => (double)total.Value / end[BeerReadouts.PackagedLitres]).Where(double.IsFinite)];
        double likely = (double)total.Value / run[BeerReadouts.PackagedLitres];
        string unit = $"{total.Currency}/L";
        return told.TrueForAll(value => value == likely) ? Band.Point(likely, unit) : new(told.Min(), likely, told.Max(), unit, BandKind.Bounds);
    }

    private static Headline Of(Readout readout) => new(readout.Id, readout.Title, readout.Decimals, null);

    /// <summary>Sodium is told only where something brings some, or the liquor is known.</summary>
    private static bool IsKnown(BrewPlan brew, Readout readout, WaterOutcome? water) =>
        readout == BeerReadouts.Sodium ? water is not null || brew.Lines.Any(l => l.Makeup[Component.Sodium] > 0)
        : readout != BeerReadouts.MashYield || brew.Plan!.Mash.GristKilograms > 0;
}
