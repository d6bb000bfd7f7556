using Microsoft.EntityFrameworkCore.Design;

namespace Gylebook.Store.Sqlite;

/// <summary>For <c>dotnet ef migrations add</c>, which looks for a class like this; the program never uses it.</summary>
internal sealed class BookDesign : IDesignTimeDbContextFactory<BookContext>
{
    /// <inheritdoc/>
    public BookContext CreateDbContext(string[] args) => new(SqliteBook.Options(":memory:", SqliteBook.Patience));
}
