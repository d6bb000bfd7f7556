namespace Gylebook.Gyles.Cellar;

/// <summary>Whether a gravity stands still, by one instrument: its last days held against each other.</summary>
/// <remarks>
/// <para>Source: two to three days within a point, common practice, no source. A day is one number, the median of what the instrument showed in it, so
/// that the noise of a floating sensor is no movement. Instruments are not held against each other: one may be off by more than a point.</para>
/// </remarks>
/// <param name="Instrument">Which.</param>
/// <param name="Last">Its last day's gravity, SG.</param>
/// <param name="At">When that was read.</param>
/// <param name="Fallen">By how much it fell over these days, SG; below 0 where it rose.</param>
/// <param name="Spread">Between the highest and the lowest day, SG.</param>
/// <param name="Days">Over how many days it was read.</param>
public sealed record Stillness(string Instrument, double Last, DateTimeOffset At, double Fallen, double Spread, double Days)
{
    /// <summary>A point of gravity, within which it counts as the same.</summary>
    public const double Point = 0.001;

    /// <summary>So many days it has to be the same.</summary>
    public const double LeastDays = 2;

    /// <summary>Days that are looked at, back from the last reading.</summary>
    public const double Window = 3;

    /// <summary>Readings are not taken at the minute: two days are two but for a few hours.</summary>
    private const double Grace = 0.15;

    /// <summary>Numbers that were typed to the thousandth.</summary>
    private const double Rounding = 1e-6;

    /// <summary>Whether it was read for long enough to say anything.</summary>
    public bool IsLongEnough => Days >= LeastDays - Grace;

    /// <summary>Whether it stands still.</summary>
    public bool IsStill => IsLongEnough && Spread <= Point + Rounding;

    /// <summary>Whether it was seen to move.</summary>
    public bool IsMoving => Spread > Point + Rounding;

    /// <summary>By each instrument that showed a gravity to be trusted, the one that was read last first.</summary>
    /// <param name="points">What was read, in any order.</param>
    public static IReadOnlyList<Stillness> Of(IEnumerable<CellarPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        return
        [
            .. points.Where(point => point.IsGoodGravity).GroupBy(point => point.Instrument).Select(own => Of(own.Key, [.. own.OrderBy(point => point.At)])).OrderByDescending(still => still.At),
        ];
    }

    private static Stillness Of(string instrument, CellarPoint[] points)
    {
        DateTimeOffset last = points[^1].At;
        (double Gravity, DateTimeOffset First)[] days =
        [
            .. points.Where(point => (last - point.At).TotalDays <= Window + Grace)
                .GroupBy(point => (int)(last - point.At).TotalDays).OrderByDescending(day => day.Key)
                .Select(day => (DeviceClock.Median([.. day.Select(point => point.GravitySg!.Value)]), day.Min(point => point.At))),
        ];
        return new(
            instrument, days[^1].Gravity, last, days[0].Gravity - days[^1].Gravity, days.Max(day => day.Gravity) - days.Min(day => day.Gravity), (last - days[0].First).TotalDays);
    }
}
