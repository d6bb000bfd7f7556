using Gylebook.Forecast.Json;
using Gylebook.Pictures;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes;
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
    public static Task<int> RunAsync(ExportVerb.Settings settings, CancellationToken cancellation) => NamedRecipe.GiveAsync(
        settings,
        (files, recipe, kit) => Give(settings, files.Findings, RecipeSheet.Of(recipe, kit, files.Larder)),
        async (book, found, kits) =>
        {
            ReaderUnits units = ReaderChoice.Of(await book.Settings.ListAsync(cancellation)).Units;
            return Give(settings, kits?.Findings ?? [], await PrintedRecipe.OfAsync(book, found, kits?.Kit, units));
        },
        cancellation);

    private static int Give(ExportVerb.Settings settings, IReadOnlyList<Finding> ofFiles, RecipeSheet sheet) =>
        Give(settings, sheet with { Findings = [.. ofFiles, .. sheet.Findings] });

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
