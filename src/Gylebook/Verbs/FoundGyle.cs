using Gylebook.Store;
using Gylebook.Terminal;

namespace Gylebook.Verbs;

/// <summary>A gyle by the name somebody typed.</summary>
internal static class FoundGyle
{
    /// <summary>The first portion of the one gyle of that name; null, and said so, where there is none, or more.</summary>
    public static async Task<(long Portion, string Name)?> FindAsync(Book book, string called, CancellationToken cancellation)
    {
        if (await OneAsync(book, called, cancellation) is not { } gyle)
        {
            return null;
        }

        if (gyle.Portions is [var portion, ..])
        {
            return (portion.Id, gyle.Name);
        }

        Console.Error.WriteLine(CommandLine.OneLine($"\"{gyle.Name}\" has not started: there is nothing yet for a device to be in."));
        return null;
    }

    /// <summary>The one gyle of that name; null, and said so, where there is none, or more.</summary>
    public static async Task<GyleLine?> OneAsync(Book book, string called, CancellationToken cancellation)
    {
        IReadOnlyList<GyleLine> found = await book.Gyles.FindAsync(called, cancellation);
        if (found is [var one])
        {
            return one;
        }

        Console.Error.WriteLine(CommandLine.OneLine(found.Count == 0
            ? $"There is no gyle \"{called}\" in the book; gylebook gyle list tells those there are."
            : $"\"{called}\" may be {string.Join(" or ", found.Select(gyle => $"\"{gyle.Name}\""))}: say which."));
        return null;
    }
}
