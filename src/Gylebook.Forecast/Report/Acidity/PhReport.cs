using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Records;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Acidity;

/// <summary>pH of wort and beer, of a sample cooled to 20 °C and free of gas; null where nothing is known to buffer it.</summary>
/// <param name="Wort">In the fermenter, before yeast.</param>
/// <param name="Beer">As served.</param>
internal sealed record PhReport(Band? Wort, Band? Beer)
{
    /// <summary>Reads them off a run.</summary>
    public static PhReport Of(BrewPlan brew, RunRecord record)
    {
        SouredWort? soured = SouredWort.Of(brew, record);
        MaltWort malt = MaltWort.Of(brew.Liquors, brew.Lines);
        return new PhReport(Known(WortOf(brew, record, malt, soured)), Known(BeerOf(brew, record, malt, soured)));
    }

    /// <summary>Nothing is told where so much acid or alkali went in that no pH balances it.</summary>
    private static Band? Known(Band? band) => band is { } b && double.IsFinite(b.Low + b.Likely + b.High) ? b : null;

    /// <summary>Wort from what malt alone gives it, or from where souring ended; the boil lowers it by anything up to what is in print.</summary>
    private static Band? WortOf(BrewPlan brew, RunRecord record, MaltWort malt, SouredWort? soured)
    {
        BufferedLiquid wort = new(record.At(Stage.Cast));
        if (!wort.IsBuffered)
        {
            return null;
        }

        StartingValue boil = StartingValues.Of("ph.boilDrop");
        double boiled = brew.Recipe.Boil is null ? 0 : 1;
        if (soured is not null)
        {
            // Whether the boil lowers the pH of sour wort is not known: the low end counts with it, the others do not.
            return soured.Band(wort, boiled * boil.High!.Value, 0, 0);
        }

        return Ends(
            buffering => wort.Ph(buffering, malt.Ph.Low, malt, boiled * boil.High!.Value),
            buffering => wort.Ph(buffering, malt.Ph.Likely, malt, boiled * boil.Value),
            buffering => wort.Ph(buffering, malt.Ph.High, malt, boiled * boil.Low!.Value));
    }

    /// <summary>Each portion on its own: the ends of all of them, and the mean of the likely by litres.</summary>
    private static Band? BeerOf(BrewPlan brew, RunRecord record, MaltWort malt, SouredWort? soured)
    {
        List<(Band Band, double Litres)> portions = [];
        foreach (Reached pour in record.Stages.Where(s => s.Stage == Stage.Pour))
        {
            if (PortionPh(brew, pour, malt, soured) is not { } band)
            {
                return null;
            }

            portions.Add((band, pour.State.Wort.Litres));
        }

        double litres = portions.Sum(p => p.Litres);
        return litres <= 0 ? null : new Band(
            portions.Min(p => p.Band.Low), portions.Sum(p => p.Band.Likely * p.Litres) / litres, portions.Max(p => p.Band.High), Words.PhAt20C, BandKind.Bounds);
    }

    private static Band? PortionPh(BrewPlan brew, Reached pour, MaltWort malt, SouredWort? soured)
    {
        string? name = brew.PortionNames.GetValueOrDefault(pour.Portion);
        List<PlannedLine> yeasts = [.. brew.Lines.Where(l => l.Yeast is not null && (l.Line.Portion is null || l.Line.Portion == name))];
        BufferedLiquid beer = new(pour.State.Wort);
        if (yeasts.Count == 0 || !beer.IsBuffered)
        {
            return null;
        }

        StartingValue usual = StartingValues.Of(yeasts.TrueForAll(l => l.Yeast!.IsBottomFermenting) ? "ph.beer.bottom" : "ph.beer.top");
        if (soured is not null)
        {
            double wort = StartingValues.Of("ph.ordinaryWort").Value;
            return soured.Band(beer, wort - usual.Low!.Value, wort - usual.Value, 0);
        }

        return Ends(
            buffering => beer.Ph(buffering, usual.Low!.Value + malt.Shift.Low, malt),
            buffering => beer.Ph(buffering, usual.Value + malt.Shift.Likely, malt),
            buffering => beer.Ph(buffering, usual.High!.Value + malt.Shift.High, malt));
    }

    /// <summary>The ends over both ends of buffering in print, wort's and mash's; likely with the middle of wort's.</summary>
    private static Band Ends(Func<double, double> low, Func<double, double> likely, Func<double, double> high)
    {
        StartingValue wort = StartingValues.Of("ph.buffer.wort");
        double least = wort.Low!.Value, most = StartingValues.Of("ph.buffer.mash").High!.Value;
        return new Band(
            Math.Min(low(least), low(most)), likely(wort.Value), Math.Max(high(least), high(most)), Words.PhAt20C, BandKind.Bounds);
    }
}
