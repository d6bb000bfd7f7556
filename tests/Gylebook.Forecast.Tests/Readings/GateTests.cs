using Gylebook.Engine.Readings;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Tests.Readings;

/// <summary>Readings that cannot be right: a forecast of N(0, 1), an error of 0.5, by quadrature. The shift is told in widths of the 90 % band.</summary>
public sealed class GateTests
{
    private const double BandWidth = 3.289707, Error = 0.25;

    private static readonly double[] Forecasts = [.. Enumerable.Range(0, 4000).Select(i => StandardNormal.Quantile((i + 0.5) / 4000))];

    // Printed to two digits.
    [Theory]
    [InlineData(2, 0.54, 0.47)]
    [InlineData(3, 0.82, 0.58)]
    [InlineData(3.5, 0.95, 0.56)]
    [InlineData(4, 1.09, 0.49)]
    [InlineData(4.5, 1.22, 0.41)]
    [InlineData(5, 1.36, 0.34)]
    public void An_error_with_heavy_tails_moves_less_the_further_off_a_reading_is(double off, double normal, double heavy)
    {
        double read = off * Math.Sqrt(1 + Error);
        Assert.Equal(normal, read / (1 + Error) / BandWidth, 0.005);
        Assert.Equal(heavy, HeavyTail.After(1, Error, read).Mean / BandWidth, 0.005);
        double same = HeavyTail.SameAsNormal(1, Error, read);
        Assert.Equal(heavy, read / (1 + same) / BandWidth, 0.005);
    }

    [Fact]
    public void A_reading_five_off_leaves_a_wide_doubt()
    {
        (double mean, double deviation) = HeavyTail.After(1, Error, 5);
        Assert.Equal(1.3564, mean, 0.00005);
        Assert.Equal(1.2048, deviation, 0.00005);
    }

    [Theory]
    [InlineData(0, ReadingTrust.AsItIs)]
    [InlineData(-1.99, ReadingTrust.AsItIs)]
    [InlineData(2.01, ReadingTrust.Halfway)]
    [InlineData(-3.49, ReadingTrust.Halfway)]
    [InlineData(3.52, ReadingTrust.SetAside)]
    [InlineData(-40, ReadingTrust.SetAside)]
    public void The_gate_has_three_ways(double off, ReadingTrust trust)
    {
        GatedReading gate = GatedReading.Of(off * Math.Sqrt(1 + Error), Error, Forecasts);
        Assert.Equal(trust, gate.Trust);
        Assert.Equal(off, gate.Off, 0.01 * Math.Max(1, Math.Abs(off)));
        Assert.Equal(trust == ReadingTrust.Halfway, gate.ErrorVariance > Error);
    }
}
