using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Terminal;

namespace Gylebook.Verbs;

/// <summary>The recipe that export was told to take out: a file, or one of the book, on the kit that was named.</summary>
internal static class NamedRecipe
{
    /// <summary>Whether a name is that of a file of ours that is there, and none in the book.</summary>
    public static bool IsFile(string name) => name.EndsWith(".json", StringComparison.OrdinalIgnoreCase) && File.Exists(name);

    /// <summary>Opens it and gives it on; what cannot be opened is told.</summary>
    /// <param name="settings">What was asked for.</param>
    /// <param name="ofFile">Gives a recipe of a file.</param>
    /// <param name="ofBook">Gives a recipe of the book, on the kit that was named; null for the one in use.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>The exit code.</returns>
    public static async Task<int> GiveAsync(
        ExportVerb.Settings settings, Func<OpenedFiles, Recipe, Kit, int> ofFile, Func<Book, KeptFile, OpenedFiles?, Task<int>> ofBook, CancellationToken cancellation)
    {
        if (IsFile(settings.Name))
        {
            OpenedFiles files = OpenedFiles.Open(settings.Name, settings.Kit);
            return files.Recipe is { } recipe && files.Kit is { } kit ? ofFile(files, recipe, kit) : FindingLines.Tell(files.Findings, settings.Json);
        }

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
        return found is null ? refused : await ofBook(book, found, kits);
    }
}
