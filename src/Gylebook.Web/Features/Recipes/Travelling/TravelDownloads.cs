using System.Text;
using Gylebook.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Features.Recipes.Travelling;

/// <summary>Recipes as files for other programs.</summary>
internal static class TravelDownloads
{
    /// <summary>Answers the addresses of <see cref="PageUrls.RecipeAsFile"/>.</summary>
    public static void Map(WebApplication site) => site.MapGet("/recipes/{id:guid}/others/{format}", GiveAsync);

    private static async Task<IResult> GiveAsync(Guid id, string format, HttpResponse response, Book book, CancellationToken cancellation)
    {
        if (TravelFormat.Of(format) is not { } known || await book.Files.FindAsync("recipe", id, cancellation) is not { } file)
        {
            return Results.NotFound();
        }

        if (file.IsDamaged)
        {
            return Results.Text($"{file} is damaged: its text is not what was written. Its page shows the sound texts there are.", "text/plain", Encoding.UTF8, StatusCodes.Status409Conflict);
        }

        TravellingRecipe recipe = await TravellingRecipe.OfAsync(book, file, known, cancellation: cancellation);
        response.Headers.CacheControl = "no-store";
        return recipe.Text is { } text
            ? Results.File(Encoding.UTF8.GetBytes(text), known.MediaType, $"{FreeId.From(recipe.Name, "recipe")}.{known.Ending}")
            : Results.Text($"{file} cannot be read: {string.Join("; ", recipe.Findings.Select(finding => $"{finding.Where}: {finding.Message}"))}", "text/plain", Encoding.UTF8, StatusCodes.Status409Conflict);
    }
}
