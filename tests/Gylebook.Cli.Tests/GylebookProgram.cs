using System.Diagnostics;
using System.Text;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>What a run of the program gave back.</summary>
internal sealed record Ran(string Output, string Errors, int ExitCode);

/// <summary>The program itself, as it was built beside these tests.</summary>
internal static class GylebookProgram
{
    /// <summary>Runs it in a process of its own, in the country given: in a folder of no importance, or in one that is its home, too; with a line piped in, or what the test itself has.</summary>
    public static Ran Run(IEnumerable<string> arguments, string culture = "en_US.UTF-8", string? home = null, string? input = null)
    {
        ProcessStartInfo start = Start(arguments, culture);
        start.RedirectStandardInput = input is not null;
        if (home is not null)
        {
            start.WorkingDirectory = home;
            start.Environment["XDG_DATA_HOME"] = home;
        }

        using Process process = Process.Start(start)!;
        if (input is not null)
        {
            process.StandardInput.WriteLine(input);
            process.StandardInput.Close();
        }

        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Ran(output.ReplaceLineEndings("\n"), errors.GetAwaiter().GetResult().ReplaceLineEndings("\n"), process.ExitCode);
    }

    /// <summary>How it is started: in a country, in a folder of no importance, with both outputs piped.</summary>
    public static ProcessStartInfo Start(IEnumerable<string> arguments, string culture = "en_US.UTF-8") => new("dotnet", [BuiltProgram.File, .. arguments])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        StandardOutputEncoding = Encoding.UTF8,
        StandardErrorEncoding = Encoding.UTF8,
        WorkingDirectory = Path.GetTempPath(),
        Environment = { ["LC_ALL"] = culture },
    };
}
