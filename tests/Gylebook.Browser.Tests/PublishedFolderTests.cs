using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Gylebook.Tests.Shared;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>A published folder on a host that knows nothing: whole without a script, and weighed anew with one, for which nobody else is asked.</summary>
public sealed class PublishedFolderTests(ChromiumFixture chromium)
{
    [Fact]
    public async Task A_follower_weighs_it_anew_to_the_numbers_of_the_command_line_and_only_the_folder_is_asked()
    {
        string folder = Publish();
        await using PlainHost host = new(folder);
        IPage page = await chromium.TabAsync(host.Url);
        List<string> asked = [], said = [];
        page.Request += (_, request) => asked.Add(request.Url);
        page.Console += (_, message) => said.Add($"{message.Type}: {message.Text}");
        page.PageError += (_, error) => said.Add(error);
        await page.GotoAsync("hedgerow-brown/");
        Dictionary<string, string> typed = new() { ["beer"] = "10 L", ["kettle"] = "22 L", ["boils"] = "3 L/h", ["left"] = "0.5 L", ["height"] = "300 m" };
        foreach ((string field, string text) in typed)
        {
            await page.Locator($"[name={field}]").FillAsync(text);
        }

        Stopwatch watch = Stopwatch.StartNew();
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Work it out" }).ClickAsync();
        await Assertions.Expect(page.Locator("#recast[data-brews=true] table")).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 60_000 });
        TestContext.Current.TestOutputHelper!.WriteLine(Invariant($"First answer after {watch.Elapsed.TotalSeconds:0.0} s; {host.Sent.Where(sent => sent.Key.StartsWith("engine/", StringComparison.Ordinal)).Sum(sent => sent.Value) / 1e6:0.00} MB of the engine, page {host.Sent["hedgerow-brown/"]} bytes."));
        await page.PictureAsync("published-kit");

        string kit = await DownloadAsync(page, "this kit's file"), recipe = await DownloadAsync(page, "this recipe's file");
        string mine = Path.Combine(folder, "my-kit.json");
        await File.WriteAllTextAsync(mine, kit, TestContext.Current.CancellationToken);
        string scaled = Run("scale", Path.Combine(folder, "hedgerow-brown", "recipe.json"), "--from", Path.Combine(folder, "hedgerow-brown", "kit.json"), "--kit", mine, "--for", "package=10 L", "--json");
        using JsonDocument answer = JsonDocument.Parse(scaled), read = JsonDocument.Parse(recipe), weighed = JsonDocument.Parse(answer.RootElement.GetProperty("text").GetString()!);
        Assert.True(answer.RootElement.GetProperty("met").GetBoolean());
        string[] there = Amounts(weighed), here = Amounts(read);
        Assert.Equal(there, here);
        string table = (await page.Locator("#recast").InnerTextAsync()).Replace('\u00A0', ' ');
        Assert.All(there, amount => Assert.Contains(Printed(amount), table, StringComparison.Ordinal));

        Assert.All(asked, url => Assert.StartsWith(host.Url, url.StartsWith("blob:", StringComparison.Ordinal) ? url[5..] : url, StringComparison.Ordinal));
        Assert.Empty(said);
        await page.HasNoBarrierAsync("a published page, weighed anew");

        // The whole is in the address: sent on, it opens with the same answer.
        IPage sent = await chromium.TabAsync(host.Url, 360, 740, ColorScheme.Dark, touch: true);
        await sent.GotoAsync(page.Url);
        await Assertions.Expect(sent.Locator("#recast[data-brews=true] table")).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 60_000 });
        Assert.Equal("10 L", await sent.Locator("[name=beer]").InputValueAsync());
        Assert.Equal(there.Select(Printed), Amounts(JsonDocument.Parse(await DownloadAsync(sent, "this recipe's file"))).Select(Printed));
        Assert.Equal(0, await sent.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth"));
        await sent.PictureAsync("published-phone");
        await sent.HasNoBarrierAsync("a published page on a phone");

        await sent.Locator("[name=kettle]").FillAsync("6 L");
        await Assertions.Expect(sent.Locator("#recast .stop")).ToContainTextAsync("kettle");
        await Assertions.Expect(sent.Locator("#recast .stop")).ToContainTextAsync("at most about");
    }

    [Fact]
    public async Task Without_a_script_the_page_is_whole_and_prints_on_few_pages()
    {
        string folder = Publish();
        await using PlainHost host = new(folder);
        IPage page = await chromium.TabAsync(host.Url, scripts: false);
        await page.GotoAsync("hedgerow-brown/");
        string text = (await page.Locator("body").InnerTextAsync()).Replace('\u00A0', ' ');
        Assert.All(["Hedgerow Brown", "3.60 kg", "7.94 lb", "56 g", "Fuggle", "Contains: barley", "May contain: sesame", "Take it with you"], word => Assert.Contains(word, text, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("Brew it on your kit", text, StringComparison.Ordinal);
        await Assertions.Expect(page.Locator("aside svg").First).ToBeVisibleAsync();
        foreach (ILocator link in await page.Locator(".down a").AllAsync())
        {
            Assert.Equal(200, (await page.Context.APIRequest.GetAsync($"{host.Url}hedgerow-brown/{await link.GetAttributeAsync("href")}")).Status);
        }

        byte[] paper = await page.PdfAsync(new PagePdfOptions { Format = "A4", PreferCSSPageSize = true });
        int pages = System.Text.RegularExpressions.Regex.Count(System.Text.Encoding.Latin1.GetString(paper), @"/Type\s*/Page\b");
        TestContext.Current.TestOutputHelper!.WriteLine($"{pages} pages of A4");
        Assert.InRange(pages, 1, 3);
    }

    private static string Publish()
    {
        string folder = Directory.CreateTempSubdirectory("gylebook-published-").FullName;
        Run("publish", RepositoryFile.PathOf("samples/recipes/hedgerow-brown.json"), "--kit", RepositoryFile.PathOf("samples/kits/lantern-shed.json"), "--to", folder, "--by", "Lantern Shed");
        return folder;
    }

    private static string Run(params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(RepositoryFile.PathOf("gylebook"), arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"{string.Join(' ', arguments)}: {errors.GetAwaiter().GetResult()}{output}");
    }

    private static async Task<string> DownloadAsync(IPage page, string link)
    {
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = link, Exact = true }).ClickAsync());
        return await File.ReadAllTextAsync(await download.PathAsync());
    }

    private static string[] Amounts(JsonDocument recipe) => [.. recipe.RootElement.GetProperty("ingredients").EnumerateArray().Select(line => line.GetProperty("amount").GetString()!)];

    /// <summary>As pages print a weight: kilograms to 10 g, from 10 g on whole grams, below a tenth.</summary>
    private static string Printed(string amount)
    {
        string[] parts = amount.Split(' ');
        double grams = double.Parse(parts[0], CultureInfo.InvariantCulture) * (parts[1] == "kg" ? 1000 : 1);
        static string Rounded(double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString($"F{decimals}", CultureInfo.InvariantCulture);
        return grams >= 1000 ? $"{Rounded(grams / 1000, 2)} kg" : grams >= 10 ? $"{Rounded(grams, 0)} g" : $"{Rounded(grams, 1)} g";
    }
}
