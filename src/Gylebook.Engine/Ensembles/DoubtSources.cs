using Gylebook.Engine.Drawing;
using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Ensembles;

/// <summary>Something that is drawn by itself: one parameter, or several that hang together.</summary>
/// <param name="Id">The parameter's id, or the first one's.</param>
/// <param name="Parameters">Their places among the draws.</param>
public sealed record DoubtSource(string Id, IReadOnlyList<int> Parameters);

/// <summary>How much of a number's variance a source explains.</summary>
/// <param name="Source">Which.</param>
/// <param name="Part">Share of the variance, from 0 to 1.</param>
/// <param name="Shift">By how much its leaning to one side moves the number's mean from where it is at the medians; 0 for several that hang together.</param>
/// <param name="Lead">Place of the parameter that alone explains most of it; one of the source's own.</param>
public readonly record struct VarianceShare(DoubtSource Source, double Part, double Shift, int Lead);

/// <summary>Where the doubt about a number comes from: shares of its variance, by what is drawn by itself.</summary>
/// <remarks>
/// <para>Source: for independent columns the share of a straight-line model is the squared correlation; of columns that hang together, their
/// multiple correlation, by orthogonal columns (Gram and Schmidt).</para>
/// <para>Valid for: numbers that are nearly a sum of what each source does; what bends, or where sources work together, is in no share, and is
/// left over.</para>
/// <para>Notes: idle sources show something by chance. What is below <see cref="Floor"/> is too small to tell, and left out.</para>
/// </remarks>
public sealed class DoubtSources
{
    private const double MeansNothing = 1e-9;

    private readonly Draws _draws;
    private readonly (DoubtSource Source, double[][] Basis, double Lean)[] _sources;
    private readonly int _count;

    /// <summary>The sources of some draws.</summary>
    public DoubtSources(Draws draws)
    {
        ArgumentNullException.ThrowIfNull(draws);
        _draws = draws;
        _count = draws.Count;
        _sources = [.. draws.Moving.ToArray()
            .GroupBy(place => Bonds.NameOf(draws.Parameters[place]))
            .Select(bond => new DoubtSource(draws.Parameters[bond.First()].Id, [.. bond]))
            .Select(source => (source, BasisOf(draws, source), LeanOf(draws, source)))
            .Where(source => source.Item2.Length > 0)];
    }

    /// <summary>Share of the variance that an idle source of so many columns passes by chance once in twenty times.</summary>
    /// <param name="draws">How many draws there are.</param>
    /// <param name="columns">How many columns the source has.</param>
    public static double Floor(int draws, int columns = 1)
    {
        // 95 % of chi-squared: 3.84 for one; Wilson and Hilferty's cube for more.
        double spread = 2.0 / (9 * columns);
        return (columns == 1 ? 3.84 : columns * Math.Pow(1 - spread + (1.645 * Math.Sqrt(spread)), 3)) / draws;
    }

    /// <summary>The shares of a number's variance that are large enough to tell, the largest first.</summary>
    /// <param name="values">The number, a draw each; a draw without one counts as the mean.</param>
    public IReadOnlyList<VarianceShare> SharesOf(ReadOnlySpan<double> values)
    {
        double[] centred = Centred(values);
        double all = Dot(centred, centred);
        if (!(all > 0))
        {
            return [];
        }

        List<VarianceShare> shares = [];
        foreach ((DoubtSource source, double[][] basis, double lean) in _sources)
        {
            double part = 0, shift = 0;
            foreach (double[] column in basis)
            {
                double along = Dot(centred, column);
                part += along * along / all;
                shift = along * lean;
            }

            if (part >= Floor(_count, basis.Length))
            {
                shares.Add(new VarianceShare(source, part, shift, LeadOf(source, centred)));
            }
        }

        return [.. shares.OrderByDescending(share => share.Part)];
    }

    /// <summary>Of parameters that hang together, the one whose own column goes along best; what is left by the others has no width of its own and leads nowhere.</summary>
    private int LeadOf(DoubtSource source, double[] centred) => source.Parameters is [int alone] ? alone : source.Parameters.MaxBy(place =>
    {
        if (_draws.Parameters[place].Prior is Prior.Spread { Between.Family: Family.Point })
        {
            return -1;
        }

        double[] column = Centred(_draws[place]);
        double along = Dot(centred, column), length = Dot(column, column);
        return length > 0 ? along * along / length : 0;
    });

    /// <summary>Columns of length one at right angles that span the source's own.</summary>
    private static double[][] BasisOf(Draws draws, DoubtSource source)
    {
        List<double[]> basis = [];
        foreach (int place in source.Parameters)
        {
            double[] column = Centred(draws[place]);
            double before = Dot(column, column);
            foreach (double[] other in basis)
            {
                double along = Dot(column, other);
                for (int i = 0; i < column.Length; i++)
                {
                    column[i] -= along * other[i];
                }
            }

            double left = Dot(column, column);
            if (left > MeansNothing * before)
            {
                double length = Math.Sqrt(left);
                basis.Add([.. column.Select(value => value / length)]);
            }
        }

        return [.. basis];
    }

    /// <summary>How far the mean of a parameter lies from its median, in lengths of its column: what it leans to one side.</summary>
    private static double LeanOf(Draws draws, DoubtSource source)
    {
        if (source.Parameters is not [int place])
        {
            return 0;
        }

        double[] column = Centred(draws[place]);
        double length = Math.Sqrt(Dot(column, column));
        return length > 0 ? (draws[place][0] - column[0] - draws.Parameters[place].Median) / length : 0;
    }

    private static double[] Centred(ReadOnlySpan<double> values)
    {
        double sum = 0;
        int there = 0;
        foreach (double value in values)
        {
            (sum, there) = double.IsFinite(value) ? (sum + value, there + 1) : (sum, there);
        }

        double[] centred = new double[values.Length];
        for (int i = 0; i < centred.Length; i++)
        {
            centred[i] = double.IsFinite(values[i]) ? values[i] - (sum / there) : 0;
        }

        return centred;
    }

    private static double Dot(double[] one, double[] other)
    {
        double sum = 0;
        for (int i = 0; i < one.Length; i++)
        {
            sum += one[i] * other[i];
        }

        return sum;
    }
}
