using Gylebook.Store.Sqlite.Migrations;
using Microsoft.Data.Sqlite;

namespace Gylebook.Store.Sqlite;

/// <summary>Compares rows of devices with their checksums, a stretch at a time: there are millions of them, and they have no number.</summary>
internal static class SensorSoundness
{
    /// <summary>Rows that are read at once; they count as one for whoever goes slowly.</summary>
    private const int Stretch = 500;

    private static readonly string Next = Invariant($"""
        SELECT device_id, at_ticks, sent_key,
               checksum = {HandWritten.SumOf(["arrived_ticks", "at_ticks", "battery_v", "device_id", "gravity_sg", "pressure_bar", "sent_id", "sent_key", "temperature_c"])},
               coalesce((SELECT name FROM devices WHERE id = device_id), device_id)
        FROM sensor_rows WHERE (device_id, at_ticks, sent_key) > ($device, $at, $key)
        ORDER BY device_id, at_ticks, sent_key LIMIT {Stretch}
        """);

    /// <summary>Reads stretch by stretch.</summary>
    /// <param name="connection">One that was taught to reckon checksums.</param>
    /// <returns>Null for each stretch.</returns>
    public static IEnumerable<DamagedPlace?> Look(SqliteConnection connection)
    {
        (long Device, long At, long Key) last = (long.MinValue, long.MinValue, long.MinValue);
        while (true)
        {
            List<Row>? rows = Soundness.Read(() => Rows(connection, last));
            if (rows is { Count: 0 })
            {
                yield break;
            }

            // Where the order is broken, going on would go in circles.
            if (rows is null || rows[^1].Place.CompareTo(last) <= 0)
            {
                yield return new DamagedPlace("The list of all readings of devices", null, null);
                yield break;
            }

            foreach (Row row in rows.Where(row => !row.IsSound))
            {
                yield return new DamagedPlace($"A reading of the device \"{row.Device}\", {When(row.Place.At)}", null, null);
            }

            yield return null;
            last = rows[^1].Place;
        }
    }

    private static List<Row> Rows(SqliteConnection connection, (long Device, long At, long Key) after)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = Next;
        command.Parameters.AddWithValue("$device", after.Device);
        command.Parameters.AddWithValue("$at", after.At);
        command.Parameters.AddWithValue("$key", after.Key);
        using SqliteDataReader rows = command.ExecuteReader();
        List<Row> read = [];
        while (rows.Read())
        {
            read.Add(new Row((rows.GetInt64(0), rows.GetInt64(1), rows.GetInt64(2)), !rows.IsDBNull(3) && rows.GetInt64(3) == 1, rows.GetString(4)));
        }

        return read;
    }

    private static string When(long ticks) => ticks >= 0 && ticks <= DateTime.MaxValue.Ticks
        ? Invariant($"{new DateTimeOffset(ticks, TimeSpan.Zero):yyyy-MM-dd HH:mm} UTC")
        : "at no time there is";

    private readonly record struct Row((long Device, long At, long Key) Place, bool IsSound, string Device);
}
