using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Liquids;

namespace Gylebook.Gyles.Cellar;

/// <summary>What one device said while it swam in a portion.</summary>
/// <param name="Name">The device's.</param>
/// <param name="Calibration">How its values are brought to what is so.</param>
/// <param name="Readings">In the order of its clock.</param>
public sealed record DeviceReadings(string Name, DeviceCalibration Calibration, IReadOnlyList<SensorReading> Readings)
{
    /// <summary>Whether there are more than these: they were taken evenly over the time, and a spike between them is not seen.</summary>
    public bool IsSampled { get; init; }
}

/// <summary>How a device's clock was put right.</summary>
/// <param name="Instrument">Which device.</param>
/// <param name="Shift">What was added to its times.</param>
public readonly record struct ClockShift(string Instrument, TimeSpan Shift);

/// <summary>A fermentation as it was read: by hand and by devices, on one axis of time, calibrated and marked.</summary>
public sealed record CellarSeries
{
    /// <summary>Points that a drawing shows at most, of all devices together; what hands read comes on top.</summary>
    public const int UsualPoints = 1200;

    /// <summary>How warm a hydrometer is marked for, °C, where nobody says: as in a readings file.</summary>
    private const double Marked = 20;

    private const string Ferment = "ferment", UsualInstrument = "hydrometer", Floating = "floatingSensor";

    /// <summary>Points in the order of time; those of devices thinned.</summary>
    public required IReadOnlyList<CellarPoint> Points { get; init; }

    /// <summary>Times in which a device said nothing, though it spoke again.</summary>
    public IReadOnlyList<Silence> Silences { get; init; } = [];

    /// <summary>Devices that have not spoken for longer than they usually rest, with their last word.</summary>
    public IReadOnlyList<Silence> SilentNow { get; init; } = [];

    /// <summary>Clocks that were put right.</summary>
    public IReadOnlyList<ClockShift> Clocks { get; init; } = [];

    /// <summary>Whether some device sent more than was looked at.</summary>
    public bool IsSampled { get; init; }

    /// <summary>How many points of devices were looked at before thinning.</summary>
    public int Read { get; init; }

    /// <summary>How many of them are odd, by what is odd.</summary>
    public IReadOnlyDictionary<Oddities, int> Odd { get; init; } = new Dictionary<Oddities, int>();

    /// <summary>The series.</summary>
    /// <param name="devices">What devices sent.</param>
    /// <param name="hand">Readings that count, of any stage: those of fermentation are taken.</param>
    /// <param name="span">When the beer stood in the fermenter.</param>
    /// <param name="now">The time.</param>
    /// <param name="most">Points of devices at most.</param>
    public static CellarSeries Of(
        IReadOnlyList<DeviceReadings> devices, IReadOnlyList<GyleReading> hand, CellarSpan span, DateTimeOffset now, int most = UsualPoints)
    {
        ArgumentNullException.ThrowIfNull(devices);
        ArgumentNullException.ThrowIfNull(hand);
        CellarPoint[] typed = [.. hand.Where(reading => reading.Stage == Ferment && (reading.Gravity ?? (object?)reading.Temperature ?? reading.Pressure) is not null).Select(Typed).OrderBy(point => point.At)];
        SeriesFlags.MarkDays(typed, span, now);
        (DeviceReadings Device, TimeSpan Shift)[] shifted = [.. devices.Select(device => (device, DeviceClock.Shift(device.Readings)))];
        CellarPoint[][] sent = [.. shifted.Select(one => Sent(one.Device, one.Shift))];
        List<Silence> silences = [];
        foreach (CellarPoint[] points in sent)
        {
            SeriesFlags.MarkDays(points, span, now);
            SeriesFlags.MarkSpikes(points);
            silences.AddRange(SeriesFlags.MarkSilences(points));
        }

        foreach (CellarPoint[] points in sent)
        {
            SeriesFlags.MarkStuck(points, [.. typed, .. sent.Where(other => other != points).SelectMany(other => other)]);
        }

        int share = Math.Max(6, most / Math.Max(1, sent.Length));
        return new CellarSeries
        {
            Points = [.. sent.SelectMany(points => Thinning.Of(points, share)).Concat(typed).OrderBy(point => point.At)],
            Silences = silences,
            SilentNow = span.Packaged is not null ? [] : [.. sent.Where(points => points.Length > 0 && now - points[^1].At > SeriesFlags.LongestUsual(points)).Select(points => new Silence(points[^1].Instrument, points[^1].At, now))],
            Clocks = [.. shifted.Where(one => one.Shift != TimeSpan.Zero).Select(one => new ClockShift(one.Device.Name, one.Shift))],
            IsSampled = devices.Any(device => device.IsSampled),
            Read = sent.Sum(points => points.Length),
            Odd = Enum.GetValues<Oddities>().Where(flag => flag != 0)
                .Select(flag => (flag, Count: sent.Sum(points => points.Count(point => point.Flags.HasFlag(flag)))))
                .Where(odd => odd.Count > 0).ToDictionary(odd => odd.flag, odd => odd.Count),
        };
    }

    private static CellarPoint[] Sent(DeviceReadings device, TimeSpan shift)
    {
        Instrument kind = KindOf(Floating);
        bool isChecked = device.Calibration is not { Slope: 1, OffsetSg: 0 };
        CellarPoint[] points = [.. device.Readings.Select(reading => new CellarPoint(reading.At + shift, CellarSource.Device, device.Name)
        {
            GravitySg = reading.Gravity is { } gravity ? device.Calibration.Gravity(gravity.Ratio) : null,
            TemperatureC = reading.Temperature is { } temperature ? device.Calibration.Celsius(temperature.Celsius) : null,
            PressureBar = reading.Pressure?.Bar,
            GravitySd = reading.Gravity is { } read ? Sd(kind, isChecked, read.Ratio) : 0,
        })];
        Array.Sort(points, (a, b) => a.At.CompareTo(b.At));
        return points;
    }

    /// <summary>A hydrometer's gravity is brought to the temperature it is marked for, as far as the correction is to be trusted.</summary>
    private static CellarPoint Typed(GyleReading reading)
    {
        string instrument = reading.Instrument ?? UsualInstrument;
        bool isCorrected = instrument.StartsWith(UsualInstrument, StringComparison.Ordinal) && reading.Temperature is { } sample && Hydrometer.IsCoolEnough(sample);
        double? gravity = reading.Gravity?.Ratio is not { } shown ? null
            : isCorrected ? Hydrometer.Corrected(shown, reading.Temperature!.Value.Celsius, Marked) : shown;
        return new CellarPoint(reading.At, CellarSource.Hand, instrument)
        {
            GravitySg = gravity,
            // Beside a gravity it is the sample's, which stood in a glass.
            TemperatureC = gravity is null ? reading.Temperature?.Celsius : null,
            PressureBar = reading.Pressure?.Bar,
            GravitySd = gravity is { } read ? Sd(KindOf(instrument), false, read) : 0,
        };
    }

    private static Instrument KindOf(string instrument) => Instruments.Find(instrument) is { Unit: "SG" } known ? known : Instruments.Find(UsualInstrument)!;

    private static double Sd(Instrument kind, bool isChecked, double gravity) =>
        Math.Sqrt(kind.Scatter.VarianceAt(gravity) + (isChecked ? kind.Checked : kind.Offset).VarianceAt(gravity));
}
