using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook restore FILE [--book FILE]</summary>
internal sealed class RestoreVerb : AsyncCommand<BookSettings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, BookSettings settings, CancellationToken cancellationToken)
    {
        string file = BookLocation.Find(settings.Book);
        string? kept = await SqliteBackup.RestoreAsync(
            settings.File, file, TimeProvider.System, evenDamaged: settings.EvenDamaged, cancellation: cancellationToken);
        Console.WriteLine($"{file} is the book of {Path.GetFullPath(settings.File)} again.");
        if (kept is not null)
        {
            Console.WriteLine($"The book that lay there before is kept as {kept}.");
        }

        return 0;
    }
}
