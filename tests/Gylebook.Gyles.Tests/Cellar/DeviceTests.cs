using Gylebook.Gyles.Cellar;

namespace Gylebook.Gyles.Tests.Cellar;

/// <summary>A device's calibration and its clock.</summary>
public sealed class DeviceTests
{
    private static readonly DateTimeOffset Start = new(2026, 3, 1, 9, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Without_a_point_it_is_as_the_device_says()
    {
        Assert.Equal(DeviceCalibration.None, DeviceCalibration.Fit([]));
        Assert.Equal(1.0482, DeviceCalibration.None.Gravity(1.0482), 1e-15);
        Assert.Equal(19.5, DeviceCalibration.None.Celsius(19.5));
    }

    [Fact]
    public void One_or_two_points_teach_an_offset_and_three_over_a_span_a_line()
    {
        Assert.Equal((1, 1.046), Told(DeviceCalibration.Fit([new(1.050, 1.046)]), 1.050));
        Assert.Equal((1, 1.047), Told(DeviceCalibration.Fit([new(1.050, 1.046), new(1.012, 1.010)]), 1.050));

        // Made from the line 1 + 0.9 · shown − 0.002: the fit has to find it again.
        CalibrationPoint[] onLine = [.. new[] { 0.050, 0.030, 0.012, 0.045 }.Select(shown => new CalibrationPoint(1 + shown, 1 + (0.9 * shown) - 0.002))];
        DeviceCalibration line = DeviceCalibration.Fit(onLine, offsetKelvin: -0.4);
        Assert.Equal(0.9, line.Slope, 1e-9);
        Assert.Equal(-0.002, line.OffsetSg, 1e-9);
        Assert.Equal(19.6, line.Celsius(20), 1e-12);
        Assert.All(onLine, point => Assert.Equal(point.Hydrometer, line.Gravity(point.Device), 1e-9));
    }

    [Fact]
    public void A_narrow_span_and_an_impossible_slope_teach_an_offset_only()
    {
        Assert.Equal(1, DeviceCalibration.Fit([new(1.012, 1.010), new(1.013, 1.012), new(1.015, 1.011)]).Slope);
        DeviceCalibration backwards = DeviceCalibration.Fit([new(1.010, 1.050), new(1.030, 1.030), new(1.050, 1.010)]);
        Assert.Equal((1, 0), (backwards.Slope, Math.Round(backwards.OffsetSg, 12)));
    }

    [Theory]
    [InlineData(3600)]
    [InlineData(-7200)]
    [InlineData(40_000_000)]
    public void A_clock_that_is_always_as_wrong_is_put_right(int seconds)
    {
        SensorReading[] readings = [.. Enumerable.Range(0, 20).Select(i => new SensorReading(Start.AddMinutes(15 * i), Start.AddMinutes(15 * i).AddSeconds(seconds + (i % 3))))];
        Assert.Equal(seconds, DeviceClock.Shift(readings).TotalSeconds, 1.5);
    }

    [Fact]
    public void Sending_late_is_no_wrong_clock()
    {
        SensorReading[] promptly = [.. Enumerable.Range(0, 20).Select(i => new SensorReading(Start.AddMinutes(15 * i), Start.AddMinutes(15 * i).AddSeconds(40)))];
        SensorReading[] onceADay = [.. Enumerable.Range(0, 96).Select(i => new SensorReading(Start.AddMinutes(15 * i), Start.AddDays(1)))];
        Assert.Equal(TimeSpan.Zero, DeviceClock.Shift(promptly));
        Assert.Equal(TimeSpan.Zero, DeviceClock.Shift(onceADay));
        Assert.Equal(TimeSpan.Zero, DeviceClock.Shift([new SensorReading(Start, Start.AddHours(1))]));
    }

    private static (double Slope, double Gravity) Told(DeviceCalibration calibration, double shown) => (calibration.Slope, Math.Round(calibration.Gravity(shown), 9));
}
