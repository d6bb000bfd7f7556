using System.Security.Cryptography;
using Gylebook.Store.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Gylebook.Store.Tests;

/// <summary>A folder of its own with a real book file in it, swept away afterwards.</summary>
internal sealed class Bench : IDisposable
{
    public static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public string Folder { get; } = Directory.CreateTempSubdirectory("gylebook-").FullName;

    public StillClock Clock { get; } = new();

    public string File => At("book.sqlite");

    public string At(string name) => Path.Combine(Folder, name);

    public Task<Book> OpenAsync(TimeSpan? patience = null) => SqliteBook.OpenAsync(File, Clock, patience, Cancellation);

    /// <summary>A second way to the same book, with an interceptor that makes trouble.</summary>
    public Book Over(params IInterceptor[] more) =>
        new(SqliteBook.Access(SqliteBook.Options(File, SqliteBook.Patience, more), Clock, File), File);

    /// <summary>The rows themselves, through the application's own connection.</summary>
    public BookContext Rows() => new(SqliteBook.Options(File, SqliteBook.Patience));

    /// <summary>One statement on a connection that has nothing to do with ours.</summary>
    public object? Sql(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={File};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    public static string Fingerprint(string file) => Convert.ToHexString(SHA256.HashData(System.IO.File.ReadAllBytes(file)));

    public static string Recipe(string name, string notes = "") =>
        $$"""
        {
          "format": "gylebook-recipe/1",
          "name": "{{name}}",
          "notes": "{{notes}}"
        }
        """;

    public static string Kit(string name) => $$"""{ "format": "gylebook-kit/1", "name": "{{name}}" }""";

    public static string Food(string name, string id) =>
        $$"""{ "format": "gylebook-food/1", "id": "{{id}}", "name": "{{name}}" }""";

    public static string Malt(string name, string id) =>
        $$"""{ "format": "gylebook-malt/1", "id": "{{id}}", "name": "{{name}}", "like": "pale ale malt" }""";

    public static string Water(string name) => $$"""{ "format": "gylebook-water/1", "name": "{{name}}" }""";

    public static string Plan(NumberedVersion version) =>
        $$"""{ "format": "gylebook-plan/1", "recipeVersion": {{version.Number}} }""";

    /// <summary>A gyle that has started, and its first portion.</summary>
    public static async Task<(Guid Gyle, long Portion)> StartedAsync(Book book)
    {
        Guid recipe = await book.Recipes.CreateAsync(Recipe("Started"), cancellation: Cancellation);
        Guid gyle = await book.Gyles.PlanAsync(recipe, "First", cancellation: Cancellation);
        await book.Gyles.StartAsync(gyle, Plan, Cancellation);
        return (gyle, (await book.Gyles.FindAsync(gyle, Cancellation))!.Portions[0].Id);
    }

    public void Dispose()
    {
        // Only this book's: the pools of all would close books that other tests hold open, and take their logs away.
        using (BookContext rows = Rows())
        {
            SqliteConnection.ClearPool((SqliteConnection)rows.Database.GetDbConnection());
        }

        Directory.Delete(Folder, recursive: true);
    }
}
