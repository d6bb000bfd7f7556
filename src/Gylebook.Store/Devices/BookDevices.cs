using Gylebook.Gyles.Cellar;
using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>The devices of the book: what they are called, where they are, what their token hashes to. What they said is in <see cref="BookSensors"/>.</summary>
public sealed class BookDevices
{
    /// <summary>Letters in a name.</summary>
    public const int LongestName = 60;

    private readonly BookAccess _access;

    internal BookDevices(BookAccess access) => _access = access;

    /// <summary>Adds a device.</summary>
    /// <param name="name">What to call it.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="tokenHash">What its token hashes to; null where none sends.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>Its number.</returns>
    /// <exception cref="ArgumentException">There is no name, or it is too long.</exception>
    public async Task<long> AddAsync(string name, DeviceKind kind, string? tokenHash, CancellationToken cancellation = default)
    {
        DeviceRow row = new() { Name = NameOf(name), Kind = kind, TokenHash = tokenHash, Slope = 1, CreatedTicks = _access.Now };
        await _access.WriteAsync(context => Task.FromResult(context.Devices.Add(row)), cancellation);
        Tell();
        return row.Id;
    }

    /// <summary>All devices, those in use first, by name.</summary>
    public Task<List<Device>> ListAsync(CancellationToken cancellation = default) => ListAsync(devices => devices, cancellation);

    /// <summary>One device; null for none.</summary>
    public async Task<Device?> FindAsync(long id, CancellationToken cancellation = default) =>
        (await ListAsync(devices => devices.Where(device => device.Id == id), cancellation)).SingleOrDefault();

    /// <summary>The device whose token hashes to that and that is in use; null for none.</summary>
    public Task<long?> FindByTokenAsync(string tokenHash, CancellationToken cancellation = default) => _access.ReadAsync(
        context => context.Devices.Where(device => device.TokenHash == tokenHash && device.RetiredTicks == null).Select(device => (long?)device.Id).SingleOrDefaultAsync(cancellation),
        cancellation);

    /// <summary>The table of that name in a portion, made where there is none.</summary>
    public async Task<long> TableAsync(string name, long portionId, CancellationToken cancellation = default)
    {
        string called = NameOf(name);
        long id = await _access.WriteAsync(
            async context =>
            {
                long? known = await context.Devices
                    .Where(device => device.Kind == DeviceKind.Table && device.Name == called && context.DevicePlaces.Any(place => place.DeviceId == device.Id && place.PortionId == portionId))
                    .Select(device => (long?)device.Id).FirstOrDefaultAsync(cancellation);
                if (known is { } there)
                {
                    return there;
                }

                DeviceRow row = new() { Name = called, Kind = DeviceKind.Table, Slope = 1, CreatedTicks = _access.Now };
                context.Devices.Add(row);
                await context.SaveChangesAsync(cancellation);

                // A table says when each of its readings was: all of them belong to the portion.
                context.DevicePlaces.Add(new DevicePlaceRow { DeviceId = row.Id, PortionId = portionId, FromTicks = DateTimeOffset.UnixEpoch });
                return row.Id;
            },
            cancellation);
        Tell();
        return id;
    }

    /// <summary>Puts a device into a portion, or takes it out. Where it was before is kept.</summary>
    /// <param name="id">Which device.</param>
    /// <param name="portionId">Into which portion; null for out.</param>
    /// <param name="from">Since when; null for now. Not before it came to where it is.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such device or portion, or it came to where it is later than that.</exception>
    public async Task MoveAsync(long id, long? portionId, DateTimeOffset? from = null, CancellationToken cancellation = default)
    {
        DateTimeOffset at = from ?? _access.Now;
        HashSet<Guid> gyles = await _access.WriteAsync(
            async context =>
            {
                _ = await RowAsync(context, id, cancellation);
                HashSet<Guid> touched = [];
                DevicePlaceRow? now = await context.DevicePlaces.SingleOrDefaultAsync(place => place.DeviceId == id && place.UntilTicks == null, cancellation);
                if (now is not null)
                {
                    if (at < now.FromTicks)
                    {
                        throw new ArgumentOutOfRangeException(nameof(from), at, Invariant($"It came to where it is at {now.FromTicks:yyyy-MM-dd HH:mm} UTC; it cannot have left before."));
                    }

                    now.UntilTicks = at;
                    touched.Add((await context.Portions.FindAsync([now.PortionId], cancellation))!.GyleId);
                }

                if (portionId is { } into)
                {
                    PortionRow portion = await context.Portions.FindAsync([into], cancellation)
                        ?? throw new ArgumentOutOfRangeException(nameof(portionId), into, "No such portion in the book.");
                    context.DevicePlaces.Add(new DevicePlaceRow { DeviceId = id, PortionId = into, FromTicks = at });
                    touched.Add(portion.GyleId);
                }

                return touched;
            },
            cancellation);
        Tell();
        foreach (Guid gyle in gyles)
        {
            _access.Changes.Tell(new BookChange(BookNoun.Gyle, gyle, 0, null));
        }
    }

    /// <summary>Sets how its values are brought to what is so; what it said stays as it was sent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of its limits.</exception>
    public Task CalibrateAsync(long id, DeviceCalibration calibration, CancellationToken cancellation = default)
    {
        DeviceCalibration.Slopes.Check(calibration.Slope);
        DeviceCalibration.Offsets.Check(calibration.OffsetSg);
        DeviceCalibration.TemperatureOffsets.Check(calibration.OffsetKelvin);
        return ChangeAsync(id, row => (row.Slope, row.OffsetSg, row.OffsetC) = (calibration.Slope, calibration.OffsetSg, calibration.OffsetKelvin), cancellation);
    }

    /// <summary>Calls it otherwise.</summary>
    public Task RenameAsync(long id, string name, CancellationToken cancellation = default)
    {
        string called = NameOf(name);
        return ChangeAsync(id, row => row.Name = called, cancellation);
    }

    /// <summary>Gives it another token; the one before is worth nothing from then on.</summary>
    public Task SetTokenAsync(long id, string tokenHash, CancellationToken cancellation = default) => ChangeAsync(id, row => row.TokenHash = tokenHash, cancellation);

    /// <summary>Takes nothing more from it, or takes it up again. What it said stays.</summary>
    public Task RetireAsync(long id, bool isRetired, CancellationToken cancellation = default) =>
        ChangeAsync(id, row => row.RetiredTicks = isRetired ? _access.Now : null, cancellation);

    /// <summary>Devices that are or were in portions, with the times.</summary>
    public Task<List<DevicePlace>> PlacesAsync(IReadOnlyCollection<long> portions, CancellationToken cancellation = default) =>
        _access.ReadAsync(context => Places(context, context.DevicePlaces.Where(place => portions.Contains(place.PortionId))).ToListAsync(cancellation), cancellation);

    internal async Task<List<Device>> ListAsync(Func<IQueryable<DeviceRow>, IQueryable<DeviceRow>> choose, CancellationToken cancellation)
    {
        (List<DeviceRow> rows, List<DevicePlace> places) = await _access.ReadAsync(
            async context => (
                await choose(context.Devices).OrderBy(device => device.RetiredTicks != null).ThenBy(device => device.Name).ThenBy(device => device.Id).ToListAsync(cancellation),
                await Places(context, context.DevicePlaces.Where(place => place.UntilTicks == null)).ToListAsync(cancellation)),
            cancellation);
        return rows.ConvertAll(row => new Device(
            row.Id,
            row.Name,
            row.Kind,
            row.TokenHash is not null && row.RetiredTicks is null,
            new DeviceCalibration(row.Slope, row.OffsetSg, row.OffsetC),
            row.CreatedTicks,
            row.RetiredTicks,
            places.Find(place => place.DeviceId == row.Id)));
    }

    private static IQueryable<DevicePlace> Places(BookContext context, IQueryable<DevicePlaceRow> rows) =>
        from place in rows
        join portion in context.Portions on place.PortionId equals portion.Id
        join gyle in context.Gyles on portion.GyleId equals gyle.Id
        orderby place.FromTicks, place.Id
        select new DevicePlace(place.DeviceId, place.PortionId, gyle.Id, gyle.Name, portion.Name, place.FromTicks, place.UntilTicks);

    private async Task ChangeAsync(long id, Action<DeviceRow> change, CancellationToken cancellation)
    {
        await _access.WriteAsync(
            async context =>
            {
                change(await RowAsync(context, id, cancellation));
                return true;
            },
            cancellation);
        Tell();
    }

    private void Tell() => _access.Changes.Tell(new BookChange(BookNoun.Device, Guid.Empty, 0, null));

    private static string NameOf(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        string called = name.Trim();
        return called.Length <= LongestName ? called : throw new ArgumentException(Invariant($"A device's name has at most {LongestName} letters; this one has {called.Length}."), nameof(name));
    }

    private static async Task<DeviceRow> RowAsync(BookContext context, long id, CancellationToken cancellation) =>
        await context.Devices.SingleOrDefaultAsync(device => device.Id == id, cancellation)
        ?? throw new ArgumentOutOfRangeException(nameof(id), id, "No such device in the book.");
}
