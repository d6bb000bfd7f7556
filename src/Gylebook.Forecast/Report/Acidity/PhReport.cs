using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;

namespace Gylebook.Forecast.Report.Acidity;

/// <summary>pH of wort and beer, of a sample cooled to 20 °C and free of gas; null where nothing is known to buffer it.</summary>
/// <param name="Wort">In the fermenter, before yeast.</param>
/// <param name="Beer">As served.</param>
internal sealed record PhReport(Band? Wort, Band? Beer)
{
    /// <summary>Reads them off a run.</summary>
    public static PhReport Of(BrewPlan brew, RunOutcome run)
    {
        using AcidEnds ends = new(brew, run);
        return new(BandOf(run, PhReadouts.WortPh, WortBounds(brew, run), ends), BeerOf(brew, run, ends));
    }

    /// <summary>The boil lowers the pH by anything up to what is in print; whether it lowers that of sour wort, only the low end counts.</summary>
    private static Bounds WortBounds(BrewPlan brew, RunOutcome run)
    {
        (double Low, double High) boil = StartingParameters.EndsOf(Known.PhBoilDrop);
        return IsSoured(run)
            ? Malted(brew, run, (Known.PhBoilDropOfSourWort, boil.High), (Known.PhBoilDropOfSourWort, 0)).Between(Known.WortBuffering, Wide(sour: true))
            : Malted(brew, run, (Known.PhBoilDrop, boil.High), (Known.PhBoilDrop, boil.Low)).Between(Known.WortBuffering, Wide(sour: false));
    }

    /// <summary>Each portion on its own: the ends of all of them, and the mean of the likely by litres.</summary>
    private static Band? BeerOf(BrewPlan brew, RunOutcome run, AcidEnds ends)
    {
        List<Band?> portions = [.. run.Plan.Packaged.Select(portion => PortionBand(brew, run, portion, ends))];
        return portions.Contains(null) || run[PhReadouts.BeerPh] is var likely && !double.IsFinite(likely)
            ? null
            : new Band(portions.Min(p => p!.Low), likely, portions.Max(p => p!.High), PhReadouts.Unit, BandKind.Bounds);
    }

    private static Band? PortionBand(BrewPlan brew, RunOutcome run, int portion, AcidEnds acids)
    {
        if (run.Plan.Acidity.BeerOf[run.Plan.RowOf(portion)] is not Known usual)
        {
            return null;
        }

        (double Low, double High) ends = StartingParameters.EndsOf(usual);

        // A soured beer falls with its yeast by no more than an ordinary one does, and perhaps not at all.
        double most = IsSoured(run) ? StartingParameters.Medians[(int)Known.PhOfOrdinaryWort] : ends.High;
        Readout its = PhReadouts.BeerPh with { Of = (in r) => PhReadouts.BeerOf(r, portion) };
        Bounds bounds = Malted(brew, run, (usual, ends.Low), (usual, most));
        return BandOf(run, its, IsSoured(run)
            ? bounds.Between(Known.WortBuffering, Wide(sour: true))
            : bounds.Between(Known.BeerBuffering, StartingParameters.EndsOf(Known.BeerBuffering)), acids);
    }

    /// <summary>The wort of the malt, low or high, together with what goes with it.</summary>
    private static Bounds Malted(BrewPlan brew, RunOutcome run, (Known, double) low, (Known, double) high)
    {
        if (run.Plan.Acidity.MashPh is { } planned)
        {
            Band mash = brew.Liquors!.MashPh!;
            return new Bounds().Tied(planned, mash.Low, mash.High, [low], [high]);
        }

        (double Low, double High) malt = StartingParameters.EndsOf(Known.PhOfMaltWort);
        return new Bounds()
            .Tied([(Known.PhOfMaltWort, malt.Low), low], [(Known.PhOfMaltWort, malt.High), high])
            .Between(Known.MashBuffering, StartingParameters.EndsOf(Known.MashBuffering));
    }

    /// <summary>Both ends of buffering in print: wort's and mash's; near the pH of sour wort, wort's alone.</summary>
    private static (double Low, double High) Wide(bool sour) => (
        StartingParameters.EndsOf(Known.WortBuffering).Low, StartingParameters.EndsOf(sour ? Known.WortBuffering : Known.MashBuffering).High);

    private static bool IsSoured(RunOutcome run) => run.Trace.Has(Stage.Sour) && PhReadouts.IsBuffered(run.Trace, Stage.Sour);

    /// <summary>Nothing is told where so much acid or alkali went in that no pH balances it.</summary>
    private static Band? BandOf(RunOutcome run, Readout readout, Bounds bounds, AcidEnds ends)
    {
        (double low, double high) = ends.Of(readout, bounds);
        double likely = run[readout];
        return double.IsFinite(low + likely + high) ? new Band(low, likely, high, PhReadouts.Unit, BandKind.Bounds) : null;
    }
}
