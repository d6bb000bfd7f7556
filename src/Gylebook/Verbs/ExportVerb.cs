using System.ComponentModel;
using System.Text;
using Gylebook.Forecast.Json;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Recipes.Travelling;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook export NAME [--kind KIND] [--as html|beerjson|beerxml|csv|text|jsonld [--kit FILE]] [--as ics] [--book FILE] [--out FILE] [--force] [--json]</summary>
internal sealed class ExportVerb : AsyncCommand<ExportVerb.Settings>
{
    private static readonly string KnownKinds = string.Join(", ", BookFiles.Kinds);

    private static readonly string[] Forms = [SheetExport.Form, CalendarExport.Form, .. TravelFormat.All.Select(format => format.Word), .. LeafExport.Forms.Keys];

    /// <summary>What it takes.</summary>
    internal sealed class Settings : BookOption
    {
        /// <summary>What.</summary>
        [CommandArgument(0, "<NAME>")]
        [Description("The name, or the id recipes call it by; with --as and all but ics a recipe file too, with --as ics a gyle.")]
        public required string Name { get; init; }

        /// <summary>Which kind.</summary>
        [CommandOption("--kind <KIND>")]
        [Description("recipe, kit, water, food, malt, hop, yeast or shelf, where several have that name.")]
        public string? Kind { get; init; }

        /// <summary>As what.</summary>
        [CommandOption("--as <FORM>")]
        [Description("html: a recipe as a sheet that a browser prints on one page of A4, instead of its file. beerjson, beerxml, csv: a recipe for other programs. text, jsonld: a recipe in words, and as search engines read it. ics: the days of a gyle, for a calendar.")]
        public string? As { get; init; }

        /// <summary>The kit a sheet is reckoned for.</summary>
        [CommandOption("--kit <FILE>")]
        [Description("The kit's file, for --as html, beerjson or beerxml. Without it the book's kit in use; for a recipe file the built-in Lantern Shed kit.")]
        public string? Kit { get; init; }

        /// <summary>Where to.</summary>
        [CommandOption("--out <FILE>")]
        [Description("The file to write. Without it, the text is printed.")]
        public string? Out { get; init; }

        /// <summary>Whether to write over one.</summary>
        [CommandOption("--force")]
        [Description("Write over a file of ours that lies there.")]
        public bool Force { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            CommandLine.NoneLacksItsValue(("--book", "a file", Book), ("--kind", "a kind", Kind), ("--as", "a form", As), ("--kit", "a file", Kit), ("--out", "a file", Out)) is { Successful: false } lacking ? lacking
            : Kind is not null && !BookFiles.Kinds.Contains(Kind) ? ValidationResult.Error($"--kind {Kind}: must be one of {KnownKinds}.")
            : As is not null && !Forms.Contains(As) ? ValidationResult.Error($"--as {As}: must be one of {string.Join(", ", Forms)}.")
            : As == CalendarExport.Form && Kind is not null ? ValidationResult.Error($"--kind {Kind}: does not go with --as {As}, which is of a gyle.")
            : As is not null && Kind is not (null or SheetExport.Kind) ? ValidationResult.Error($"--kind {Kind}: must be {SheetExport.Kind} with --as {As}; nothing else leaves so.")
            : As is null or CalendarExport.Form && Kit is not null ? ValidationResult.Error($"--kit {Kit}: goes with --as {string.Join(", ", Forms.Where(form => form != CalendarExport.Form))} alone.")
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.As is not null)
        {
            return await (settings.As switch
            {
                CalendarExport.Form => CalendarExport.RunAsync(settings, cancellationToken),
                SheetExport.Form => SheetExport.RunAsync(settings, cancellationToken),
                var word when LeafExport.Forms.ContainsKey(word) => LeafExport.RunAsync(settings, cancellationToken),
                _ => TravelExport.RunAsync(settings, TravelFormat.Of(settings.As)!, cancellationToken),
            });
        }

        if (await settings.OpenAsync("to take anything out of", cancellationToken) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        IReadOnlyList<KeptFile> found = await book.Files.FindAsync(settings.Name, settings.Kind, cancellationToken);
        return WhyNot(found, settings.Kind) is { } refusal ? Refuse(settings, found.Count > 1 ? found : [], refusal)
            : Give(settings, WrittenFile.OfOurs, found[0].Text, found[0].ToString(), pen => ImportedFile.WriteKept(pen, found[0]));
    }

    /// <summary>Why what was found cannot be given out; null when it can.</summary>
    internal static string? WhyNot(IReadOnlyList<KeptFile> found, string? kind) => found switch
    {
        [] => $"there is {(kind is null ? "nothing" : $"no {kind}")} of that name in the book.",
        [{ IsDamaged: true } damaged] => $"{damaged} is damaged: its text is not what was written. gylebook check BOOK --texts FOLDER writes out the newest sound one.",
        [_] => null,
        _ => $"{string.Join(" and ", found.Select(file => $"{file}, number {file.Id}"))} have that name. {Advice(found)}",
    };

    /// <summary>The recipe of the book that is named; null, and why is told, when it is none or several.</summary>
    internal static async Task<(KeptFile? Recipe, int Refused)> RecipeAsync(Settings settings, Book book, CancellationToken cancellation)
    {
        IReadOnlyList<KeptFile> named = await book.Files.FindAsync(settings.Name, settings.Kind, cancellation);
        KeptFile[] recipes = [.. named.Where(file => file.Kind == SheetExport.Kind)];
        string? refusal = named.Count > 0 && recipes.Length == 0
            ? $"{named[0]} is no recipe; --as {settings.As} must name a recipe of the book or a recipe file."
            : WhyNot(recipes, settings.Kind);
        return refusal is null ? (recipes[0], 0) : (null, Refuse(settings, recipes.Length > 1 ? recipes : [], refusal));
    }

    private static string Advice(IReadOnlyList<KeptFile> found) =>
        found.Select(file => file.Kind).Distinct().Count() == found.Count ? $"Say which with --kind {found[0].Kind}." : "Name the one you want by its number.";

    /// <summary>Says why nothing is given out.</summary>
    internal static int Refuse(Settings settings, IReadOnlyList<KeptFile> candidates, string why)
    {
        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Text("refused", why);
                pen.List("candidates", candidates, file => ImportedFile.WriteKept(pen, file));
            }));
        }
        else
        {
            Console.Error.WriteLine(CommandLine.OneLine($"{settings.Name}: {why}"));
        }

        return 1;
    }

    /// <summary>Prints a text, or writes it where it was wanted.</summary>
    /// <param name="settings">What was asked.</param>
    /// <param name="kindOf">What kind of file is written.</param>
    /// <param name="text">All of it.</param>
    /// <param name="what">What it is, in a sentence.</param>
    /// <param name="tell">Tells of it in JSON.</param>
    internal static int Give(Settings settings, Func<string, WrittenFile> kindOf, string text, string what, Action<JsonPen> tell)
    {
        if (settings.Out is null)
        {
            Print(settings, text, tell);
            return 0;
        }

        WrittenFile written = kindOf(settings.Out);
        if (written.Refusal(settings.Force) is { } refusal)
        {
            return Refuse(settings, [], refusal);
        }

        written.Write(text, settings.Force);
        Console.WriteLine(settings.Json ? Told(tell, settings.Out, null) : CommandLine.OneLine($"{what} is written to {Path.GetFullPath(settings.Out)}."));
        return 0;
    }

    private static void Print(Settings settings, string text, Action<JsonPen> tell)
    {
        if (settings.Json)
        {
            Console.WriteLine(Told(tell, null, text));
        }
        else if (Console.IsOutputRedirected)
        {
            // Byte for byte: no line end of the machine's own, no mark before it.
            using Stream output = Console.OpenStandardOutput();
            output.Write(Encoding.UTF8.GetBytes(text));
        }
        else
        {
            Console.WriteLine(text);
        }
    }

    private static string Told(Action<JsonPen> tell, string? path, string? text) => JsonPen.Write(pen =>
    {
        tell(pen);
        pen.Text("file", path);
        pen.Text("text", text);
    });
}
