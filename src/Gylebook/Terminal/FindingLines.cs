using System.Text.Encodings.Web;
using System.Text.Json;
using Gylebook.Forecast.Telling;
using Gylebook.Recipes;

namespace Gylebook.Terminal;

/// <summary>Tells findings on the command line.</summary>
internal static class FindingLines
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes them, one a line or as JSON.</summary>
    /// <returns>The exit code: 1 when one of them is an error.</returns>
    public static int Tell(IReadOnlyList<Finding> findings, bool json)
    {
        bool errors = findings.Any(f => f.Severity == Severity.Error);
        if (json)
        {
            using Stream output = Console.OpenStandardOutput();
            using (Utf8JsonWriter writer = new(output, Options))
            {
                JsonPen pen = new(writer);
                pen.Block(() => pen.List("findings", findings, f => ForecastJson.WriteFinding(pen, f)));
            }

            output.Write("\n"u8);
            return errors ? 1 : 0;
        }

        TextWriter to = errors ? Console.Error : Console.Out;
        foreach (Finding finding in findings)
        {
            to.WriteLine($"{Word(finding.Severity)} {finding.Code}: {CommandLine.OneLine(Message(finding))}");
        }

        if (findings.Count == 0)
        {
            Console.WriteLine("Nothing found.");
        }

        return errors ? 1 : 0;
    }

    /// <summary>The message with its place in front, unless it says that itself.</summary>
    public static string Message(Finding finding) =>
        finding.Where.Length == 0 || finding.Message.StartsWith(finding.Where, StringComparison.Ordinal)
            ? finding.Message
            : $"{finding.Where}: {finding.Message}";

    /// <summary>A severity as people read it.</summary>
    public static string Word(Severity severity) => severity switch
    {
        Severity.Note => "note",
        Severity.Warning => "warning",
        _ => "error",
    };
}
