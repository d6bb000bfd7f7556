using Gylebook.Engine.Drawing;

namespace Gylebook.Engine.Readings;

/// <summary>What one finished gyle says of a parameter, on the parameter's own scale.</summary>
/// <param name="Gyle">Which gyle, and by which readings.</param>
/// <param name="Value">What it was in that gyle.</param>
/// <param name="Variance">How sure that is.</param>
public sealed record GyleEvidence(string Gyle, double Value, double Variance)
{
    /// <summary>How much of the variance comes from instruments that are off in the same way in every gyle: no number of gyles takes it away.</summary>
    public double SharedVariance { get; init; }

    /// <summary>What is this gyle's alone.</summary>
    public double OwnVariance => Variance - SharedVariance;

    /// <summary>What the readings of a gyle added to its draws: the difference of two normal beliefs. Null where they taught nothing about it.</summary>
    /// <param name="gyle">The gyle's name.</param>
    /// <param name="before">Its draws before readings.</param>
    /// <param name="after">The same after.</param>
    /// <param name="place">Which parameter.</param>
    /// <param name="instruments">Places, after the readings, of what the same instruments show too much in every gyle; none when nobody asks.</param>
    public static GyleEvidence? Of(string gyle, Draws before, Draws after, int place, params IReadOnlyList<int> instruments)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        Scale scale = Scale.Of(before.Parameters[place], before[place]);
        (double wasAt, double was) = Spread(before[place], scale);
        (double isAt, double now) = Spread(after[place], scale);
        if (!(was > 0) || Math.Sqrt(now / was) > 1 - LearnedParameter.Something)
        {
            return null;
        }

        double told = (1 / now) - (1 / was);
        double shared = ExplainedBy([.. after[place].ToArray().Select(scale.To)], [.. instruments.Select(instrument => after[instrument].ToArray())]);
        return new(gyle, ((isAt / now) - (wasAt / was)) / told, 1 / told) { SharedVariance = shared / told };
    }

    /// <summary>Share of a column's variance that a straight line through other columns explains: the squared multiple correlation, by taking each in turn out of those after it.</summary>
    private static double ExplainedBy(double[] column, double[][] others)
    {
        List<double[]> taken = [];
        double[] from = FromMean(column);
        double whole = Product(from, from), explained = 0;
        foreach (double[] other in others)
        {
            double[] left = FromMean(other);
            double was = Product(left, left);
            foreach (double[] one in taken)
            {
                double share = Product(left, one) / Product(one, one);
                left = [.. left.Zip(one, (mine, its) => mine - (share * its))];
            }

            double alone = Product(left, left), with = Product(from, left);
            if (alone > NothingLeft * was)
            {
                taken.Add(left);
                explained += with * with / alone;
            }
        }

        return whole > 0 ? Math.Min(1, explained / whole) : 0;
    }

    /// <summary>A column of which less is left by those before it says what they say.</summary>
    private const double NothingLeft = 1e-9;

    private static double[] FromMean(double[] column)
    {
        double mean = column.Average();
        return [.. column.Select(value => value - mean)];
    }

    private static double Product(double[] one, double[] other) => one.Zip(other, (a, b) => a * b).Sum();

    private static (double Mean, double Variance) Spread(ReadOnlySpan<double> draws, Scale scale)
    {
        double mean = 0, squares = 0;
        for (int i = 0; i < draws.Length; i++)
        {
            double value = scale.To(draws[i]), from = value - mean;
            mean += from / (i + 1);
            squares += from * (value - mean);
        }

        return (mean, squares / (draws.Length - 1));
    }
}
