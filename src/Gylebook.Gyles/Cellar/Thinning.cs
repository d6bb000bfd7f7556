namespace Gylebook.Gyles.Cellar;

/// <summary>Takes so many points of a long series that its drawing stays the same.</summary>
/// <remarks>Time is cut into equal parts; of each the first and last point stay, and those of least and most gravity and temperature. So a spike stays however few points are left, and the same points come out each time.</remarks>
public static class Thinning
{
    private const int OfEach = 6;

    /// <summary>At most so many points, in the order of time; all of them where they are no more.</summary>
    /// <param name="points">In the order of time.</param>
    /// <param name="most">At least 6.</param>
    public static IReadOnlyList<CellarPoint> Of(IReadOnlyList<CellarPoint> points, int most)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, OfEach);
        if (points.Count <= most)
        {
            return points;
        }

        int parts = most / OfEach;
        long start = points[0].At.UtcTicks, length = Math.Max(1, points[^1].At.UtcTicks - start);
        SortedSet<int> kept = [];
        for (int from = 0, to; from < points.Count; from = to)
        {
            long part = PartOf(from);
            to = from + 1;
            while (to < points.Count && PartOf(to) == part)
            {
                to++;
            }

            Keep(points, from, to, kept);
        }

        return [.. kept.Select(i => points[i])];

        long PartOf(int i) => Math.Min(parts - 1, (long)((points[i].At.UtcTicks - start) / (double)length * parts));
    }

    private static void Keep(IReadOnlyList<CellarPoint> points, int from, int to, SortedSet<int> kept)
    {
        kept.Add(from);
        kept.Add(to - 1);
        KeepEnds(points, from, to, point => point.GravitySg, kept);
        KeepEnds(points, from, to, point => point.TemperatureC, kept);
    }

    private static void KeepEnds(IReadOnlyList<CellarPoint> points, int from, int to, Func<CellarPoint, double?> value, SortedSet<int> kept)
    {
        (int low, int high) = (-1, -1);
        for (int i = from; i < to; i++)
        {
            if (value(points[i]) is not { } read)
            {
                continue;
            }

            low = low < 0 || read < value(points[low]) ? i : low;
            high = high < 0 || read > value(points[high]) ? i : high;
        }

        if (low >= 0)
        {
            kept.Add(low);
            kept.Add(high);
        }
    }
}
