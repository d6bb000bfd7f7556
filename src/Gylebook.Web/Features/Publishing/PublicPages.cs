using System.Text;
using Gylebook.Site.Folder;
using Gylebook.Site.Leaves;
using Gylebook.Web.Hosting.Entry;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Features.Publishing;

/// <summary>Published recipes, served by this program as any web host would serve the folder: open to everybody, static, without a connection.</summary>
internal static class PublicPages
{
    /// <summary>Where they are.</summary>
    public const string Path = "/p";

    /// <summary>What such a page is allowed; by no frame, which a page cannot say of itself.</summary>
    public const string Policy = LeafHtml.Policy + "; frame-ancestors 'none'";

    /// <summary>What answers for them.</summary>
    public static void Services(IServiceCollection services) => services.AddSingleton<PublicFolder>().AddScoped<PublishDesk>();

    /// <summary>Answers the addresses of <see cref="PageUrls.Public"/>, and the folder as one file for its owner.</summary>
    public static void Map(WebApplication site)
    {
        site.MapGet($"{Path}/{{**path}}", GiveAsync).OpenTo(EntryPaths.Exempt.PublishedPages);
        site.MapGet("/published.zip", ZipAsync);
    }

    private static async Task<IResult> GiveAsync(string? path, HttpContext context, PublicFolder folder, CancellationToken cancellation)
    {
        string asked = path ?? "";
        if (context.Request.Path == Path)
        {
            return Results.Redirect($"{Path}/");
        }

        bool isFolder = asked.Length == 0 || asked.EndsWith('/');
        if (await folder.FindAsync(isFolder ? asked + "index.html" : asked, cancellation) is not { } file)
        {
            // A folder without its slash: its pictures and scripts would be sought one level too high.
            return !isFolder && await folder.FindAsync(asked + "/index.html", cancellation) is not null
                ? Results.Redirect($"{Path}/{asked}/{context.Request.QueryString}")
                : Results.Text("Nothing is given out at this address.", "text/plain", Encoding.UTF8, StatusCodes.Status404NotFound);
        }

        IHeaderDictionary headers = context.Response.Headers;
        headers.CacheControl = "no-cache";
        headers.ETag = file.Mark;
        headers.Vary = "Accept-Encoding";
        if (context.Request.Headers.IfNoneMatch == file.Mark)
        {
            return Results.StatusCode(StatusCodes.Status304NotModified);
        }

        if (file.Packed is { } packed && context.Request.Headers.AcceptEncoding.ToString().Contains("br", StringComparison.OrdinalIgnoreCase))
        {
            headers.ContentEncoding = "br";
            return Results.Bytes(packed, file.File.MediaType);
        }

        return Results.Bytes(file.File.Bytes, file.File.MediaType);
    }

    private static async Task<IResult> ZipAsync(string? address, PublicFolder folder, CancellationToken cancellation)
    {
        Uri? whole = SiteFolder.AddressOf(address);
        return whole is not null || string.IsNullOrWhiteSpace(address)
            ? Results.File(await folder.ZipAsync(whole, cancellation), "application/zip", "published.zip")
            : Results.Text($"{address}: {SiteFolder.AddressWanted}.", "text/plain", Encoding.UTF8, StatusCodes.Status400BadRequest);
    }
}
