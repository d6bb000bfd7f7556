using Gylebook.Gyles.Cellar;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Tests.Cellar;

/// <summary>What is odd in a series is marked, nothing is left out, and the drawing of it keeps what stands out.</summary>
public sealed class CellarSeriesTests
{
    private static readonly DateTimeOffset Pitch = new(2026, 3, 1, 18, 0, 0, TimeSpan.Zero);
    private static readonly CellarSpan Span = new(Pitch, null);

    [Fact]
    public void A_quiet_float_has_nothing_odd()
    {
        CellarSeries series = Of(new MadeUpFloat { Seed = "quiet", From = Pitch }.Readings(14 * 96));
        Assert.Empty(series.Odd);
        Assert.Empty(series.Silences);
        Assert.Equal(14 * 96, series.Read);
        Assert.True(series.Points.Count <= CellarSeries.UsualPoints);
        Assert.InRange(series.Points[^1].GravitySg!.Value, 1.007, 1.015);
    }

    /// <remarks>The truth is known: the spikes are those that were put in.</remarks>
    [Fact]
    public void Every_spike_that_was_put_in_is_found_and_nothing_else()
    {
        MadeUpFloat calm = new() { Seed = "spiky", From = Pitch };
        SensorReading[] spiky = [.. calm.Readings(960)];
        int[] at = [17, 200, 201, 500, 700, 955];
        foreach (int i in at)
        {
            spiky[i] = spiky[i] with { Gravity = SpecificGravity.FromRatio(spiky[i].Gravity!.Value.Ratio + (i % 2 == 0 ? 0.03 : -0.03)) };
        }

        CellarPoint[] points = [.. Of(spiky, most: 100_000).Points];
        Assert.Equal(at, points.Index().Where(point => point.Item.Flags.HasFlag(Oddities.Spike)).Select(point => point.Index));
        Assert.All(points.Where(point => point.Flags.HasFlag(Oddities.Spike)), point => Assert.False(point.IsGoodGravity));
    }

    [Fact]
    public void A_step_is_no_spike()
    {
        SensorReading[] stepped = [.. new MadeUpFloat { Seed = "step", From = Pitch, StartSg = 1.05, EndSg = 1.05 }.Readings(60)];
        for (int i = 30; i < 60; i++)
        {
            stepped[i] = stepped[i] with { Gravity = SpecificGravity.FromRatio(stepped[i].Gravity!.Value.Ratio - 0.02) };
        }

        Assert.DoesNotContain(Oddities.Spike, Of(stepped).Odd.Keys);
    }

    [Fact]
    public void A_float_that_hangs_while_the_beer_warms_is_called_stuck_and_one_in_finished_beer_is_not()
    {
        SensorReading[] hung = [.. new MadeUpFloat { Seed = "hung", From = Pitch, StuckAfterHours = 30 }.Readings(480)];
        CellarPoint[] points = [.. Of(hung, most: 10_000).Points];

        // By chance the last ones before may show the very same value.
        int moving = Array.FindLastIndex(hung, reading => reading.Gravity != hung[^1].Gravity) + 1;
        Assert.InRange(moving, (30 * 4) - 2, 30 * 4);
        Assert.All(points.Index(), point => Assert.Equal(point.Index >= moving, point.Item.Flags.HasFlag(Oddities.Stuck)));

        SensorReading[] coarse = [.. Enumerable.Range(0, 200).Select(i => At(15 * i, 1.011, 18 + (0.1 * (i % 2))))];
        Assert.Empty(Of(coarse).Odd);
    }

    [Fact]
    public void A_hydrometer_that_moved_tells_that_a_float_without_thermometer_hangs()
    {
        SensorReading[] still = [.. Enumerable.Range(0, 200).Select(i => At(15 * i, 1.048, null))];
        Assert.Empty(Of(still).Odd);
        GyleReading[] hand = [Hand(2, 1.047), Hand(40, 1.030)];
        Assert.Equal(200, Of(still, hand).Odd[Oddities.Stuck]);
    }

    [Fact]
    public void Days_without_beer_are_marked()
    {
        SensorReading[] readings = [At(-90, 1.05, 20), At(60, 1.05, 20), At(60 * 24 * 8, 1.011, 20), At(60 * 24 * 60, 1.011, 20)];
        CellarPoint[] points = [.. CellarSeries.Of([new("float", DeviceCalibration.None, readings)], [], new(Pitch, Pitch.AddDays(7)), Pitch.AddDays(20)).Points];
        Assert.Equal([Oddities.BeforePitch, Oddities.None, Oddities.AfterPackage, Oddities.AfterPackage | Oddities.InFuture], points.Select(point => point.Flags & ~Oddities.AfterSilence));
    }

    [Fact]
    public void Months_of_silence_are_told_and_so_is_a_device_that_says_nothing_now()
    {
        SensorReading[] readings = [.. Enumerable.Range(0, 40).Select(i => At((15 * i) + (i >= 20 ? 60 * 24 * 90 : 0), 1.05 - (0.0005 * i), 18))];
        CellarSeries series = Of(readings, now: Pitch.AddDays(120));
        Silence silence = Assert.Single(series.Silences);
        Assert.Equal((Pitch.AddMinutes(15 * 19), Pitch.AddMinutes(15 * 20).AddDays(90)), (silence.From, silence.To));
        Assert.Equal(Oddities.AfterSilence, series.Points[20].Flags);
        Assert.True(series.Points[20].IsGoodGravity);
        Assert.Equal(readings[^1].At, Assert.Single(series.SilentNow).From);
        Assert.Empty(Of(readings[..20], now: readings[19].At.AddMinutes(30)).SilentNow);
    }

    [Fact]
    public void Hand_and_device_stand_on_one_axis_calibrated_corrected_and_with_their_widths()
    {
        SensorReading[] late = [.. Enumerable.Range(0, 10).Select(i => At(15 * i, 1.052, 20) with { Arrived = Pitch.AddMinutes((15 * i) + 60) })];
        GyleReading[] hand = [Hand(1, 1.048) with { Temperature = Temperature.FromCelsius(30) }, Hand(2, 1.047), new() { At = Pitch, Stage = "cast", Gravity = SpecificGravity.FromRatio(1.05) }];
        CellarSeries series = CellarSeries.Of([new("float", new(1, -0.002, 0.5), late)], hand, Span, Pitch.AddDays(1));
        Assert.Equal(12, series.Points.Count);
        Assert.Equal(series.Points.Select(point => point.At).Order(), series.Points.Select(point => point.At));
        Assert.Equal(TimeSpan.FromHours(1), Assert.Single(series.Clocks).Shift);
        CellarPoint sent = series.Points.First(point => point.Source == CellarSource.Device);
        Assert.Equal((Pitch.AddHours(1), 1.050, 20.5), (sent.At, Math.Round(sent.GravitySg!.Value, 9), sent.TemperatureC!.Value));

        // data/instruments.csv: a checked floating sensor 0.0015 and 0.001, a hydrometer 0.002 and 0.0009; in quadrature.
        Assert.Equal(Math.Sqrt((0.0015 * 0.0015) + (0.001 * 0.001)), sent.GravitySd, 1e-12);
        CellarPoint[] typed = [.. series.Points.Where(point => point.Source == CellarSource.Hand)];
        Assert.Equal(Math.Sqrt((0.002 * 0.002) + (0.0009 * 0.0009)), typed[0].GravitySd, 1e-12);

        // Water is 0.25 % lighter at 30 °C than at 20 °C (0.99565 and 0.99821 kg/L; the science tests hold them): some 2.5 points.
        Assert.InRange(typed[0].GravitySg!.Value, 1.0500, 1.0510);
        Assert.Equal(1.047, typed[1].GravitySg!.Value, 1e-12);
    }

    [Fact]
    public void Thinned_it_is_short_the_same_each_time_and_keeps_its_ends_and_what_stands_out()
    {
        SensorReading[] readings = [.. new MadeUpFloat { Seed = "long", From = Pitch, Every = TimeSpan.FromMinutes(1), Spikes = 0.001 }.Readings(20_000)];
        CellarPoint[] all = [.. Of(readings, most: 100_000).Points];
        IReadOnlyList<CellarPoint> thin = Thinning.Of(all, 600);
        Assert.InRange(thin.Count, 300, 600);
        Assert.Equal(thin, Thinning.Of(all, 600));
        Assert.Equal((all[0], all[^1]), (thin[0], thin[^1]));
        Assert.Equal(thin.Select(point => point.At).Order(), thin.Select(point => point.At));
        Assert.Contains(all.MaxBy(point => point.GravitySg)!, thin);
        Assert.Contains(all.MinBy(point => point.TemperatureC)!, thin);

        // Whatever part of time one looks at, the thinned one reaches as high and as low there.
        int parts = 600 / 6;
        long start = all[0].At.UtcTicks, length = all[^1].At.UtcTicks - start;
        foreach (IGrouping<long, CellarPoint> part in all.GroupBy(point => Math.Min(parts - 1, (long)((point.At.UtcTicks - start) / (double)length * parts))))
        {
            Assert.Contains(part.MaxBy(point => point.GravitySg)!, thin);
            Assert.Contains(part.MinBy(point => point.GravitySg)!, thin);
        }

        Assert.Same(all, Thinning.Of(all, all.Length));
        Assert.Throws<ArgumentOutOfRangeException>(() => Thinning.Of(all, 5));
    }

    [Fact]
    public void Nothing_at_all_is_an_empty_series()
    {
        CellarSeries series = CellarSeries.Of([], [], default, Pitch);
        Assert.Empty(series.Points);
        Assert.Empty(CellarSeries.Of([new("float", DeviceCalibration.None, [])], [], default, Pitch).SilentNow);
    }

    private static CellarSeries Of(IEnumerable<SensorReading> readings, IReadOnlyList<GyleReading>? hand = null, int most = CellarSeries.UsualPoints, DateTimeOffset? now = null) =>
        CellarSeries.Of([new("float", DeviceCalibration.None, [.. readings])], hand ?? [], Span, now ?? Pitch.AddDays(30), most);

    private static SensorReading At(double minutes, double gravity, double? celsius) => new(Pitch.AddMinutes(minutes), Pitch.AddMinutes(minutes))
    {
        Gravity = SpecificGravity.FromRatio(gravity),
        Temperature = celsius is { } warm ? Temperature.FromCelsius(warm) : null,
    };

    private static GyleReading Hand(double hours, double gravity) => new() { At = Pitch.AddHours(hours), Stage = "ferment", Gravity = SpecificGravity.FromRatio(gravity) };
}
