using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Gylebook.Web.Hosting;
using Gylebook.Web.Hosting.Entry;
using Microsoft.AspNetCore.Builder;

/// <summary>Opens many books in one process of the program, as <c>serve</c> opens one: a test need not wait until a program has started and learnt its pages.</summary>
/// <remarks>
/// The runtime calls it, by this name, in the program's own process before the program. A line that comes in is an address
/// and a book to open there, or an address to close; the address is said back when that is done.
/// </remarks>
internal static class StartupHook
{
    private static readonly Dictionary<string, (Book Book, WebApplication Site)> Opened = [];

    /// <summary>Opens and closes books until no more lines come.</summary>
    public static void Initialize()
    {
        while (Console.In.ReadLine() is { } line)
        {
            string[] words = line.Split(' ', 2);
            (words is [var url, var book] ? OpenAsync(url, book) : CloseAsync(line)).GetAwaiter().GetResult();
            Console.WriteLine(words[0]);
        }

        Environment.Exit(0);
    }

    private static async Task OpenAsync(string url, string file)
    {
        Book book = await SqliteBook.OpenAsync(file, TimeProvider.System);
        WebApplication site = await WebBook.BuildAsync(book, new SiteDoor([url], IsLan: false, []), TimeProvider.System);
        await site.StartAsync();
        Opened[url] = (book, site);
    }

    private static async Task CloseAsync(string url)
    {
        _ = Opened.Remove(url, out (Book Book, WebApplication Site) opened);
        await opened.Site.StopAsync();
        await opened.Site.DisposeAsync();
        await opened.Book.DisposeAsync();
    }
}
