using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Cellar;

/// <summary>A device's gravity beside that of a hydrometer in the same beer at the same time.</summary>
/// <param name="Device">What the device showed, SG.</param>
/// <param name="Hydrometer">What the hydrometer showed, corrected for its temperature, SG.</param>
public readonly record struct CalibrationPoint(double Device, double Hydrometer)
{
    /// <summary>How far from a hydrometer's reading in time a device's still belongs to it: what falls in that time is less than either shows. Judged, no source.</summary>
    public static TimeSpan Beside { get; } = TimeSpan.FromHours(1);

    /// <summary>Points for each hydrometer reading that a device spoke beside: the middle of what it said within an hour.</summary>
    /// <param name="typed">Readings by hand, corrected for their temperature; those of other instruments are passed over.</param>
    /// <param name="sent">What the device said.</param>
    public static IReadOnlyList<CalibrationPoint> Of(IEnumerable<CellarPoint> typed, IReadOnlyList<SensorReading> sent)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(sent);
        List<CalibrationPoint> points = [];
        foreach (CellarPoint hand in typed.Where(point => point is { Source: CellarSource.Hand, IsGoodGravity: true } && point.Instrument.StartsWith("hydrometer", StringComparison.Ordinal)))
        {
            double[] beside = [.. sent.Where(reading => reading.Gravity is not null && (reading.At - hand.At).Duration() <= Beside).Select(reading => reading.Gravity!.Value.Ratio)];
            if (beside.Length > 0)
            {
                points.Add(new(DeviceClock.Median(beside), hand.GravitySg!.Value));
            }
        }

        return points;
    }
}

/// <summary>How a device's values are brought to what is so: a straight line for gravity, an offset for temperature.</summary>
/// <remarks>
/// <para>SG = 1 + slope · (shown − 1) + offset; °C = shown + offset.</para>
/// <para>Rows in the book stay as they were sent: another calibration moves what is drawn and reckoned, never what was kept.</para>
/// </remarks>
/// <param name="Slope">Of the gravity above water; 1 for none.</param>
/// <param name="OffsetSg">Added to the gravity, SG.</param>
/// <param name="OffsetKelvin">Added to the temperature, K.</param>
public readonly record struct DeviceCalibration(double Slope, double OffsetSg, double OffsetKelvin)
{
    /// <summary>Least span of hydrometer gravities that can teach a slope, SG. Judged, no source: ten times a hydrometer's own scatter.</summary>
    public const double LeastSpan = 0.010;

    /// <summary>Least points that can teach a slope; with two, a slip in one of them would be a slope.</summary>
    public const int LeastPoints = 3;

    private const double LeastSlope = 0.5, MostSlope = 2, MostOffsetSg = 0.1, MostOffsetKelvin = 20;

    /// <summary>As the device says.</summary>
    public static DeviceCalibration None { get; } = new(1, 0, 0);

    /// <summary>Slopes that may be.</summary>
    public static QuantityLimits Slopes { get; } = new("slope", "", LeastSlope, MostSlope);

    /// <summary>Offsets of gravity that may be.</summary>
    public static QuantityLimits Offsets { get; } = new("offset of gravity", "SG", -MostOffsetSg, MostOffsetSg);

    /// <summary>Offsets of temperature that may be.</summary>
    public static QuantityLimits TemperatureOffsets { get; } = new("offset of temperature", "K", -MostOffsetKelvin, MostOffsetKelvin);

    /// <summary>A gravity as it is, SG.</summary>
    public double Gravity(double shown) => 1 + (Slope * (shown - 1)) + OffsetSg;

    /// <summary>A temperature as it is, °C.</summary>
    public double Celsius(double shown) => shown + OffsetKelvin;

    /// <summary>The calibration that points teach: a line by least squares where there are three or more over a span of ten points of gravity, else the mean distance.</summary>
    /// <param name="points">Device beside hydrometer.</param>
    /// <param name="offsetKelvin">The offset of temperature, which they do not touch.</param>
    /// <returns>None of gravity where there is no point, or the line would be steeper or flatter than a device can be.</returns>
    public static DeviceCalibration Fit(IReadOnlyList<CalibrationPoint> points, double offsetKelvin = 0)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count == 0)
        {
            return None with { OffsetKelvin = offsetKelvin };
        }

        double shown = points.Average(point => point.Device) - 1, so = points.Average(point => point.Hydrometer) - 1;
        DeviceCalibration offset = new(1, so - shown, offsetKelvin);
        double span = points.Max(point => point.Hydrometer) - points.Min(point => point.Hydrometer);
        if (points.Count < LeastPoints || span < LeastSpan)
        {
            return offset;
        }

        double square = points.Sum(point => (point.Device - 1 - shown) * (point.Device - 1 - shown));
        double slope = points.Sum(point => (point.Device - 1 - shown) * (point.Hydrometer - 1 - so)) / square;
        return Slopes.Allow(slope) ? new(slope, so - (slope * shown), offsetKelvin) : offset;
    }
}
