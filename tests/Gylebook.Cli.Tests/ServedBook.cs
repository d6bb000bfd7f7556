using System.Diagnostics;
using System.Net.Sockets;
using System.Text;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook serve, running on a free port with a book of its own, until disposed.</summary>
internal sealed class ServedBook : IAsyncDisposable
{
    private static readonly TimeSpan LongestStart = TimeSpan.FromSeconds(120);

    private readonly Process _process;
    private readonly StringBuilder _errors = new();

    private ServedBook(Process process, string? firstLine)
    {
        _process = process;
        FirstLine = firstLine ?? "";
        _process.ErrorDataReceived += (_, line) =>
        {
            lock (_errors)
            {
                _errors.AppendLine(line.Data);
            }
        };
        _process.BeginErrorReadLine();
    }

    public string FirstLine { get; }

    /// <summary>What it has said on its other output so far.</summary>
    public string Errors
    {
        get
        {
            lock (_errors)
            {
                return _errors.ToString();
            }
        }
    }

    /// <summary>Where it is, as it says itself.</summary>
    public Uri Url => new(FirstLine.Split(' ')[4]);

    /// <summary>Starts it.</summary>
    /// <param name="book">The book's file.</param>
    /// <param name="urls">Where it is told to listen; null for not at all.</param>
    /// <param name="environment">What else its surroundings say.</param>
    /// <param name="program">Which program; null for the one that was built.</param>
    /// <param name="options">Other options; null for none.</param>
    public static async Task<ServedBook> StartAsync(
        string book, string? urls, IReadOnlyDictionary<string, string>? environment = null, string? program = null, IEnumerable<string>? options = null)
    {
        ProcessStartInfo start = new("dotnet", [program ?? BuiltProgram.File, "serve", "--book", book, .. urls is null ? (string[])[] : ["--urls", urls], .. options ?? []])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        foreach ((string name, string value) in environment ?? new Dictionary<string, string>())
        {
            start.Environment[name] = value;
        }

        Process process = Process.Start(start)!;
        try
        {
            return new ServedBook(process, await process.StandardOutput.ReadLineAsync().WaitAsync(LongestStart));
        }
        catch (TimeoutException)
        {
            process.Kill();
            throw;
        }
    }

    /// <summary>The next line of its output; waits for it.</summary>
    public async Task<string> NextLineAsync() => await _process.StandardOutput.ReadLineAsync().WaitAsync(LongestStart) ?? throw new InvalidOperationException("It has ended.");

    /// <summary>Waits until its other output has a text in it; gives up quietly after a while, and the caller's assertion tells.</summary>
    public async Task WaitForErrorAsync(string text)
    {
        for (int i = 0; i < 300 && !Errors.Contains(text, StringComparison.Ordinal); i++)
        {
            await Task.Delay(100);
        }
    }

    /// <summary>Sends bytes as they are, and reads until the server hangs up.</summary>
    public async Task<string> RawAsync(string request)
    {
        using TcpClient line = new();
        await line.ConnectAsync(Url.Host, Url.Port);
        await using NetworkStream stream = line.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(request));
        using StreamReader answer = new(stream, Encoding.UTF8);
        return await answer.ReadToEndAsync().WaitAsync(TimeSpan.FromSeconds(30));
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
        _process.Dispose();
    }
}
