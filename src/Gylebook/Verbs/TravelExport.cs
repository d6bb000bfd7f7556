using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Recipes.Travelling;

namespace Gylebook.Verbs;

/// <summary>gylebook export RECIPE --as beerjson|beerxml|csv: a recipe of the book, or of a file, for other programs.</summary>
internal static class TravelExport
{
    /// <summary>Writes it, and says on the side what does not travel as it stands.</summary>
    public static async Task<int> RunAsync(ExportVerb.Settings settings, TravelFormat format, CancellationToken cancellation)
    {
        bool isFile = settings.Name.EndsWith(".json", StringComparison.OrdinalIgnoreCase) && File.Exists(settings.Name);
        return isFile ? OfFile(settings, format) : await OfBookAsync(settings, format, cancellation);
    }

    private static int OfFile(ExportVerb.Settings settings, TravelFormat format)
    {
        OpenedFiles files = OpenedFiles.Open(settings.Name, settings.Kit);
        return files.Recipe is { } recipe && files.Kit is { } kit
            ? Give(settings, format, TravellingRecipe.Of(recipe, kit, files.Larder, format))
            : FindingLines.Tell(files.Findings, settings.Json);
    }

    private static async Task<int> OfBookAsync(ExportVerb.Settings settings, TravelFormat format, CancellationToken cancellation)
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
        return found is null ? refused : Give(settings, format, await TravellingRecipe.OfAsync(book, found, format, kits?.Kit, cancellation));
    }

    private static int Give(ExportVerb.Settings settings, TravelFormat format, TravellingRecipe recipe)
    {
        if (recipe.Text is not { } text)
        {
            return FindingLines.Tell(recipe.Findings, settings.Json);
        }

        int given = ExportVerb.Give(settings, WrittenFile.ForOthers, text, $"recipe \"{recipe.Name}\", as {format.Title},", pen =>
        {
            pen.Text("kind", SheetExport.Kind);
            pen.Text("name", recipe.Name);
            pen.Text("standard", format.Title);
            TravelLines.Write(pen, recipe.Travels);
        });
        if (!settings.Json && given == 0)
        {
            TravelLines.Tell(recipe.Travels, Console.Error);
        }

        return given;
    }
}
