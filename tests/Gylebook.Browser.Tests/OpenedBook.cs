using System.Diagnostics;
using Gylebook.Tests.Shared;

namespace Gylebook.Browser.Tests;

/// <summary>A copy of the demo's book, open at an address of its own, in one process of Gylebook for all: for tests that do not ask how a program starts and ends.</summary>
internal sealed class OpenedBook : IAsyncDisposable
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(60);

    private static readonly Lazy<Process> Host = new(Start);
    private static readonly SemaphoreSlim Turn = new(1);

    private OpenedBook(string url, string book) => (Url, Book) = (url, book);

    public string Url { get; }

    public string Book { get; }

    /// <summary>Copies the demo's book and opens it.</summary>
    public static async Task<OpenedBook> OpenAsync()
    {
        OpenedBook opened = new($"http://127.0.0.1:{RunningGylebook.FreePort()}", await DemoBook.CopyAsync());
        await SayAsync($"{opened.Url} {opened.Book}");
        return opened;
    }

    /// <summary>Days go by on the book's clock; the tabs keep their own.</summary>
    public Task GoAheadAsync(double days) => SayAsync(Invariant($"{Url} +{days}"));

    public async ValueTask DisposeAsync()
    {
        await OpenTabs.CloseAsync(Url);
        await SayAsync(Url);
        Directory.Delete(Path.GetDirectoryName(Book)!, recursive: true);
    }

    /// <summary>One line to the program, and its word that it is done. It ends with the tests, which hold the other end of its input.</summary>
    private static async Task SayAsync(string line)
    {
        await Turn.WaitAsync();
        try
        {
            await Host.Value.StandardInput.WriteLineAsync(line);
            string? done = await Host.Value.StandardOutput.ReadLineAsync().WaitAsync(LongestWait);
            if (done is null || done != line.Split(' ')[0])
            {
                throw new InvalidOperationException($"Gylebook was told {line}, and said {done ?? "nothing: it has ended"}.");
            }
        }
        finally
        {
            Turn.Release();
        }
    }

    private static Process Start()
    {
        ProcessStartInfo start = new("dotnet", [BuiltProgram.File])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        start.Environment["DOTNET_STARTUP_HOOKS"] = Path.Combine(AppContext.BaseDirectory, "Gylebook.Browser.Host.dll");
        return Process.Start(start)!;
    }
}
