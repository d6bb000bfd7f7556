using Gylebook.Gyles.Cellar;
using Gylebook.Pictures;
using Gylebook.Store;

namespace Gylebook.Web.Features.Devices;

/// <summary>A device and its last word.</summary>
/// <param name="Device">Which.</param>
/// <param name="Last">As it was sent; null where it never spoke.</param>
public sealed record DeviceNow(Device Device, SensorReading? Last);

/// <summary>Devices in words.</summary>
internal static class DeviceWords
{
    /// <summary>Sorts that can be added, and what they are called.</summary>
    public static IReadOnlyList<(DeviceKind Kind, string Words)> Kinds { get; } =
        [(DeviceKind.Floating, "a float"), (DeviceKind.Thermometer, "a thermometer"), (DeviceKind.Other, "something else")];

    /// <summary>What a device said last, calibrated, in the reader's units: "1.0482, 19.5 °C, battery 3.9 V".</summary>
    public static string Of(SensorReading last, DeviceCalibration calibration, Shown shown) => string.Join(", ", new[]
    {
        last.Gravity is { } gravity ? shown.Gravity(calibration.Gravity(gravity.Ratio)) : null,
        last.Temperature is { } temperature ? shown.Celsius(calibration.Celsius(temperature.Celsius)) : null,
        last.Pressure is { } pressure ? $"{shown.Number(pressure.Bar, 2)} bar" : null,
        last.BatteryVolts is { } volts ? $"battery {shown.Number(volts, 1)} V" : null,
    }.OfType<string>());

    /// <summary>A calibration in words; null for none.</summary>
    public static string? Of(DeviceCalibration calibration) =>
        calibration == DeviceCalibration.None ? null
        : Invariant($"SG = 1 {Signed(calibration.OffsetSg, "0.0000")} + {calibration.Slope:0.###} × what it shows above 1, °C = what it shows {Signed(calibration.OffsetKelvin, "0.0")}");

    private static string Signed(double value, string form) => $"{(value < 0 ? "−" : "+")} {Math.Abs(value).ToString(form, System.Globalization.CultureInfo.InvariantCulture)}";
}
