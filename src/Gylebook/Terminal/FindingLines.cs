using Gylebook.Forecast;
using Gylebook.Forecast.Json;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;

namespace Gylebook.Terminal;

/// <summary>Tells findings on the command line.</summary>
internal static class FindingLines
{
    /// <summary>Writes them, one a line or as JSON.</summary>
    /// <returns>The exit code: 1 when one of them is an error.</returns>
    public static int Tell(IReadOnlyList<Finding> findings, bool json)
    {
        bool errors = findings.Any(f => f.Severity == Severity.Error);
        if (json)
        {
            Console.WriteLine(JsonPen.Write(pen => pen.List("findings", findings, f => ForecastJson.WriteFinding(pen, f))));
            return errors ? 1 : 0;
        }

        TextWriter to = errors ? Console.Error : Console.Out;
        foreach (Finding finding in findings)
        {
            to.WriteLine(errors ? Line(finding) : Spoken(finding));
        }

        if (findings.Count == 0)
        {
            Console.WriteLine("Nothing found.");
        }

        return errors ? 1 : 0;
    }

    /// <summary>A finding in words: how serious, where, what.</summary>
    public static string Spoken(Finding finding)
    {
        string place = PlaceWords.Of(finding.Where);
        return $"{Words.Of(finding.Severity)}{(place.Length > 0 ? $", {place}" : "")}: {CommandLine.OneLine(finding.Message)}";
    }

    /// <summary>A finding that a file is refused for, on one line: how serious, at which of its keys, what, and its stable code.</summary>
    public static string Line(Finding finding) =>
        $"{Words.Of(finding.Severity)}{(finding.Where.Length > 0 ? " " : "")}{finding.Where}: {CommandLine.OneLine(finding.Message)} [{finding.Code}]";
}
