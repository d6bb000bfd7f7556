using System.Globalization;
using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Gylebook.Web.Hosting;
using Gylebook.Web.Hosting.Entry;
using Microsoft.AspNetCore.Builder;

/// <summary>Opens many books in one process of the program, as <c>serve</c> opens one: a test need not wait until a program has started and learnt its pages.</summary>
/// <remarks>
/// The runtime calls it, by this name, in the program's own process before the program. A line that comes in is an address
/// and a book to open there, an address and days by which its clock goes ahead (<c>+2.5</c>), or an address to close; the address is said back
/// when that is done.
/// </remarks>
internal static class StartupHook
{
    private static readonly Dictionary<string, (Book Book, WebApplication Site, AheadClock Clock)> Opened = [];

    /// <summary>Opens and closes books until no more lines come.</summary>
    public static void Initialize()
    {
        while (Console.In.ReadLine() is { } line)
        {
            string[] words = line.Split(' ', 2);
            Task done = words switch
            {
                [var url, ['+', .. var days]] => GoAhead(url, TimeSpan.FromDays(double.Parse(days, CultureInfo.InvariantCulture))),
                [var url, var book] => OpenAsync(url, book),
                _ => CloseAsync(line),
            };
            done.GetAwaiter().GetResult();
            Console.WriteLine(words[0]);
        }

        Environment.Exit(0);
    }

    private static async Task OpenAsync(string url, string file)
    {
        AheadClock clock = new();
        Book book = await SqliteBook.OpenAsync(file, clock);
        WebApplication site = await WebBook.BuildAsync(book, new SiteDoor([url], IsLan: false, []), clock);
        await site.StartAsync();
        Opened[url] = (book, site, clock);
    }

    private static Task GoAhead(string url, TimeSpan by)
    {
        Opened[url].Clock.Ahead += by;
        return Task.CompletedTask;
    }

    private static async Task CloseAsync(string url)
    {
        _ = Opened.Remove(url, out (Book Book, WebApplication Site, AheadClock Clock) opened);
        await opened.Site.StopAsync();
        await opened.Site.DisposeAsync();
        await opened.Book.DisposeAsync();
    }

    /// <summary>The clock on the wall, some days ahead: a beer ferments while a test waits.</summary>
    private sealed class AheadClock : TimeProvider
    {
        public TimeSpan Ahead { get; set; }

        public override DateTimeOffset GetUtcNow() => base.GetUtcNow() + Ahead;
    }
}
