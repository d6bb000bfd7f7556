using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Gylebook.Tests.Shared;

namespace Gylebook.Browser.Tests;

/// <summary>Gylebook, started as the README says, on a book of its own and a free port. Unless told otherwise it has the demo in it.</summary>
internal sealed class RunningGylebook : IAsyncDisposable
{
    private static readonly TimeSpan LongestStart = TimeSpan.FromSeconds(120);
    private static readonly TimeSpan LongestStop = TimeSpan.FromSeconds(60);

    private readonly Process _process;
    private readonly Task<string> _errors;

    private RunningGylebook(Process process, string url, string book, string firstLine)
    {
        _process = process;
        (Url, Book, FirstLine) = (url, book, firstLine);
        _errors = process.StandardError.ReadToEndAsync();
    }

    public string Url { get; }

    public string Book { get; }

    public string FirstLine { get; }

    /// <summary>Where a book is to be that is not there yet.</summary>
    public static string NewBook() => Path.Combine(Directory.CreateTempSubdirectory("gylebook-browser-").FullName, "book.sqlite");

    public static async Task<RunningGylebook> StartAsync(string? book = null, string? at = null, IEnumerable<string>? options = null)
    {
        string file = book ?? await DemoBook.CopyAsync();
        string url = at ?? $"http://127.0.0.1:{FreePort()}";
        ProcessStartInfo start = new(RepositoryFile.PathOf("gylebook"), ["serve", "--book", file, "--urls", url, .. options ?? []])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        Process process = Process.Start(start)!;
        string? line = await process.StandardOutput.ReadLineAsync().WaitAsync(LongestStart);
        return line is null
            ? throw new InvalidOperationException("Gylebook did not start: " + await process.StandardError.ReadToEndAsync())
            : new RunningGylebook(process, url, file, line);
    }

    /// <summary>The next line that it says.</summary>
    public async Task<string> NextLineAsync() => await _process.StandardOutput.ReadLineAsync().WaitAsync(LongestStart) ?? throw new InvalidOperationException("Gylebook has ended.");

    /// <summary>Asks it to stop, as a service manager would, and waits; gives back the exit code and what it complained of.</summary>
    public async Task<(int ExitCode, string Errors)> StopAsync()
    {
        using Process kill = Process.Start("kill", ["-TERM", _process.Id.ToString()]);
        await kill.WaitForExitAsync();
        await _process.WaitForExitAsync().WaitAsync(LongestStop);
        return (_process.ExitCode, await _errors);
    }

    /// <summary>Ends it without a word, as a power cut would, and starts it again on the same book at the same address. This one is over then.</summary>
    public async Task<RunningGylebook> KilledAndStartedAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync().WaitAsync(LongestStop);
        _process.Dispose();
        return await StartAsync(Book, Url);
    }

    public async ValueTask DisposeAsync()
    {
        await OpenTabs.CloseAsync(Url);
        if (!_process.HasExited)
        {
            await StopAsync();
        }

        _process.Dispose();
        Directory.Delete(Path.GetDirectoryName(Book)!, recursive: true);
    }

    /// <summary>A port that nobody listens at just now.</summary>
    public static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
