using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Drawing;

/// <summary>Shares from nought to one, as fine as asked: the middles of strata of one width, with the standard normal number of each.</summary>
public sealed class Strata
{
    /// <summary>So many of them.</summary>
    public Strata(int count)
    {
        Shares = new double[count];
        Normals = new double[count];
        for (int i = 0; i < count; i++)
        {
            Shares[i] = (i + 0.5) / count;
            Normals[i] = StandardNormal.Quantile(Shares[i]);
        }
    }

    /// <summary>How many.</summary>
    public int Count => Shares.Length;

    /// <summary>The middles, from the least.</summary>
    public double[] Shares { get; }

    /// <summary>What of a standard normal distribution lies below each.</summary>
    public double[] Normals { get; }
}

/// <summary>Says for each draw in which stratum it stands.</summary>
/// <param name="what">Of what: a parameter's id, and which of its spreads.</param>
/// <param name="places">Written over.</param>
internal delegate void StrataOf(string what, Span<int> places);
