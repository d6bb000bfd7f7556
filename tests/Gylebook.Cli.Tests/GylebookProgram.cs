using System.Diagnostics;
using System.Text;

namespace Gylebook.Cli.Tests;

/// <summary>What a run of the program gave back.</summary>
internal sealed record Ran(string Output, string Errors, int ExitCode);

/// <summary>The program itself, as it was built beside these tests.</summary>
internal static class GylebookProgram
{
    // artifacts/bin/Gylebook.Cli.Tests/release/ and artifacts/bin/Gylebook/release/: one configuration, two projects.
    public static string ProgramPath
    {
        get
        {
            DirectoryInfo mine = new(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
            return Path.Combine(mine.Parent!.Parent!.FullName, "Gylebook", mine.Name, "gylebook.dll");
        }
    }

    /// <summary>Runs it in the country given: in a folder of no importance, or in one that is its home, too; with a line piped in, or what the test itself has.</summary>
    public static Ran Run(IEnumerable<string> arguments, string culture = "en_US.UTF-8", string? home = null, string? input = null)
    {
        ProcessStartInfo start = new("dotnet", [ProgramPath, .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = input is not null,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
            WorkingDirectory = home ?? Path.GetTempPath(),
        };
        if (home is not null)
        {
            start.Environment["XDG_DATA_HOME"] = home;
        }

        start.Environment["LC_ALL"] = culture;
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
}
