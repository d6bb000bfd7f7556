using Gylebook.Tests.Shared;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>Files in and out of the book, by hand.</summary>
public sealed class FilesTests(ChromiumFixture chromium)
{
    [Fact]
    public async Task Of_two_chosen_files_the_good_one_is_in_the_bad_one_is_told_and_the_good_one_comes_out_as_it_went_in()
    {
        string text = (await File.ReadAllTextAsync(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"), TestContext.Current.CancellationToken))
            .Replace("\"Plain Bitter\"", "\"Came as a File\"", StringComparison.Ordinal);
        await using OpenedBook gylebook = await OpenedBook.OpenAsync();
        IPage page = await chromium.TabAsync(gylebook.Url);
        await page.OpenAsync("/");
        await page.GetByLabel("Put files into the book.").SetInputFilesAsync(
        [
            new FilePayload { Name = "good.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(text) },
            new FilePayload { Name = "bad.json", MimeType = "application/json", Buffer = "Dear brewer"u8.ToArray() },
        ]);
        ILocator files = page.GetByRole(AriaRole.List, new PageGetByRoleOptions { Name = "Files you chose" }).Locator("> li");
        await Assertions.Expect(files.Nth(0)).ToContainTextAsync("The recipe \"Came as a File\" is in the book.");
        await Assertions.Expect(files.Nth(1)).ToContainTextAsync("the JSON is broken");
        await Assertions.Expect(page.GetByText("1 of 2 files are in the book.")).ToBeVisibleAsync();
        await page.HasNoBarrierAsync("files taken in");
        await page.PictureAsync("files-taken");

        await files.Nth(0).GetByRole(AriaRole.Link, new LocatorGetByRoleOptions { Name = "Open it" }).ClickAsync();
        await page.WaitForURLAsync("**/recipes/*");
        IDownload download = await page.RunAndWaitForDownloadAsync(
            () => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Download as a file" }).ClickAsync());
        Assert.Equal("came-as-a-file.json", download.SuggestedFilename);
        await using Stream given = await download.CreateReadStreamAsync();
        using StreamReader reader = new(given);
        Assert.Equal(text, await reader.ReadToEndAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_recipe_leaves_for_other_programs_with_what_stays_behind_and_comes_back_as_one_step()
    {
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync();
        IPage page = await chromium.TabAsync(gylebook.Url);
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Hedgerow Brown" }).First.ClickAsync();
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "For other programs" }).ClickAsync();
        await page.WaitForURLAsync("**/others");
        ILocator xml = page.GetByRole(AriaRole.Region, new PageGetByRoleOptions { Name = "BeerXML 1.0" });
        await Assertions.Expect(xml).ToContainTextAsync("the file has only its temperature");
        await page.HasNoBarrierAsync("for other programs");
        await page.PictureAsync("for-other-programs");
        IDownload download = await page.RunAndWaitForDownloadAsync(
            () => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Download as BeerJSON 1.0" }).ClickAsync());
        Assert.Equal("hedgerow-brown.beerjson.json", download.SuggestedFilename);
        await using Stream given = await download.CreateReadStreamAsync();
        using MemoryStream whole = new();
        await given.CopyToAsync(whole, TestContext.Current.CancellationToken);

        await page.OpenAsync("/recipes");
        await page.GetByLabel("Put files into the book.").SetInputFilesAsync(new FilePayload { Name = "theirs.json", MimeType = "application/json", Buffer = whole.ToArray() });
        ILocator file = page.GetByRole(AriaRole.List, new PageGetByRoleOptions { Name = "Files you chose" }).Locator("> li").First;
        await Assertions.Expect(file.GetByRole(AriaRole.Link, new LocatorGetByRoleOptions { Name = "Hedgerow Brown 2" })).ToBeVisibleAsync();
        await page.HasNoBarrierAsync("a file of an open standard, taken in");
        await page.PictureAsync("open-file-taken");
        // The recipe and its water; the food's sheet is there already.
        await file.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Take all of it back" }).ClickAsync();
        await Assertions.Expect(file).ToContainTextAsync("Taken back: 2 of the things it brought are in the bin.");
    }
}
