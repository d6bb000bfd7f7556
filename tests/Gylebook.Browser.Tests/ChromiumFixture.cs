using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>One Chromium and one Gylebook with the demo in it, for all tests that do not change the book.</summary>
public sealed class ChromiumFixture : IAsyncLifetime
{
    private static readonly string[] Flags =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    /// <summary>How long a page may take to come to what is expected of it, in milliseconds: on a busy machine a first page takes seconds, and so do the pauses between the tries of one that lost its connection.</summary>
    private const int Patience = 20_000;

    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private OpenedBook? _shared;

    /// <summary>Where the shared Gylebook is.</summary>
    public string Url => _shared!.Url;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        Assertions.SetDefaultExpectTimeout(Patience);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Chromium(), Headless = true, Args = Flags });
        _shared = await OpenedBook.OpenAsync();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_shared is not null)
        {
            await _shared.DisposeAsync();
        }

        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
    }

    /// <summary>A tab in a browser profile of its own.</summary>
    public async Task<IPage> TabAsync(string url, int width = 1280, int height = 900, ColorScheme scheme = ColorScheme.Light, bool touch = false, bool scripts = true)
    {
        IBrowserContext context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = url,
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = scheme,
            HasTouch = touch,
            JavaScriptEnabled = scripts,
            ReducedMotion = ReducedMotion.Reduce,
            // A certificate of Gylebook's own, which somebody has looked at and accepted.
            IgnoreHTTPSErrors = url.StartsWith("https://", StringComparison.Ordinal),
        });
        context.SetDefaultTimeout(Patience);
        OpenTabs.Add(url, context);
        return await context.NewPageAsync();
    }

    private static string Chromium() =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Select(folder => Path.Combine(folder, "chromium"))
            .FirstOrDefault(File.Exists)
        ?? throw new FileNotFoundException("No chromium on the path; on Debian: apt-get install chromium.");
}
