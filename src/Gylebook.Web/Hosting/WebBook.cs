using System.Net;
using Gylebook.Store;
using Gylebook.Web.Layout;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Console;

namespace Gylebook.Web.Hosting;

/// <summary>Puts a book on the web: the whole composition of the site.</summary>
public static class WebBook
{
    /// <summary>Where the site is when nobody says otherwise: this machine alone can reach it.</summary>
    public const string DefaultUrl = "http://localhost:5080";

    /// <summary>How long a phone may sleep before its page has to be made afresh.</summary>
    private static readonly TimeSpan KeptCircuit = TimeSpan.FromMinutes(15);

    /// <summary>How long open tabs may hold up the end; all that was committed is on disk already.</summary>
    private static readonly TimeSpan Farewell = TimeSpan.FromSeconds(1);

    /// <summary>The site, not yet started.</summary>
    /// <param name="book">The book it shows; the caller closes it.</param>
    /// <param name="urls">Where to listen, such as <see cref="DefaultUrl"/>.</param>
    /// <param name="clock">The time.</param>
    public static async Task<WebApplication> BuildAsync(Book book, IReadOnlyList<string> urls, TimeProvider clock)
    {
        Reader reader = await Reader.OfAsync(book);
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = "gylebook",
            // What travels with the program is found beside it, wherever it is started from.
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = "Production",
        });
        builder.WebHost.UseStaticWebAssets().UseUrls([.. urls]);
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);
        Logs(builder.Logging);
        Services(builder.Services, urls);
        builder.Services.AddSingleton(book).AddSingleton(reader).AddSingleton(clock);

        WebApplication site = builder.Build();
        Pipeline(site);
        return site;
    }

    /// <summary>Whether only this machine can reach that address.</summary>
    public static bool IsLoopback(string url) =>
        Uri.TryCreate(url, UriKind.Absolute, out Uri? address)
        && (address.Host == "localhost" || (IPAddress.TryParse(address.Host.Trim('[', ']'), out IPAddress? ip) && IPAddress.IsLoopback(ip)));

    private static void Logs(ILoggingBuilder logs)
    {
        logs.ClearProviders();
        logs.AddSimpleConsole(console => console.SingleLine = true);
        logs.Services.Configure<ConsoleLoggerOptions>(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        logs.SetMinimumLevel(LogLevel.Warning);
        // Its one warning says that pages do not outlive the program, which is as we want it.
        logs.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        // What stops the start is told once, in a line, by whoever started it.
        logs.AddFilter("Microsoft.Extensions.Hosting", LogLevel.None);
    }

    private static void Services(IServiceCollection services, IReadOnlyList<string> urls)
    {
        services.Configure<HostOptions>(host => host.ShutdownTimeout = Farewell);
        services.AddProblemDetails();
        services.AddDataProtection().UseEphemeralDataProtectionProvider();
        if (urls.All(IsLoopback))
        {
            // A page elsewhere must not reach a book on this machine through a name it made up.
            services.AddHostFiltering(hosts => hosts.AllowedHosts = ["localhost", "127.0.0.1", "[::1]"]);
        }

        services.AddRazorComponents().AddInteractiveServerComponents(circuits =>
        {
            circuits.DisconnectedCircuitRetentionPeriod = KeptCircuit;
            circuits.DetailedErrors = false;
        });
    }

    private static void Pipeline(WebApplication site)
    {
        site.UseHostFiltering();
        site.Use(SafeHeaders.Add);
        site.UseWhen(
            context => context.Request.Path.StartsWithSegments("/api"),
            api => api.UseExceptionHandler().UseStatusCodePages());
        site.UseWhen(
            context => !context.Request.Path.StartsWithSegments("/api"),
            pages => pages.UseExceptionHandler("/error", createScopeForErrors: true)
                .UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true));
        // After the two above, so that a path they rewrite finds its page.
        site.UseRouting();
        site.UseAntiforgery();
        site.MapStaticAssets();
        site.MapRazorComponents<App>().AddInteractiveServerRenderMode(circuits => circuits.ContentSecurityFrameAncestorsPolicy = null);
    }
}
