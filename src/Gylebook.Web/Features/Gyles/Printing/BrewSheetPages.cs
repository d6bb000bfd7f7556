using System.Text;
using Gylebook.Pictures;
using Gylebook.Pictures.Sheets;
using Gylebook.Web.Hosting.Entry;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Features.Gyles.Printing;

/// <summary>Gyles as brew-day sheets to print: plain pages that hold no connection.</summary>
internal static class BrewSheetPages
{
    private const string StyleName = "brew-sheet.css";

    /// <summary>Answers the addresses of <see cref="PageUrls.GyleSheet"/>, and the style sheet they share.</summary>
    public static void Map(WebApplication site)
    {
        site.MapGet("/gyles/{id:guid}/sheet", GiveAsync).RequireAuthorization(Who.OnBrewDay);
        site.MapGet($"/{StyleName}", () => Results.Text(BrewSheetHtml.StyleSheet, "text/css", Encoding.UTF8)).RequireAuthorization(Who.OnBrewDay);
    }

    private static async Task<IResult> GiveAsync(Guid id, HttpRequest request, GyleDesk desk, ReaderChoice usual, CancellationToken cancellation)
    {
        if (await desk.OpenAsync(id, cancellation) is not { } gyle)
        {
            return Results.NotFound();
        }

        Shown shown = new(ReaderChoice.Read(request.Cookies[ReaderChoice.Cookie], usual).Units);
        request.HttpContext.Response.Headers.CacheControl = "no-store";
        return Results.Text(BrewSheetHtml.Page(PrintedGyle.Of(gyle, shown), $"../../{StyleName}", "../../gylebook.svg", $"../{id}"), "text/html", Encoding.UTF8);
    }
}
