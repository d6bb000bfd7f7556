namespace Gylebook.Gyles.Cellar;

/// <summary>Whether a device's clock goes wrong, told from when its readings arrived.</summary>
/// <remarks>
/// <para>A device that sends as it reads is late by the same few seconds each time; one whose clock stands an hour wrong is an hour late, or an hour
/// early, each time. One that gathers and sends later is late by ever other amounts: nothing can be said of its clock, and nothing is.</para>
/// <para>Consistent means: 1.4826 times the median distance from the median is at most two minutes (the factor makes it a standard deviation for
/// a bell curve; common practice, no source). Least readings and limits are judged, no source.</para>
/// </remarks>
public static class DeviceClock
{
    /// <summary>So few readings tell nothing.</summary>
    public const int LeastReadings = 5;

    /// <summary>Sending takes a while: up to that, a clock is right.</summary>
    public static TimeSpan Allowed { get; } = TimeSpan.FromMinutes(2);

    private const double SdOfMedianDistance = 1.4826;

    /// <summary>What to add to the device's times; zero where its clock is right, or nothing can be said.</summary>
    /// <param name="readings">In any order.</param>
    public static TimeSpan Shift(IReadOnlyList<SensorReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count < LeastReadings)
        {
            return TimeSpan.Zero;
        }

        double[] late = [.. readings.Select(reading => (reading.Arrived - reading.At).TotalSeconds)];
        double median = Median(late);
        double spread = SdOfMedianDistance * Median([.. late.Select(seconds => Math.Abs(seconds - median))]);
        return Math.Abs(median) <= Allowed.TotalSeconds || spread > Allowed.TotalSeconds ? TimeSpan.Zero : TimeSpan.FromSeconds(Math.Round(median));
    }

    /// <summary>The middle of numbers; the mean of the two middle ones where they are even.</summary>
    internal static double Median(double[] numbers)
    {
        Array.Sort(numbers);
        int half = numbers.Length / 2;
        return numbers.Length % 2 == 1 ? numbers[half] : (numbers[half - 1] + numbers[half]) / 2;
    }
}
