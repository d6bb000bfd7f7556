using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store.Tests;

public sealed class ConnectionTests : IDisposable
{
    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public async Task The_apps_own_connection_is_safe_against_a_power_cut()
    {
        await using Book book = await _bench.OpenAsync();
        await using BookContext rows = _bench.Rows();

        Assert.Equal(("wal", 2L, 1L, 5000L), await PragmasAsync(rows));
    }

    [Fact]
    public async Task A_pooled_connection_is_made_safe_again_at_every_open()
    {
        await using Book book = await _bench.OpenAsync();
        await using (BookContext careless = _bench.Rows())
        {
            await careless.Database.OpenConnectionAsync(Bench.Cancellation);
            await careless.Database.ExecuteSqlRawAsync(
                "PRAGMA synchronous = OFF; PRAGMA foreign_keys = OFF; PRAGMA busy_timeout = 1", Bench.Cancellation);
        }

        await using BookContext rows = _bench.Rows();

        Assert.Equal(("wal", 2L, 1L, 5000L), await PragmasAsync(rows));
    }

    private static async Task<(string Journal, long Synchronous, long ForeignKeys, long BusyTimeout)> PragmasAsync(BookContext rows)
    {
        await rows.Database.OpenConnectionAsync(Bench.Cancellation);
        var connection = (SqliteConnection)rows.Database.GetDbConnection();
        return (
            (string)Pragma(connection, "journal_mode"),
            (long)Pragma(connection, "synchronous"),
            (long)Pragma(connection, "foreign_keys"),
            (long)Pragma(connection, "busy_timeout"));
    }

    private static object Pragma(SqliteConnection connection, string name)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "PRAGMA " + name;
        return command.ExecuteScalar()!;
    }
}
