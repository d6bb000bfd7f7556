using System.Text;
using Gylebook.Pictures;
using Gylebook.Pictures.Sheets;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Features.Gyles.Printing;

/// <summary>What a brew wants as a list to print: a plain page that holds no connection.</summary>
internal static class ShoppingPages
{
    private const string StyleName = "shopping-sheet.css";

    /// <summary>Answers the addresses of <see cref="PageUrls.Shopping"/>, and the style sheet they share.</summary>
    public static void Map(WebApplication site)
    {
        site.MapGet("/recipes/{id:guid}/shopping", GiveAsync);
        site.MapGet($"/{StyleName}", () => Results.Text(ShoppingSheetHtml.StyleSheet, "text/css", Encoding.UTF8));
    }

    private static async Task<IResult> GiveAsync(Guid id, HttpRequest request, GyleDesk desk, ReaderChoice usual, CancellationToken cancellation)
    {
        if (await desk.PrepareAsync(new GyleOrder(id), cancellation) is not { Recipe: { } recipe } gyle)
        {
            return Results.NotFound();
        }

        Shown shown = new(ReaderChoice.Read(request.Cookies[ReaderChoice.Cookie], usual).Units);
        ShoppingSheet sheet = ShoppingWords.Sheet(recipe.Name, gyle.Shopping(await desk.UsedOfLotsAsync(cancellation)), shown);
        request.HttpContext.Response.Headers.CacheControl = "no-store";
        return Results.Text(ShoppingSheetHtml.Page(sheet, $"../../{StyleName}", "../../gylebook.svg", "start"), "text/html", Encoding.UTF8);
    }
}
