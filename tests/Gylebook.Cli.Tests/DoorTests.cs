using System.Net;
using System.Net.WebSockets;
using System.Text.RegularExpressions;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>Who is let in by the running program, from where, and what the built program needs to be whole.</summary>
public sealed class DoorTests : IDisposable
{
    private const string AnyPort = "http://127.0.0.1:0";

    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-doors-").FullName;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    private string Book => Path.Combine(_folder, "book.sqlite");

    public DoorTests() => RestoredBook.CopyTo(Book);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("http://localhots:5080", "localhots")]
    [InlineData("http://brewery.example:5080", "brewery.example")]
    [InlineData("http://localhost:5080;http://locahost:5081", "locahost")]
    [InlineData("http://", "no address")]
    public void A_host_that_would_mean_every_interface_by_mistake_is_refused(string urls, string named)
    {
        string none = Path.Combine(_folder, "none.sqlite");
        Ran ran = GylebookProgram.Run(["serve", "--book", none, "--urls", urls]);

        Assert.Equal(("", 2), (ran.Output, ran.ExitCode));
        Assert.Contains(named, Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.False(File.Exists(none), "refused before the book is made");
    }

    [Theory]
    [InlineData("http://*:0", null, true)]
    [InlineData("http://[::1]:0", null, false)]
    [InlineData("http://LOCALHOST:0", null, false)]
    [InlineData(AnyPort, "http://0.0.0.0:0", true)]
    [InlineData(AnyPort, "http://127.0.0.1:0", false)]
    public async Task Who_can_reach_the_book_is_told_by_where_it_really_listens(string urls, string? endpoint, bool isOpen)
    {
        // A name with port 0 cannot be had: localhost is two addresses.
        if (urls.Contains("LOCALHOST", StringComparison.Ordinal))
        {
            urls = urls.Replace(":0", ":" + FreePort(), StringComparison.Ordinal);
        }

        Dictionary<string, string> surroundings = endpoint is null ? [] : new() { ["Kestrel__Endpoints__Other__Url"] = endpoint };
        await using ServedBook served = await ServedBook.StartAsync(Book, urls, surroundings);

        Assert.StartsWith("Gylebook is open at http://", served.FirstLine, StringComparison.Ordinal);
        string answer = await served.RawAsync("GET /recipes HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
        Assert.StartsWith(isOpen ? "HTTP/1.1 302" : "HTTP/1.1 200", answer, StringComparison.Ordinal);
        Assert.Equal(isOpen, answer.Contains("Location: /enter", StringComparison.Ordinal));
        string elsewhere = await served.RawAsync("GET /recipes HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n");
        Assert.StartsWith("HTTP/1.1 400", elsewhere, StringComparison.Ordinal);
        Assert.Contains(isOpen ? "does not go by that name" : "under the name localhost", elsewhere, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Variables_for_other_programs_do_not_open_the_book_to_everyone()
    {
        string url = $"http://127.0.0.1:{FreePort()}";
        await using ServedBook served = await ServedBook.StartAsync(
            Book, url, new Dictionary<string, string> { ["ASPNETCORE_URLS"] = "http://*:0", ["ASPNETCORE_HTTP_PORTS"] = "0" });

        Assert.Contains($"open at {url} with", served.FirstLine, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sockets_are_for_pages_of_our_own_only()
    {
        await using ServedBook served = await ServedBook.StartAsync(Book, AnyPort);
        Uri circuits = new UriBuilder(served.Url) { Scheme = "ws", Path = "/_blazor" }.Uri;

        Assert.Equal(HttpStatusCode.Forbidden, await ConnectAsync(circuits, "http://evil.example"));
        Assert.Equal(HttpStatusCode.Forbidden, await ConnectAsync(circuits, "http://127.0.0.1:1"));
        Assert.Equal(HttpStatusCode.Forbidden, await ConnectAsync(circuits, "null"));
        Assert.Equal(HttpStatusCode.SwitchingProtocols, await ConnectAsync(circuits, $"http://{served.Url.Authority}"));
        using HttpClient browser = new();
        using HttpRequestMessage negotiate = new(HttpMethod.Post, new Uri(served.Url, "/_blazor/negotiate?negotiateVersion=1"));
        negotiate.Headers.Add("Origin", "http://evil.example");
        Assert.Equal(HttpStatusCode.Forbidden, (await browser.SendAsync(negotiate, Cancellation)).StatusCode);
    }

    [Fact]
    public async Task A_request_that_names_no_host_is_answered_without_a_stack_trace()
    {
        await using ServedBook served = await ServedBook.StartAsync(Book, AnyPort);

        string answer = await served.RawAsync("GET /recipes HTTP/1.0\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 400", answer, StringComparison.Ordinal);
        Assert.Contains("Host", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", answer + served.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", answer + served.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/recipes", HttpStatusCode.OK)]
    [InlineData("/", HttpStatusCode.OK)]
    [InlineData("/app.css", HttpStatusCode.OK)]
    [InlineData("/no-such-page", HttpStatusCode.NotFound)]
    public async Task The_head_of_a_page_can_be_asked_for_alone(string path, HttpStatusCode expected)
    {
        await using ServedBook served = await ServedBook.StartAsync(Book, AnyPort);
        using HttpClient browser = new();
        using HttpRequestMessage head = new(HttpMethod.Head, new Uri(served.Url, path));

        HttpResponseMessage answer = await browser.SendAsync(head, Cancellation);
        HttpResponseMessage whole = await browser.GetAsync(new Uri(served.Url, path), Cancellation);

        Assert.Equal((expected, expected), (answer.StatusCode, whole.StatusCode));
        Assert.Equal(whole.Content.Headers.ContentType, answer.Content.Headers.ContentType);
        Assert.Empty(await answer.Content.ReadAsByteArrayAsync(Cancellation));
    }

    /// <summary>The folder of the program alone, carried elsewhere, serves each script and style its pages ask for.</summary>
    [Fact]
    public async Task The_built_program_is_whole_without_its_builders_package_cache()
    {
        string program = Path.Combine(_folder, "carried");
        Copy(Path.GetDirectoryName(BuiltProgram.File)!, program);
        foreach (string manifest in Directory.GetFiles(program, "*.staticwebassets.runtime.json"))
        {
            // It points into the builder's folders: nobody may need it.
            File.Delete(manifest);
        }

        await using ServedBook served = await ServedBook.StartAsync(
            Path.Combine(_folder, "new.sqlite"), AnyPort, new Dictionary<string, string> { ["HOME"] = _folder, ["NUGET_PACKAGES"] = _folder }, Path.Combine(program, "gylebook.dll"));
        using HttpClient browser = new() { BaseAddress = served.Url };
        string page = await browser.GetStringAsync("recipes", Cancellation);
        string[] wanted = [.. Regex.Matches(page, "(?:src|href)=\"([^\"]+\\.(?:js|css|svg))\"").Select(match => match.Groups[1].Value).Distinct()];

        Assert.Contains(wanted, path => path.Contains("blazor.web", StringComparison.Ordinal));
        foreach (string path in wanted)
        {
            HttpResponseMessage answer = await browser.GetAsync(path, Cancellation);
            Assert.True(answer.IsSuccessStatusCode, $"{path}: {answer.StatusCode}");
            Assert.NotEmpty(await answer.Content.ReadAsByteArrayAsync(Cancellation));
        }
    }

    /// <summary>The answer to a socket from a page of that origin.</summary>
    private static async Task<HttpStatusCode> ConnectAsync(Uri url, string origin)
    {
        using ClientWebSocket socket = new();
        socket.Options.SetRequestHeader("Origin", origin);
        socket.Options.CollectHttpResponseDetails = true;
        try
        {
            await socket.ConnectAsync(url, Cancellation);
        }
        catch (WebSocketException)
        {
            // The status says why.
        }

        return socket.HttpStatusCode;
    }

    private static int FreePort()
    {
        using System.Net.Sockets.TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static void Copy(string from, string to)
    {
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}
