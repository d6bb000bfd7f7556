using System.Globalization;
using Gylebook.Gyles.Cellar;
using Gylebook.Pictures;
using Gylebook.Science.Quantities;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Devices;

/// <summary>One device: moved, calibrated, given another token, retired.</summary>
public sealed partial class DevicePart
{
    private string _said = "";

    /// <summary>The device as it stands.</summary>
    [Parameter]
    [EditorRequired]
    public required DeviceNow Now { get; set; }

    /// <summary>Where it could be.</summary>
    [Parameter]
    [EditorRequired]
    public required IReadOnlyList<(long Id, string Words)> Portions { get; set; }

    /// <summary>It has another token.</summary>
    [Parameter]
    public EventCallback<(string Name, string Token)> Made { get; set; }

    /// <summary>Something about it changed.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Makes tokens.</summary>
    [Inject]
    public required DeviceDesk Desk { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private Device Device => Now.Device;

    private string State => Device.Retired is { } retired ? $"retired {Instants.Ago(retired, Clock)}"
        : DeviceWords.Kinds.FirstOrDefault(kind => kind.Kind == Device.Kind).Words ?? "";

    private string Last => Now.Last is not { } last ? "It has not sent anything yet."
        : $"{DeviceWords.Of(last, Device.Calibration, Shown)} · {Instants.Ago(last.Arrived, Clock)}";

    private Task MoveAsync(ChangeEventArgs chosen) => DoAsync(async () =>
    {
        long? portion = long.TryParse(chosen.Value as string, CultureInfo.InvariantCulture, out long id) ? id : null;
        await Book.Devices.MoveAsync(Device.Id, portion);
        string? into = Portions.FirstOrDefault(one => one.Id == portion).Words;
        return into is null ? "It is in no gyle; what it sends is kept all the same." : $"From now on what it sends belongs to {into}.";
    });

    private Task LearnAsync() => DoAsync(async () =>
    {
        IReadOnlyList<CalibrationPoint> points = await Book.Sensors.BesideHydrometerAsync(Device);
        if (points.Count == 0)
        {
            return "There is no hydrometer reading at ferment within an hour of one of its own, in the gyle it is in.";
        }

        await Book.Devices.CalibrateAsync(Device.Id, DeviceCalibration.Fit(points, Device.Calibration.OffsetKelvin));
        return Invariant($"Learnt from {points.Count} {(points.Count == 1 ? "reading" : "readings")}.");
    });

    private Task CalibrateAsync(DeviceCalibration calibration) => DoAsync(async () =>
    {
        await Book.Devices.CalibrateAsync(Device.Id, calibration);
        return "Taken as it shows.";
    });

    private Task WarmAsync(ChangeEventArgs typed) => DoAsync(async () =>
    {
        string text = (typed.Value as string ?? "").Trim().Replace(',', '.').Replace('\u2212', '-');
        QuantityLimits limits = DeviceCalibration.TemperatureOffsets;
        if (!double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out double kelvin) || !limits.Allow(kelvin))
        {
            return $"Not kept: {limits.Name} \"{text}\" must be a number from {limits.Format(limits.Low)} to {limits.Format(limits.High)}.";
        }

        await Book.Devices.CalibrateAsync(Device.Id, Device.Calibration with { OffsetKelvin = kelvin });
        return "Its temperatures are shown so from now on, earlier ones too.";
    });

    private Task RenewAsync() => DoAsync(async () =>
    {
        NewToken made = await Desk.RenewAsync(Device.Id);
        await Made.InvokeAsync((Device.Name, made.Token));
        return "Its new token stands above; the one before is worth nothing now.";
    });

    private Task RetireAsync() => DoAsync(async () =>
    {
        bool isRetired = Device.Retired is null;
        if (isRetired && Device.Place is not null)
        {
            await Book.Devices.MoveAsync(Device.Id, null);
        }

        await Book.Devices.RetireAsync(Device.Id, isRetired);
        return isRetired ? "Nothing more is taken from it; what it sent stays." : "It may send again.";
    });

    /// <summary>What was done is told, and what was not.</summary>
    private async Task DoAsync(Func<Task<string>> work)
    {
        try
        {
            _said = await work();
        }
        catch (Exception fault) when (fault is BookUnavailableException or ArgumentException)
        {
            _said = $"Not kept: {fault.Message}";
        }

        await Changed.InvokeAsync();
    }
}
