using System.Net;
using System.Net.Http.Json;
using System.Net.WebSockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text.RegularExpressions;

namespace Gylebook.Cli.Tests;

/// <summary>Who may enter a book that others can reach: nobody without the password, and a helper no further than brew day.</summary>
public sealed class EntryTests : IDisposable
{
    private const string Owners = "lantern oil and rain";
    private const string Helpers = "stir it twice please";

    /// <summary>A folder with a book that was served once: one has to be there for the terminal to set a password.</summary>
    private static readonly Task<string> NewBook = ServedOnceAsync();

    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-entry-").FullName;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    private string Book => Path.Combine(_folder, "book.sqlite");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Without_the_cookie_there_is_no_page()
    {
        (string Path, HttpStatusCode Status, string Text)[] all =
        [
            ("/", HttpStatusCode.Redirect, "/enter?back=%2F"),
            ("/recipes?x=1", HttpStatusCode.Redirect, "/enter?back=%2Frecipes%3Fx%3D1"),
            ("/kits", HttpStatusCode.Redirect, "/enter?back=%2Fkits"),
            ("/settings", HttpStatusCode.Redirect, "/enter?back=%2Fsettings"),
            ("/passwords", HttpStatusCode.Redirect, "/enter?back=%2Fpasswords"),
            ("/gyles", HttpStatusCode.Redirect, "/enter?back=%2Fgyles"),
            ("/gyles/00000000-0000-0000-0000-000000000001/brew", HttpStatusCode.Redirect, "/enter?back=%2Fgyles%2F00000000-0000-0000-0000-000000000001%2Fbrew"),
            ("/recipes/00000000-0000-0000-0000-000000000001/sheet", HttpStatusCode.Redirect, "/enter?back="),
            ("/error", HttpStatusCode.Redirect, "/enter?back="),
            ("/no-such-page", HttpStatusCode.Redirect, "/enter?back=%2Fno-such-page"),
            ("/api/gyles/00000000-0000-0000-0000-000000000001/log", HttpStatusCode.Unauthorized, "asks for its password"),
            ("/api/nothing", HttpStatusCode.Unauthorized, "asks for its password"),
            ("/files/recipe/00000000-0000-0000-0000-000000000001", HttpStatusCode.Unauthorized, "asks for its password"),
            ("/_blazor", HttpStatusCode.Unauthorized, "asks for its password"),
            ("/enter", HttpStatusCode.OK, "Code from the terminal"),
            ("/app.css", HttpStatusCode.OK, "--paper"),
            ("/brew-worker.js", HttpStatusCode.OK, "gylebook-brew-1"),
            ("/_framework/blazor.web.js", HttpStatusCode.OK, ""),
        ];
        await using ServedBook served = await OpenAsync();
        using Visitor visitor = new(served.Url);
        foreach ((string path, HttpStatusCode expected, string text) in all)
        {
            (HttpStatusCode status, string answer) = await visitor.GetAsync(path);
            Assert.True(status == expected && answer.Contains(text, StringComparison.Ordinal), $"{path}: {status} {answer}");
        }
    }

    [Fact]
    public async Task The_first_password_takes_the_code_that_the_terminal_prints()
    {
        await using ServedBook served = await OpenAsync();
        string code = await CodeAsync(served);
        using Visitor visitor = new(served.Url);

        Assert.Equal((HttpStatusCode.Unauthorized, true), Says(await visitor.SendFormAsync("/enter", ("code", "WRONGONE"), ("password", Owners)), "not the code"));
        Assert.Equal((HttpStatusCode.BadRequest, true), Says(await visitor.SendFormAsync("/enter", ("code", code), ("password", "short")), "10 to 200 characters; this one has 5"));
        Assert.Equal((HttpStatusCode.Redirect, "/kits"), await visitor.SendFormAsync("/enter", ("code", code.ToLowerInvariant()), ("password", Owners), ("back", "/kits")));
        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/kits")).Status);

        // It is used up: another browser needs the password, and the code does nothing.
        using Visitor other = new(served.Url);
        Assert.Equal((HttpStatusCode.Unauthorized, true), Says(await other.SendFormAsync("/enter", ("code", code), ("password", "another password")), "That is not the password"));
    }

    [Fact]
    public async Task The_way_back_leads_to_no_other_site()
    {
        await using ServedBook served = await OpenAsync(Owners);
        foreach (string back in new[] { "https://evil.example/", "//evil.example/", "/\\evil.example/", "evil" })
        {
            using Visitor visitor = new(served.Url);
            Assert.Equal((HttpStatusCode.Redirect, "/"), await visitor.SendFormAsync("/enter", ("password", Owners), ("back", back)));
        }
    }

    [Fact]
    public async Task Guessing_is_slowed_and_told_how_long()
    {
        await using ServedBook served = await OpenAsync(Owners);
        using Visitor guesser = new(served.Url);
        List<HttpStatusCode> answers = [];
        for (int i = 0; i < 5; i++)
        {
            answers.Add((await guesser.SendFormAsync("/enter", ("password", $"guess number {i}"))).Status);
        }

        Assert.All(answers, status => Assert.Equal(HttpStatusCode.Unauthorized, status));

        // The right one is not taken either, or a guesser would learn it; and it counts without a form of ours, too.
        (HttpStatusCode status, string text) = await guesser.SendFormAsync("/enter", ("password", Owners));
        Assert.Equal(HttpStatusCode.TooManyRequests, status);
        Assert.Matches("^Too many tries. Wait [0-9]+ seconds", text);
        Assert.Equal(HttpStatusCode.TooManyRequests, (await guesser.PostAsync("/enter", ("password", Owners))).Status);
    }

    [Fact]
    public async Task A_form_from_nowhere_does_not_come_in()
    {
        await using ServedBook served = await OpenAsync(Owners);
        using Visitor visitor = new(served.Url);

        Assert.Equal((HttpStatusCode.BadRequest, true), Says(await visitor.PostAsync("/enter", ("password", Owners)), "too old"));
        visitor.Client.DefaultRequestHeaders.Add("Origin", "http://evil.example");
        Assert.Equal((HttpStatusCode.Forbidden, true), Says(await visitor.SendFormAsync("/enter", ("password", Owners)), "belongs to another site"));
        Assert.DoesNotContain(visitor.Cookies, cookie => cookie.Name.Contains("entry", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Sockets_want_the_cookie_and_our_own_origin()
    {
        await using ServedBook served = await OpenAsync(Owners);
        using Visitor owner = await InAsync(served, Owners);
        string cookie = string.Join("; ", owner.Cookies.Select(one => $"{one.Name}={one.Value}"));
        string ours = $"http://{served.Url.Authority}";

        Assert.Equal(HttpStatusCode.Unauthorized, await ConnectAsync(served.Url, ours, null));
        Assert.Equal(HttpStatusCode.Forbidden, await ConnectAsync(served.Url, "http://evil.example", cookie));
        Assert.Equal(HttpStatusCode.SwitchingProtocols, await ConnectAsync(served.Url, ours, cookie));
    }

    [Fact]
    public async Task A_helper_taps_on_brew_day_and_may_have_nothing_else()
    {
        await using ServedBook served = await OpenAsync(Owners, Helpers);
        Assert.Equal(0, GylebookProgram.Run(["gyle", "start", "Plain Bitter", "--as", "The first", "--book", Book]).ExitCode);
        using Visitor helper = await InAsync(served, Helpers);
        Assert.Equal(HttpStatusCode.OK, (await helper.GetAsync("/gyles")).Status);
        string gyle = Regex.Match((await helper.GetAsync("/gyles")).Text, "href=\"(gyles/[0-9a-f-]+)\"").Groups[1].Value;
        Assert.Equal(HttpStatusCode.OK, (await helper.GetAsync($"/{gyle}")).Status);
        Assert.Equal(HttpStatusCode.OK, (await helper.GetAsync($"/{gyle}/brew")).Status);
        Assert.Equal(HttpStatusCode.OK, (await helper.GetAsync($"/{gyle}/brew/forecast")).Status);
        Assert.Equal((HttpStatusCode.OK, true), Says(await helper.GetAsync($"/{gyle}/sheet"), "Brew-day sheet"));
        Assert.Equal(HttpStatusCode.OK, (await helper.GetAsync("/brew-sheet.css")).Status);
        Guid entry = Guid.CreateVersion7();
        using HttpResponseMessage tapped = await helper.Client.PostAsJsonAsync(
            $"/api/{gyle}/log", new[] { new { id = entry, at = TimeProvider.System.GetUtcNow(), kind = "said", what = "stirred" } }, Cancellation);
        Assert.Equal(HttpStatusCode.OK, tapped.StatusCode);
        Assert.Contains(entry.ToString(), (await helper.GetAsync($"/api/{gyle}/log")).Text, StringComparison.Ordinal);

        Guid recipe = Guid.Parse(Regex.Match((await helper.GetAsync($"/{gyle}")).Text, "href=\"recipes/([0-9a-f-]+)\"").Groups[1].Value);
        foreach (string path in new[] { "/", "/recipes", $"/recipes/{recipe}", $"/recipes/{recipe}/start", $"/recipes/{recipe}/sheet", $"/files/recipe/{recipe}", "/kits", "/foods", "/larder", "/liquor", "/settings", "/passwords", "/no-such-page" })
        {
            (HttpStatusCode status, string text) = await helper.GetAsync(path);
            Assert.True((status, text) == (HttpStatusCode.Forbidden, "This belongs to the owner of the book. A helper may look at gyles, and tap and read on brew day."), $"{path}: {status} {text}");
        }

        Assert.Equal(HttpStatusCode.Forbidden, (await helper.PostAsync("/passwords", ("whose", "helper"), ("password", "one of my own"))).Status);
    }

    [Fact]
    public async Task A_password_is_changed_by_who_knows_it_and_differs_from_the_helpers()
    {
        await using ServedBook served = await OpenAsync(Owners, Helpers);
        using Visitor owner = await InAsync(served, Owners);

        Assert.Equal((HttpStatusCode.Unauthorized, true), Says(await owner.SendFormAsync("/passwords", ("whose", "owner"), ("now", Helpers), ("password", "rain and lantern oil")), "not your password"));
        Assert.Equal((HttpStatusCode.BadRequest, true), Says(await owner.SendFormAsync("/passwords", ("whose", "owner"), ("now", Owners), ("password", Helpers)), "two different passwords"));
    }

    [Fact]
    public async Task A_changed_password_puts_all_others_out_and_a_removed_helper_too()
    {
        await using ServedBook served = await OpenAsync(Owners, Helpers);
        using Visitor owner = await InAsync(served, Owners);
        using Visitor elsewhere = await InAsync(served, Owners);
        using Visitor helper = await InAsync(served, Helpers);

        Assert.Equal((HttpStatusCode.OK, true), Says(await owner.SendFormAsync("/passwords", ("whose", "owner"), ("now", Owners), ("password", "rain and lantern oil")), "Your password is set"));
        Assert.Equal(HttpStatusCode.OK, (await owner.GetAsync("/kits")).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await elsewhere.GetAsync("/kits")).Status);
        Assert.Equal(HttpStatusCode.OK, (await helper.GetAsync("/gyles")).Status);
        Assert.Equal((HttpStatusCode.OK, true), Says(await owner.SendFormAsync("/passwords", ("whose", "helper"), ("now", "rain and lantern oil"), ("does", "remove")), "No helper comes in"));
        Assert.Equal(HttpStatusCode.Redirect, (await helper.GetAsync("/gyles")).Status);
    }

    [Fact]
    public async Task Leaving_takes_the_cookie_away()
    {
        await using ServedBook served = await OpenAsync(Owners);
        using Visitor owner = await InAsync(served, Owners);

        Assert.Equal((HttpStatusCode.Redirect, "/enter"), await owner.PostAsync("/leave"));
        Assert.Equal((HttpStatusCode.Redirect, "/enter?back=%2Fkits"), await owner.GetAsync("/kits"));
    }

    [Fact]
    public async Task What_a_proxy_passes_on_is_asked_for_the_password_on_this_machine_too()
    {
        await using ServedBook served = await ServedBook.StartAsync(Book, "http://127.0.0.1:0");
        using Visitor visitor = new(served.Url);
        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/kits")).Status);
        foreach (string header in new[] { "X-Forwarded-For", "x-forwarded-proto", "Forwarded", "X-Real-IP", "Via" })
        {
            visitor.Client.DefaultRequestHeaders.Clear();
            visitor.Client.DefaultRequestHeaders.TryAddWithoutValidation(header, "1.1 proxy");
            Assert.Equal((HttpStatusCode.Redirect, "/enter?back=%2Fkits"), await visitor.GetAsync("/kits"));
        }
    }

    [Fact]
    public async Task Another_name_is_known_when_it_was_given_and_no_other_is()
    {
        await using ServedBook served = await ServedBook.StartAsync(Book, "http://127.0.0.1:0", options: ["--host", "book.example"]);
        string Asked(string host) => $"GET /kits HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n";

        Assert.StartsWith("HTTP/1.1 302", await served.RawAsync(Asked("Book.example:8443")), StringComparison.Ordinal);
        Assert.StartsWith("HTTP/1.1 302", await served.RawAsync(Asked("localhost")), StringComparison.Ordinal);
        string other = await served.RawAsync(Asked("other.example"));
        Assert.StartsWith("HTTP/1.1 400", other, StringComparison.Ordinal);
        Assert.Contains("--host", other, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Https_has_a_certificate_of_its_own_and_a_secure_cookie_and_both_outlive_a_start()
    {
        string told;
        Visitor owner;
        await using (ServedBook served = await OpenAsync(Owners, urls: "https://127.0.0.1:0"))
        {
            told = await LineAsync(served, "fingerprint: ");
            owner = await InAsync(served, Owners);
            Assert.Equal(told[(told.LastIndexOf(' ') + 1)..].Replace(":", "", StringComparison.Ordinal), owner.Certificate);
            Cookie cookie = Assert.Single(owner.Cookies, one => one.Name.Contains("entry", StringComparison.Ordinal));
            Assert.Equal(("__Host-gylebook-entry", true, true), (cookie.Name, cookie.Secure, cookie.HttpOnly));
            using HttpResponseMessage page = await owner.Client.GetAsync("/kits", Cancellation);
            Assert.Equal((HttpStatusCode.OK, false), (page.StatusCode, page.Headers.Contains("Strict-Transport-Security")));
        }

        using (owner)
        {
            await using ServedBook again = await OpenAsync(urls: owner.Client.BaseAddress!.ToString());
            Assert.Equal(told, await LineAsync(again, "fingerprint: "));
            Assert.Equal(HttpStatusCode.OK, (await owner.GetAsync("/kits")).Status);
        }

        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Book + ".https.pem"));
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Book + ".keys"));
        }
    }

    [Fact]
    public async Task Https_shows_the_certificate_it_is_given()
    {
        string file = Path.Combine(_folder, "given.pem");
        using ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        using X509Certificate2 made = new CertificateRequest("CN=book.example", key, HashAlgorithmName.SHA256)
            .CreateSelfSigned(TimeProvider.System.GetUtcNow().AddDays(-1), TimeProvider.System.GetUtcNow().AddDays(1));
        await File.WriteAllTextAsync(file, made.ExportCertificatePem() + "\n", Cancellation);
        await File.WriteAllTextAsync(file + ".key", key.ExportPkcs8PrivateKeyPem(), Cancellation);

        await using ServedBook served = await ServedBook.StartAsync(Book, "https://127.0.0.1:0", options: ["--lan", "--cert", file, "--cert-key", file + ".key"]);
        using Visitor visitor = new(served.Url);

        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync("/enter")).Status);
        Assert.Equal(made.GetCertHashString(HashAlgorithmName.SHA256), visitor.Certificate);
        Assert.False(File.Exists(Book + ".https.pem"));
    }

    [Fact]
    public void A_file_that_is_no_certificate_is_told_in_one_line()
    {
        string file = Path.Combine(_folder, "shopping.txt");
        File.WriteAllText(file, "eggs and milk");

        Ran ran = GylebookProgram.Run(["serve", "--book", Book, "--urls", "https://127.0.0.1:0", "--cert", file]);

        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        Assert.Contains("shopping.txt: this certificate cannot be used", Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    /// <summary>The book as <c>--lan</c> opens it, at a port of its own, with these passwords.</summary>
    private async Task<ServedBook> OpenAsync(string? owner = null, string? helper = null, string urls = "http://127.0.0.1:0")
    {
        if (owner is not null)
        {
            foreach (string file in Directory.EnumerateFiles(await NewBook))
            {
                File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
            }

            Assert.Equal(0, GylebookProgram.Run(["password", "--book", Book], input: owner).ExitCode);
        }

        if (helper is not null)
        {
            Assert.Equal(0, GylebookProgram.Run(["password", "--helper", "--book", Book], input: helper).ExitCode);
        }

        return await ServedBook.StartAsync(Book, urls, options: ["--lan"]);
    }

    private static async Task<string> ServedOnceAsync()
    {
        string folder = Directory.CreateTempSubdirectory("gylebook-entry-new-").FullName;
        await using (await ServedBook.StartAsync(Path.Combine(folder, "book.sqlite"), "http://127.0.0.1:0"))
        {
        }

        return folder;
    }

    private static async Task<string> CodeAsync(ServedBook served) => (await LineAsync(served, "with this code: "))[^8..];

    private static async Task<string> LineAsync(ServedBook served, string with)
    {
        string line;
        do
        {
            line = await served.NextLineAsync();
        }
        while (!line.Contains(with, StringComparison.Ordinal));
        return line;
    }

    private static async Task<Visitor> InAsync(ServedBook served, string password)
    {
        Visitor visitor = new(served.Url);
        Assert.Equal(HttpStatusCode.Redirect, (await visitor.SendFormAsync("/enter", ("password", password))).Status);
        return visitor;
    }

    private static (HttpStatusCode Status, bool Says) Says((HttpStatusCode Status, string Text) answer, string text) =>
        (answer.Status, answer.Text.Contains(text, StringComparison.Ordinal));

    /// <summary>The answer to a socket from a page of that origin.</summary>
    private static async Task<HttpStatusCode> ConnectAsync(Uri book, string origin, string? cookie)
    {
        using ClientWebSocket socket = new();
        socket.Options.SetRequestHeader("Origin", origin);
        if (cookie is not null)
        {
            socket.Options.SetRequestHeader("Cookie", cookie);
        }

        socket.Options.CollectHttpResponseDetails = true;
        try
        {
            await socket.ConnectAsync(new UriBuilder(book) { Scheme = "ws", Path = "/_blazor" }.Uri, Cancellation);
        }
        catch (WebSocketException)
        {
            // The status says why.
        }

        return socket.HttpStatusCode;
    }
}
