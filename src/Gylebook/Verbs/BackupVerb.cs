using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook backup FILE [--book FILE]</summary>
internal sealed class BackupVerb : AsyncCommand<BookSettings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, BookSettings settings, CancellationToken cancellationToken)
    {
        string file = BookLocation.Find(settings.Book);
        if (!File.Exists(file))
        {
            Console.Error.WriteLine($"{file}: there is no book here to back up.");
            return 1;
        }

        await using Book book = await SqliteBook.OpenAsync(file, TimeProvider.System, cancellation: cancellationToken);
        await book.BackupAsync(settings.File, settings.EvenDamaged, cancellationToken);
        Console.WriteLine($"{file} is backed up in {Path.GetFullPath(settings.File)}.");
        return 0;
    }
}
