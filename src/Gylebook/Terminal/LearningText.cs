using Gylebook.Forecast.Learning;
using Spectre.Console;

namespace Gylebook.Terminal;

/// <summary>What gyles teach of a kit, in lines for a terminal.</summary>
internal static class LearningText
{
    /// <summary>Writes it.</summary>
    /// <param name="learning">What was learned.</param>
    /// <param name="accepted">Names of the figures that were accepted.</param>
    /// <param name="file">Where the kit was written to; null where it was not.</param>
    public static void Write(KitLearning learning, IReadOnlyList<string> accepted, string? file)
    {
        IAnsiConsole console = TableConsole.Create();
        console.MarkupLineInterpolated($"[bold]{learning.Kit.Name}[/], learned from {string.Join(", ", learning.Gyles)}");
        ForecastText.Lines(console, "Proposed; low to high is nine of ten gyles", learning.Figures.Where(figure => figure.IsTaught).Select(figure => $"{figure.Sentence}."));
        ForecastText.Lines(console, "Not taught", learning.Figures.Where(figure => !figure.IsTaught).Select(figure => $"{figure.Sentence}."));
        ForecastText.Lines(console, "Not told apart", learning.Pairs.Select(tied => $"{tied.Sentence}."));
        ForecastText.Lines(console, "Findings", learning.Findings.OrderByDescending(finding => finding.Severity).Select(FindingLines.Spoken));
        console.WriteLine();
        console.WriteLine(file is null
            ? "Nothing was changed. --accept FIGURES --out FILE writes the kit with those you accept."
            : CommandLine.OneLine($"Accepted: {string.Join(", ", accepted)}. The kit is written to {file}."));
    }
}
