using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Gylebook.Cli.Tests;

/// <summary>The program in a process that runs it again and again, for what does not ask how a process starts and ends.</summary>
internal sealed class WarmProgram
{
    private const char End = '\0';

    private static readonly ConcurrentBag<WarmProgram> Idle = [];

    private readonly Process _process;

    private WarmProgram()
    {
        ProcessStartInfo start = GylebookProgram.Start([]);
        start.RedirectStandardInput = true;
        start.StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        start.Environment["DOTNET_STARTUP_HOOKS"] = Path.Combine(AppContext.BaseDirectory, "Gylebook.Cli.Warm.dll");
        _process = Process.Start(start)!;
    }

    /// <summary>Runs it in a process that is free, or in a new one. They end with the tests, which hold the other end of their input.</summary>
    public static Ran Run(IEnumerable<string> arguments)
    {
        WarmProgram program = Idle.TryTake(out WarmProgram? idle) ? idle : new();
        Ran ran = program.RunOnce(arguments);
        Idle.Add(program);
        return ran;
    }

    private Ran RunOnce(IEnumerable<string> arguments)
    {
        _process.StandardInput.WriteLine(JsonSerializer.Serialize(arguments));
        Task<string> errors = Task.Run(() => ReadToEnd(_process.StandardError));
        string output = ReadToEnd(_process.StandardOutput);
        int exitCode = int.Parse(ReadToEnd(_process.StandardOutput), CultureInfo.InvariantCulture);
        return new Ran(output.ReplaceLineEndings("\n"), errors.GetAwaiter().GetResult().ReplaceLineEndings("\n"), exitCode);
    }

    private string ReadToEnd(StreamReader from)
    {
        StringBuilder text = new();
        for (int letter = from.Read(); letter != End; letter = from.Read())
        {
            _ = letter < 0 ? throw new InvalidOperationException($"The program has ended: {text}{(from == _process.StandardError ? "" : _process.StandardError.ReadToEnd())}")
                : text.Append((char)letter);
        }

        return text.ToString();
    }
}
