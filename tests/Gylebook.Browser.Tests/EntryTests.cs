using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>A phone and a book that asks for its password: coming in, a helper at work, and a password that changes on brew day.</summary>
public sealed class EntryTests(ChromiumFixture chromium)
{
    private const string Owners = "lantern oil and rain";
    private const string Helpers = "stir it twice please";

    [Fact]
    public async Task The_owner_comes_in_with_the_code_and_lets_a_helper_in_who_only_brews()
    {
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync(options: ["--lan"]);
        IPage owner = await ComeInFirstAsync(gylebook, "/recipes");
        string brew = await StartAsync(owner);
        await owner.OpenAsync("/settings");
        await owner.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Passwords" }).ClickAsync();
        await Assertions.Expect(owner.GetByLabel("Your own password")).ToBeVisibleAsync();
        await owner.HasNoBarrierAsync("passwords");
        await owner.GetByLabel("Your own password").FillAsync(Owners);
        await owner.GetByLabel("The helper's password").FillAsync(Helpers);
        await owner.Locator("form[aria-labelledby=helper] button").First.ClickAsync();
        await Assertions.Expect(owner.GetByRole(AriaRole.Alert)).ToHaveTextAsync("The helper's password is set.");
        await owner.PictureAsync("passwords");

        IPage helper = await chromium.TabAsync(gylebook.Url, 360, 740, touch: true);
        await ComeInAsync(helper, "/", Helpers);
        await helper.WaitForURLAsync("**/gyles");
        await helper.LiveAsync();
        await helper.Locator($"a[href='{brew[1..brew.LastIndexOf('/')]}']").ClickAsync();
        await helper.WaitForURLAsync("**/gyles/*-*");

        // Within the open page, with no question to the server's gate.
        await helper.Locator("a[href^='recipes/']").First.ClickAsync();
        await Assertions.Expect(helper.GetByRole(AriaRole.Alert).First).ToContainTextAsync("This belongs to the owner of the book.");
        Assert.Equal(0, await helper.Locator("main :is(input, select, textarea, button)").CountAsync());
        await helper.HasNoBarrierAsync("a helper stopped");
        await helper.EvaluateAsync("() => Blazor.navigateTo('kits')");
        await Assertions.Expect(helper.GetByRole(AriaRole.Heading)).ToHaveTextAsync("Not for a helper");

        await helper.GotoAsync(brew);
        BrewTab tab = new(helper);
        await tab.GoAsync();
        await Assertions.Expect(tab.Kept).ToHaveTextAsync("Saved in the book");
    }

    [Fact]
    public async Task Taps_wait_for_the_password_and_are_sent_when_it_was_said()
    {
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync(options: ["--lan"]);
        IPage phone = await ComeInFirstAsync(gylebook, "/recipes");
        string brew = await StartAsync(phone);
        await phone.GotoAsync(brew);
        BrewTab tab = new(phone);
        await Assertions.Expect(tab.Kept).ToHaveTextAsync("Saved in the book");

        await phone.Context.ClearCookiesAsync();
        await tab.GoAsync();
        await Assertions.Expect(tab.Kept).ToHaveTextAsync("Waiting for the password (1)");
        await phone.PictureAsync("brew-waits-for-password");
        await phone.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Say it" }).ClickAsync();
        await phone.GetByLabel("Password").FillAsync(Owners);
        await phone.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Come in" }).ClickAsync();

        await phone.WaitForURLAsync("**/brew");
        await Assertions.Expect(tab.Kept).ToHaveTextAsync("Saved in the book");
    }

    [Fact]
    public async Task Over_https_pages_are_alive_and_brew_day_is_secure()
    {
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync(at: $"https://127.0.0.1:{RunningGylebook.FreePort()}", options: ["--lan"]);
        IPage page = await ComeInFirstAsync(gylebook, "/recipes");
        await page.GotoAsync(await StartAsync(page));

        await Assertions.Expect(new BrewTab(page).Kept).ToHaveTextAsync("Saved in the book");
        await Assertions.Expect(page.Locator("[data-insecure]")).ToBeHiddenAsync();
        BrowserContextCookiesResult cookie = Assert.Single(await page.Context.CookiesAsync(), one => one.Name.Contains("entry", StringComparison.Ordinal));
        Assert.True(cookie is { Secure: true, HttpOnly: true, SameSite: SameSiteAttribute.Lax });

        // As the guide says: accepting a certificate is not trusting it, and then brew day does not open without a network.
        Assert.Contains("SSL certificate error", await page.EvaluateAsync<string>(
            "() => navigator.serviceWorker.register('brew-worker.js', { scope: '/gyles/' }).then(() => '', refused => refused.message)"), StringComparison.Ordinal);
    }

    private async Task<IPage> ComeInFirstAsync(RunningGylebook gylebook, string path) =>
        await ComeInFirstAsync(gylebook, await chromium.TabAsync(gylebook.Url), path);

    /// <summary>Comes in with the code that the terminal prints, and is on that page then.</summary>
    internal static async Task<IPage> ComeInFirstAsync(RunningGylebook gylebook, IPage page, string path)
    {
        string line;
        do
        {
            line = await gylebook.NextLineAsync();
        }
        while (!line.Contains("with this code: ", StringComparison.Ordinal));
        await page.GotoAsync(path);
        await page.HasNoBarrierAsync("the first password");
        await page.PictureAsync("first-password");
        await page.GetByLabel("Code from the terminal").FillAsync(line[(line.LastIndexOf(' ') + 1)..]);
        await ComeInAsync(page, null, Owners);
        await page.WaitForURLAsync("**" + path);
        return page;
    }

    private static async Task ComeInAsync(IPage page, string? path, string password)
    {
        if (path is not null)
        {
            await page.GotoAsync(path);
            await page.HasNoBarrierAsync("the password");
        }

        await page.Locator("#password").FillAsync(password);
        await page.Locator("button.big").ClickAsync();
    }

    /// <summary>Starts a gyle, and gives back where its brew day is.</summary>
    private static async Task<string> StartAsync(IPage owner)
    {
        BrewTab brew = await BrewTab.StartAsync(owner, "Plain Bitter");
        return new Uri(brew.Page.Url).PathAndQuery;
    }
}
