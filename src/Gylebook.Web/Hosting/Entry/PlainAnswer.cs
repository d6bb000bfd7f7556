using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>A refusal: a status, and a sentence that says why.</summary>
internal static class PlainAnswer
{
    public static Task WriteAsync(HttpContext context, int status, string why)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.WriteAsync(why);
    }
}
