namespace Gylebook.Gyles.Cellar;

/// <summary>What is odd in a series of one device: pure functions over its points, in the order of time.</summary>
/// <remarks>
/// <para>Spikes: the identifier named after Hampel: a value is odd where it lies more than three robust standard deviations (1.4826 times the
/// median distance from the median) from the median of its neighbours. Source: L. Davies and U. Gather, Journal of the American Statistical
/// Association 88:782 (1993); from memory. Neighbours here are three on each side.</para>
/// <para>Least distances, the half day of a stuck float and the length of a silence are judged, no source.</para>
/// </remarks>
public static class SeriesFlags
{
    /// <summary>Neighbours on each side that a value is held against.</summary>
    public const int Neighbours = 3;

    /// <summary>A gravity nearer than that to its neighbours is no spike, SG: five times the scatter of a floating sensor in <c>data/instruments.csv</c>, so that its own noise is called one once in 100,000 readings.</summary>
    public const double LeastSpikeSg = 0.005;

    /// <summary>A temperature nearer than that to its neighbours is no spike, K.</summary>
    public const double LeastSpikeKelvin = 2;

    /// <summary>How far the temperature has to move for a gravity that does not to be odd, K.</summary>
    public const double MovedKelvin = 1;

    /// <summary>How far another instrument's gravity has to move, SG.</summary>
    public const double MovedSg = 0.003;

    /// <summary>A silence is at least that long.</summary>
    public static TimeSpan LeastSilence { get; } = TimeSpan.FromHours(2);

    /// <summary>A float that shows one value for less is not called stuck.</summary>
    public static TimeSpan LeastStuck { get; } = TimeSpan.FromHours(12);

    /// <summary>And it has to have shown it so many times.</summary>
    public const int LeastStuckPoints = 6;

    private const int LeastNeighbours = 4;
    private const double Deviations = 3, SdOfMedianDistance = 1.4826, SilentIntervals = 6, SameSg = 1e-7;

    /// <summary>Marks gravities and temperatures that stand alone.</summary>
    public static void MarkSpikes(CellarPoint[] points)
    {
        ArgumentNullException.ThrowIfNull(points);
        MarkSpikes(points, point => point.GravitySg, LeastSpikeSg, Oddities.Spike);
        MarkSpikes(points, point => point.TemperatureC, LeastSpikeKelvin, Oddities.TemperatureSpike);
    }

    /// <summary>Marks runs of one and the same gravity while the temperature, or somebody else's gravity, moved.</summary>
    /// <param name="points">Of one device.</param>
    /// <param name="others">Gravities of hands and other devices, in the order of time.</param>
    public static void MarkStuck(CellarPoint[] points, IReadOnlyList<CellarPoint> others)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(others);
        int[] read = [.. Enumerable.Range(0, points.Length).Where(i => points[i].GravitySg is not null)];
        for (int from = 0, to; from < read.Length; from = to)
        {
            to = from + 1;
            double shown = points[read[from]].GravitySg!.Value;
            while (to < read.Length && Math.Abs(points[read[to]].GravitySg!.Value - shown) < SameSg)
            {
                to++;
            }

            if (to - from >= LeastStuckPoints && IsStuck(points.AsSpan(read[from], read[to - 1] - read[from] + 1), others))
            {
                foreach (int i in read[from..to])
                {
                    points[i] = points[i] with { Flags = points[i].Flags | Oddities.Stuck };
                }
            }
        }
    }

    /// <summary>Marks what was taken when there was no beer to take it from.</summary>
    /// <param name="points">Any.</param>
    /// <param name="span">When the beer stood in the fermenter, as far as that is known.</param>
    /// <param name="now">The time.</param>
    public static void MarkDays(CellarPoint[] points, CellarSpan span, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(points);
        for (int i = 0; i < points.Length; i++)
        {
            DateTimeOffset at = points[i].At;
            Oddities wrong = (at < span.Pitched ? Oddities.BeforePitch : 0)
                | (at > span.Packaged ? Oddities.AfterPackage : 0)
                | (at > now + DeviceClock.Allowed ? Oddities.InFuture : 0);
            points[i] = wrong == 0 ? points[i] : points[i] with { Flags = points[i].Flags | wrong };
        }
    }

    /// <summary>Marks the first point after each silence: longer than two hours, and than six times the usual distance.</summary>
    /// <returns>The silences.</returns>
    public static IReadOnlyList<Silence> MarkSilences(CellarPoint[] points)
    {
        ArgumentNullException.ThrowIfNull(points);
        List<Silence> silences = [];
        if (points.Length < 3)
        {
            return silences;
        }

        TimeSpan least = LongestUsual(points);
        for (int i = 1; i < points.Length; i++)
        {
            if (points[i].At - points[i - 1].At > least)
            {
                points[i] = points[i] with { Flags = points[i].Flags | Oddities.AfterSilence };
                silences.Add(new(points[i].Instrument, points[i - 1].At, points[i].At));
            }
        }

        return silences;
    }

    /// <summary>The longest distance between two points that is no silence.</summary>
    public static TimeSpan LongestUsual(IReadOnlyList<CellarPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 2)
        {
            return LeastSilence;
        }

        double usual = DeviceClock.Median([.. Enumerable.Range(1, points.Count - 1).Select(i => (points[i].At - points[i - 1].At).TotalSeconds)]);
        return TimeSpan.FromSeconds(Math.Max(LeastSilence.TotalSeconds, SilentIntervals * usual));
    }

    private static bool IsStuck(ReadOnlySpan<CellarPoint> run, IReadOnlyList<CellarPoint> others)
    {
        (DateTimeOffset from, DateTimeOffset to) = (run[0].At, run[^1].At);
        if (to - from < LeastStuck)
        {
            return false;
        }

        (double coldest, double warmest) = (double.MaxValue, double.MinValue);
        foreach (CellarPoint point in run)
        {
            if (point.TemperatureC is { } celsius && !point.Flags.HasFlag(Oddities.TemperatureSpike))
            {
                (coldest, warmest) = (Math.Min(coldest, celsius), Math.Max(warmest, celsius));
            }
        }

        double[] said = [.. others.Where(other => other.At >= from && other.At <= to && other.GravitySg is not null && !other.Flags.HasFlag(Oddities.Spike)).Select(other => other.GravitySg!.Value)];
        return warmest - coldest >= MovedKelvin || (said.Length > 1 && said.Max() - said.Min() >= MovedSg);
    }

    private static void MarkSpikes(CellarPoint[] points, Func<CellarPoint, double?> value, double least, Oddities flag)
    {
        int[] read = [.. Enumerable.Range(0, points.Length).Where(i => value(points[i]) is not null)];
        double[] values = [.. read.Select(i => value(points[i])!.Value)];
        Span<double> near = stackalloc double[2 * Neighbours];
        for (int i = 0; i < values.Length; i++)
        {
            int count = 0;
            for (int other = Math.Max(0, i - Neighbours); other <= Math.Min(values.Length - 1, i + Neighbours); other++)
            {
                if (other != i)
                {
                    near[count++] = values[other];
                }
            }

            // A step is no spike: at the last points nobody knows yet which it is.
            bool hasBothSides = i > 0 && i < values.Length - 1;
            if (count >= LeastNeighbours && hasBothSides && IsFarFrom(values[i], near[..count], least))
            {
                points[read[i]] = points[read[i]] with { Flags = points[read[i]].Flags | flag };
            }
        }
    }

    private static bool IsFarFrom(double value, Span<double> near, double least)
    {
        double middle = Middle(near);
        for (int i = 0; i < near.Length; i++)
        {
            near[i] = Math.Abs(near[i] - middle);
        }

        return Math.Abs(value - middle) > Math.Max(least, Deviations * SdOfMedianDistance * Middle(near));
    }

    private static double Middle(Span<double> numbers)
    {
        numbers.Sort();
        int half = numbers.Length / 2;
        return numbers.Length % 2 == 1 ? numbers[half] : (numbers[half - 1] + numbers[half]) / 2;
    }
}

/// <summary>When the beer stood in the fermenter.</summary>
/// <param name="Pitched">When yeast went in; null where nobody said.</param>
/// <param name="Packaged">When it was packaged; null while it was not.</param>
public readonly record struct CellarSpan(DateTimeOffset? Pitched, DateTimeOffset? Packaged);

/// <summary>A time in which a device said nothing.</summary>
/// <param name="Instrument">Which.</param>
/// <param name="From">Its last word before.</param>
/// <param name="To">Its first word after.</param>
public readonly record struct Silence(string Instrument, DateTimeOffset From, DateTimeOffset To);
