using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Science.Quantities;
using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>A line of a gyle's log, with its number in the book.</summary>
/// <param name="Id">To be named by a later entry that corrects this one.</param>
/// <param name="PortionId">Which portion it belongs to.</param>
/// <param name="Recorded">When it reached the book.</param>
/// <param name="Entry">What was written.</param>
/// <typeparam name="TEntry">A reading or an action.</typeparam>
public sealed record Logged<TEntry>(long Id, long PortionId, DateTimeOffset Recorded, TEntry Entry);

/// <summary>What was measured and done, by portion. It is only ever added to: a mistake is corrected by a later entry.</summary>
public sealed class BookReadings
{
    private readonly BookAccess _access;

    internal BookReadings(BookAccess access) => _access = access;

    /// <summary>Adds readings, all or none. One whose entry id is in the book already is passed over.</summary>
    /// <returns>How many were new.</returns>
    public Task<int> AddAsync(
        long portionId, IReadOnlyCollection<GyleReading> readings, CancellationToken cancellation = default)
    {
        DateTimeOffset now = _access.Now;
        return AppendAsync(
            portionId,
            context => context.Readings,
            readings.Select(r => Row(portionId, r, now)),
            r => r.EntryId,
            (context, ids) => context.Readings.Where(r => ids.Contains(r.EntryId)).Select(r => r.EntryId),
            cancellation);
    }

    /// <summary>Adds actions, all or none. One whose entry id is in the book already is passed over.</summary>
    /// <returns>How many were new.</returns>
    public Task<int> AddAsync(
        long portionId, IReadOnlyCollection<BrewAction> actions, CancellationToken cancellation = default)
    {
        DateTimeOffset now = _access.Now;
        return AppendAsync(
            portionId,
            context => context.Actions,
            actions.Select(a => Row(portionId, a, now)),
            a => a.EntryId,
            (context, ids) => context.Actions.Where(a => ids.Contains(a.EntryId)).Select(a => a.EntryId),
            cancellation);
    }

    /// <summary>Readings of portions in the order they were taken, corrected ones included.</summary>
    public async Task<List<Logged<GyleReading>>> ListAsync(IReadOnlyCollection<long> portionIds, CancellationToken cancellation = default)
    {
        List<ReadingRow> rows = await _access.ReadAsync(
            context => context.Readings
                .Where(r => portionIds.Contains(r.PortionId))
                .OrderBy(r => r.AtTicks).ThenBy(r => r.Id)
                .ToListAsync(cancellation),
            cancellation);
        return rows.ConvertAll(Show);
    }

    /// <summary>Actions on portions in the order they were done, corrected ones included.</summary>
    public async Task<List<Logged<BrewAction>>> ActionsAsync(IReadOnlyCollection<long> portionIds, CancellationToken cancellation = default)
    {
        List<ActionRow> rows = await _access.ReadAsync(
            context => context.Actions
                .Where(a => portionIds.Contains(a.PortionId))
                .OrderBy(a => a.AtTicks).ThenBy(a => a.Id)
                .ToListAsync(cancellation),
            cancellation);
        return rows.ConvertAll(Show);
    }

    /// <summary>How much of each lot went into gyles, kg, by the lot's name as actions have it; what was taken back is not counted.</summary>
    public async Task<Dictionary<string, double>> UsedOfLotsAsync(CancellationToken cancellation = default)
    {
        List<ActionRow> rows = await _access.ReadAsync(
            context => context.Actions
                .Where(a => a.Lot != null || a.Kind == ActionKind.Undone)
                .OrderBy(a => a.AtTicks).ThenBy(a => a.Id)
                .ToListAsync(cancellation),
            cancellation);
        List<BrewAction> actions = rows.ConvertAll(row => Show(row).Entry);
        HashSet<Guid> takenBack = GyleLog.TakenBack(actions);
        return actions.Where(action => action is { Lot: not null, Mass: not null } && !(action.EntryId is { } id && takenBack.Contains(id)))
            .GroupBy(action => action.Lot!).ToDictionary(lot => lot.Key, lot => lot.Sum(action => action.Mass!.Value.Kilograms));
    }

    private async Task<int> AppendAsync<TRow>(
        long portionId,
        Func<BookContext, DbSet<TRow>> table,
        IEnumerable<TRow> entries,
        Func<TRow, Guid?> entryId,
        Func<BookContext, List<Guid?>, IQueryable<Guid?>> known,
        CancellationToken cancellation)
        where TRow : class
    {
        List<TRow> rows = [.. entries];
        List<Guid?> ids = [.. rows.Select(entryId).Where(id => id is not null)];
        (int added, Guid gyleId) = await _access.WriteAsync(
            async context =>
            {
                Guid gyle = (await context.Portions.FindAsync([portionId], cancellation))?.GyleId
                    ?? throw new ArgumentOutOfRangeException(nameof(portionId), portionId, "No such portion in the book.");
                HashSet<Guid?> seen = ids.Count == 0 ? [] : [.. await known(context, ids).ToListAsync(cancellation)];
                List<TRow> fresh = rows.FindAll(row => entryId(row) is null || seen.Add(entryId(row)));
                table(context).AddRange(fresh);
                return (fresh.Count, gyle);
            },
            cancellation);
        if (added > 0)
        {
            _access.Changes.Tell(new BookChange(BookNoun.Gyle, gyleId, 0, null));
        }

        return added;
    }

    private static ReadingRow Row(long portionId, GyleReading reading, DateTimeOffset now) => new()
    {
        PortionId = portionId,
        EntryId = reading.EntryId,
        AtTicks = reading.At,
        RecordedTicks = now,
        Stage = reading.Stage,
        Instrument = reading.Instrument,
        GravitySg = reading.Gravity?.Ratio,
        VolumeL = reading.Volume?.Litres,
        TemperatureC = reading.Temperature?.Celsius,
        Ph = reading.Ph,
        PressureBar = reading.Pressure?.Bar,
        Note = reading.Note,
        Typed = reading.Typed,
        ReplacesId = reading.ReplacesId,
    };

    private static ActionRow Row(long portionId, BrewAction action, DateTimeOffset now) => new()
    {
        PortionId = portionId,
        EntryId = action.EntryId,
        AtTicks = action.At,
        RecordedTicks = now,
        Kind = action.Kind,
        What = action.What,
        Stage = action.Stage,
        Step = action.Step,
        Item = action.Item,
        Lot = action.Lot,
        UntilTicks = action.Until,
        Undoes = action.Undoes,
        Detail = action.Detail,
        MassKg = action.Mass?.Kilograms,
        VolumeL = action.Volume?.Litres,
        TemperatureC = action.Temperature?.Celsius,
        ReplacesId = action.ReplacesId,
    };

    private static Logged<GyleReading> Show(ReadingRow row) => new(row.Id, row.PortionId, row.RecordedTicks, new GyleReading
    {
        At = row.AtTicks,
        EntryId = row.EntryId,
        Stage = row.Stage,
        Instrument = row.Instrument,
        Gravity = row.GravitySg is { } gravity ? SpecificGravity.FromRatio(gravity) : null,
        Volume = row.VolumeL is { } volume ? HotVolume.FromLitres(volume) : null,
        Temperature = row.TemperatureC is { } temperature ? Temperature.FromCelsius(temperature) : null,
        Ph = row.Ph,
        Pressure = row.PressureBar is { } pressure ? GaugePressure.FromBar(pressure) : null,
        Note = row.Note,
        Typed = row.Typed,
        ReplacesId = row.ReplacesId,
    });

    internal static Logged<BrewAction> Show(ActionRow row) => new(row.Id, row.PortionId, row.RecordedTicks, new BrewAction
    {
        At = row.AtTicks,
        EntryId = row.EntryId,
        Kind = row.Kind,
        What = row.What,
        Stage = row.Stage,
        Step = row.Step,
        Item = row.Item,
        Lot = row.Lot,
        Until = row.UntilTicks,
        Undoes = row.Undoes,
        Detail = row.Detail,
        Mass = row.MassKg is { } mass ? Mass.FromKilograms(mass) : null,
        Volume = row.VolumeL is { } volume ? HotVolume.FromLitres(volume) : null,
        Temperature = row.TemperatureC is { } temperature ? Temperature.FromCelsius(temperature) : null,
        ReplacesId = row.ReplacesId,
    });
}
