using System.Text.RegularExpressions;
using Gylebook.Gyles;
using Gylebook.Gyles.Cellar;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Gylebook.Store.Tests;

public sealed partial class SchemaTests : IDisposable
{
    private readonly Bench _bench = new();

    public static TheoryData<string> AppendOnly => [.. BookContext.AppendOnlyTables];

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void The_migrations_say_all_that_the_model_says()
    {
        using BookContext rows = _bench.Rows();

        Assert.False(rows.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task Tables_and_columns_are_written_in_snake_case()
    {
        await using Book book = await _bench.OpenAsync();
        await using BookContext rows = _bench.Rows();
        List<string> names = await rows.Database
            .SqlQueryRaw<string>(
                """
                SELECT m.name AS Value FROM sqlite_master m WHERE m.type IN ('table', 'index') AND m.name NOT LIKE 'sqlite_%' AND m.name NOT LIKE '__EF%'
                UNION
                SELECT c.name FROM sqlite_master m, pragma_table_info(m.name) c WHERE m.type = 'table' AND m.name NOT LIKE '__EF%'
                """)
            .ToListAsync(Bench.Cancellation);

        Assert.Contains("updated_ticks", names);
        Assert.All(names, name => Assert.Matches(Snake(), name));
    }

    [Fact]
    public void Instants_are_whole_ticks_and_quantities_are_reals_that_name_their_unit()
    {
        string[] unitless = ["share", "ph", "slope"];
        using BookContext rows = _bench.Rows();
        IEnumerable<IProperty> columns = rows.Model.GetEntityTypes().SelectMany(entity => entity.GetProperties());

        Assert.All(columns, column =>
        {
            Type type = Nullable.GetUnderlyingType(column.ClrType) ?? column.ClrType;
            string name = column.GetColumnName();
            if (type == typeof(DateTimeOffset))
            {
                Assert.Equal("INTEGER", column.GetColumnType());
                Assert.EndsWith("_ticks", name, StringComparison.Ordinal);
            }
            else if (type == typeof(double) && !unitless.Contains(name))
            {
                Assert.Equal("REAL", column.GetColumnType());
                Assert.Matches("_(l|sg|c|kg|bar|v)$", name);
            }
        });
    }

    [Theory]
    [MemberData(nameof(AppendOnly))]
    public async Task What_was_written_once_can_be_neither_changed_nor_deleted(string table)
    {
        await using Book book = await _bench.OpenAsync();
        (_, long portion) = await Bench.StartedAsync(book);
        Guid recipe = (await book.Recipes.ListAsync(cancellation: Bench.Cancellation))[0].Id;
        await book.Drafts.SaveAsync(recipe, 1, Bench.Recipe("Edited"), "Name", "tab", Bench.Cancellation);
        await book.Readings.AddAsync(portion, [new GyleReading { At = _bench.Clock.Now }], Bench.Cancellation);
        await book.Readings.AddAsync(portion, [new BrewAction { At = _bench.Clock.Now, What = "stirred" }], Bench.Cancellation);
        long device = await book.Devices.AddAsync("Float", DeviceKind.Floating, null, Bench.Cancellation);
        await book.Sensors.AppendAsync([new SensorBatch(device, [new SensorReading(_bench.Clock.Now, _bench.Clock.Now) { BatteryVolts = 4 }])], Bench.Cancellation);
        string column = (string)_bench.Sql($"SELECT name FROM pragma_table_info('{table}') LIMIT 1")!;

        var update = Assert.Throws<SqliteException>(() => _bench.Sql($"UPDATE {table} SET {column} = {column}"));
        var delete = Assert.Throws<SqliteException>(() => _bench.Sql($"DELETE FROM {table}"));

        Assert.Contains("append-only", update.Message, StringComparison.Ordinal);
        Assert.Contains("append-only", delete.Message, StringComparison.Ordinal);
        Assert.Equal(1L, _bench.Sql($"SELECT count(*) FROM {table}"));
    }

    [Fact]
    public async Task A_reading_cannot_hang_in_the_air()
    {
        await using Book book = await _bench.OpenAsync();
        await using BookContext rows = _bench.Rows();
        rows.Readings.Add(new Rows.ReadingRow { PortionId = 4711, AtTicks = _bench.Clock.Now });

        await Assert.ThrowsAsync<DbUpdateException>(() => rows.SaveChangesAsync(Bench.Cancellation));
    }

    [GeneratedRegex("^[a-z][a-z0-9]*(_[a-z0-9]+)*$")]
    private static partial Regex Snake();
}
