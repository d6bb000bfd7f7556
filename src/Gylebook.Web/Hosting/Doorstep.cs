using Gylebook.Web.Hosting.Entry;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Hosting;

/// <summary>Turns away what no page of ours would send, and lets a question for the head alone in.</summary>
internal static class Doorstep
{
    private const string Circuits = "/_blazor";

    /// <summary>Answers itself, or lets the request in.</summary>
    /// <param name="context">The request.</param>
    /// <param name="door">How the book was opened.</param>
    /// <param name="isForThisMachineOnly">Whether the site listens on this machine alone.</param>
    /// <param name="next">The site.</param>
    public static Task Ask(HttpContext context, SiteDoor door, bool isForThisMachineOnly, RequestDelegate next)
    {
        HttpRequest request = context.Request;
        if (!request.Host.HasValue)
        {
            // HTTP/1.0 may leave it out; no link could be written on such a page.
            return PlainAnswer.WriteAsync(context, StatusCodes.Status400BadRequest, "Say which host you want: the request has no Host header.");
        }

        if (!door.Knows(request, isForThisMachineOnly))
        {
            return PlainAnswer.WriteAsync(context, StatusCodes.Status400BadRequest, isForThisMachineOnly && !door.IsForOthers
                ? "This book is open on this machine only, under the name localhost."
                : "This book does not go by that name. Start it with --host and the name, if it should.");
        }

        if ((request.Path.StartsWithSegments(Circuits) || Changes(request)) && !IsOurs(request))
        {
            return PlainAnswer.WriteAsync(context, StatusCodes.Status403Forbidden, "This page belongs to another site than the book.");
        }

        return HttpMethods.IsHead(request.Method) ? HeadAsync(context, next) : next(context);
    }

    /// <summary>Whether it would change something: another site's page must not.</summary>
    private static bool Changes(HttpRequest request) => !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method);

    /// <summary>Whether the page that asks came from here. Browsers tell no lies about it, and other programs need not say.</summary>
    /// <remarks>Scheme aside: a proxy may put https in front, as long as it passes the Host header on.</remarks>
    private static bool IsOurs(HttpRequest request)
    {
        string origin = request.Headers.Origin.ToString();
        return origin.Length == 0
            || (Uri.TryCreate(origin, UriKind.Absolute, out Uri? from)
                && from.Authority.Equals(Plain(request.Host, from), StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The host as a <see cref="Uri"/> writes it: without the port that its scheme implies.</summary>
    private static string Plain(HostString host, Uri like) =>
        Uri.TryCreate($"{like.Scheme}://{host.Value}", UriKind.Absolute, out Uri? asked) ? asked.Authority : host.Value!;

    /// <summary>Pages know GET only. The server itself sends no body where the head alone was wanted.</summary>
    private static async Task HeadAsync(HttpContext context, RequestDelegate next)
    {
        context.Request.Method = HttpMethods.Get;
        try
        {
            await next(context);
        }
        finally
        {
            context.Request.Method = HttpMethods.Head;
        }
    }
}
