using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readings;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Quantities;

namespace Gylebook.Benchmarks;

/// <summary>How often 90 % bands hold the truth, before and after readings, on gyles whose truth was drawn: what docs/science/uncertainty.md tells.</summary>
/// <remarks>
/// The truth of each gyle is a draw of everything that is drawn, what models leave open and how instruments are off included, with another seed
/// than the forecast's. So this shows that the arithmetic is honest, not that the widths are right. Read are litres and gravity at copper-up,
/// litres at knock-out, gravity at cast, through the gate. The seeds are the first that were tried.
/// </remarks>
internal static class Coverage
{
    private const int Gyles = 400, Draw = 1000;

    private static readonly Readout[] Asked =
    [
        BeerReadouts.OriginalGravity, BeerReadouts.FinalGravity, BeerReadouts.AlcoholByVolume, BeerReadouts.Bitterness, BeerReadouts.Colour,
        BeerReadouts.KnockOutLitres, BeerReadouts.CastLitres, BeerReadouts.PackagedLitres,
    ];

    /// <summary>Prints the table: share of truths within the band, and the mean score, before and after; and whether truths spread evenly over the draws.</summary>
    /// <param name="recipe">Path of the recipe.</param>
    public static void Print(string recipe)
    {
        BrewPlan bitter = BrewPlanner.Plan(RecipeFile.Read(File.ReadAllText(recipe)).Value!, BuiltInKit.LanternShed, Larder.Empty);
        RunOutcome likely = RunOutcome.Likely(bitter.Plan!);
        (Readout Readout, KitInstrument With)[] read = Read();
        Parameter[] besides = [.. read.SelectMany(reading => reading.With.Off.Parameters).DistinctBy(parameter => parameter.Id)];
        Readout[] all = [.. Asked, .. read.Select(reading => reading.Readout)];
        Ensemble truth = DrawnBrew.Of(bitter, likely, "coverage truth", Gyles, besides, null, all), before = DrawnBrew.Of(bitter, likely, "coverage forecast", Draw, besides, null, all);
        Score[] scores = [.. Asked.Select(_ => new Score())];
        int aside = 0;
        for (int gyle = 0; gyle < Gyles; gyle++)
        {
            (Ensemble once, List<Reading> taken) = LetIn(bitter, truth, before, read, gyle);
            aside += read.Length - taken.Count;
            Ensemble after = taken.Count == 0 ? before : Assimilation.Repeated(bitter.Plan!, before, taken, ReadingReach.Of(bitter.Plan!, before, taken), "coverage", Environment.ProcessorCount);
            for (int i = 0; i < Asked.Length; i++)
            {
                scores[i].Add(truth[Asked[i]][gyle], before[Asked[i]], once[Asked[i]], after[Asked[i]]);
            }
        }

        Console.WriteLine(Invariant($"{Path.GetFileNameWithoutExtension(recipe)}, {Gyles} gyles, {Draw} draws; set aside {aside} of {Gyles * read.Length} readings"));
        Console.WriteLine("| Number | before | at once | after four steps | score before | score after | χ² before |");
        Console.WriteLine("|---|---|---|---|---|---|---|");
        Console.WriteLine(string.Join('\n', Asked.Zip(scores, (readout, score) => score.Row(readout))));
        Console.WriteLine(Invariant($"mean: before {scores.Average(score => score.Share(0)):0.0} %, at once {scores.Average(score => score.Share(1)):0.0} %, after {scores.Average(score => score.Share(2)):0.0} %"));
    }

    private static (Readout Readout, KitInstrument With)[] Read()
    {
        (StageReadouts copperUp, StageReadouts knockOut, StageReadouts cast) = (StageReadouts.Of(Stage.CopperUp, 0), StageReadouts.Of(Stage.KnockOut, 0), StageReadouts.Of(Stage.Cast, 0));
        KitInstrument marks = KitInstrument.Of(new TakenReading(ReadingPoint.CopperUp) { Volume = default(Entered<HotVolume>) });
        KitInstrument hydrometer = KitInstrument.Of(new TakenReading(ReadingPoint.CopperUp) { Gravity = default(Entered<SpecificGravity>) });
        return [(copperUp.LitresWithSolids, marks), (copperUp.Gravity, hydrometer), (knockOut.LitresWithSolids, marks), (cast.Gravity, hydrometer)];
    }

    /// <summary>Reads a gyle's truth with instruments that are off and scatter, and lets in what the gate lets in.</summary>
    private static (Ensemble Once, List<Reading> Taken) LetIn(BrewPlan brew, Ensemble truth, Ensemble before, (Readout Readout, KitInstrument With)[] read, int gyle)
    {
        Ensemble now = before;
        List<Reading> taken = [];
        foreach ((Readout readout, KitInstrument with) in read)
        {
            Reading clean = new(Invariant($"{gyle} {readout.Id}"), readout, 0, 0, with.Off);
            double shown = Assimilation.ForecastOf(truth, clean)[gyle], variance = with.Kind.Scatter.VarianceAt(shown);
            SeededRandom stream = SeededRandom.Of("coverage scatter", clean.Id);
            Reading reading = clean with { Value = shown + (Math.Sqrt(variance) * StandardNormal.Quantile((stream.Below(1 << 30) + 0.5) / (1 << 30))), ScatterVariance = variance };
            GatedReading gate = GatedReading.Of(reading.Value, variance, Assimilation.ForecastOf(now, reading));
            if (gate.Trust != ReadingTrust.SetAside)
            {
                taken.Add(reading with { ScatterVariance = gate.ErrorVariance });
                now = Assimilation.AtOnce(now, [taken[^1]], ReadingReach.Of(brew.Plan!, before, taken).Last(), "coverage");
            }
        }

        return (now, taken);
    }

    private sealed class Score
    {
        private readonly int[] _held = new int[3];
        private readonly double[] _sum = new double[3];
        private readonly int[] _tenths = new int[10];
        private int _count;

        public double Share(int when) => 100.0 * _held[when] / _count;

        public void Add(double truth, ReadOnlySpan<double> before, ReadOnlySpan<double> once, ReadOnlySpan<double> after)
        {
            if (!double.IsFinite(truth))
            {
                return;
            }

            _count++;
            Tell(0, before);
            Tell(1, once);
            Tell(2, after);
            double[] there = [.. before.ToArray().Where(double.IsFinite)];
            _tenths[Math.Min(9, 10 * there.Count(draw => draw < truth) / there.Length)]++;

            void Tell(int when, ReadOnlySpan<double> draws)
            {
                Quantiles band = Quantiles.Of([.. draws]);
                _held[when] += truth >= band.Low && truth <= band.High ? 1 : 0;
                _sum[when] += Scores.OfDraws(draws, truth);
            }
        }

        public string Row(Readout readout)
        {
            double even = _count / 10.0, squares = _tenths.Sum(tenth => (tenth - even) * (tenth - even) / even);
            return Invariant($"| {readout.Title} | {Share(0):0.0} % | {Share(1):0.0} % | {Share(2):0.0} % | {_sum[0] / _count:G3} | {_sum[2] / _count:G3} | {squares:0.0} |");
        }
    }
}
