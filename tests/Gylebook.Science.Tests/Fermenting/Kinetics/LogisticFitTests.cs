using Gylebook.Science.Fermenting.Kinetics;

namespace Gylebook.Science.Tests.Fermenting.Kinetics;

public class LogisticFitTests
{
    private static readonly LogisticAttenuation Truth = new(1.050, 1.011, -0.09, 40);
    private static readonly KnownLevel Start = new(1.049, 0.003), End = new(1.013, 0.004);

    /// <summary>Readings without an error over the whole fall leave nothing open.</summary>
    [Fact]
    public void Roundtrip_what_was_read_without_error_comes_back()
    {
        double[] hours = [.. Enumerable.Range(0, 30).Select(i => i * 4.0)];
        LogisticFit fit = Fitted(hours, [.. hours.Select(Truth.At)], 1e-5);
        Assert.True(fit.IsSettled);
        Assert.Equal(Truth.Start, fit.Curve.Start, 1e-5);
        Assert.Equal(Truth.End, fit.Curve.End, 1e-5);
        Assert.Equal(Truth.Slope, fit.Curve.Slope, 1e-3);
        Assert.Equal(Truth.MiddleHours, fit.Curve.MiddleHours, 0.05);
    }

    /// <summary>One reading ten points off among thirty: its weight is 5/(4 + 100²), so what it can do is below a hundredth of its distance.</summary>
    [Fact]
    public void Limits_one_wild_reading_moves_next_to_nothing()
    {
        double[] hours = [.. Enumerable.Range(0, 30).Select(i => i * 4.0)];
        double[] sound = [.. hours.Select(Truth.At)];
        double[] wild = [.. sound.Select((gravity, i) => i == 12 ? gravity + 0.1 : gravity)];
        LogisticFit without = Fitted(hours, sound, 0.001), with = Fitted(hours, wild, 0.001);
        Assert.All(hours, hour => Assert.Equal(without.Curve.At(hour), with.Curve.At(hour), 0.001));
    }

    [Fact]
    public void Limits_before_the_fall_the_end_is_what_was_known_of_it()
    {
        double[] hours = [0, 6, 12];
        LogisticFit fit = Fitted(hours, [.. hours.Select(Truth.At)], 0.001);
        Assert.Equal(End.Middle, fit.Curve.End, 0.001);
        Assert.Equal(fit.Curve, fit.Drawn([0, 0, 0, 0]), Nearly);
        Assert.NotEqual(fit.Curve.End, fit.Drawn([0, 1, 0, 0]).End);
    }

    private static bool Nearly(LogisticAttenuation one, LogisticAttenuation other) =>
        Math.Abs(one.Slope - other.Slope) < 1e-9 && Math.Abs(one.MiddleHours - other.MiddleHours) < 1e-9 && one.End == other.End && one.Start == other.Start;

    private static LogisticFit Fitted(double[] hours, double[] gravities, double deviation) =>
        LogisticFit.Of(hours, gravities, [.. hours.Select(_ => deviation)], Start, End);
}
