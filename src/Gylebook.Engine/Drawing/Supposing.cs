using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Drawing;

/// <summary>Draws that a hand makes: some figures stand where they are put, all others at their medians.</summary>
/// <remarks>
/// A figure is put by its way: −1 is its 5 %, 0 its median to the last bit, 1 its 95 %, and between them the figure goes in a straight line.
/// Figures that take one draw go the same way; of a sum, and of the parts of a label, the others give way, so that what was put stays put.
/// </remarks>
/// <param name="draws">Draws of the plan's parameters: between their ends the figures go.</param>
public sealed class Supposing(Draws draws)
{
    private readonly Dictionary<int, Quantiles> _ends = [];

    /// <summary>From where to where a figure goes: the 5 and the 95 % of its draws, and never past its median.</summary>
    public (double Low, double High) EndsOf(int place)
    {
        double median = draws.Parameters[place].Median;
        if (!_ends.TryGetValue(place, out Quantiles ends))
        {
            _ends[place] = ends = draws[place] is { Length: > 0 } column ? Quantiles.Of([.. column]) : new Quantiles(median, median, median);
        }

        return (Math.Min(ends.Low, median), Math.Max(ends.High, median));
    }

    /// <summary>The figure at a way.</summary>
    /// <param name="place">Which parameter.</param>
    /// <param name="way">From −1 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The way is not from −1 to 1.</exception>
    public double At(int place, double way)
    {
        if (!(way is >= -1 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(way), way, "Expected -1 to 1.");
        }

        double median = draws.Parameters[place].Median;
        (double low, double high) = EndsOf(place);
        return way switch
        {
            0 => median,
            -1 => low,
            1 => high,
            < 0 => median + (way * (median - low)),
            _ => median + (way * (high - median)),
        };
    }

    /// <summary>The draw with figures at those ways; all medians when none is off its own.</summary>
    /// <param name="ways">By place; of figures that hang together, one.</param>
    public double[] Draw(IReadOnlyDictionary<int, double> ways)
    {
        ArgumentNullException.ThrowIfNull(ways);
        double[] values = [.. draws.Parameters.Select(parameter => parameter.Median)];
        HashSet<string> moved = new(StringComparer.Ordinal);
        HashSet<int> still = [];
        foreach ((int place, double way) in ways.Where(entry => entry.Value != 0))
        {
            string bond = Bonds.NameOf(draws.Parameters[place]);
            moved.Add(bond);
            foreach (int mate in TakesOneDraw(place) ? MatesOf(bond) : [place])
            {
                values[mate] = At(mate, way);
                still.Add(mate);
            }
        }

        return moved.Count == 0 ? values : Bonds.Held(draws, values, moved, still);
    }

    private bool TakesOneDraw(int place) => draws.Parameters[place].Prior is Prior.Spread { Tie.Kind: TieKind.One };

    private int[] MatesOf(string bond) => [.. draws.Moving.ToArray().Where(place => Bonds.NameOf(draws.Parameters[place]) == bond)];
}
