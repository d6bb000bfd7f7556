using Gylebook.Gyles;
using Gylebook.Gyles.Cellar;
using Gylebook.Science.Quantities;
using Gylebook.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace Gylebook.Store.Tests;

/// <summary>Devices, where they are, and what they send: kept once, for ever, and read in the length a page can draw.</summary>
public sealed class SensorTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;
    private long _float;

    private DateTimeOffset Start => _bench.Clock.Now;

    public async ValueTask InitializeAsync()
    {
        _book = await _bench.OpenAsync();
        _float = await _book.Devices.AddAsync(" Red float ", DeviceKind.Floating, "hash-1", Bench.Cancellation);
    }

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task A_device_is_found_by_what_its_token_hashes_to_while_it_is_in_use()
    {
        Assert.Equal(_float, await _book.Devices.FindByTokenAsync("hash-1", Bench.Cancellation));
        Assert.Null(await _book.Devices.FindByTokenAsync("hash-2", Bench.Cancellation));
        await _book.Devices.SetTokenAsync(_float, "hash-2", Bench.Cancellation);
        Assert.Null(await _book.Devices.FindByTokenAsync("hash-1", Bench.Cancellation));
        await _book.Devices.RetireAsync(_float, true, Bench.Cancellation);
        Assert.Null(await _book.Devices.FindByTokenAsync("hash-2", Bench.Cancellation));
        Device device = Assert.Single(await _book.Devices.ListAsync(Bench.Cancellation));
        Assert.Equal(("Red float", DeviceKind.Floating, false, _bench.Clock.Now), (device.Name, device.Kind, device.MaySend, device.Retired!.Value));
        await _book.Devices.RetireAsync(_float, false, Bench.Cancellation);
        Assert.Equal(_float, await _book.Devices.FindByTokenAsync("hash-2", Bench.Cancellation));
    }

    [Fact]
    public async Task What_cannot_be_is_refused_with_value_and_limit()
    {
        await Assert.ThrowsAsync<ArgumentException>(() => _book.Devices.AddAsync(" ", DeviceKind.Floating, null, Bench.Cancellation));
        ArgumentException tooLong = await Assert.ThrowsAsync<ArgumentException>(() => _book.Devices.RenameAsync(_float, new string('x', 61), Bench.Cancellation));
        Assert.Contains("at most 60 letters; this one has 61", tooLong.Message, StringComparison.Ordinal);
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Devices.MoveAsync(_float, 4711, cancellation: Bench.Cancellation));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Devices.CalibrateAsync(_float, new DeviceCalibration(3, 0, 0), Bench.Cancellation));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Devices.RenameAsync(4711, "Nobody", Bench.Cancellation));
        Assert.Null((await _book.Devices.FindAsync(_float, Bench.Cancellation))!.Place);
    }

    [Fact]
    public async Task The_same_said_twice_is_kept_once_whenever_it_arrives()
    {
        SensorReading[] readings = [.. new MadeUpFloat { Seed = "twice", From = Start }.Readings(100)];
        Assert.Equal([100], await AppendAsync(readings));
        Assert.Equal([0], await AppendAsync([.. readings.Select(reading => reading with { Arrived = reading.Arrived.AddHours(3) })]));

        // Gravity and temperature of one moment may come apart; another device may say the same.
        SensorReading bare = new(Start.AddDays(9), Start.AddDays(9));
        SensorReading gravity = bare with { Gravity = SpecificGravity.FromRatio(1.02) }, warmth = bare with { Temperature = Temperature.FromCelsius(18) };
        Assert.Equal([2], await AppendAsync([gravity, warmth]));
        long other = await _book.Devices.AddAsync("Other", DeviceKind.Floating, null, Bench.Cancellation);
        Assert.Equal([0, 1], await _book.Sensors.AppendAsync([new(_float, [gravity]), new(other, [gravity])], Bench.Cancellation));
        Assert.Equal(103L, _bench.Sql("SELECT count(*) FROM sensor_rows"));
    }

    [Fact]
    public async Task A_number_of_the_devices_own_is_known_again_whatever_its_time()
    {
        SensorReading said = new(Start, Start) { Gravity = SpecificGravity.FromRatio(1.048), Id = "boot-7/12" };
        Assert.Equal([1], await AppendAsync([said]));
        Assert.Equal([0], await AppendAsync([said with { At = Start.AddMinutes(2), Arrived = Start.AddMinutes(2) }]));
        Assert.Equal([1], await AppendAsync([said with { Id = "boot-7/13" }]));
    }

    [Fact]
    public async Task All_or_none_of_what_comes_together_is_taken()
    {
        await Assert.ThrowsAnyAsync<Exception>(() => _book.Sensors.AppendAsync(
            [new(_float, [new SensorReading(Start, Start) { BatteryVolts = 4 }]), new(4711, [new SensorReading(Start, Start) { BatteryVolts = 4 }])], Bench.Cancellation));
        Assert.Equal(0L, _bench.Sql("SELECT count(*) FROM sensor_rows"));
    }

    [Fact]
    public async Task Values_come_back_as_they_were_sent_to_the_last_bit()
    {
        SensorReading[] readings =
        [
            new(Start.AddTicks(1), Start.AddSeconds(3)) { Gravity = SpecificGravity.FromRatio(1.0481234567), Temperature = Temperature.FromCelsius(-1.25), Pressure = GaugePressure.FromBar(0.123), BatteryVolts = 3.987 },
            new(Start.AddTicks(2), Start.AddSeconds(3)) { Temperature = Temperature.FromCelsius(20) },
        ];
        await AppendAsync(readings);
        (IReadOnlyList<SensorReading> read, bool isSampled) = await _book.Sensors.ReadAsync(_float, Start, Start.AddDays(1), Bench.Cancellation);
        Assert.False(isSampled);
        Assert.Equal(readings, read);
        Assert.Equal(readings[1], await _book.Sensors.LastAsync(_float, Bench.Cancellation));
    }

    [Fact]
    public async Task Readings_belong_to_where_the_device_was_when_they_were_taken()
    {
        (_, long first) = await Bench.StartedAsync(_book);
        (_, long second) = await Bench.StartedAsync(_book);
        SensorReading[] readings = [.. new MadeUpFloat { Seed = "moved", From = Start }.Readings(300)];
        await _book.Devices.MoveAsync(_float, first, Start, Bench.Cancellation);
        await _book.Devices.MoveAsync(_float, second, Start.AddMinutes(15 * 100), Bench.Cancellation);
        await _book.Devices.MoveAsync(_float, null, Start.AddMinutes(15 * 250), Bench.Cancellation);
        await AppendAsync(readings);

        Assert.Equal(readings[..100].Select(reading => reading.At), (await SeriesAsync(first)).Points.Select(point => point.At));
        Assert.Equal(readings[100..250].Select(reading => reading.At), (await SeriesAsync(second)).Points.Select(point => point.At));
        Assert.Equal(250, (await SeriesAsync(first, second)).Points.Count);
        ArgumentOutOfRangeException early = await Assert.ThrowsAsync<ArgumentOutOfRangeException>(async () =>
        {
            await _book.Devices.MoveAsync(_float, first, Start.AddDays(20), Bench.Cancellation);
            await _book.Devices.MoveAsync(_float, second, Start.AddDays(19), Bench.Cancellation);
        });
        Assert.Contains("it cannot have left before", early.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_clock_an_hour_slow_is_put_right_at_the_edges_too()
    {
        (_, long portion) = await Bench.StartedAsync(_book);
        await _book.Devices.MoveAsync(_float, portion, Start, Bench.Cancellation);
        SensorReading[] slow = [.. new MadeUpFloat { Seed = "slow", From = Start.AddHours(-1) }.Readings(50).Select(reading => reading with { Arrived = reading.At.AddHours(1) })];
        await AppendAsync(slow);
        CellarSeries series = await SeriesAsync(portion);
        Assert.Equal((50, Start), (series.Points.Count, series.Points[0].At));
        Assert.Equal(TimeSpan.FromHours(1), Assert.Single(series.Clocks).Shift);
    }

    [Fact]
    public async Task Hands_and_devices_stand_on_one_axis_without_what_was_taken_back_or_corrected()
    {
        (_, long portion) = await Bench.StartedAsync(_book);
        await _book.Devices.MoveAsync(_float, portion, Start, Bench.Cancellation);
        await _book.Devices.CalibrateAsync(_float, new DeviceCalibration(1, -0.002, 0.5), Bench.Cancellation);
        await AppendAsync([new SensorReading(Start.AddHours(1), Start.AddHours(1)) { Gravity = SpecificGravity.FromRatio(1.050), Temperature = Temperature.FromCelsius(20) }]);
        GyleReading wrong = Typed(2, 1.400), undone = Typed(3, 1.045), good = Typed(4, 1.044);
        await _book.Readings.AddAsync(portion, [wrong, undone, good, Typed(5, 1.043) with { Stage = "cast" }], Bench.Cancellation);
        long first = (await _book.Readings.ListAsync([portion], Bench.Cancellation))[0].Id;
        await _book.Readings.AddAsync(portion, [Typed(2, 1.046) with { ReplacesId = first }], Bench.Cancellation);
        await _book.Readings.AddAsync(portion, [new BrewAction { At = Start.AddHours(6), EntryId = Guid.CreateVersion7(), What = "", Kind = ActionKind.Undone, Undoes = undone.EntryId }], Bench.Cancellation);

        CellarSeries series = await SeriesAsync(portion);
        Assert.Equal([1.048, 1.046, 1.044], series.Points.Select(point => Math.Round(point.GravitySg!.Value, 9)));
        Assert.Equal([CellarSource.Device, CellarSource.Hand, CellarSource.Hand], series.Points.Select(point => point.Source));
        Assert.Equal(20.5, series.Points[0].TemperatureC);

        // What the book keeps is what was sent, whatever the calibration.
        Assert.Equal(1.050, _bench.Sql("SELECT gravity_sg FROM sensor_rows"));
    }

    [Fact]
    public async Task Of_a_flood_a_sample_over_all_of_its_time_is_read()
    {
        DateTimeOffset start = Start;
        (_, long portion) = await Bench.StartedAsync(_book);
        await _book.Devices.MoveAsync(_float, portion, start, Bench.Cancellation);
        SensorReading[] flood = [.. new MadeUpFloat { Seed = "flood", From = start, Every = TimeSpan.FromSeconds(10) }.Readings(BookSensors.MostRead * 2)];
        await AppendAsync(flood);
        _bench.Clock.Now = start.AddDays(5);
        CellarSeries series = await SeriesAsync(portion);
        Assert.True(series.IsSampled);
        Assert.InRange(series.Read, 2_000, BookSensors.MostRead);
        Assert.InRange(series.Points.Count, CellarSeries.UsualPoints / 2, CellarSeries.UsualPoints);
        Assert.Equal((flood[0].At, flood[^1].At), (series.Points[0].At, series.Points[^1].At));

        // No hour is left out.
        Assert.Equal((int)(flood[^1].At - flood[0].At).TotalHours + 1, series.Points.Select(point => (int)(point.At - start).TotalHours).Distinct().Count());
    }

    [Fact]
    public async Task A_table_of_a_portion_is_made_once_and_holds_readings_of_any_day()
    {
        (_, long portion) = await Bench.StartedAsync(_book);
        long table = await _book.Devices.TableAsync("logger.csv", portion, Bench.Cancellation);
        Assert.Equal(table, await _book.Devices.TableAsync("logger.csv", portion, Bench.Cancellation));
        Assert.NotEqual(table, await _book.Devices.TableAsync("other.csv", portion, Bench.Cancellation));
        await _book.Sensors.AppendAsync([new(table, [new SensorReading(Start.AddYears(-1), Start) { Gravity = SpecificGravity.FromRatio(1.05) }])], Bench.Cancellation);
        Assert.Equal("logger.csv", Assert.Single((await SeriesAsync(portion)).Points).Instrument);
    }

    [Fact]
    public async Task A_row_that_the_disk_changed_is_named_and_hides_no_other()
    {
        await AppendAsync([.. new MadeUpFloat { Seed = "damaged", From = Start }.Readings(1300)]);
        Assert.Empty(BookCheck.Damage(_bench.File));
        _bench.Sql("DROP TRIGGER sensor_rows_refuse_update");
        _bench.Sql($"UPDATE sensor_rows SET gravity_sg = gravity_sg + 0.001 WHERE at_ticks IN ({Start.AddMinutes(15 * 3).UtcTicks}, {Start.AddMinutes(15 * 1250).UtcTicks})");
        IReadOnlyList<DamagedPlace> named = BookCheck.Damage(_bench.File);
        Assert.Equal(2, named.Count);
        Assert.StartsWith("A reading of the device \"Red float\", 20", named[0].What, StringComparison.Ordinal);
        _bench.Sql("ALTER TABLE sensor_rows RENAME COLUMN checksum TO chocksum");
        Assert.Equal("The list of all readings of devices", Assert.Single(BookCheck.Damage(_bench.File)).What);
    }

    [Fact]
    public async Task A_book_keeps_no_token_and_a_reading_of_no_device_not_at_all()
    {
        Assert.Equal("hash-1", _bench.Sql("SELECT token_hash FROM devices"));
        SqliteException hanging = Assert.Throws<SqliteException>(() => _bench.Sql("PRAGMA foreign_keys = ON; INSERT INTO sensor_rows VALUES (99, 1, 1, 1, 1.05, NULL, NULL, NULL, NULL, 1)"));
        Assert.Contains("FOREIGN KEY", hanging.Message, StringComparison.Ordinal);
        await Assert.ThrowsAnyAsync<Exception>(() => _book.Devices.AddAsync("Twin", DeviceKind.Floating, "hash-1", Bench.Cancellation));
    }

    private Task<IReadOnlyList<int>> AppendAsync(IReadOnlyList<SensorReading> readings) => _book.Sensors.AppendAsync([new SensorBatch(_float, readings)], Bench.Cancellation);

    private Task<CellarSeries> SeriesAsync(params long[] portions) => _book.Sensors.SeriesAsync(portions, default, cancellation: Bench.Cancellation);

    private GyleReading Typed(double hours, double gravity) => new()
    {
        At = Start.AddHours(hours),
        EntryId = Guid.CreateVersion7(),
        Stage = "ferment",
        Gravity = SpecificGravity.FromRatio(gravity),
    };
}
