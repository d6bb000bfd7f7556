using System.Collections.Concurrent;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Cellar;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>Readings of one device that came together.</summary>
/// <param name="DeviceId">Which device.</param>
/// <param name="Readings">What it said.</param>
public sealed record SensorBatch(long DeviceId, IReadOnlyList<SensorReading> Readings);

/// <summary>What devices said: kept for ever as it was sent, each once, and read in the length that a page can draw.</summary>
public sealed class BookSensors
{
    /// <summary>Rows of a device that are looked at one by one; of more a sample is.</summary>
    public const int MostRead = 20_000;

    private const int SampledTimes = 2_000, SampledAtEach = 6;

    /// <summary>How wrong a clock may go for its readings to be looked for.</summary>
    private static readonly TimeSpan Astray = TimeSpan.FromDays(1);

    /// <summary>An open page is told no oftener that devices speak.</summary>
    private static readonly TimeSpan Telling = TimeSpan.FromSeconds(2);

    private readonly BookAccess _access;
    private readonly BookDevices _devices;
    private readonly BookReadings _readings;
    private readonly ConcurrentDictionary<Guid, DateTimeOffset> _told = [];

    internal BookSensors(BookAccess access, BookDevices devices, BookReadings readings) => (_access, _devices, _readings) = (access, devices, readings);

    /// <summary>Adds readings of any devices, all or none, in one transaction. One that is in the book already is passed over: the same device, time and values, or the same number of the device's own.</summary>
    /// <returns>How many of each batch were new.</returns>
    /// <exception cref="BookUnavailableException">The book cannot be written; nothing was taken.</exception>
    public async Task<IReadOnlyList<int>> AppendAsync(IReadOnlyList<SensorBatch> batches, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(batches);
        (int[] added, List<Guid> gyles) = await _access.WriteAsync(
            async context =>
            {
                int[] counts = new int[batches.Count];
                for (int i = 0; i < counts.Length; i++)
                {
                    counts[i] = await SensorStatement.InsertAsync(context, batches[i].DeviceId, batches[i].Readings, cancellation);
                }

                long[] devices = [.. batches.Select(batch => batch.DeviceId).Distinct()];
                return (counts, await context.DevicePlaces
                    .Where(place => devices.Contains(place.DeviceId) && place.UntilTicks == null)
                    .Join(context.Portions, place => place.PortionId, portion => portion.Id, (_, portion) => portion.GyleId)
                    .Distinct().ToListAsync(cancellation));
            },
            cancellation);
        foreach (Guid gyle in gyles.Where(IsTime))
        {
            _access.Changes.Tell(new BookChange(BookNoun.Gyle, gyle, 0, null));
        }

        return added;
    }

    /// <summary>A device's last word; null where it never spoke.</summary>
    public Task<SensorReading?> LastAsync(long device, CancellationToken cancellation = default) =>
        ReadAsync(context => SensorStatement.LastAsync(context, device, DateTimeOffset.MinValue, DateTimeOffset.MaxValue, cancellation), cancellation);

    /// <summary>What a device said from one time to another by its own clock; where that is more than <see cref="MostRead"/>, evenly taken from it.</summary>
    public async Task<(IReadOnlyList<SensorReading> Readings, bool IsSampled)> ReadAsync(
        long device, DateTimeOffset from, DateTimeOffset until, CancellationToken cancellation = default) => await ReadAsync<(IReadOnlyList<SensorReading>, bool)>(
        async context =>
        {
            List<SensorReading> first = await SensorStatement.SelectAsync(context, device, from, until, MostRead + 1, cancellation);
            if (first.Count <= MostRead)
            {
                return (first, false);
            }

            SensorReading last = (await SensorStatement.LastAsync(context, device, from, until, cancellation))!.Value;
            List<SensorReading> sample = await SensorStatement.SampleAsync(context, device, first[0].At, last.At, SampledTimes, SampledAtEach, cancellation);
            return ([.. sample, last], true);
        },
        cancellation);

    /// <summary>A fermentation as hands and devices read it: on one axis of time, calibrated, marked, and no longer than a page can draw.</summary>
    /// <param name="portions">Whose: a portion of a gyle, and what it was divided from.</param>
    /// <param name="span">When the beer stood in the fermenter, as far as that is known.</param>
    /// <param name="most">Points of devices at most.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<CellarSeries> SeriesAsync(
        IReadOnlyCollection<long> portions, CellarSpan span, int most = CellarSeries.UsualPoints, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(portions);
        List<GyleReading> hand = [];
        foreach (long portion in portions)
        {
            hand.AddRange(await HandAsync(portion, cancellation));
        }

        return CellarSeries.Of(await SentAsync(portions, cancellation), hand, span, _access.Now, most);
    }

    /// <summary>What devices sent while they swam in portions, each with its calibration.</summary>
    /// <param name="portions">Whose: a portion of a gyle, and what it was divided from.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<IReadOnlyList<DeviceReadings>> SentAsync(IReadOnlyCollection<long> portions, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(portions);
        List<DevicePlace> places = await _devices.PlacesAsync(portions, cancellation);
        long[] ids = [.. places.Select(place => place.DeviceId)];
        List<Device> devices = await _devices.ListAsync(all => all.Where(device => ids.Contains(device.Id)), cancellation);
        List<DeviceReadings> sent = [];
        foreach (IGrouping<long, DevicePlace> there in places.GroupBy(place => place.DeviceId))
        {
            sent.Add(await SentAsync(devices.Single(device => device.Id == there.Key), [.. there], _access.Now, cancellation));
        }

        return sent;
    }

    /// <summary>A device beside a hydrometer, for each reading that was typed of the portion it is in while it was there.</summary>
    /// <returns>None where it is nowhere.</returns>
    public async Task<IReadOnlyList<CalibrationPoint>> BesideHydrometerAsync(Device device, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(device);
        if (device.Place is not { } place)
        {
            return [];
        }

        CellarSeries typed = CellarSeries.Of([], [.. await HandAsync(place.PortionId, cancellation)], default, _access.Now);
        DeviceReadings sent = await SentAsync(device, [place], _access.Now, cancellation);
        TimeSpan shift = DeviceClock.Shift(sent.Readings);
        return CalibrationPoint.Of(typed.Points, [.. sent.Readings.Select(reading => reading with { At = reading.At + shift })]);
    }

    /// <summary>Readings of a portion that count: neither taken back nor corrected by a later one.</summary>
    private async Task<IEnumerable<GyleReading>> HandAsync(long portion, CancellationToken cancellation)
    {
        List<Logged<GyleReading>> readings = await _readings.ListAsync([portion], cancellation: cancellation);
        HashSet<Guid> takenBack = GyleLog.TakenBack((await _readings.ActionsAsync([portion], cancellation)).ConvertAll(action => action.Entry));
        HashSet<long> replaced = [.. readings.Select(reading => reading.Entry.ReplacesId).OfType<long>()];
        return readings.Where(reading => !replaced.Contains(reading.Id) && !(reading.Entry.EntryId is { } id && takenBack.Contains(id))).Select(reading => reading.Entry);
    }

    private async Task<DeviceReadings> SentAsync(Device device, IReadOnlyList<DevicePlace> places, DateTimeOffset now, CancellationToken cancellation)
    {
        List<SensorReading> readings = [];
        bool isSampled = false;
        foreach (DevicePlace place in places)
        {
            // Where it was is told on the true clock, and the device's may be another.
            DateTimeOffset until = place.Until ?? now + Astray;
            (IReadOnlyList<SensorReading> near, bool sampled) = await ReadAsync(device.Id, place.From - Astray, until + Astray, cancellation);
            TimeSpan shift = DeviceClock.Shift(near);
            readings.AddRange(near.Where(reading => reading.At + shift >= place.From && reading.At + shift < until));
            isSampled |= sampled;
        }

        return new DeviceReadings(device.Name, device.Calibration, readings) { IsSampled = isSampled };
    }

    private Task<T> ReadAsync<T>(Func<BookContext, Task<T>> work, CancellationToken cancellation) => _access.ReadAsync(
        async context =>
        {
            await context.Database.OpenConnectionAsync(cancellation);
            return await work(context);
        },
        cancellation);

    private bool IsTime(Guid gyle)
    {
        DateTimeOffset now = _access.Now;
        if (_told.TryGetValue(gyle, out DateTimeOffset before) && now - before < Telling && now >= before)
        {
            return false;
        }

        _told[gyle] = now;
        return true;
    }
}
