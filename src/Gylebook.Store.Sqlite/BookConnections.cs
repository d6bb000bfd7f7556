using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Gylebook.Store.Sqlite;

/// <summary>Sets what must hold on every connection, at every open: SQLite forgets most of it when one closes.</summary>
/// <param name="patience">How long to wait while another connection writes.</param>
internal sealed class BookConnections(TimeSpan patience) : DbConnectionInterceptor
{
    // WAL: readers never wait for the writer. FULL: a commit is on the disk, not in a cache, when it returns.
    private readonly string _pragmas = Invariant($"""
        PRAGMA busy_timeout = {(long)patience.TotalMilliseconds};
        PRAGMA journal_mode = WAL;
        PRAGMA synchronous = FULL;
        PRAGMA foreign_keys = ON;
        """);

    /// <inheritdoc/>
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using DbCommand command = Command(connection);
        command.ExecuteNonQuery();
    }

    /// <inheritdoc/>
    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using DbCommand command = Command(connection);
        await command.ExecuteNonQueryAsync(cancellationToken);
    }

    private DbCommand Command(DbConnection connection)
    {
        DbCommand command = connection.CreateCommand();
        command.CommandText = _pragmas;
        return command;
    }
}
