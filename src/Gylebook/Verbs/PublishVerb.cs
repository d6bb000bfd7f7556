using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Site.Folder;
using Gylebook.Site.Publications;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Publishing;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook publish [NAME…] --to FOLDER [--address URL] [--by WHO] [--kit FILE] [--water FILE] [--withdraw] [--book FILE] [--json]</summary>
internal sealed class PublishVerb : AsyncCommand<PublishVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : BookOption
    {
        /// <summary>What to give out.</summary>
        [CommandArgument(0, "[NAME]")]
        [Description("Recipes or gyles of the book, or recipe files. A gyle gives out what it was brewed from, with what was measured. Without a name, the folder is written anew with all that is given out.")]
        public string[] Names { get; init; } = [];

        /// <summary>Where to.</summary>
        [CommandOption("--to <FOLDER>")]
        [Description("The folder to write; any web host can serve it. Files of ours in it are written over, others are left.")]
        public string? To { get; init; }

        /// <summary>Where it will be found.</summary>
        [CommandOption("--address <URL>")]
        [Description("Where the folder will be found, such as https://example.org/beer/: for the feed, previews and search engines, which want whole addresses.")]
        public string? Address { get; init; }

        /// <summary>Who.</summary>
        [CommandOption("--by <WHO>")]
        [Description("Who gives it out; the book remembers it.")]
        public string? By { get; init; }

        /// <summary>The kit of recipe files.</summary>
        [CommandOption("--kit <FILE>")]
        [Description("For recipe files: the kit they are weighed for. Without it, the built-in Lantern Shed kit.")]
        public string? Kit { get; init; }

        /// <summary>The water of recipe files.</summary>
        [CommandOption("--water <FILE>")]
        [Description("For recipe files: the water plan.")]
        public string? Water { get; init; }

        /// <summary>Whether to take back.</summary>
        [CommandOption("--withdraw")]
        [Description("Takes those recipes back instead, and their pages out of the folder. What others have copied, nobody takes back.")]
        public bool Withdraw { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() => CommandLine.NoneLacksItsValue(
            [("--to", "a folder", To), ("--address", "an address", Address), ("--by", "a name", By), ("--kit", "a file", Kit), ("--water", "a file", Water)]) is { Successful: false } lacking ? lacking
            : To is null ? ValidationResult.Error("--to: must name the folder to write.")
            : Address is not null && WholeAddress is null ? ValidationResult.Error($"--address: {Address}; {SiteFolder.AddressWanted}.")
            : Withdraw && Names.Length == 0 ? ValidationResult.Error("--withdraw: say which recipes.")
            : ValidationResult.Success();

        /// <summary>The address, with a slash at its end; null for none.</summary>
        public Uri? WholeAddress => SiteFolder.AddressOf(Address);

        /// <summary>Whether recipe files are meant, and no book.</summary>
        public bool IsOfFiles => Names.Length > 0 && Names.All(NamedRecipe.IsFile);
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (!SiteEngine.IsHere)
        {
            Console.Error.WriteLine("gylebook: the engine for readers' browsers is not beside this program, so nothing can be published: build it with the configuration Release.");
            return 1;
        }

        return settings.IsOfFiles ? OfFiles(settings) : await OfBookAsync(settings, cancellationToken);
    }

    private static int OfFiles(Settings settings)
    {
        List<Publication> publications = [];
        List<Finding> findings = [];
        foreach (string name in settings.Names)
        {
            OpenedFiles files = OpenedFiles.Open(name, settings.Kit);
            string? water = settings.Water is { } path && files.Water(path) is not null ? File.ReadAllText(path) : null;
            findings.AddRange(files.Findings);
            if (files.Recipe is { } recipe && files.Kit is { } kit && (settings.Water is null || water is not null))
            {
                GyleInputs inputs = new(recipe, kit, files.Larder, water is null ? null : WaterFile.Read(water).Value);
                publications.Add(new Publication
                {
                    Name = recipe.Name, Slug = FreeId.Of(recipe.Name, "recipe", slug => slug == SiteEngine.Folder || publications.Exists(other => other.Slug == slug)),
                    Day = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime), By = settings.By ?? "", Files = PublicFiles.Of(inputs, water),
                });
            }
        }

        if (findings.Exists(finding => finding.Severity == Severity.Error))
        {
            return FindingLines.Tell(findings, settings.Json);
        }

        (IReadOnlyList<SiteFile> pages, IReadOnlyList<Finding> against) = new SiteFolder(settings.By ?? "Recipes", settings.WholeAddress).Pages(publications);
        return Write(settings, pages, [.. findings, .. against], publications);
    }

    private static async Task<int> OfBookAsync(Settings settings, CancellationToken cancellation)
    {
        if (await settings.OpenAsync("to publish from", cancellation) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        PublishDesk desk = new(book, new GyleDesk(book, TimeProvider.System), TimeProvider.System);
        if (settings.By is { } by)
        {
            await desk.SetByAsync(by, cancellation);
        }

        List<Finding> findings = [];
        foreach (string name in settings.Names)
        {
            if (await FindAsync(book, name, settings.Withdraw, cancellation) is not var (recipe, gyle))
            {
                return 1;
            }

            if (settings.Withdraw)
            {
                if (await book.Publications.FindAsync(recipe, cancellation) is { } kept)
                {
                    WrittenSite.RemovePage(settings.To!, kept.Slug);
                }

                await book.Publications.WithdrawAsync(recipe, cancellation);
                continue;
            }

            (KeptPublication? given, IReadOnlyList<Finding> found) = gyle is { } id ? await desk.PublishGyleAsync(id, cancellation) : await desk.PublishRecipeAsync(recipe, cancellation);
            findings.AddRange(found.Where(finding => given is null || finding.Severity != Severity.Note));
            if (given is null)
            {
                return FindingLines.Tell(findings, settings.Json);
            }
        }

        (IReadOnlyList<SiteFile> pages, IReadOnlyList<Finding> against) = await desk.FolderAsync(settings.WholeAddress, cancellation);
        return Write(settings, pages, [.. findings, .. against], await desk.ListAsync(cancellation));
    }

    /// <summary>A recipe by that name, else a gyle.</summary>
    private static async Task<(Guid Recipe, Guid? Gyle)?> FindAsync(Book book, string name, bool isRecipe, CancellationToken cancellation)
    {
        KeptFile[] recipes = [.. (await book.Files.FindAsync(name, SheetExport.Kind, cancellation)).Where(file => file.Kind == SheetExport.Kind)];
        if (recipes is [var one])
        {
            return (one.Id, null);
        }

        if (recipes.Length > 1)
        {
            Console.Error.WriteLine(CommandLine.OneLine($"\"{name}\" may be {string.Join(" or ", recipes.Select(file => file.ToString()))}: say which."));
            return null;
        }

        IReadOnlyList<GyleLine> named = isRecipe ? [] : await book.Gyles.FindAsync(name, cancellation);
        if (named is [var gyle])
        {
            return (gyle.RecipeId, gyle.Id);
        }

        Console.Error.WriteLine(CommandLine.OneLine(named.Count > 1
            ? $"\"{name}\" may be {string.Join(" or ", named.Select(line => $"\"{line.Name}\""))}: say which."
            : $"There is no recipe{(isRecipe ? "" : " or gyle")} \"{name}\" in the book."));
        return null;
    }

    private static int Write(Settings settings, IReadOnlyList<SiteFile> pages, IReadOnlyList<Finding> findings, IReadOnlyList<Publication> all)
    {
        string folder = Path.GetFullPath(settings.To!);

        // What cannot be brewed has no page, and the findings say why.
        Publication[] publications = [.. all.Where(publication => pages.Any(page => page.Path == $"{publication.Slug}/index.html"))];
        if (WrittenSite.Write(folder, pages) is { } cannot)
        {
            Console.Error.WriteLine(CommandLine.OneLine($"--to: {folder} cannot be written: {cannot}"));
            return 1;
        }

        if (settings.Json)
        {
            Console.WriteLine(Json(folder, findings, publications));
        }
        else
        {
            Say(folder, findings, publications);
        }

        return findings.Any(finding => finding.Severity == Severity.Error) ? 1 : 0;
    }

    private static void Say(string folder, IReadOnlyList<Finding> findings, IReadOnlyList<Publication> publications)
    {
        foreach (Publication publication in publications)
        {
            Console.WriteLine(CommandLine.OneLine($"{publication.Name}: {Path.Combine(folder, publication.Slug, "index.html")}"));
        }

        Console.WriteLine(CommandLine.OneLine($"{folder} can be put on any web host as it is; opened as a file, its pages can be read, but weigh nothing anew."));
        foreach (Finding finding in findings.Where(finding => finding.Severity != Severity.Note))
        {
            Console.Error.WriteLine(FindingLines.Line(finding));
        }
    }

    private static string Json(string folder, IReadOnlyList<Finding> findings, IReadOnlyList<Publication> publications) => JsonPen.Write(pen =>
    {
        pen.Text("folder", folder);
        pen.List("pages", publications, publication =>
        {
            pen.Text("name", publication.Name);
            pen.Text("page", Path.Combine(folder, publication.Slug, "index.html"));
        });
        pen.List("findings", findings, finding => ForecastJson.WriteFinding(pen, finding));
    });
}
