using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Gyles.Cellar;
using Gylebook.Store;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Devices;

/// <summary>gylebook device list [--book FILE] [--json]</summary>
internal sealed class DeviceListVerb : AsyncCommand<DeviceListVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : BookOption
    {
        /// <inheritdoc/>
        public override ValidationResult Validate() => CommandLine.NoneLacksItsValue(("--book", "a file", Book));
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (await settings.OpenAsync("with devices in it", cancellationToken) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        List<(Device Device, SensorReading? Last)> all = [];
        foreach (Device device in await book.Devices.ListAsync(cancellationToken))
        {
            all.Add((device, await book.Sensors.LastAsync(device.Id, cancellationToken)));
        }

        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen => pen.List("devices", all, one => Write(pen, one.Device, one.Last))));
            return 0;
        }

        foreach ((Device device, SensorReading? last) in all)
        {
            string where = device.Retired is not null ? "retired" : device.Place is { } place ? $"in \"{place.Gyle}\"" : "in no gyle";
            Console.WriteLine(CommandLine.OneLine($"\"{device.Name}\", {where}: {(last is { } said ? Said(device, said) : "has sent nothing yet")}"));
        }

        if (all.Count == 0)
        {
            Console.WriteLine("No device is in the book; gylebook device add NAME makes one.");
        }

        return 0;
    }

    private static string Said(Device device, SensorReading last)
    {
        string?[] told =
        [
            last.Gravity is { } gravity ? Invariant($"{device.Calibration.Gravity(gravity.Ratio):0.0000} SG") : null,
            last.Temperature is { } temperature ? Invariant($"{device.Calibration.Celsius(temperature.Celsius):0.0} °C") : null,
            last.Pressure is { } pressure ? Invariant($"{pressure.Bar:0.00} bar") : null,
        ];
        return $"{string.Join(", ", told.OfType<string>())}, {last.At.ToLocalTime().ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture)}";
    }

    private static void Write(JsonPen pen, Device device, SensorReading? last)
    {
        pen.Text("name", device.Name);
        pen.Text("kind", DeviceAddVerb.WordOf(device.Kind));
        pen.Flag("maySend", device.MaySend);
        pen.Text("gyle", device.Place?.Gyle);
        pen.Text("portion", device.Place?.Portion);
        pen.Text("lastAt", last?.At.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture));
        pen.Number("gravity", last?.Gravity is { } gravity ? device.Calibration.Gravity(gravity.Ratio) : null, 5);
        pen.Number("celsius", last?.Temperature is { } temperature ? device.Calibration.Celsius(temperature.Celsius) : null, 2);
        pen.Number("bar", last?.Pressure?.Bar, 3);
        pen.Number("volts", last?.BatteryVolts, 3);
    }
}
