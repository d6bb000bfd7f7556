using Gylebook.Engine.Drawing;
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
using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Tests.Shared;

namespace Gylebook.Benchmarks;

/// <summary>How often 90 % bands hold the truth, before and after readings, on gyles whose truth was drawn: what docs/science/uncertainty.md tells.</summary>
/// <remarks>
/// The truth of each gyle is a draw of everything that is drawn, what models leave open and how instruments are off included, with another seed
/// than the forecast's; a bent one is then changed by what the forecast does not know of. So this shows that the arithmetic is honest, not that the
/// widths are right. Read are litres and gravity at copper-up, litres at knock-out, gravity at cast, through the gate. The seeds are the
/// first that were tried.
/// </remarks>
internal sealed class Coverage
{
    private const int Gyles = 400, Draw = 1000;
    private const double Least = 50;

    private readonly BrewPlan _planned;
    private readonly Ensemble _truth, _before;
    private readonly ReadTruth _reader;

    private Coverage(string recipe, int gyles)
    {
        _planned = BrewPlanner.Plan(RecipeFile.Read(File.ReadAllText(recipe)).Value!, BuiltInKit.LanternShed, Larder.Empty);
        RunOutcome likely = RunOutcome.Likely(_planned.Plan!);
        Parameter[] besides = [.. BentTruth.All.Select(bent => bent.Next.With).Concat(ReadTruth.Read.Select(reading => reading.With)).SelectMany(with => with.Off.Parameters).DistinctBy(parameter => parameter.Id)];
        Readout[] all = [.. ReadTruth.Asked.Concat(ReadTruth.Read.Select(reading => reading.Readout)).Concat(BentTruth.All.Select(bent => bent.Next.Readout)).Distinct()];
        _truth = DrawnBrew.Of(_planned, likely, "coverage truth", gyles, besides, null, all);
        _before = DrawnBrew.Of(_planned, likely, "coverage forecast", Draw, besides, null, all);
        _reader = new ReadTruth(_planned.Plan!, _before);
    }

    /// <summary>Prints the table: share of truths within the band, and the mean score, before and after; and whether truths spread evenly over the draws.</summary>
    /// <param name="recipe">Path of the recipe.</param>
    public static void Print(string recipe)
    {
        Coverage coverage = new(recipe, Gyles);
        Told told = coverage.Of(coverage._truth, null);
        Console.WriteLine(Invariant($"{Path.GetFileNameWithoutExtension(recipe)}, {Gyles} gyles, {Draw} draws; set aside {told.Aside} of {Gyles * ReadTruth.Read.Count} readings"));
        Console.WriteLine("| Number | before | at once | after four steps | score before | score after | χ² before |");
        Console.WriteLine("|---|---|---|---|---|---|---|");
        Console.WriteLine(string.Join('\n', ReadTruth.Asked.Zip(told.Scores, (readout, score) => score.Row(readout))));
        Console.WriteLine(Invariant($"mean: before {told.Scores.Average(score => score.Share(0)):0.0} %, at once {told.Scores.Average(score => score.Share(1)):0.0} %, after {told.Scores.Average(score => score.Share(2)):0.0} %"));
    }

    /// <summary>Prints the table of bent truths: coverage of each number before readings and after four steps, and how often the next reading names what is wrong.</summary>
    /// <param name="recipe">Path of the recipe.</param>
    public static void PrintBent(string recipe)
    {
        Coverage coverage = new(recipe, Gyles);
        Console.WriteLine(Invariant($"{Path.GetFileNameWithoutExtension(recipe)}, {Gyles} gyles, {Draw} draws; before / after readings, per cent; below {Least:0} in bold"));
        Console.WriteLine($"| Bent | {string.Join(" | ", ReadTruth.Asked.Select(readout => readout.Title))} | next reading | mean z | beyond 2 | set aside | named |");
        Console.WriteLine($"|---|{string.Concat(ReadTruth.Asked.Select(_ => "---|"))}---|---|---|---|---|");
        foreach (BentTruth bent in BentTruth.All)
        {
            Draws draws = coverage._truth.Draws.Copy();
            bent.Bend(coverage._planned, draws);
            Told told = coverage.Of(Ensemble.Of(coverage._planned.Plan!, draws, coverage._truth.Readouts, coverage._truth.Terms, Environment.ProcessorCount), bent);
            string cells = string.Join(" | ", told.Scores.Select(score => $"{Cell(score.Share(0))} / {Cell(score.Share(2))}"));
            Console.WriteLine($"| {bent.Words} | {cells} | {bent.Next.Said} | {told.NextSaid}{told.Percent(told.Named)} |");
        }
    }

    private static string Cell(double share) => share < Least ? Invariant($"**{share:0}**") : Invariant($"{share:0}");

    private Told Of(Ensemble truth, BentTruth? bent)
    {
        CoverageScore[] scores = [.. ReadTruth.Asked.Select(_ => new CoverageScore())];
        List<GatedReading> next = [];
        int named = 0;
        int aside = 0;
        for (int gyle = 0; gyle < truth.Draws.Count; gyle++)
        {
            (Ensemble once, IReadOnlyList<Reading> taken) = _reader.LetIn(truth, gyle, gyle);
            aside += ReadTruth.Read.Count - taken.Count;
            Ensemble after = _reader.After(taken);
            for (int i = 0; i < scores.Length; i++)
            {
                Readout asked = ReadTruth.Asked[i];
                scores[i].Add(truth[asked][gyle], _before[asked], once[asked], after[asked]);
            }

            if (bent is not null && double.IsFinite(truth[bent.Next.Readout][gyle]))
            {
                Reading reading = ReadTruth.Off(truth, gyle, gyle, bent.Next.Readout, bent.Next.With);
                next.Add(GatedReading.Of(reading.Value, reading.ScatterVariance, Assimilation.ForecastOf(after, reading)));
                named += IsNamed(bent, reading, next[^1], after) ? 1 : 0;
            }
        }

        return new(scores, aside, next, named);
    }

    /// <summary>Whether a stall is said, or the figure that took the loss is told as larger than it was thought to be.</summary>
    private bool IsNamed(BentTruth bent, Reading reading, GatedReading gate, Ensemble after)
    {
        if (reading.Readout.Place.Stage == Stage.Ferment)
        {
            return StallCheck.ChanceOf(gate, after.QuantilesOf(BeerReadouts.OriginalGravity).Middle) >= StallCheck.WorthSaying;
        }

        if (bent.Blamed is not { } blamed || gate.Trust == ReadingTrust.SetAside)
        {
            return gate.Trust == ReadingTrust.SetAside;
        }

        Reading taken = reading with { ScatterVariance = gate.ErrorVariance };
        Ensemble then = Assimilation.AtOnce(after, [taken], ReadingReach.Of(_planned.Plan!, after, [taken]), "coverage");
        return LearnedParameter.Of(_before.Draws, then.Draws).Any(learned => learned.Place == (int)blamed && learned.Moved >= LearnedParameter.Something);
    }

    /// <summary>What came of all gyles.</summary>
    /// <param name="Scores">By number.</param>
    /// <param name="Aside">Readings that were set aside.</param>
    /// <param name="Next">The next reading of each gyle, held against its forecast.</param>
    /// <param name="Named">In how many of them what is bent is named.</param>
    private sealed record Told(CoverageScore[] Scores, int Aside, List<GatedReading> Next, int Named)
    {
        /// <summary>Cells of what the next reading says.</summary>
        public string NextSaid => Invariant($"{Math.Round(Next.Average(gate => gate.Off), 1) + 0.0:+0.0;−0.0;0.0} | {Percent(Next.Count(gate => gate.Trust != ReadingTrust.AsItIs))} | {Percent(Next.Count(gate => gate.Trust == ReadingTrust.SetAside))} | ");

        /// <summary>A count of gyles in which there was a next reading, as a share.</summary>
        public string Percent(int count) => Invariant($"{100.0 * count / Next.Count:0} %");
    }
}

/// <summary>How often the bands of one number held the truth, and how far off they were.</summary>
internal sealed class CoverageScore
{
    private readonly int[] _held = new int[3];
    private readonly double[] _sum = new double[3];
    private readonly int[] _tenths = new int[10];
    private int _count;

    /// <summary>Share of truths within the band, per cent: before readings, at once after them, after four steps.</summary>
    public double Share(int when) => 100.0 * _held[when] / _count;

    /// <summary>Counts a gyle in.</summary>
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

    /// <summary>Its row of the table.</summary>
    public string Row(Readout readout)
    {
        double even = _count / 10.0, squares = _tenths.Sum(tenth => (tenth - even) * (tenth - even) / even);
        return Invariant($"| {readout.Title} | {Share(0):0.0} % | {Share(1):0.0} % | {Share(2):0.0} % | {_sum[0] / _count:G3} | {_sum[2] / _count:G3} | {squares:0.0} |");
    }
}
