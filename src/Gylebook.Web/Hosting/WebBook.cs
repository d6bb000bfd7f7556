using Gylebook.Store;
using Gylebook.Web.Features.Devices;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Gylebook.Web.Features.Gyles.Glass;
using Gylebook.Web.Features.Gyles.Packaging;
using Gylebook.Web.Features.Gyles.Calendars;
using Gylebook.Web.Features.Gyles.Printing;
using Gylebook.Web.Features.Publishing;
using Gylebook.Web.Features.Recipes.Printing;
using Gylebook.Web.Features.Recipes.Travelling;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Hosting.Entry;
using Gylebook.Web.Layout;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
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

    /// <summary>Where it is when it is opened to the local network: plain,</summary>
    public const string LanUrl = "http://*:5080";

    /// <summary>and with a certificate.</summary>
    public const string SecureLanUrl = "https://*:5443";

    /// <summary>How long a phone may sleep before its page has to be made afresh.</summary>
    private static readonly TimeSpan KeptCircuit = TimeSpan.FromMinutes(15);

    /// <summary>How long open tabs may hold up the end; all that was committed is on disk already.</summary>
    private static readonly TimeSpan Farewell = TimeSpan.FromSeconds(1);

    /// <summary>The site, not yet started.</summary>
    /// <param name="book">The book it shows; the caller closes it.</param>
    /// <param name="door">Where it is opened, and for whom.</param>
    /// <param name="clock">The time.</param>
    public static async Task<WebApplication> BuildAsync(Book book, SiteDoor door, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(door);
        // Chosen when the book had one reader; since then it is what a browser begins with.
        var usual = ReaderChoice.Of(await book.Settings.ListAsync());
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = "gylebook",
            // What travels with the program is found beside it, wherever it is started from.
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = "Production",
        });
        builder.WebHost.UseUrls([.. door.Urls]);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.ConfigureHttpsDefaults(https => (https.ServerCertificate, https.ServerCertificateChain) = (door.Certificate?.Leaf, door.Certificate?.Chain));
        });
        Logs(builder.Logging);
        Services(builder.Services);
        EntryGate.Services(builder.Services, door, book);
        builder.Services.AddSingleton(book).AddSingleton(usual).AddScoped<Reader>().AddSingleton(clock);

        WebApplication site = builder.Build();
        Pipeline(site, door);
        return site;
    }

    /// <summary>Whether only this machine can reach a site that has started: wherever it listens by now, and whoever said so.</summary>
    public static bool IsForThisMachineOnly(WebApplication site) => site.Urls.All(ListenAddress.IsLoopback);

    private static void Logs(ILoggingBuilder logs)
    {
        logs.ClearProviders();
        // Without colours, which are escapes: whoever writes to the terminal lets none through.
        logs.AddSimpleConsole(console => (console.SingleLine, console.ColorBehavior) = (true, LoggerColorBehavior.Disabled));
        logs.Services.Configure<ConsoleLoggerOptions>(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        logs.SetMinimumLevel(LogLevel.Warning);
        // Its warnings say that pages do not outlive the program, or that keys lie as they are: where, the guide says.
        logs.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        // What stops the start is told once, in a line, by whoever started it.
        logs.AddFilter("Microsoft.Extensions.Hosting", LogLevel.None);
    }

    private static void Services(IServiceCollection services)
    {
        services.Configure<HostOptions>(host => host.ShutdownTimeout = Farewell);
        services.AddProblemDetails();
        services.AddSingleton(BandDraws.Usual);
        services.AddScoped<GyleDesk>();
        services.AddScoped<CellarDesk>();
        services.AddScoped<HarvestDesk>();
        services.AddScoped<PackageDesk>();
        services.AddScoped<GlassDesk>();
        IntakeApi.Services(services);
        PublicPages.Services(services);
        services.AddHostedService<SlowSweep>();
        services.AddRazorComponents().AddInteractiveServerComponents(circuits =>
        {
            circuits.DisconnectedCircuitRetentionPeriod = KeptCircuit;
            circuits.DetailedErrors = false;
        });
    }

    private static void Pipeline(WebApplication site, SiteDoor door)
    {
        site.Use(SafeHeaders.Add);
        // Asked for each request: the addresses are known for certain only when the site has started.
        site.Use((context, next) => Doorstep.Ask(context, door, IsForThisMachineOnly(site), next));
        site.UseWhen(
            context => IsForPrograms(context.Request),
            api => api.UseExceptionHandler().UseStatusCodePages());
        site.UseWhen(
            context => !IsForPrograms(context.Request),
            pages => pages.UseExceptionHandler("/error", createScopeForErrors: true)
                .UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true));
        // After the two above, so that a path they rewrite finds its page.
        site.UseRouting();
        EntryGate.Use(site, door);
        site.UseAntiforgery();
        site.MapStaticAssets().OpenTo(EntryPaths.Exempt.StaticFiles);
        EntryPages.Map(site);
        FileDownloads.Map(site);
        SheetPages.Map(site);
        TravelDownloads.Map(site);
        BrewApi.Map(site);
        IntakeApi.Map(site);
        BrewSheetPages.Map(site);
        LabelPages.Map(site);
        ShoppingPages.Map(site);
        CalendarDownloads.Map(site);
        PublicPages.Map(site);
        site.MapRazorComponents<App>().AddInteractiveServerRenderMode(circuits => circuits.ContentSecurityFrameAncestorsPolicy = null)
            .Add(Circuits);
    }

    /// <summary>Whether a program asks, which wants a fault as JSON and no page.</summary>
    private static bool IsForPrograms(HttpRequest request) => request.Path.StartsWithSegments("/api") || request.Path.StartsWithSegments(IntakeApi.Path);

    /// <summary>A page that is open holds a connection, a helper's too: which pages those are, the pages themselves say.</summary>
    private static void Circuits(EndpointBuilder built)
    {
        if (built is RouteEndpointBuilder { RoutePattern.RawText: { } path } && path.TrimStart('/').StartsWith('_'))
        {
            built.Metadata.Add(new AuthorizeAttribute(Who.OnBrewDay));
        }
    }
}
