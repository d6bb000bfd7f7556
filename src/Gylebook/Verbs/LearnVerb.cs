using System.ComponentModel;
using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Learning;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook learn --kit FILE GYLE… [--accept FIGURES --out FILE [--force] [--date DAY]] [--seed WORD] [--draws COUNT] [--json]</summary>
internal sealed class LearnVerb : Command<LearnVerb.Settings>
{
    private const string DayForm = "yyyy-MM-dd";

    /// <summary>What it takes.</summary>
    internal sealed class Settings : KitSettings
    {
        /// <summary>The gyles.</summary>
        [CommandArgument(0, "<GYLE>")]
        [Description("A finished gyle: its recipe's file and that of its readings, RECIPE=READINGS. As many as you like, all of one kit.")]
        public required string[] Gyles { get; init; }

        /// <summary>What to accept.</summary>
        [CommandOption("--accept <FIGURES>")]
        [Description("Figures to take into the kit, with commas between, by the name they are told with: kettle.evaporation, or evaporation alone. Without it nothing changes.")]
        public string? Accept { get; init; }

        /// <summary>Where to write the kit.</summary>
        [CommandOption("--out <FILE>")]
        [Description("The file to write the kit to, with what was accepted and the history of it.")]
        public string? Out { get; init; }

        /// <summary>Whether to write over one.</summary>
        [CommandOption("--force")]
        [Description("Write over a file of ours that lies there.")]
        public bool Force { get; init; }

        /// <summary>The day it is accepted.</summary>
        [CommandOption("--date <DAY>")]
        [Description("The day to write into the kit's history, such as 2026-03-01; today when unsaid.")]
        public string? Date { get; init; }

        /// <summary>The word its draws are made with.</summary>
        [CommandOption("--seed <WORD>")]
        [Description("A word: the same draws come from the same word. The kit file's name when unsaid.")]
        public string? Seed { get; init; }

        /// <summary>How many draws.</summary>
        [CommandOption("--draws <COUNT>")]
        [Description("How many draws each gyle is set against, 100 to 100000; 1000 when unsaid.")]
        public string? Draws { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued =>
        [
            ("--accept", "figures", Accept), ("--out", "a file", Out), ("--date", "a day", Date), ("--seed", "a word", Seed), ("--draws", "a number", Draws),
        ];

        /// <inheritdoc/>
        public override ValidationResult Validate() => base.Validate() is { Successful: false } lacking ? lacking
            : Kit is null ? ValidationResult.Error("--kit: must name the file of the kit the gyles were brewed on.")
            : Gyles.FirstOrDefault(gyle => GyleFiles.Of(gyle) is null) is { } wrong ? ValidationResult.Error($"{wrong}: a gyle is its recipe's file and that of its readings with = between, RECIPE=READINGS.")
            : Accept is null != Out is null ? ValidationResult.Error("--accept says what to take into the kit and --out where to write it: both or neither.")
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        string typedDraws = settings.Draws ?? KitLearning.UsualDraws.ToString(CultureInfo.InvariantCulture);
        if (!ForecastOptions.TryReadDraws(typedDraws, mayBeNone: false, out int draws, out string problem) || !TryDay(settings.Date, out DateOnly day, out problem))
        {
            return Refused(problem);
        }

        WrittenFile? written = settings.Out is null ? null : WrittenFile.OfOurs(settings.Out);
        if (written?.Refusal(settings.Force) is { } refusal)
        {
            return Refused(refusal);
        }

        OpenedFiles kit = OpenedFiles.OpenKit(settings.Kit!);
        GyleFiles[] files = [.. settings.Gyles.Select(gyle => GyleFiles.Of(gyle)!.Open())];
        List<Finding> findings = [.. kit.Findings, .. kit.Kit is null ? [] : KitCheck.Findings(kit.Kit).Where(finding => finding.Severity == Severity.Error), .. files.SelectMany(file => file.Findings)];
        if (findings.Exists(finding => finding.Severity == Severity.Error))
        {
            return FindingLines.Tell(findings, settings.Json);
        }

        KitLearning learning = KitLearning.Of(kit.Kit!, [.. files.Select(file => file.Gyle!)], settings.Seed ?? Path.GetFileNameWithoutExtension(settings.Kit!), draws);
        learning = learning with { Findings = [.. findings, .. learning.Findings] };
        if (learning.Gyles.Count == 0)
        {
            return FindingLines.Tell(learning.Findings, settings.Json);
        }

        if (!AcceptedNames.TryRead(settings.Accept, learning.Figures, out IReadOnlyList<string> accepted, out problem))
        {
            return Refused(problem);
        }

        written?.Write(KitFile.Write(learning.Accepted(accepted, day)), settings.Force);
        Tell(settings, learning, accepted);
        return learning.Findings.Any(finding => finding.Severity == Severity.Error) ? 1 : 0;
    }

    private static void Tell(Settings settings, KitLearning learning, IReadOnlyList<string> accepted)
    {
        string? file = settings.Out is null ? null : Path.GetFullPath(settings.Out);
        if (settings.Json)
        {
            Console.WriteLine(LearningJson.Write(learning, accepted, file));
        }
        else
        {
            LearningText.Write(learning, accepted, file);
        }
    }

    private static bool TryDay(string? typed, out DateOnly day, out string problem)
    {
        bool isDay = DateOnly.TryParseExact(typed, DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
        day = typed is null ? DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime) : day;
        problem = typed is null || isDay ? "" : $"--date: {typed}; write a day as 2026-03-01: year, month, day.";
        return problem.Length == 0;
    }

    private static int Refused(string problem)
    {
        Console.Error.WriteLine(CommandLine.OneLine(problem));
        return 1;
    }
}
