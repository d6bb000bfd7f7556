using Gylebook.Engine.Drawing;
using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Fermenting;

/// <summary>Courses that a fermentation may take, drawn alike from what is known of it.</summary>
/// <remarks>
/// Gravities are kept as they are; all else as standard normal numbers of the same share, so that a smoother may move them by any amount and
/// they stay what they can be. Strata as everywhere: decision 0025.
/// </remarks>
internal sealed class CourseDraws
{
    private const int Pace = 2, Lag = 3, Tail = 4, Warmer = 5, Glucose = 6, Maltotriose = 7, MaltotriosePace = 8, Pitched = 9, Offset = 10;

    private static readonly string[] Names = ["start", "end", "pace", "lag", "tail", "warmer", "glucose", "maltotriose", "maltotriosePace", "pitched", "offset"];

    private readonly CoursePrior _prior;
    private readonly Distribution _lag;

    private CourseDraws(CoursePrior prior, double[][] columns)
    {
        _prior = prior;
        _lag = CourseWidths.Lag(prior.Temperature.CelsiusAt(0));
        Columns = columns;
    }

    /// <summary>A column a thing that is drawn, a number a draw.</summary>
    public double[][] Columns { get; }

    /// <summary>How many draws.</summary>
    public int Count => Columns[0].Length;

    /// <summary>Draws before any reading.</summary>
    public static CourseDraws Of(CoursePrior prior, string seed)
    {
        Strata strata = new(prior.StartGravities.Count);
        int[] order = new int[strata.Count];
        double[] Scores(string what)
        {
            SeededRandom.Of(seed, "course " + what).Shuffle(order);
            return [.. order.Select(place => strata.Normals[place])];
        }

        return new(prior, [[.. prior.StartGravities], [.. prior.EndGravities], .. Names.Skip(Pace).Select(Scores)]);
    }

    /// <summary>The same draws, to be moved without moving these.</summary>
    public CourseDraws Copy() => new(_prior, [.. Columns.Select(column => (double[])column.Clone())]);

    /// <summary>What the instrument shows too much in a draw, SG.</summary>
    public double OffsetOf(int draw) => _prior.InstrumentOffset * Columns[Offset][draw];

    /// <summary>The course of a draw.</summary>
    public FermentationCurve CurveOf(int draw)
    {
        SugarShares usual = SugarShares.OfMaltWort;
        return new FermentationCurve
        {
            StartGravity = Columns[0][draw] - _prior.Added,
            AddedGravity = _prior.Added,
            AddedHours = _prior.AddedHours,
            EndGravity = Columns[1][draw],
            Pace = Drawn(CourseWidths.Pace, Columns[Pace][draw]),
            LagHours = Drawn(_lag, Columns[Lag][draw]),
            Tail = Drawn(CourseWidths.Tail, Columns[Tail][draw]),
            WarmerBy = Drawn(CourseWidths.Warmer, Columns[Warmer][draw]),
            MaltotriosePace = Drawn(CourseWidths.MaltotriosePace, Columns[MaltotriosePace][draw]),
            MillionCells = _prior.MillionCells * Drawn(CourseWidths.Pitched, Columns[Pitched][draw]),
            Sugars = usual with
            {
                Glucose = usual.Glucose * Drawn(CourseWidths.Glucose, Columns[Glucose][draw]),
                Maltotriose = usual.Maltotriose * Drawn(CourseWidths.Maltotriose, Columns[Maltotriose][draw]),
            },
        };
    }

    private static double Drawn(Distribution about, double score) =>
        about.Quantile(Math.Clamp(StandardNormal.ShareBelow(score), 1e-12, 1 - 1e-12), score);
}
