using System.ComponentModel;
using Gylebook.Gyles.Vessels;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Lots;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>What every verb takes that begins with a recipe and ends with a gyle.</summary>
internal abstract class GyleOfRecipeSettings : BookOption
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

    /// <summary>The planned gyle.</summary>
    [CommandOption("--planned <GYLE>")]
    [Description("A gyle of that recipe that is planned already, by its name.")]
    public string? Planned { get; init; }

    /// <summary>The fermenter.</summary>
    [CommandOption("--fermenter <NAME>")]
    [Description("The kit's fermenter it stands in, by its name; refused where another gyle has it on those days.")]
    public string? Fermenter { get; init; }

    /// <summary>The keg.</summary>
    [CommandOption("--keg <NAME>")]
    [Description("The kit's keg it goes into, by its name; refused where another gyle has it on those days.")]
    public string? Keg { get; init; }

    /// <inheritdoc/>
    public override ValidationResult Validate() =>
        CommandLine.NoneLacksItsValue([("--book", "a file", Book), ("--kit", "a kit", Kit), ("--as", "a name", As), ("--planned", "a gyle", Planned), ("--fermenter", "a name", Fermenter), ("--keg", "a name", Keg), .. Valued]) is { Successful: false } lacking ? lacking
        : As is not null && FileInHand.FaultOf(As) is { } fault ? ValidationResult.Error($"--as: {fault}.")
        : ValidationResult.Success();

    /// <summary>Options that need a value after them: name, what it is, what was typed.</summary>
    protected virtual IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [];
}

/// <summary>A verb that begins with a recipe and ends with a gyle: finds both, or says why not.</summary>
/// <typeparam name="TSettings">What it takes.</typeparam>
internal abstract class GyleOfRecipeVerb<TSettings> : AsyncCommand<TSettings>
    where TSettings : GyleOfRecipeSettings
{
    /// <inheritdoc/>
    public sealed override async Task<int> ExecuteAsync(CommandContext context, TSettings settings, CancellationToken cancellationToken)
    {
        if (await settings.OpenAsync("to start a gyle in", cancellationToken, makes: true) is not { } opened)
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

        GyleDesk desk = new(book, TimeProvider.System);
        GyleOrder order = new(recipe.Id)
        {
            KitId = kit?.Id, Name = settings.As, Vessels = settings.Fermenter is null && settings.Keg is null ? null : new VesselPlan(settings.Fermenter, settings.Keg),
        };
        return settings.Planned is not { } called ? await BeginAsync(desk, order, recipe, settings, cancellationToken)
            : await PlannedAsync(desk, recipe, called, cancellationToken) is { } planned ? await BeginAsync(desk, order with { GyleId = planned.Id }, recipe, settings, cancellationToken) : 1;
    }

    /// <summary>Does it.</summary>
    /// <returns>The exit code.</returns>
    protected abstract Task<int> BeginAsync(GyleDesk desk, GyleOrder order, KeptFile recipe, TSettings settings, CancellationToken cancellation);

    /// <summary>What was wrong with options is told by their names.</summary>
    protected static int Refuse(IReadOnlyList<Finding> findings, bool json) =>
        FindingLines.Tell([.. findings.Select(finding => finding.Where is "fermenter" or "keg" or "day" ? finding with { Where = $"--{(finding.Where == "day" ? "on" : finding.Where)}" } : finding)], json);

    private static async Task<GyleLine?> PlannedAsync(GyleDesk desk, KeptFile recipe, string called, CancellationToken cancellation)
    {
        IReadOnlyList<GyleLine> all = await desk.PlannedAsync(recipe.Id, cancellation);
        if (all.FirstOrDefault(gyle => NameSearch.Fold(gyle.Name) == NameSearch.Fold(called) || gyle.Id.ToString() == called) is { } planned)
        {
            return planned;
        }

        Console.Error.WriteLine(CommandLine.OneLine($"--planned: there is no planned gyle \"{called}\" of {recipe.Name}; {(all.Count == 0 ? "none is planned" : $"there are {string.Join(", ", all.Select(gyle => $"\"{gyle.Name}\""))}")}."));
        return null;
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
            TakenFile taken = await TakenFile.TakeAsync(book, called, new ClashAnswer.Ask(), evenUnreadable: false, cancellation);
            KeptFile? entered = (taken as ImportedFile)?.Kept ?? (taken as LandedFile)?.TheOne(kind);
            if (entered is { } kept && kept.Kind == kind)
            {
                await PutBesideAsync(book, called, kind, cancellation);
                return kept;
            }

            if (entered is { } other)
            {
                Console.Error.WriteLine(CommandLine.OneLine($"{called}: this is a {other.Kind}, and a {kind} is wanted."));
                return null;
            }

            TakenFile.Tell([taken], json);
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
