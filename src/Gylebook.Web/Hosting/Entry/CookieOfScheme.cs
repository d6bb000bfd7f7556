using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>A cookie for http and another for https: browsers share cookies between ports, and one that is marked secure may not be written over by http.</summary>
internal sealed class CookieOfScheme : ICookieManager
{
    private readonly ChunkingCookieManager _cookies = new();

    public string? GetRequestCookie(HttpContext context, string key) => _cookies.GetRequestCookie(context, NameOf(context, key));

    public void AppendResponseCookie(HttpContext context, string key, string? value, CookieOptions options) =>
        _cookies.AppendResponseCookie(context, NameOf(context, key), value, options);

    public void DeleteCookie(HttpContext context, string key, CookieOptions options) => _cookies.DeleteCookie(context, NameOf(context, key), options);

    /// <summary>The prefix makes browsers refuse one that is not secure, or for more than this very host (RFC 6265bis).</summary>
    private static string NameOf(HttpContext context, string key) => context.Request.IsHttps ? "__Host-" + key : key;
}
