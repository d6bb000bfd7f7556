using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Report.Doubt;

/// <summary>How sure a forecast is: thousands of draws run, the band of every number, where the doubt comes from, and what to measure next.</summary>
public sealed class HowSure
{
    private readonly RunOutcome _likely;
    private readonly Quantiles[] _quantiles;
    private readonly Dictionary<Readout, int> _places;
    private readonly Supposing _supposing;
    private readonly Lazy<IReadOnlyList<MovableFigure>> _movable;

    internal HowSure(RunOutcome likely, Ensemble ensemble, Stage? readUpTo = null)
    {
        _likely = likely;
        Ensemble = ensemble;
        _quantiles = ensemble.AllQuantiles();
        _places = ensemble.Readouts.Select((readout, place) => (readout, place)).ToDictionary(pair => pair.readout, pair => pair.place);
        DoubtSources sources = new(ensemble.Draws);
        Causes = [.. Told.Where(readout => BandOf(readout) is { Kind: BandKind.Quantiles })
            .Select(readout => NumberDoubt.Of(readout, BandOf(readout)!, sources.SharesOf(ensemble[readout])))];
        _supposing = new Supposing(ensemble.Draws);
        _movable = new(() => readUpTo is not null ? [] : MovableFigure.Of(Causes, ensemble.Draws, likely.Plan.Parameters.Length, _supposing));
        MeasureNext = ReadingAdvice.Of(ensemble, readUpTo);
        IsAfterReadings = readUpTo is not null;
        Unfinished = Share(ensemble[BeerReadouts.PackagedLitres]);
        Findings = Unfinished >= WorthSaying && double.IsFinite(likely[BeerReadouts.PackagedLitres]) ? [NotAllFinish(Unfinished)] : [];
    }

    /// <summary>Where fewer draws than this do not finish, the ends of bands lie where they would with them, to what anybody measures. Our choice.</summary>
    private const double WorthSaying = 0.01;

    /// <summary>Numbers whose doubt is told cause by cause.</summary>
    private static readonly Readout[] Told =
    [
        BeerReadouts.PackagedLitres, BeerReadouts.OriginalGravity, BeerReadouts.FinalGravity, BeerReadouts.AlcoholByVolume,
        BeerReadouts.Bitterness, BeerReadouts.Colour, PhReadouts.MashPh, PhReadouts.BeerPh,
    ];

    /// <summary>Draws a brew's parameters and runs it with each.</summary>
    /// <param name="brew">The brew.</param>
    /// <param name="likely">Its run at the medians.</param>
    /// <param name="seed">A readable word.</param>
    /// <param name="draws">How many.</param>
    internal static HowSure Of(BrewPlan brew, RunOutcome likely, string seed, int draws) =>
        new(likely, DrawnBrew.Of(brew, likely, seed, draws, []));

    /// <summary>All draws, and all that can be told of each: what a reading will be set against.</summary>
    public Ensemble Ensemble { get; }

    /// <summary>How many draws.</summary>
    public int DrawCount => Ensemble.Draws.Count;

    /// <summary>Whether readings have tied figures to each other: then shares of the doubt overlap.</summary>
    public bool IsAfterReadings { get; }

    /// <summary>Share of the draws in which more leaves than there is: no number is told of them.</summary>
    public double Unfinished { get; }

    /// <summary>Where the doubt about the main numbers comes from.</summary>
    public IReadOnlyList<NumberDoubt> Causes { get; }

    /// <summary>The figures that weigh most, to be moved by hand; none after readings, which tie figures to each other.</summary>
    public IReadOnlyList<MovableFigure> Movable => _movable.Value;

    /// <summary>The figure at a way of its own: −1 its 5 %, 0 as likely, 1 its 95 %.</summary>
    public double FigureAt(MovableFigure figure, double way) => _supposing.At(figure.Place, way);

    /// <summary>The plan's draw with figures at those ways, by place; the medians when none is off them.</summary>
    internal double[] DrawAt(IReadOnlyDictionary<int, double> ways) => _supposing.Draw(ways)[.._likely.Plan.Parameters.Length];

    /// <summary>What is worth reading, the most for a minute's work first.</summary>
    public IReadOnlyList<ReadingAdvice> MeasureNext { get; }

    /// <summary>What is doubtful about the draws themselves.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>A number with its 5 to 95 %; a point where no draw moves it; null where it is not known.</summary>
    public Band? BandOf(Readout readout)
    {
        double likely = _likely[readout];
        if (!_places.TryGetValue(readout, out int place) || !double.IsFinite(likely))
        {
            return null;
        }

        Quantiles band = _quantiles[place];
        return !double.IsFinite(band.Middle) || band is { Width: 0 } && band.Middle == likely
            ? Band.Point(likely, readout.Unit)
            : new Band(band.Low, likely, band.High, readout.Unit, BandKind.Quantiles) { Middle = band.Middle };
    }

    private static double Share(ReadOnlySpan<double> values)
    {
        int without = 0;
        foreach (double value in values)
        {
            without += double.IsFinite(value) ? 0 : 1;
        }

        return (double)without / values.Length;
    }

    private static Finding NotAllFinish(double share)
    {
        string told = Invariant($"{100 * share:0.##} %");
        return new(
            "draws.unfinished", Severity.Note, "draws",
            $"in {told} of the draws more leaves than there is, or the kettle boils dry; bands are of the others", told);
    }
}
