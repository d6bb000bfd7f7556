using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Text.Json;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>Brew day on a phone: from the recipe to the pitch, with the way to the book gone, and with a second phone.</summary>
public sealed class BrewDayTests(ChromiumFixture chromium)
{
    private const int PhoneWidth = 360, PhoneHeight = 740;

    [Fact]
    public async Task From_the_recipe_to_the_pitch_with_readings_and_a_mend()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        BrewTab brew = await BrewTab.StartAsync(await PhoneAsync(gylebook.Url), "Plain Bitter");
        await brew.Page.HasNoBarrierAsync("brew day");
        await brew.ToAsync("Strike");
        await brew.Page.GetByRole(AriaRole.Checkbox, new PageGetByRoleOptions { Name = "pale ale malt" }).CheckAsync();
        await brew.ToAsync("Copper-up");
        await brew.Page.HasNoBarrierAsync("brew day");
        await brew.ReadAsync("volume", "26.2", "66");
        await brew.ReadAsync("gravity", "10.2");
        await Assertions.Expect(brew.Forecast).ToContainTextAsync("it was taken as °P");
        await brew.Page.Locator("details.more > summary").ClickAsync();
        await brew.Page.Locator("[data-log] li").Filter(new LocatorFilterOptions { HasText = "10.2" }).GetByRole(AriaRole.Button).ClickAsync();
        await brew.ReadAsync("gravity", "1.0345", isChecked: true);
        await brew.Page.PictureAsync("brew-day-read");
        ILocator mend = brew.Page.Locator("[data-mend]").First;
        string words = (await mend.GetAttributeAsync("data-mend"))!;
        await mend.ClickAsync();
        await brew.GoAsync();
        await Assertions.Expect(brew.Say).ToHaveTextAsync(words);
        await brew.GoAsync();
        await brew.ToAsync("Pitch");
        await brew.Page.GetByRole(AriaRole.Checkbox, new PageGetByRoleOptions { Name = "English ale" }).CheckAsync();
        await brew.ToAsync("All done for today");
        await brew.SentAsync();
        Assert.Contains(await brew.LogAsync(gylebook.Url), entry => entry.Kind == "added" && entry.What == words);
    }

    [Fact]
    public async Task What_a_thumb_has_to_meet_is_large_and_from_two_metres_it_can_be_read()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        BrewTab phone = await BrewTab.StartAsync(await PhoneAsync(gylebook.Url), "Plain Bitter");
        await phone.ToAsync("Copper-up");
        string[] small = await phone.Page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('.brew :is(button, summary, input:not([type=checkbox]), select, textarea, label:has([type=checkbox]), a)')]
                .filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 55.5).map(e => e.outerHTML.slice(0, 90) + e.getBoundingClientRect().height)
            """);
        Assert.Empty(small);
        Assert.Equal(PhoneWidth, await phone.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));

        IPage tablet = await chromium.TabAsync(gylebook.Url, 1280, 800, touch: true);
        await tablet.GotoAsync(new Uri(phone.Page.Url).PathAndQuery);
        BrewTab wide = new(tablet);
        await wide.ToAsync("Copper-up");
        await tablet.PictureAsync("brew-day-tablet");
        Assert.True(await SizeAsync(".say") >= 28);
        Assert.True(await SizeAsync(".aim b") >= 56);

        Task<double> SizeAsync(string what) => tablet.EvaluateAsync<double>($"() => parseFloat(getComputedStyle(document.querySelector('section:not([hidden]) {what}')).fontSize)");
    }

    [Fact]
    public async Task Two_phones_see_each_tap_within_a_second()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        BrewTab one = await BrewTab.StartAsync(await PhoneAsync(gylebook.Url), "Plain Bitter");
        IPage page = await PhoneAsync(gylebook.Url);
        await page.GotoAsync(new Uri(one.Page.Url).PathAndQuery);
        BrewTab other = new(page);
        await other.ToAsync("Strike");
        await one.ToAsync("Strike");
        await one.Page.GetByRole(AriaRole.Checkbox, new PageGetByRoleOptions { Name = "pale ale malt" }).CheckAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Checkbox, new PageGetByRoleOptions { Name = "pale ale malt" })).ToBeCheckedAsync();
        await page.GetByRole(AriaRole.Checkbox, new PageGetByRoleOptions { Name = "caramel malt" }).CheckAsync();
        await Assertions.Expect(one.Page.GetByRole(AriaRole.Checkbox, new PageGetByRoleOptions { Name = "caramel malt" })).ToBeCheckedAsync();
    }

    [Fact]
    public async Task A_clock_tells_the_truth_after_an_hour_of_sleep()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await PhoneAsync(gylebook.Url);
        await page.Clock.InstallAsync();
        BrewTab brew = await BrewTab.StartAsync(page, "Plain Bitter");
        await brew.ToAsync("Rest 66 °C");
        await brew.GoAsync();
        await page.Clock.RunForAsync(1000);
        await Assertions.Expect(page.Locator("section:not([hidden]) .clock")).ToContainTextAsync("59:5");

        // Asleep: no script runs, and the clock on the wall goes on.
        await page.Clock.FastForwardAsync("01:02:07");
        await Assertions.Expect(page.Locator("[data-rung]")).ToContainTextAsync("Rest 66 °C: time is up");
        await Assertions.Expect(page.Locator("section:not([hidden]) .clock")).ToContainTextAsync("+2:0");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Heard" }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-rung]")).ToBeHiddenAsync();
    }

    /// <summary>From a tap to the book's word that it has it. Told, not judged: the times are for docs/benchmarks.md.</summary>
    [Fact]
    public async Task Taps_are_acknowledged()
    {
        const int Taps = 40;
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync();
        BrewTab brew = await BrewTab.StartAsync(await PhoneAsync(gylebook.Url), "Plain Bitter");
        await brew.NoteAsync("warm");
        await brew.SentAsync();
        double[] times = await brew.Page.EvaluateAsync<double[]>(
            """
            async taps => {
              const kept = document.querySelector('[data-kept]'), note = document.querySelector('#note'), times = [];
              for (let i = 0; i < taps; i++) {
                const from = performance.now();
                note.value = `tap ${i}`;
                document.querySelector('[data-note]').click();
                while (!kept.textContent.startsWith('Saved')) { await new Promise(next => setTimeout(next, 1)); }
                times.push(performance.now() - from);
              }
              return times.sort((a, b) => a - b);
            }
            """, Taps);
        Assert.Equal(Taps + 1, (await brew.LogAsync(gylebook.Url)).Count);
        TestContext.Current.TestOutputHelper!.WriteLine($"{Taps} taps: p50 {times[Taps / 2]:0.0} ms, p95 {times[Taps * 95 / 100]:0.0} ms, most {times[^1]:0.0} ms");
    }

    /// <summary>The way is cut twenty times, the page is loaded again, and the program killed: each tap is in the log once, in its order.</summary>
    [Fact]
    public async Task No_tap_is_lost_or_kept_twice_however_often_the_way_is_gone()
    {
        RunningGylebook gylebook = await RunningGylebook.StartAsync();
        await using Wire wire = new(gylebook.Url);
        BrewTab brew = await BrewTab.StartAsync(await PhoneAsync(wire.Url), "Plain Bitter");
        await brew.OpensWithoutNetworkAsync();
        List<string> tapped = [];
        for (int i = 0; i < 20; i++)
        {
            wire.Cut();
            for (int tap = 0; tap < 2; tap++)
            {
                tapped.Add($"note {i} {tap}");
                await brew.NoteAsync(tapped[^1]);
            }

            if (i % 7 == 3)
            {
                await brew.Page.ReloadAsync();
            }

            wire.Mend();
            if (i % 5 == 4)
            {
                await brew.SentAsync();
            }
        }

        await brew.SentAsync();
        await brew.NoteAsync("before the end");
        tapped.Add("before the end");
        await brew.SentAsync();
        await using RunningGylebook again = await gylebook.KilledAndStartedAsync();
        tapped.Add("after the end");
        await brew.NoteAsync("after the end");
        await brew.SentAsync();
        Assert.Equal(tapped, (await brew.LogAsync(again.Url)).Where(entry => entry.Kind == "said").Select(entry => entry.What));
    }

    /// <summary>Over plain http from another machine there is no worker: the page opens again once the way is open, with all that was tapped.</summary>
    [Fact]
    public async Task Over_plain_http_what_was_tapped_outlives_a_reload_too()
    {
        IPAddress mine = NetworkInterface.GetAllNetworkInterfaces().SelectMany(card => card.GetIPProperties().UnicastAddresses)
            .Select(address => address.Address).First(address => address.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(address));
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync(at: $"http://{mine}:{RunningGylebook.FreePort()}");
        IPage page = await EntryTests.ComeInFirstAsync(gylebook, await PhoneAsync(gylebook.Url), "/recipes");
        BrewTab brew = await BrewTab.StartAsync(page, "Plain Bitter");
        Assert.False(await page.EvaluateAsync<bool>("() => isSecureContext"));
        await Assertions.Expect(page.Locator("[data-insecure]")).ToBeVisibleAsync();
        await page.Context.SetOfflineAsync(true);
        await brew.NoteAsync("in the dark");
        await Assertions.Expect(brew.Kept).ToContainTextAsync("Waiting to be sent (1)");
        await page.Context.SetOfflineAsync(false);
        await page.ReloadAsync();
        await brew.SentAsync();
        Assert.Equal("in the dark", Assert.Single(await brew.LogAsync(gylebook.Url), entry => entry.Kind == "said").What);
    }

    [Fact]
    public async Task Another_site_may_not_write_into_the_log()
    {
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        BrewTab brew = await BrewTab.StartAsync(await PhoneAsync(gylebook.Url), "Plain Bitter");
        using HttpClient client = new() { BaseAddress = new Uri(gylebook.Url) };
        string entry = $$"""[{ "id": "{{Guid.NewGuid()}}", "at": "2026-11-30T10:00:00Z", "kind": "said", "what": "from afar" }]""";
        using HttpRequestMessage request = new(HttpMethod.Post, $"/api/gyles/{brew.Gyle}/log") { Content = new StringContent(entry, null, "application/json") };
        request.Headers.Add("Origin", "http://elsewhere.example");
        using HttpResponseMessage answer = await client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Empty(await brew.LogAsync(gylebook.Url));
    }

    private Task<IPage> PhoneAsync(string url) => chromium.TabAsync(url, PhoneWidth, PhoneHeight, touch: true);
}

/// <summary>Brew day in a tab, by what stands on it.</summary>
/// <param name="page">The page.</param>
internal sealed class BrewTab(IPage page)
{
    public IPage Page => page;

    public string Gyle => new Uri(page.Url).Segments[^2].TrimEnd('/');

    /// <summary>Starts a gyle of a recipe of the demo, from the list of recipes.</summary>
    public static async Task<BrewTab> StartAsync(IPage page, string recipe)
    {
        await page.OpenAsync("/recipes");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = recipe, Exact = true }).ClickAsync();
        await page.WaitForURLAsync("**/recipes/*-*");
        await page.LiveAsync();
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Brew this" }).ClickAsync();
        ILocator start = page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Start the gyle" });
        await start.ClickAsync();
        await page.WaitForURLAsync("**/brew");
        await Assertions.Expect(page.Locator("[data-kept]")).ToHaveTextAsync("Saved in the book");
        return new BrewTab(page);
    }

    public ILocator Say => page.Locator(".steps > section:not([hidden]) .say");

    public ILocator Kept => page.Locator("[data-kept]");

    public ILocator Forecast => page.Locator("[data-forecast]");

    public Task GoAsync() => page.Locator("[data-go]").ClickAsync();

    /// <summary>Taps on until that step is there.</summary>
    public async Task ToAsync(string title)
    {
        ILocator heading = page.Locator(".steps > section:not([hidden]) h1");
        for (int tap = 0; tap < 40 && await heading.InnerTextAsync() != title; tap++)
        {
            await GoAsync();
        }

        await Assertions.Expect(heading).ToHaveTextAsync(title);
    }

    public async Task ReadAsync(string what, string value, string? celsius = null, bool isChecked = false)
    {
        ILocator form = page.Locator($".steps > section:not([hidden]) form[data-what={what}]");
        await form.Locator("input[name=value]").FillAsync(value);
        if (celsius is not null)
        {
            await form.Locator("input[name=temperature]").FillAsync(celsius);
        }

        await form.Locator("input[name=checked]").SetCheckedAsync(isChecked);
        await form.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Write it in" }).ClickAsync();
        await Assertions.Expect(form.Locator(".answer")).ToHaveTextAsync("In the book.");
    }

    public async Task NoteAsync(string text)
    {
        ILocator more = page.Locator("details.more");
        if (await more.GetAttributeAsync("open") is null)
        {
            await more.Locator("summary").First.ClickAsync();
        }

        await page.Locator("#note").FillAsync(text);
        await page.Locator("[data-note]").ClickAsync();
    }

    /// <summary>Until the page and all its parts are kept for a visit without a network: before that it opens with one only.</summary>
    /// <remarks>Asked again and again: a wait for a function takes a promise, kept or not, for a yes.</remarks>
    public async Task OpensWithoutNetworkAsync()
    {
        bool isKept = false;
        for (int i = 0; i < 100 && !isKept; i++)
        {
            isKept = await page.EvaluateAsync<bool>("""
                async () => {
                  const parts = [...document.querySelectorAll('link[rel=stylesheet], script[src]')].map(part => part.href ?? part.src);
                  const kept = await Promise.all([location.pathname, ...parts].map(path => caches.match(path, { ignoreVary: true })));
                  return navigator.serviceWorker.controller !== null && kept.every(copy => copy);
                }
                """);
            await Task.Delay(isKept ? 0 : 100, TestContext.Current.CancellationToken);
        }

        Assert.True(isKept, "The page was not kept within ten seconds.");
    }

    public Task SentAsync() => Assertions.Expect(Kept).ToHaveTextAsync("Saved in the book", new LocatorAssertionsToHaveTextOptions { Timeout = 40_000 });

    public async Task<IReadOnlyList<(string Kind, string What)>> LogAsync(string url)
    {
        // With the tab's own cookies: the book may ask for a password.
        IAPIResponse answer = await page.APIRequest.GetAsync($"{url}/api/gyles/{Gyle}/log");
        using var log = JsonDocument.Parse(await answer.TextAsync());
        return [.. log.RootElement.EnumerateArray().Select(entry => (entry.GetProperty("kind").GetString()!, entry.GetProperty("what").GetString()!))];
    }
}
