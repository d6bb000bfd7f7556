namespace Gylebook.Science.Numerics.Distributions;

/// <summary>The shape of what is not known about a figure.</summary>
public enum Family
{
    /// <summary>Known: every draw is the median.</summary>
    Point,

    /// <summary>Has a sign, or lies far from any bound. Spread: standard deviation, in the figure's unit.</summary>
    Normal,

    /// <summary>A positive amount or rate. Spread: standard deviation of its natural logarithm.</summary>
    LogNormal,

    /// <summary>A share between two bounds. Spread: standard deviation of ln((x − low)/(high − x)).</summary>
    LogitNormal,

    /// <summary>A guess between two ends, likeliest at the median. No spread.</summary>
    Triangular,

    /// <summary>Anywhere between two ends alike. No spread.</summary>
    Uniform,

    /// <summary>Anywhere between two ends alike, counted in ratios. No spread.</summary>
    LogUniform,
}

/// <summary>A median, a family and a width. The draw at one half is the median itself, to the last bit.</summary>
/// <remarks>
/// <para>Valid for: a median from low to high; above nought for the families of logarithms; strictly inside for the logit.</para>
/// <para>Notes: half of the draws lie on either side of the median, always. A bound therefore cuts its own side alone, and
/// a triangle or a uniform whose median is not its middle has one slope on each side. Where the median sits on a
/// bound, that half of the draws is the median.</para>
/// </remarks>
/// <param name="Family">Its shape.</param>
/// <param name="Median">The figure the engine takes when it does not draw.</param>
/// <param name="Spread">Standard deviation, on the family's own scale.</param>
/// <param name="Low">Least it can be; minus infinity for no bound.</param>
/// <param name="High">Most it can be; infinity for no bound.</param>
public readonly record struct Distribution(Family Family, double Median, double Spread, double Low, double High)
{
    /// <summary>The figure below which that share of draws lies.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and below 1.</exception>
    public double Quantile(double share)
    {
        if (!(share > 0 && share < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "share must be above 0 and below 1.");
        }

        return Quantile(share, StandardNormal.Quantile(share));
    }

    /// <summary>The same for who asks many times for the same shares.</summary>
    /// <param name="share">Above 0 and below 1; not looked at again.</param>
    /// <param name="z">What of a standard normal distribution lies below that share.</param>
    public double Quantile(double share, double z) => Cut is { } cut ? Drawn(share, cut.Normal(share)) : Drawn(share, z);

    /// <summary>The figures at many shares.</summary>
    /// <param name="shares">Above 0 and below 1; not looked at again.</param>
    /// <param name="normals">What of a standard normal distribution lies below each.</param>
    /// <param name="figures">Written over.</param>
    public void Fill(ReadOnlySpan<double> shares, ReadOnlySpan<double> normals, Span<double> figures)
    {
        if (Cut is { } cut)
        {
            for (int i = 0; i < figures.Length; i++)
            {
                figures[i] = Drawn(shares[i], cut.Normal(shares[i]));
            }
        }
        else if (Family == Family.LogNormal)
        {
            for (int i = 0; i < figures.Length; i++)
            {
                figures[i] = Median * Math.Exp(Spread * normals[i]);
            }
        }
        else
        {
            for (int i = 0; i < figures.Length; i++)
            {
                figures[i] = Drawn(shares[i], normals[i]);
            }
        }
    }

    private double Drawn(double share, double z)
    {
        // Before any transformation: there and back would move the last digits.
        if (share == 0.5)
        {
            return Median;
        }

        double drawn = Family switch
        {
            Family.Normal => Median + (Spread * z),
            Family.LogNormal => Median * Math.Exp(Spread * z),
            Family.LogitNormal => Logistic(Spread * z),
            Family.Triangular => Median + Side(share, 1 - Math.Sqrt(2 * Math.Min(share, 1 - share))),
            Family.Uniform => Median + Side(share, Math.Abs((2 * share) - 1)),
            Family.LogUniform => Median * Math.Pow((share < 0.5 ? Low : High) / Median, Math.Abs((2 * share) - 1)),
            _ => Median,
        };

        // The last rounding may step over an end by one digit.
        return Math.Clamp(drawn, Low, High);
    }

    /// <summary>What the ends leave of a standard normal distribution; null where they are too far to cut a tail that a double can tell.</summary>
    private Kept? Cut
    {
        get
        {
            (double low, double high) = Family switch
            {
                Family.Normal => ((Low - Median) / Spread, (High - Median) / Spread),
                Family.LogNormal when Median > 0 => (Low > 0 ? Math.Log(Low / Median) / Spread : -Far, double.IsInfinity(High) ? Far : Math.Log(High / Median) / Spread),
                _ => (-Far, Far),
            };
            return low <= -Far && high >= Far ? null : new Kept(StandardNormal.ShareBelow(low), StandardNormal.ShareBelow(high));
        }
    }

    /// <summary>Standard deviations beyond which less than the last bit of one lies.</summary>
    internal const double Far = 8.3;

    /// <summary>A standard normal distribution with both tails cut, each on its own side of the median.</summary>
    private readonly record struct Kept(double Least, double Most)
    {
        public double Normal(double share) => StandardNormal.Quantile(
            share < 0.5 ? Least + (2 * share * (0.5 - Least)) : 0.5 + (((2 * share) - 1) * (Most - 0.5)));
    }

    private double Side(double share, double way) => way * (share < 0.5 ? Low - Median : High - Median);

    /// <summary>From low to high: at nought the median's own odds.</summary>
    private double Logistic(double moved)
    {
        double odds = (Median - Low) / (High - Median) * Math.Exp(moved);
        return double.IsPositiveInfinity(odds) ? High : Low + ((High - Low) * odds / (1 + odds));
    }
}
