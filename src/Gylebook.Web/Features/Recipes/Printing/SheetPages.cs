using System.Text;
using Gylebook.Pictures.Sheets;
using Gylebook.Store;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Features.Recipes.Printing;

/// <summary>Recipes as sheets to print: plain pages that hold no connection.</summary>
internal static class SheetPages
{
    private const string StyleName = "recipe-sheet.css";

    /// <summary>Answers the addresses of <see cref="PageUrls.RecipeSheet"/>, and the style sheet they share.</summary>
    public static void Map(WebApplication site)
    {
        site.MapGet("/recipes/{id:guid}/sheet", GiveAsync);
        site.MapGet($"/{StyleName}", () => Results.Text(RecipeSheetHtml.StyleSheet, "text/css", Encoding.UTF8));
    }

    private static async Task<IResult> GiveAsync(
        Guid id, string? bitterness, HttpRequest request, Book book, ReaderChoice usual, ILogger<RecipePage> log, CancellationToken cancellation)
    {
        if (await book.Files.FindAsync("recipe", id, cancellation) is not { } file)
        {
            return Results.NotFound();
        }

        if (file.IsDamaged)
        {
            return Results.Text($"{file} is damaged: its text is not what was written. Its page shows the sound texts there are.", "text/plain", Encoding.UTF8, StatusCodes.Status409Conflict);
        }

        ReaderChoice reader = ReaderChoice.Read(request.Cookies[ReaderChoice.Cookie], usual);
        RecipeSheet sheet = await PrintedRecipe.OfAsync(book, file, null, reader.Units, RecipeQuery.Read(bitterness, null));
        new ReckoningDoor(log).Note(sheet.Failure, () => file.Text);
        request.HttpContext.Response.Headers.CacheControl = "no-store";
        return Results.Text(RecipeSheetHtml.Page(sheet, $"../../{StyleName}", "../../gylebook.svg", $"../{id}"), "text/html", Encoding.UTF8);
    }
}
