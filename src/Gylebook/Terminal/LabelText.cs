using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Foods;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Recipes.Foods;
using Gylebook.Science.Quantities;
using Gylebook.Science.Foods.Doses;
using Spectre.Console;

namespace Gylebook.Terminal;

/// <summary>A food's report as tables for a terminal.</summary>
internal static class LabelText
{
    /// <summary>Writes it.</summary>
    public static void Write(FoodLabelReport report)
    {
        IAnsiConsole console = TableConsole.Create();

        console.MarkupLineInterpolated($"[bold]{report.Name}[/], reckoned as {report.Family}");
        console.Write(Per100Grams(report));
        if (report.Places.Count > 0)
        {
            console.MarkupLineInterpolated($"[bold]{report.Amount} into {report.Into}[/] of a plain beer of 1.050 changes it by");
            console.Write(Effects(report));
            foreach (FoodAtPlace place in report.Places)
            {
                FatAdvice fat = place.Effect.Fat;
                string said = fat.Cautions.Any() ? "See the cautions." : $"{fat.Message} ({fat.Source})";
                console.MarkupLineInterpolated($"Fat, {place.At}: {fat.Light.ToString().ToLowerInvariant()}. {said}");
            }
        }

        if (report.DoseGuide is { } guide)
        {
            console.MarkupLineInterpolated($"Dose: {Number(guide.GramsPerLitre)} g/L; {Usual(guide)}");
        }

        if (report.Trial is { } trial)
        {
            string ladder = string.Join(", ", trial.Ladder.Select(Number));
            console.MarkupLineInterpolated($"Bench trial: {Number(trial.Milligrams)} mg in a glass of 100 mL tastes like the batch; pour {ladder} mg side by side, then begin with {Number(trial.FirstGrams)} g.");
        }

        if (report.KeptTrials.Count > 0)
        {
            ForecastText.Lines(console, "Bench trials", report.KeptTrials.OrderByDescending(trial => trial.Day).Select(trial => Told(trial, report.Batch)));
            ForecastText.Lines(console, "Where glasses are dosed", TrialCautions.All.Select(caution => $"{caution.Message} ({caution.Source})"));
        }

        ForecastText.Lines(console, "Allergens", [report.Allergens.StatementUs + " (US)", report.Allergens.StatementEu + " (EU)", .. report.AllergenNotes.Select(n => $"{n.Text} ({n.Source})"), "Gylebook informs; the packet has the last word."]);
        ForecastText.Lines(console, "Cautions", report.Places.SelectMany(p => p.Cautions).DistinctBy(c => (c.Code, c.Where)).Select(c => $"{c.Where}: {c.Message} ({c.Source})"));
        ForecastText.Lines(console, "Assumed", report.Assumptions.Select(a => $"{a.Spoken}: {a.Value} ({a.Source})"));
        ForecastText.Lines(console, "Findings", report.Findings.OrderByDescending(f => f.Severity).Select(FindingLines.Spoken));
    }

    private static string Told(KeptTrial trial, Entered<VolumeAt20C> batch)
    {
        string glasses = string.Join("; ", trial.Glasses.Select(glass => string.Join(", ", new[] { glass.Dose.Text, glass.Mark is { } mark ? Invariant($"mark {mark}") : null, glass.Notes }.Where(said => !string.IsNullOrWhiteSpace(said)))));
        string best = trial.Best is { Dose: var dose }
            ? $"{dose.Text}: {dose.In(batch.Value).Text} in {batch.Text}; begin with {dose.FirstIn(batch.Value).Text}, taste, and top up"
            : "no glass is the best";
        return CommandLine.OneLine(Invariant($"{trial.Day:yyyy-MM-dd}, in {trial.Beer}{(trial.Dosed is { } dosed ? $", as {dosed}" : "")}: {best}. Tasted: {glasses}"));
    }

    private static Table Per100Grams(FoodLabelReport report)
    {
        Table table = ForecastText.Ruled(["In 100 g", "likely", "from", "to", ""]);
        foreach (Constituent line in report.Per100Grams.Where(c => c.Band is not null))
        {
            bool wide = line.Band!.Kind != BandKind.Point;
            table.AddRow(ForecastText.Cells([EffectNames.Spoken(line.Name), Number(line.Band.Likely), wide ? Number(line.Band.Low) : "", wide ? Number(line.Band.High) : "", line.Band.Unit]));
        }

        return table;
    }

    private static Table Effects(FoodLabelReport report)
    {
        Table table = ForecastText.Ruled(["", .. report.Places.Select(p => p.At), ""]);
        List<IReadOnlyList<(string Name, Band? Band)>> columns = [.. report.Places.Select(p => EffectNames.Of(p.Effect))];
        for (int i = 0; i < columns[0].Count; i++)
        {
            int row = i;
            string unit = columns.Select(c => c[row].Band?.Unit).FirstOrDefault(u => u is not null) ?? "";
            table.AddRow(ForecastText.Cells([EffectNames.Spoken(columns[0][row].Name), .. columns.Select(c => Written(c[row].Band)), unit]));
        }

        return table;
    }

    private static string Written(Band? band) => band switch
    {
        null => "unknown",
        { Kind: BandKind.Point } => Number(band.Likely),
        _ => $"{Number(band.Likely)} ({Number(band.Low)} to {Number(band.High)})",
    };

    private static string Usual(DoseGuide guide) => guide.Verdict switch
    {
        DoseVerdict.Unknown => "no usual range is known for its kind",
        DoseVerdict.Below => $"less than usual: {Range(guide)}",
        DoseVerdict.Above => $"more than usual: {Range(guide)}",
        _ => $"as usual: {Range(guide)}",
    };

    private static string Range(DoseGuide guide) => Invariant($"{guide.Low:0.##} to {guide.High:0.##} g/L ({DoseGuide.Source})");

    /// <summary>Three figures that count are more than anyone knows of a food.</summary>
    private static string Number(double value)
    {
        double size = Math.Abs(value);
        string format = size >= 100 ? "0" : size >= 10 ? "0.0" : size >= 1 ? "0.00" : "0.###";
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        return text is "-0" or "-0.00" ? "0" : text;
    }
}
