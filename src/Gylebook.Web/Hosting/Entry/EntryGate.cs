using Gylebook.Store;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>Lets nobody past without the password, where one is asked for; who sits at a machine that nobody else can reach is its owner.</summary>
internal static class EntryGate
{
    /// <summary>How long a browser that comes by now and then need not ask again.</summary>
    private static readonly TimeSpan Stay = TimeSpan.FromDays(30);

    /// <summary>What the gate needs.</summary>
    public static void Services(IServiceCollection services, SiteDoor door, Book book)
    {
        services.AddSingleton(door).AddSingleton<Passwords>().AddSingleton<FirstUse>();
        IDataProtectionBuilder keys = services.AddDataProtection().SetApplicationName("gylebook");
        if (door.IsForOthers)
        {
            keys.PersistKeysToFileSystem(KeyFolder(book.File));
        }
        else
        {
            keys.UseEphemeralDataProtectionProvider();
        }

        // Not marked secure: a browser would then keep the page of plain http from having one of its own.
        services.Configure<AntiforgeryOptions>(form => (form.Cookie.Name, form.Cookie.SameSite) = ("gylebook-form", SameSiteMode.Strict));
        services.AddAuthentication(CookieAuthenticationDefaults.AuthenticationScheme).AddCookie(Cookie);
        services.AddAuthorizationBuilder()
            .AddPolicy(Who.OnBrewDay, policy => policy.RequireRole(Who.Owner, Who.Helper))
            .SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireRole(Who.Owner).Build());
        services.AddSingleton<IAuthorizationMiddlewareResultHandler, EntryAnswers>();
        services.AddCascadingAuthenticationState();
        services.AddScoped<AuthenticationStateProvider, EntryInCircuit>();
        EntryTries.Limit(services);
    }

    /// <summary>Asks whoever comes. Stands after routing, which knows what is exempt, and before all that answers.</summary>
    /// <param name="site">The site.</param>
    /// <param name="door">How the book was opened.</param>
    public static void Use(WebApplication site, SiteDoor door)
    {
        site.UseAuthentication();
        site.Use((context, next) =>
        {
            // By mode, never by the address somebody seems to come from.
            if (!door.Asks(context.Request, WebBook.IsForThisMachineOnly(site)))
            {
                context.User = Who.AtThisMachine();
            }

            return next(context);
        });
        site.UseRateLimiter();
        site.UseAuthorization();
    }

    private static void Cookie(CookieAuthenticationOptions cookie)
    {
        cookie.Cookie.Name = "gylebook-entry";
        cookie.Cookie.HttpOnly = true;
        cookie.Cookie.SameSite = SameSiteMode.Lax;
        cookie.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        cookie.Cookie.IsEssential = true;
        cookie.CookieManager = new CookieOfScheme();
        cookie.ExpireTimeSpan = Stay;
        cookie.SlidingExpiration = true;
        cookie.Events.OnValidatePrincipal = async context =>
        {
            // The password may have been changed since.
            if (!await context.HttpContext.RequestServices.GetRequiredService<Passwords>().MayStayAsync(context.Principal!, context.HttpContext.RequestAborted))
            {
                context.RejectPrincipal();
            }
        };
    }

    /// <summary>Where the keys lie that seal cookies: beside the book, for its owner alone.</summary>
    private static DirectoryInfo KeyFolder(string book)
    {
        string folder = book + ".keys";
        return OperatingSystem.IsWindows() ? Directory.CreateDirectory(folder)
            : Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }
}
