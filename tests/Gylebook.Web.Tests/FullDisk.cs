using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Gylebook.Web.Tests;

/// <summary>Lets SQLite meet its own "disk full", as long as a test wants it, by allowing the file not one page more than it has.</summary>
public sealed class FullDisk : DbConnectionInterceptor
{
    /// <summary>Whether there is no room left.</summary>
    public bool IsFull { get; set; }

    /// <inheritdoc/>
    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(connection);
        await using DbCommand command = connection.CreateCommand();
        // A connection that comes back from the pool still has the limit it was given, so each is told anew.
        command.CommandText = $"PRAGMA max_page_count = {(IsFull ? 1 : int.MaxValue - 1)}";
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
