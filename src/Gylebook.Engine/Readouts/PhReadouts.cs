using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Science.Acidity;

namespace Gylebook.Engine.Readouts;

/// <summary>pH of mash, wort and beer, of a sample cooled to 20 °C and free of gas; unknown where nothing is known to buffer it.</summary>
/// <remarks>
/// Wort is counted from what malt alone gives it, or from where souring ended; beer from the range of ordinary beers of its kind of
/// yeast, moved as the wort was. The boil lowers pH; whether it lowers that of sour wort is not known. See <c>docs/science/beer-ph.md</c>.
/// </remarks>
public static class PhReadouts
{
    /// <summary>How every pH is meant.</summary>
    public const string Unit = "pH at 20 °C";

    /// <summary>Less malt than this in a litre buffers nothing that any figure in print speaks of.</summary>
    private const double LeastKilogramsPerLitre = 1e-3;

    /// <summary>pH of the mash by the water plan.</summary>
    public static Readout MashPh { get; } = new(
        "mashPh", "pH of the mash", Unit, 2, new(Stage.Mash),
        static (in run) => run.Plan.Acidity.MashPh is { } planned ? run.Draw[planned] : double.NaN);

    /// <summary>pH in the fermenter, before yeast.</summary>
    public static Readout WortPh { get; } = new(
        "wortPh", "pH of the wort in the fermenter", Unit, 1, new(Stage.Cast), static (in run) => WortOf(run));

    /// <summary>pH as served: of several portions their mean by litres.</summary>
    public static Readout BeerPh { get; } = new(
        "beerPh", "pH of the beer", Unit, 1, new(Stage.Pour), static (in run) => BeerOf(run));

    /// <summary>Lactic acid that a souring culture made, g.</summary>
    public static Readout LacticMade { get; } = new(
        "lacticMadeGrams", "lactic acid made", "g", 0, new(Stage.Sour),
        static (in run) => run.Trace.Has(Stage.Sour)
            ? 1000 * (run.Wort(Stage.Sour)[Component.LacticAcid] - run.Wort(Stage.CopperUp)[Component.LacticAcid]) : double.NaN);

    /// <summary>Carbon dioxide that it made, g.</summary>
    public static Readout GasMade { get; } = new(
        "souringGasGrams", "carbon dioxide made in souring", "g", 0, new(Stage.Sour),
        static (in run) => run.Trace.Has(Stage.Sour)
            ? 1000 * (run.Wort(Stage.Sour)[Component.CarbonDioxide] - run.Wort(Stage.CopperUp)[Component.CarbonDioxide]
                + run.Trace.Lost(Loss.Gas, souring: true)[Component.CarbonDioxide]) : double.NaN);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Readout> All { get; } = [MashPh, WortPh, BeerPh, LacticMade, GasMade];

    /// <summary>Whether there is malt in what a stage left, to buffer it.</summary>
    public static bool IsBuffered(RunTrace trace, Stage stage, int portion = 0)
    {
        ArgumentNullException.ThrowIfNull(trace);
        double litres = trace.Litres(stage, portion);
        return litres > 0 && trace.Wort(stage, portion)[Component.MaltBuffer] / litres > LeastKilogramsPerLitre;
    }

    /// <summary>Whether souring took all the sugar that lactic bacteria are counted as taking.</summary>
    public static bool RanOut(in RunView run)
    {
        foreach (Component sugar in Sourable)
        {
            if (run.Wort(Stage.Sour)[sugar] > 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>pH of one portion as served; unknown where no yeast or no malt is in it.</summary>
    public static double BeerOf(in RunView run, int portion)
    {
        ref readonly Wort beer = ref run.Wort(Stage.Pour, portion);
        if (run.Plan.Acidity.BeerOf.ElementAtOrDefault(run.Plan.RowOf(portion)) is not Known usual || !IsBuffered(run.Trace, Stage.Pour, portion))
        {
            return double.NaN;
        }

        MaltWort malt = MaltWort.Of(run.Plan, run.Draw, run.Trace);
        return IsSoured(run)
            ? Since(run, beer, run.Draw[Known.PhOfOrdinaryWort] - run.Draw[usual], malt)
            : From(beer, run.Draw[Known.BeerBuffering], run.Draw[usual] + malt.Shift, malt, 0);
    }

    private static readonly Component[] Sourable = [.. Reactions.Sourable];

    private static bool IsSoured(in RunView run) => run.Trace.Has(Stage.Sour) && IsBuffered(run.Trace, Stage.Sour);

    private static double WortOf(in RunView run)
    {
        ref readonly Wort wort = ref run.Wort(Stage.Cast);
        if (!IsBuffered(run.Trace, Stage.Cast))
        {
            return double.NaN;
        }

        MaltWort malt = MaltWort.Of(run.Plan, run.Draw, run.Trace);
        double boiled = run.Plan.Acidity.IsBoiled ? 1 : 0;
        return IsSoured(run)
            ? Since(run, wort, boiled * run.Draw[Known.PhBoilDropOfSourWort], malt)
            : From(wort, run.Draw[Known.WortBuffering], malt.Ph, malt, boiled * run.Draw[Known.PhBoilDrop]);
    }

    private static double BeerOf(in RunView run)
    {
        double sum = 0, litres = 0;
        foreach (int portion in run.Plan.Packaged)
        {
            double its = run.Litres(Stage.Pour, portion);
            sum += BeerOf(run, portion) * its;
            litres += its;
        }

        return litres > 0 ? sum / litres : double.NaN;
    }

    /// <summary>pH from a pH of the mash's wort, or of the beer it makes, with what the mash's load counts for in it.</summary>
    private static double From(in Wort wort, double buffering, double anchor, in MaltWort malt, double drop)
    {
        double kilograms = wort[Component.MaltBuffer];
        return IsPh(anchor) ? Balanced(wort, buffering, anchor, (drop * buffering * kilograms) - malt.Counted(anchor, kilograms)) : double.NaN;
    }

    /// <summary>pH from where souring ended, and protons set free since: as much as lower an unsoured wort by so many pH.</summary>
    private static double Since(in RunView run, in Wort later, double drop, in MaltWort malt)
    {
        ref readonly Wort soured = ref run.Wort(Stage.Sour);
        double anchor = SouredPh(run, soured, malt);
        double buffering = run.Draw[Known.WortBuffering], kilograms = later[Component.MaltBuffer];
        return IsPh(anchor)
            ? Balanced(later, buffering, anchor, (drop * buffering * kilograms) - (AcidsCarried.Of(soured).Given(anchor) * kilograms / soured[Component.MaltBuffer]))
            : double.NaN;
    }

    /// <summary>A culture that made acid has brought the wort to the target; otherwise the wort is where its load brings it.</summary>
    private static double SouredPh(in RunView run, in Wort soured, in MaltWort malt)
    {
        double target = run.Plan.Sourings[0].TargetPh;
        bool ranOut = RanOut(run);
        return LacticMade.Of(run) > 0 && !ranOut ? target : Math.Min(ranOut ? double.MaxValue : target, From(soured, run.Draw[Known.WortBuffering], malt.Ph, malt, 0));
    }

    /// <summary>So much acid or alkali in the mash that its pH lies beyond the scale leaves nothing to count from.</summary>
    private static bool IsPh(double anchor) => anchor is >= 0 and <= 14;

    /// <summary>Not a number where so much acid or alkali went in that no pH balances it.</summary>
    private static double Balanced(in Wort wort, double bufferingPerKilogram, double anchor, double released) =>
        WortAcidity.TryPhOf(AcidsCarried.Of(wort), bufferingPerKilogram * wort[Component.MaltBuffer], anchor, released, out double ph)
            ? ph : double.NaN;
}
