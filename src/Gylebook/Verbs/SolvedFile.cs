using System.Globalization;
using System.Text;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Solving;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Terminal;

namespace Gylebook.Verbs;

/// <summary>Gives out a recipe that was weighed anew, and says what changed and what it comes to.</summary>
internal static class SolvedFile
{
    /// <summary>Solves, writes or prints, and tells.</summary>
    /// <returns>The exit code: 1 when the wish cannot be met, and then nothing is written.</returns>
    public static int Tell(SolvedSettings settings, OpenedFiles files, Func<BeerWish, Recipe, SolvedRecipe> solve)
    {
        if (!WishText.TryRead(settings.For, files.Recipe!, out BeerWish wish, out string problem))
        {
            Console.Error.WriteLine(CommandLine.OneLine(problem));
            return 1;
        }

        if (settings.Confidence is { } typed)
        {
            if (!double.TryParse(typed.Replace(',', '.').TrimEnd('%', ' '), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double percent) || percent is not (>= 1 and <= 99))
            {
                Console.Error.WriteLine(CommandLine.OneLine($"--confidence: {typed}; must be from 1 to 99, in how many of a hundred brews the package is full."));
                return 1;
            }

            wish = wish with { Confidence = percent / 100 };
        }

        WrittenFile? written = settings.Out is null ? null : WrittenFile.OfOurs(settings.Out);
        if (written?.Refusal(settings.Force) is { } refusal)
        {
            Console.Error.WriteLine(CommandLine.OneLine(refusal));
            return 1;
        }

        SolvedRecipe solved = solve(wish, files.Recipe!);
        RecipeDraft before = RecipeDraft.Of(File.ReadAllText(settings.Recipe));
        RecipeDraft after = before.Changed("weighed anew", solved.Fields)?.After ?? before;
        IReadOnlyList<Finding> findings = solved.IsMet ? Forecaster.Forecast(solved.Recipe, files.Kit!, files.Larder, "solve").Findings : solved.Findings;
        if (solved.IsMet)
        {
            written?.Write(after.Text, settings.Force);
        }

        if (settings.Json)
        {
            Console.WriteLine(Json(settings, before, after, solved, findings));
        }
        else
        {
            Say(settings, before, after, solved, findings);
        }

        return solved.IsMet && findings.All(finding => finding.Severity != Severity.Error) ? 0 : 1;
    }

    private static void Say(SolvedSettings settings, RecipeDraft before, RecipeDraft after, SolvedRecipe solved, IReadOnlyList<Finding> findings)
    {
        TextWriter to = settings.Out is null || !solved.IsMet ? Console.Error : Console.Out;
        foreach ((string path, string? text) in solved.Fields)
        {
            to.WriteLine(CommandLine.OneLine($"{FieldWords.Of(before, path)}: {before[path] ?? "as fixed"} → {text ?? "planned"}"));
        }

        foreach (WishReached reached in solved.Reached)
        {
            to.WriteLine(CommandLine.OneLine($"{WishWords.Name(reached)}: {WishWords.Number(reached, reached.Reached)}{(reached.Asked ? ", as asked" : ", as before")}"));
        }

        if (solved.Confident is { } sure)
        {
            to.WriteLine(CommandLine.OneLine(Invariant($"planned for {sure.PlannedLitres:0.0} L: the package is full in {100 * sure.FullShare:0} of a hundred brews; in the likely one {sure.PlannedLitres - solved.Wanted:0.0} L are over")));
        }

        foreach (Finding finding in findings.Where(finding => finding.Severity >= Severity.Warning))
        {
            to.WriteLine(FindingLines.Spoken(finding));
        }

        if (solved.IsMet && settings.Out is null)
        {
            using Stream output = Console.OpenStandardOutput();
            output.Write(Encoding.UTF8.GetBytes(after.Text));
        }
        else if (solved.IsMet)
        {
            to.WriteLine(CommandLine.OneLine($"{after.Name} is written to {Path.GetFullPath(settings.Out!)}."));
        }
    }

    private static string Json(SolvedSettings settings, RecipeDraft before, RecipeDraft after, SolvedRecipe solved, IReadOnlyList<Finding> findings) => JsonPen.Write(pen =>
    {
        pen.Text("name", after.Name);
        pen.Flag("met", solved.IsMet);
        pen.List("changes", solved.Fields, field =>
        {
            pen.Text("field", field.Path);
            pen.Text("before", before[field.Path]);
            pen.Text("after", field.Text);
        });
        pen.List("reached", solved.Reached, reached =>
        {
            pen.Text("name", reached.Readout);
            pen.Number("wished", reached.Wished, 4);
            pen.Number("reached", reached.Reached, 4);
            pen.Flag("asked", reached.Asked);
        });
        pen.Block("confident", solved.Confident, sure =>
        {
            pen.Number("plannedLitres", sure.PlannedLitres, 2);
            pen.Number("fullShare", sure.FullShare, 3);
        });
        pen.List("findings", findings, finding => ForecastJson.WriteFinding(pen, finding));
        pen.Text("file", settings.Out is null || !solved.IsMet ? null : Path.GetFullPath(settings.Out));
        pen.Text("text", settings.Out is null && solved.IsMet ? after.Text : null);
    });
}
