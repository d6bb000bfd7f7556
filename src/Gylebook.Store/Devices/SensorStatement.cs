using System.Data.Common;
using Gylebook.Gyles.Cellar;
using Gylebook.Science.Quantities;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Gylebook.Store;

/// <summary>Rows of devices as SQL, past the context, which would keep each of them in mind.</summary>
internal static class SensorStatement
{
    // In the order of the names, as a checksum sums them.
    private const string Columns = "arrived_ticks, at_ticks, battery_v, device_id, gravity_sg, pressure_bar, sent_id, sent_key, temperature_c";

    private const string Shown = "at_ticks, arrived_ticks, gravity_sg, temperature_c, pressure_bar, battery_v";

    /// <summary>Adds rows; one that is there already is passed over.</summary>
    /// <returns>How many were new.</returns>
    public static async Task<int> InsertAsync(BookContext context, long device, IReadOnlyList<SensorReading> readings, CancellationToken cancellation)
    {
        await using DbCommand command = Command(context, $"INSERT INTO sensor_rows ({Columns}, checksum) VALUES ({string.Join(", ", Columns.Split(", ").Append("checksum").Select(name => "@" + name))}) ON CONFLICT DO NOTHING");
        DbParameter[] parameters = [.. Columns.Split(", ").Append("checksum").Select(name => Parameter(command, "@" + name))];
        int added = 0;
        foreach (SensorReading reading in readings)
        {
            object?[] values = Values(device, reading);
            for (int i = 0; i < values.Length; i++)
            {
                parameters[i].Value = values[i] ?? DBNull.Value;
            }

            parameters[^1].Value = RowChecksum.Of(values);
            added += await command.ExecuteNonQueryAsync(cancellation);
        }

        return added;
    }

    /// <summary>A device's rows from one time to another, the earliest first.</summary>
    public static async Task<List<SensorReading>> SelectAsync(
        BookContext context, long device, DateTimeOffset from, DateTimeOffset until, int most, CancellationToken cancellation)
    {
        await using DbCommand command = Between(context, "", most);
        return await ReadAsync(command, device, from, until, cancellation);
    }

    /// <summary>So many rows at each of so many times, evenly over the whole.</summary>
    public static async Task<List<SensorReading>> SampleAsync(
        BookContext context, long device, DateTimeOffset from, DateTimeOffset until, int times, int atEach, CancellationToken cancellation)
    {
        List<SensorReading> sample = [];
        await using DbCommand command = Between(context, "", atEach);
        long step = Math.Max(1, (until - from).Ticks / times);
        for (DateTimeOffset start = from; start < until; start = start.AddTicks(step))
        {
            DateTimeOffset end = start.AddTicks(step);
            sample.AddRange(await ReadAsync(command, device, start, end < until ? end : until, cancellation));
        }

        return sample;
    }

    /// <summary>A device's last row in a time; null where there is none.</summary>
    public static async Task<SensorReading?> LastAsync(BookContext context, long device, DateTimeOffset from, DateTimeOffset until, CancellationToken cancellation)
    {
        await using DbCommand command = Between(context, " DESC", 1);
        return await ReadAsync(command, device, from, until, cancellation) is [var last] ? last : null;
    }

    private static async Task<List<SensorReading>> ReadAsync(DbCommand command, long device, DateTimeOffset from, DateTimeOffset until, CancellationToken cancellation)
    {
        command.Parameters["@device"].Value = device;
        command.Parameters["@from"].Value = from.UtcTicks;
        command.Parameters["@until"].Value = until.UtcTicks;
        List<SensorReading> read = [];
        await using DbDataReader rows = await command.ExecuteReaderAsync(cancellation);
        while (await rows.ReadAsync(cancellation))
        {
            read.Add(new SensorReading(Instant(rows, 0), Instant(rows, 1))
            {
                Gravity = rows.IsDBNull(2) ? null : SpecificGravity.FromRatio(rows.GetDouble(2)),
                Temperature = rows.IsDBNull(3) ? null : Temperature.FromCelsius(rows.GetDouble(3)),
                Pressure = rows.IsDBNull(4) ? null : GaugePressure.FromBar(rows.GetDouble(4)),
                BatteryVolts = rows.IsDBNull(5) ? null : rows.GetDouble(5),
            });
        }

        return read;
    }

    private static DbCommand Between(BookContext context, string order, int most)
    {
        DbCommand command = Command(context, Invariant(
            $"SELECT {Shown} FROM sensor_rows WHERE device_id = @device AND at_ticks >= @from AND at_ticks < @until ORDER BY at_ticks{order}, sent_key{order} LIMIT {most}"));
        foreach (string name in new[] { "@device", "@from", "@until" })
        {
            Parameter(command, name);
        }

        return command;
    }

    /// <summary>As the database holds them, in the order of their names.</summary>
    private static object?[] Values(long device, SensorReading reading)
    {
        object?[] said = [reading.BatteryVolts, reading.Gravity?.Ratio, reading.Pressure?.Bar, reading.Temperature?.Celsius, reading.Id];
        return
        [
            reading.Arrived.UtcTicks, reading.At.UtcTicks, reading.BatteryVolts, device, reading.Gravity?.Ratio, reading.Pressure?.Bar,
            reading.Id is null ? null : RowChecksum.Of([reading.Id]), RowChecksum.Of(said) & uint.MaxValue, reading.Temperature?.Celsius,
        ];
    }

    private static DateTimeOffset Instant(DbDataReader rows, int column) => new(rows.GetInt64(column), TimeSpan.Zero);

    private static DbCommand Command(BookContext context, string sql)
    {
        DbCommand command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        command.Transaction = context.Database.CurrentTransaction?.GetDbTransaction();
        return command;
    }

    private static DbParameter Parameter(DbCommand command, string name)
    {
        DbParameter parameter = command.CreateParameter();
        parameter.ParameterName = name;
        command.Parameters.Add(parameter);
        return parameter;
    }
}
