using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook label FOOD [--amount "600 g" --at knock-out --into "20 L" [--kit FILE]] [--json]</summary>
internal sealed class LabelVerb : Command<LabelVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : KitSettings
    {
        /// <summary>The food.</summary>
        [CommandArgument(0, "<FOOD>")]
        [Description("A food file, or the id or name of a food of the tables: \"peanut flour\", raisins-seedless.")]
        public required string Food { get; init; }

        /// <summary>How much.</summary>
        [CommandOption("--amount <MASS>")]
        [Description("How much of it, weighed: \"600 g\".")]
        public string? Amount { get; init; }

        /// <summary>Where.</summary>
        [CommandOption("--at <PLACE>")]
        [Description("Where it goes in: mash, \"boil 10 min\", knock-out, \"ferment day 3\", package. Given twice, side by side.")]
        public string[] At { get; init; } = [];

        /// <summary>Into how much.</summary>
        [CommandOption("--into <VOLUME>")]
        [Description("Litres of wort in the fermenter, or of beer in the package for rack and package: \"20 L\". Alone, the batch that kept bench trials are told for.")]
        public string? Into { get; init; }

        /// <summary>Whether to allow all that the law does.</summary>
        [CommandOption("--legal")]
        [Description("Let the packet lie from its panel by all that the law allows, not by rounding alone.")]
        public bool Legal { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued =>
        [
            ("--amount", "a mass", Amount),
            ("--into", "a volume", Into),
            .. At.Select(at => ("--at", "a place", (string?)at)),
        ];

        /// <inheritdoc/>
        public override ValidationResult Validate()
        {
            if (base.Validate() is { Successful: false } lacking)
            {
                return lacking;
            }

            if (Kit is not null && Amount is null)
            {
                return ValidationResult.Error("Option '--kit' goes with '--amount', '--at' and '--into': a kit's height counts for a dose.");
            }

            if (Amount is null && At.Length == 0)
            {
                return ValidationResult.Success();
            }

            int given = (Amount is null ? 0 : 1) + (At.Length == 0 ? 0 : 1) + (Into is null ? 0 : 1);
            return given == 3
                ? ValidationResult.Success()
                : ValidationResult.Error("Options '--amount', '--at' and '--into' go together: what a food does hangs on all three. '--into' alone tells its kept bench trials.");
        }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        List<Finding> findings = [];
        Entered<Mass>? amount = Read<Mass>("amount", settings.Amount, findings);
        Entered<VolumeAt20C>? into = Read<VolumeAt20C>("into", settings.Into, findings);
        List<AdditionTime> places = [.. settings.At.Select(text => Place(text, findings)).OfType<AdditionTime>()];
        OpenedFiles? files = settings.Kit is null ? null : OpenedFiles.OpenKit(settings.Kit);
        findings.AddRange(files?.Findings ?? []);
        if (findings.Any(f => f.Severity == Severity.Error))
        {
            return FindingLines.Tell(findings, settings.Json);
        }

        OpenedFood food = OpenedFood.Open(settings.Food, settings.Legal ? LabelMode.Legal : LabelMode.Rounding);
        FoodLabelReport told = FoodLabelReport.Of(food.Id, food.Name, food.Food, amount, into, places, files?.Kit);
        FoodLabelReport report = told with { Findings = [.. findings, .. told.Findings], KeptTrials = food.Trials, Batch = into ?? KeptTrial.UsualBatch };
        if (settings.Json)
        {
            Console.WriteLine(LabelJson.Write(report));
        }
        else if (food.Food.Makeup is null)
        {
            return FindingLines.Tell(report.Findings, false);
        }
        else
        {
            LabelText.Write(report);
        }

        return report.Findings.Any(f => f.Severity == Severity.Error) ? 1 : 0;
    }

    private static Entered<T>? Read<T>(string option, string? text, List<Finding> findings)
        where T : struct, IQuantity<T>
    {
        if (text is null)
        {
            return null;
        }

        if (!UnitTable.TryParse<T>(text, out Entered<T> entered, out string? problem))
        {
            findings.Add(new("quantity.wrong", Severity.Error, option, $"--{option} {problem}", text));
            return null;
        }

        if (entered.Value.Canonical <= 0)
        {
            findings.Add(new("quantity.nothing", Severity.Error, option, $"--{option} {text}: must be more than nothing", text, "above 0"));
        }

        return entered;
    }

    private static AdditionTime? Place(string text, List<Finding> findings)
    {
        if (AdditionTimeText.TryParse(text, out AdditionTime at, out string? problem))
        {
            return at;
        }

        findings.Add(new("at.wrong", Severity.Error, "at", $"--at {text}: {problem}", text, AdditionTimeText.Forms));
        return null;
    }
}
