using Gylebook.Forecast.Json;
using Gylebook.Pictures;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Recipes.Printing;
using Gylebook.Web.Reading;

namespace Gylebook.Verbs;

/// <summary>gylebook export RECIPE --as html: a recipe of the book, or of a file, as a sheet to print.</summary>
internal static class SheetExport
{
    /// <summary>What follows <c>--as</c>.</summary>
    public const string Form = "html";

    /// <summary>The one kind of file that has a sheet.</summary>
    public const string Kind = "recipe";

    /// <summary>Writes the sheet, and says on the side what is wrong or doubtful in what it was made of.</summary>
    public static async Task<int> RunAsync(ExportVerb.Settings settings, CancellationToken cancellation)
    {
        bool isFile = settings.Name.EndsWith(".json", StringComparison.OrdinalIgnoreCase) && File.Exists(settings.Name);
        return isFile ? OfFile(settings) : await OfBookAsync(settings, cancellation);
    }

    private static int OfFile(ExportVerb.Settings settings)
    {
        OpenedFiles files = OpenedFiles.Open(settings.Name, settings.Kit);
        if (files.Recipe is not { } recipe || files.Kit is not { } kit)
        {
            return FindingLines.Tell(files.Findings, settings.Json);
        }

        RecipeSheet sheet = RecipeSheet.Of(recipe, kit, files.Larder);
        return Give(settings, sheet with { Findings = [.. files.Findings, .. sheet.Findings] });
    }

    private static async Task<int> OfBookAsync(ExportVerb.Settings settings, CancellationToken cancellation)
    {
        OpenedFiles? kits = settings.Kit is null ? null : OpenedFiles.OpenKit(settings.Kit);
        if (kits is { Kit: null })
        {
            return FindingLines.Tell(kits.Findings, settings.Json);
        }

        if (await settings.OpenAsync("to take anything out of", cancellation) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        (KeptFile? found, int refused) = await ExportVerb.RecipeAsync(settings, book, cancellation);
        if (found is null)
        {
            return refused;
        }

        ReaderUnits units = ReaderChoice.Of(await book.Settings.ListAsync(cancellation)).Units;
        RecipeSheet sheet = await PrintedRecipe.OfAsync(book, found, kits?.Kit, units);
        return Give(settings, sheet with { Findings = [.. kits?.Findings ?? [], .. sheet.Findings] });
    }

    private static int Give(ExportVerb.Settings settings, RecipeSheet sheet)
    {
        if (sheet.Run is null)
        {
            return FindingLines.Tell(sheet.Findings, settings.Json);
        }

        int given = ExportVerb.Give(settings, WrittenFile.Html, RecipeSheetHtml.File(sheet), $"recipe \"{sheet.Name}\", as a sheet to print,", pen =>
        {
            pen.Text("kind", Kind);
            pen.Text("name", sheet.Name);
            pen.List("findings", sheet.Findings, finding => ForecastJson.WriteFinding(pen, finding));
        });
        foreach (Finding finding in settings.Json ? [] : sheet.Findings.Where(finding => finding.Severity != Severity.Note))
        {
            Console.Error.WriteLine(FindingLines.Line(finding));
        }

        return given == 0 && !sheet.Problems.Any() ? 0 : 1;
    }
}
