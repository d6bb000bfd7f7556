using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook publish: a folder for any web host, of files and of the book, and /p/ where the book is served.</summary>
public sealed class PublishTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-publish-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Recipe_files_become_a_folder_with_pages_feed_and_engine()
    {
        Ran ran = Run("publish", SampleFile.Recipe("hedgerow-brown"), SampleFile.Recipe("plain-bitter"), "--to", Path("site"), "--by", "Lantern Shed", "--address", "https://example.org/beer", "--json");
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        JsonElement told = JsonDocument.Parse(ran.Output).RootElement;
        Assert.Equal(["Hedgerow Brown", "Plain Bitter"], told.GetProperty("pages").EnumerateArray().Select(page => page.GetProperty("name").GetString()));
        Assert.All(told.GetProperty("pages").EnumerateArray(), page => Assert.True(File.Exists(page.GetProperty("page").GetString())));
        Assert.Contains("https://example.org/beer/hedgerow-brown/", File.ReadAllText(Path("site/feed.xml")), StringComparison.Ordinal);
        Assert.Contains("https://example.org/beer/hedgerow-brown/run.svg", File.ReadAllText(Path("site/hedgerow-brown/index.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("Toasted seed, dark honey.", File.ReadAllText(Path("site/hedgerow-brown/recipe.json")), StringComparison.Ordinal);
        string[] engine = [.. Directory.GetFiles(Path("site/engine")).Select(file => System.IO.Path.GetFileName(file)!)];
        Assert.All(engine.Where(file => file.EndsWith(".wasm", StringComparison.Ordinal)), file => Assert.Contains(file + ".gz", engine));
        Assert.All(engine.Where(file => file.EndsWith(".wasm", StringComparison.Ordinal)), file => Assert.Contains(file + ".br", engine));

        // The folder's own files are enough to brew from: the sheet lies beside the recipe.
        Assert.Equal(0, Run("forecast", Path("site/hedgerow-brown/recipe.json"), "--kit", Path("site/hedgerow-brown/kit.json")).ExitCode);
    }

    [Theory]
    [InlineData("--to: must name the folder to write.", "x")]
    [InlineData("--address: beer; must be a whole web address", "x", "--to", "y", "--address", "beer")]
    [InlineData("--withdraw: say which recipes.", "--to", "y", "--withdraw")]
    [InlineData("Option '--to' needs a folder after it.", "x", "--to")]
    public void Words_that_do_not_fit_are_told_with_their_limit(string says, params string[] words)
    {
        Ran ran = Run(["publish", .. words]);
        Assert.Equal((2, ""), (ran.ExitCode, ran.Output));
        Assert.Contains(says, ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_brewed_is_refused_with_its_reason_and_a_folder_that_cannot_be_written_too()
    {
        string wrong = Path("wrong.json");
        File.WriteAllText(wrong, File.ReadAllText(SampleFile.Recipe("plain-bitter")).Replace("\"in\": \"bottle\"", "\"in\": \"bucket\"", StringComparison.Ordinal).Replace("\"in\": \"keg\"", "\"in\": \"bucket\"", StringComparison.Ordinal));
        Ran ran = Run("publish", wrong, "--to", Path("site"));
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("bucket", ran.Errors, StringComparison.Ordinal);

        // Too much for the kit: no page, the reason, and nothing is said to be there.
        Ran large = Run("publish", SampleFile.Recipe("hedgerow-brown"), "--kit", SampleFile.Kit("big-pot"), "--to", Path("large"), "--json");
        Assert.Equal(1, large.ExitCode);
        Assert.Empty(JsonDocument.Parse(large.Output).RootElement.GetProperty("pages").EnumerateArray());
        Assert.Contains(JsonDocument.Parse(large.Output).RootElement.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("message").GetString()!.Contains("the fermenter is too small", StringComparison.Ordinal));
        Assert.False(Directory.Exists(Path("large/hedgerow-brown")));

        File.WriteAllText(Path("file"), "");
        Ran full = Run("publish", SampleFile.Recipe("plain-bitter"), "--to", Path("file"));
        Assert.Equal(1, full.ExitCode);
        Assert.Contains("cannot be written", full.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_the_book_it_is_a_version_served_to_everybody_and_taken_back()
    {
        string book = Path("book.sqlite");
        Assert.Equal(0, Run("restore", RepositoryFile.PathOf("tests/Gylebook.Store.Tests/Books/0.1.0.sqlite"), "--book", book).ExitCode);
        Assert.Equal(0, Run("import", SampleFile.Recipe("plain-bitter"), "--as", "Shed Bitter", "--book", book).ExitCode);
        Ran ran = Run("publish", "shed bitter", "--to", Path("site"), "--by", "Lantern Shed", "--book", book);
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        Assert.True(File.Exists(Path("site/shed-bitter/index.html")));
        Assert.Equal(1, Run("publish", "no such beer", "--to", Path("site"), "--book", book).ExitCode);

        await using (ServedBook served = await ServedBook.StartAsync(book, "http://*:0"))
        {
            using HttpClient stranger = new(new HttpClientHandler { AllowAutoRedirect = false });
            Uri root = new($"http://localhost:{served.Url.Port}/");
            HttpResponseMessage page = await stranger.GetAsync(new Uri(root, "p/shed-bitter/"), TestContext.Current.CancellationToken);
            Assert.Equal(200, (int)page.StatusCode);
            Assert.Equal(File.ReadAllText(Path("site/shed-bitter/index.html")), await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
            Assert.Contains("'wasm-unsafe-eval'", string.Join(' ', page.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
            Assert.Equal("/p/shed-bitter/?beer=10", (await stranger.GetAsync(new Uri(root, "p/shed-bitter?beer=10"), TestContext.Current.CancellationToken)).Headers.Location!.OriginalString);
            Assert.Equal("/p/", (await stranger.GetAsync(new Uri(root, "p"), TestContext.Current.CancellationToken)).Headers.Location!.OriginalString);
            Assert.Contains("Shed Bitter", await stranger.GetStringAsync(new Uri(root, "p/"), TestContext.Current.CancellationToken), StringComparison.Ordinal);
            Assert.Equal(200, (int)(await stranger.GetAsync(new Uri(root, "p/engine/dotnet.js"), TestContext.Current.CancellationToken)).StatusCode);

            // Whoever has not said the password gets the published pages and nothing else.
            Assert.Equal(302, (int)(await stranger.GetAsync(new Uri(root, "published.zip"), TestContext.Current.CancellationToken)).StatusCode);
            Assert.Equal(302, (int)(await stranger.GetAsync(new Uri(root, "recipes"), TestContext.Current.CancellationToken)).StatusCode);
            Assert.NotEqual(200, (int)(await stranger.GetAsync(new Uri(root, "p/../recipes"), TestContext.Current.CancellationToken)).StatusCode);
            Assert.Equal(404, (int)(await stranger.GetAsync(new Uri(root, "p/no-such-beer/"), TestContext.Current.CancellationToken)).StatusCode);
        }

        Assert.Equal(0, Run("publish", "Shed Bitter", "--withdraw", "--to", Path("site"), "--book", book).ExitCode);
        Assert.False(Directory.Exists(Path("site/shed-bitter")));
        Assert.DoesNotContain("Shed Bitter", File.ReadAllText(Path("site/index.html")), StringComparison.Ordinal);
    }

    private string Path(string name) => System.IO.Path.Combine(_folder, name);

    private static Ran Run(params string[] arguments) => GylebookProgram.Run(arguments);
}
