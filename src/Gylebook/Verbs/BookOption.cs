using System.ComponentModel;
using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>What every verb takes that reads or writes the book, and whose answer a program may read.</summary>
internal abstract class BookOption : JsonSettings
{
    /// <summary>The book's file.</summary>
    [CommandOption("--book <FILE>")]
    [Description("The book's file. Without it, the book in your data folder.")]
    public string? Book { get; init; }

    /// <summary>Opens the book; null, and said so, when there is none.</summary>
    /// <param name="purpose">What it is wanted for: <c>to put files into</c>.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <param name="makes">Whether a new one is made where there is none.</param>
    public Task<Book?> OpenAsync(string purpose, CancellationToken cancellation, bool makes = false) => OpenAsync(Book, purpose, cancellation, makes);

    /// <summary>Opens a book; null, and said so, when there is none.</summary>
    /// <param name="given">The book's file; null for the one in the data folder.</param>
    /// <param name="purpose">What it is wanted for: <c>to put files into</c>.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <param name="makes">Whether a new one is made where there is none.</param>
    public static async Task<Book?> OpenAsync(string? given, string purpose, CancellationToken cancellation, bool makes = false)
    {
        string file = BookLocation.Find(given);
        if (!makes && !File.Exists(file))
        {
            Console.Error.WriteLine($"{file}: there is no book here {purpose}. gylebook without a verb makes one.");
            return null;
        }

        return await SqliteBook.OpenAsync(file, TimeProvider.System, cancellation: cancellation);
    }
}
