using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Gylebook.Terminal;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook restore FILE [--book FILE]</summary>
internal sealed class RestoreVerb : AsyncCommand<BookSettings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, BookSettings settings, CancellationToken cancellationToken)
    {
        string file = BookLocation.Find(settings.Book);
        if (File.Exists(file) && !IsBook(file))
        {
            Console.Error.WriteLine(CommandLine.OneLine($"{file}: there is a file already, and it is not a book; it is left as it is. Name another file, or move it away."));
            return 1;
        }

        string? kept = await SqliteBackup.RestoreAsync(
            settings.File, file, TimeProvider.System, evenDamaged: settings.EvenDamaged, cancellation: cancellationToken);
        Console.WriteLine($"{file} is the book of {Path.GetFullPath(settings.File)} again.");
        if (kept is not null)
        {
            Console.WriteLine($"The book that lay there before is kept as {kept}.");
        }

        return 0;
    }

    /// <summary>An empty file is what a full disk leaves of a book; a damaged one still begins as one does.</summary>
    private static bool IsBook(string file) =>
        WrittenFile.Beginning(file) is var start && (start.Length == 0 || start.StartsWith("SQLite format 3", StringComparison.Ordinal));
}
