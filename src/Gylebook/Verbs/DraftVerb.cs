using System.ComponentModel;
using System.Text;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Solving;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Quantities;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook draft --alcohol A --colour C --bitterness B --litres L [--food NAME --amount A] [--kit FILE] [--out FILE [--force]]</summary>
internal sealed class DraftVerb : Command<DraftVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : CommandSettings
    {
        /// <summary>Strength.</summary>
        [CommandOption("--alcohol <SHARE>")]
        [Description("Alcohol by volume: \"5 %\". Either this or --gravity.")]
        public string? Alcohol { get; init; }

        /// <summary>Strength of the wort.</summary>
        [CommandOption("--gravity <GRAVITY>")]
        [Description("Original gravity, in place of the alcohol: 1.050, or \"12.5 °P\".")]
        public string? Gravity { get; init; }

        /// <summary>Colour.</summary>
        [CommandOption("--colour <COLOUR>")]
        [Description("Colour in the glass: \"20 EBC\", or \"10 SRM\".")]
        public string? Colour { get; init; }

        /// <summary>Bitterness.</summary>
        [CommandOption("--bitterness <IBU>")]
        [Description("Bitterness: \"30 IBU\".")]
        public string? Bitterness { get; init; }

        /// <summary>Litres.</summary>
        [CommandOption("--litres <VOLUME>")]
        [Description("Beer to package: \"20 L\", or \"5 US gal\".")]
        public string? Litres { get; init; }

        /// <summary>A food.</summary>
        [CommandOption("--food <FOOD>")]
        [Description("A food that goes in: its name in the tables, or a food file. It wants --amount, too.")]
        public string? Food { get; init; }

        /// <summary>How much of it.</summary>
        [CommandOption("--amount <WEIGHT>")]
        [Description("How much of the food: \"600 g\".")]
        public string? Amount { get; init; }

        /// <summary>The kit.</summary>
        [CommandOption("--kit <FILE>")]
        [Description("The kit's file. Without one the draft is for the built-in Lantern Shed kit.")]
        public string? Kit { get; init; }

        /// <summary>Where to write it.</summary>
        [CommandOption("--out <FILE>")]
        [Description("The recipe file to write. Without it, the recipe is printed, and what it comes to goes to the other output.")]
        public string? Out { get; init; }

        /// <summary>Whether to write over one.</summary>
        [CommandOption("--force")]
        [Description("Write over a file of ours that lies there.")]
        public bool Force { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            CommandLine.NoneLacksItsValue(
            [
                ("--alcohol", "a share", Alcohol), ("--gravity", "a gravity", Gravity), ("--colour", "a colour", Colour), ("--bitterness", "a bitterness", Bitterness),
                ("--litres", "a volume", Litres), ("--food", "a food", Food), ("--amount", "a weight", Amount), ("--kit", "a file", Kit), ("--out", "a file", Out),
            ]) is { Successful: false } lacking ? lacking
            : Colour is null || Bitterness is null || Litres is null || (Alcohol is null && Gravity is null)
                ? ValidationResult.Error("A wish has --alcohol or --gravity, --colour, --bitterness and --litres.")
                : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        List<Finding> findings = [];
        FirstWish wish = new()
        {
            Alcohol = settings.Alcohol is null ? null : Read<Fraction>("alcohol", settings.Alcohol, findings),
            OriginalGravity = settings.Gravity is null ? null : Read<SpecificGravity>("gravity", settings.Gravity, findings),
            Colour = Read<BeerColour>("colour", settings.Colour!, findings),
            Bitterness = Read<Bitterness>("bitterness", settings.Bitterness!, findings),
            Litres = Read<VolumeAt20C>("litres", settings.Litres!, findings),
            FoodAmount = settings.Amount is null ? null : Read<Mass>("amount", settings.Amount, findings),
            Food = settings.Food,
        };
        Larder larder = Larder.Empty;
        if (settings.Food is { } food && File.Exists(food))
        {
            FoodSheet? sheet = FoodOf(food, findings);
            (wish, larder) = sheet is null ? (wish, larder) : (wish with { Food = sheet.Id }, new Larder([sheet]));
        }

        OpenedFiles? own = settings.Kit is null ? null : OpenedFiles.OpenKit(settings.Kit);
        findings.AddRange(own?.Findings ?? []);
        WrittenFile? written = settings.Out is null ? null : WrittenFile.OfOurs(settings.Out);
        if (written?.Refusal(settings.Force) is { } refusal)
        {
            Console.Error.WriteLine(CommandLine.OneLine(refusal));
            return 1;
        }

        return findings.Any(finding => finding.Severity == Severity.Error) ? Refuse(findings) : Tell(settings, wish, own?.Kit ?? BuiltInKit.LanternShed, larder, written);
    }

    private static int Tell(Settings settings, FirstWish wish, Kit kit, Larder larder, WrittenFile? written)
    {
        FirstDraft draft = new FirstRecipe(kit, larder).Of(wish);
        if (draft.Recipe is not { } recipe)
        {
            return Refuse(draft.Findings);
        }

        string text = RecipeFile.Write(recipe);
        written?.Write(text, settings.Force);
        TextWriter to = written is null ? Console.Error : Console.Out;
        foreach (WishReached reached in draft.Reached)
        {
            to.WriteLine(CommandLine.OneLine($"{WishWords.Name(reached)}: {WishWords.Number(reached, reached.Reached)}, asked for {WishWords.Number(reached, reached.Wished)}"));
        }

        IReadOnlyList<Finding> findings = Forecaster.Forecast(recipe, kit, larder, "draft").Findings;
        foreach (Finding finding in findings.Where(finding => finding.Severity >= Severity.Warning))
        {
            to.WriteLine(FindingLines.Spoken(finding));
        }

        if (larder.Sheets is [FoodSheet sheet])
        {
            to.WriteLine(CommandLine.OneLine($"Lay {settings.Food} beside the recipe as foods/{sheet.Id}.json."));
        }

        if (written is not null)
        {
            to.WriteLine(CommandLine.OneLine($"{recipe.Name} is written to {Path.GetFullPath(settings.Out!)}."));
        }
        else
        {
            using Stream output = Console.OpenStandardOutput();
            output.Write(Encoding.UTF8.GetBytes(text));
        }

        return findings.All(finding => finding.Severity != Severity.Error) ? 0 : 1;
    }

    private static FoodSheet? FoodOf(string path, List<Finding> findings)
    {
        if (!OpenedFiles.TryOpen(path, findings, out FileStream? stream))
        {
            return null;
        }

        using (stream)
        {
            Reading<FoodSheet> reading = FoodFile.Read(stream!);
            findings.AddRange(reading.Findings);
            return reading.Value;
        }
    }

    private static Entered<T> Read<T>(string option, string text, List<Finding> findings)
        where T : struct, IQuantity<T>
    {
        if (!UnitTable.TryParse<T>(text, out Entered<T> entered, out string problem))
        {
            findings.Add(new("quantity.wrong", Severity.Error, option, problem, text, UnitTable.RangeOf<T>()));
        }

        return entered;
    }

    private static int Refuse(IReadOnlyList<Finding> findings)
    {
        foreach (Finding finding in findings)
        {
            bool isOption = finding.Where is "alcohol" or "gravity" or "colour" or "bitterness" or "litres" or "food" or "amount";
            Console.Error.WriteLine(isOption ? CommandLine.OneLine($"--{finding.Where}: {finding.Message.TrimEnd('.')}.") : FindingLines.Spoken(finding));
        }

        return 1;
    }
}
