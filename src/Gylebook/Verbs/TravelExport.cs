using Gylebook.Terminal;
using Gylebook.Web.Features.Recipes.Travelling;

namespace Gylebook.Verbs;

/// <summary>gylebook export RECIPE --as beerjson|beerxml|csv: a recipe of the book, or of a file, for other programs.</summary>
internal static class TravelExport
{
    /// <summary>Writes it, and says on the side what does not travel as it stands.</summary>
    public static Task<int> RunAsync(ExportVerb.Settings settings, TravelFormat format, CancellationToken cancellation) => NamedRecipe.GiveAsync(
        settings,
        (files, recipe, kit) => Give(settings, format, TravellingRecipe.Of(recipe, kit, files.Larder, format)),
        async (book, found, kits) => Give(settings, format, await TravellingRecipe.OfAsync(book, found, format, kits?.Kit, cancellation)),
        cancellation);

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
