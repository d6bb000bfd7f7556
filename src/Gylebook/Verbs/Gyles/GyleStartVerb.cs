using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Lots;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle start RECIPE [--kit FILE] [--as NAME] [--book FILE] [--json]</summary>
internal sealed class GyleStartVerb : AsyncCommand<GyleStartVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : BookOption
    {
        /// <summary>The recipe.</summary>
        [CommandArgument(0, "<RECIPE>")]
        [Description("A recipe of the book by its name, or a file, which enters the book first.")]
        public required string Recipe { get; init; }

        /// <summary>The kit.</summary>
        [CommandOption("--kit <KIT>")]
        [Description("A kit of the book by its name, or a file, which enters the book first. The kit in use when unsaid.")]
        public string? Kit { get; init; }

        /// <summary>What to call it.</summary>
        [CommandOption("--as <NAME>")]
        [Description("What to call the gyle; the recipe's name and the day when unsaid.")]
        public string? As { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            CommandLine.NoneLacksItsValue(("--book", "a file", Book), ("--kit", "a kit", Kit), ("--as", "a name", As)) is { Successful: false } lacking ? lacking
            : As is not null && FileInHand.FaultOf(As) is { } fault ? ValidationResult.Error($"--as: {fault}.")
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (await settings.OpenAsync("to start a gyle in", cancellationToken) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        if (await InBookAsync(book, settings.Recipe, "recipe", settings.Json, cancellationToken) is not { } recipe)
        {
            return 1;
        }

        KeptFile? kit = null;
        if (settings.Kit is { } asked && (kit = await InBookAsync(book, asked, "kit", settings.Json, cancellationToken)) is null)
        {
            return 1;
        }

        (GyleLine? gyle, IReadOnlyList<Finding> findings) = await new GyleDesk(book, TimeProvider.System).StartAsync(recipe.Id, kit?.Id, settings.As, cancellation: cancellationToken);
        if (gyle is null)
        {
            return FindingLines.Tell(findings, settings.Json);
        }

        Tell(gyle, recipe, findings, settings.Json);
        return 0;
    }

    private static void Tell(GyleLine gyle, KeptFile recipe, IReadOnlyList<Finding> findings, bool json)
    {
        if (json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Text("name", gyle.Name);
                pen.Text("number", gyle.Id.ToString());
                pen.Text("recipe", recipe.Name);
                pen.Number("version", gyle.VersionNumber, 0);
                pen.Text("status", GyleText.Word(gyle.Status));
                pen.List("findings", findings, finding => ForecastJson.WriteFinding(pen, finding));
            }));
            return;
        }

        string version = Invariant($"{gyle.VersionNumber}");
        Console.WriteLine(CommandLine.OneLine($"\"{gyle.Name}\" has started, from version {version} of {recipe.Name}; its plan is frozen. gylebook gyle steps \"{gyle.Name}\" tells what to do."));
        foreach (Finding finding in findings)
        {
            Console.WriteLine(FindingLines.Spoken(finding));
        }
    }

    /// <summary>Sheets that lie beside a recipe's file and that it names enter with it; one whose name or id the book knows already stays as the book has it.</summary>
    private static async Task PutBesideAsync(Book book, string file, string kind, CancellationToken cancellation)
    {
        if (kind != "recipe" || OpenedFiles.Open(file, null) is not { Recipe: { } recipe } beside)
        {
            return;
        }

        foreach (LarderSheet sheet in recipe.Ingredients.Select(line => beside.Larder.Sheet(line.Kind, line.Of)).OfType<LarderSheet>().Distinct())
        {
            await book.Files.PutAsync(LarderFile.Write(sheet), new ClashAnswer.Ask(), "gyle start", cancellation);
        }
    }

    /// <summary>A recipe or a kit of the book: a file enters it first, unless it says just what the one of its name says.</summary>
    private static async Task<KeptFile?> InBookAsync(Book book, string called, string kind, bool json, CancellationToken cancellation)
    {
        if (File.Exists(called))
        {
            ImportedFile entered = await ImportedFile.TakeAsync(book, called, new ClashAnswer.Ask(), evenUnreadable: false, cancellation);
            if (entered.Kept is { } kept && kept.Kind == kind)
            {
                await PutBesideAsync(book, called, kind, cancellation);
                return kept;
            }

            if (entered.Kept is { } other)
            {
                Console.Error.WriteLine(CommandLine.OneLine($"{called}: this is a {other.Kind}, and a {kind} is wanted."));
                return null;
            }

            ImportedFile.Tell([entered], json);
            return null;
        }

        IReadOnlyList<KeptFile> found = await book.Files.FindAsync(called, kind, cancellation);
        if (found is [var one])
        {
            return one;
        }

        Console.Error.WriteLine(CommandLine.OneLine(found.Count == 0
            ? $"\"{called}\": there is no such file, and no {kind} of that name in the book."
            : $"\"{called}\": {found.Count} of that name are in the book; say the number: {string.Join(", ", found.Select(file => file.Id))}."));
        return null;
    }
}
