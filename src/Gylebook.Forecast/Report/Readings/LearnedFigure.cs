using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readings;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>A figure that readings taught something about.</summary>
/// <param name="Figure">Before and after.</param>
/// <param name="Words">As a brewer says it.</param>
public sealed record LearnedFigure(LearnedParameter Figure, string Words)
{
    /// <summary>In words: "how much boils off in an hour: 4.6 L/h rather than 4.0 (4.1 to 5.1; before 2.7 to 5.9)".</summary>
    public string Sentence
    {
        get
        {
            string unit = Figure.Parameter.Unit is "1" or "kg/kg" ? "" : $" {Figure.Parameter.Unit}";
            string ends = Invariant($"({Said(Figure.After.Low)} to {Said(Figure.After.High)}; before {Said(Figure.Before.Low)} to {Said(Figure.Before.High)})");
            return Math.Abs(Figure.Moved) >= LearnedParameter.Something
                ? $"{Words}: {Said(Figure.After.Middle)}{unit} rather than {Said(Figure.Before.Middle)} {ends}"
                : $"{Words}: {Said(Figure.After.Middle)}{unit} still, surer {ends}";
        }
    }

    internal static LearnedFigure Of(LearnedParameter figure) => new(figure, ParameterWords.Of(figure.Parameter.Id) ?? figure.Parameter.Id);

    /// <summary>Three digits that count, or four places after the point at most.</summary>
    private static string Said(double value) => Invariant($"{Math.Round(value, Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Max(1e-9, Math.Abs(value)))), 0, 4)) + 0.0:0.####}");
}

/// <summary>Two figures that the readings cannot tell apart: what one has more, the other has less, or likewise.</summary>
/// <param name="One">One of them.</param>
/// <param name="Other">The other.</param>
/// <param name="Correlation">Of their draws, after the readings.</param>
/// <param name="Parting">What to read to part them; null when nothing we know of would.</param>
public sealed record InseparablePair(string One, string Other, double Correlation, string? Parting)
{
    private const double Tied = 0.7, PartsBy = 0.1;

    /// <summary>In words.</summary>
    public string Sentence =>
        Invariant($"{One} and {Other}: these readings cannot tell them apart ({Correlation:+0.00;−0.00}){(Parting is null ? "" : $"; {Parting} would")}");

    /// <summary>The pairs among what was learned.</summary>
    internal static IReadOnlyList<InseparablePair> Of(IReadOnlyList<LearnedParameter> learned, Ensemble after)
    {
        List<InseparablePair> pairs = [];
        for (int i = 0; i < learned.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                double[] one = after.Draws[learned[j].Place].ToArray(), other = after.Draws[learned[i].Place].ToArray();
                double tied = Left(one, other, null, 0);
                if (learned[i].Bond != learned[j].Bond && Math.Abs(tied) > Tied)
                {
                    pairs.Add(new(LearnedFigure.Of(learned[j]).Words, LearnedFigure.Of(learned[i]).Words, tied, PartingOf(one, other, tied, after)));
                }
            }
        }

        return [.. pairs.OrderByDescending(pair => Math.Abs(pair.Correlation))];
    }

    /// <summary>The reading after which the two would hang together least.</summary>
    private static string? PartingOf(double[] one, double[] other, double tied, Ensemble after)
    {
        (string Words, double Left)? best = null;
        foreach ((ReadingKind kind, string words, double[] read) in Readable(after).Where(readable => readable.Read.Any(double.IsFinite)))
        {
            double left = Left(one, other, read, kind.Instrument.VarianceAt(read.Where(double.IsFinite).DefaultIfEmpty(0).Average()));
            if (Math.Abs(left) < Math.Abs(tied) - PartsBy && (best is null || Math.Abs(left) < Math.Abs(best.Value.Left)))
            {
                best = (words, left);
            }
        }

        return best?.Words;
    }

    private static IEnumerable<(ReadingKind Kind, string Words, double[] Read)> Readable(Ensemble after)
    {
        foreach (ReadingKind kind in Instruments.Readings)
        {
            foreach (var readout in after.Readouts.Where(readout => kind.IsOf(readout.Id)))
            {
                yield return (kind, kind.Words, after[readout].ToArray());
            }

            foreach (int place in after.Draws.Moving.ToArray().Where(place => kind.IsOf(after.Draws.Parameters[place].Id)))
            {
                yield return (kind, kind.Said(after.Draws.Parameters[place].Id), after.Draws[place].ToArray());
            }
        }
    }

    /// <summary>Their correlation, once something is read with that error variance; as it is without.</summary>
    private static double Left(double[] one, double[] other, double[]? read, double variance)
    {
        int[] whole = [.. Enumerable.Range(0, one.Length).Where(draw => read is null || double.IsFinite(read[draw]))];
        double both = Together(one, other), first = Together(one, one), second = Together(other, other);
        if (read is not null)
        {
            double told = Together(read, read) + variance, withOne = Together(one, read), withOther = Together(other, read);
            (both, first, second) = (both - (withOne * withOther / told), first - (withOne * withOne / told), second - (withOther * withOther / told));
        }

        return both / Math.Sqrt(first * second);

        double Together(double[] a, double[] b)
        {
            double meanA = whole.Average(draw => a[draw]), meanB = whole.Average(draw => b[draw]);
            return whole.Sum(draw => (a[draw] - meanA) * (b[draw] - meanB)) / (whole.Length - 1);
        }
    }
}
