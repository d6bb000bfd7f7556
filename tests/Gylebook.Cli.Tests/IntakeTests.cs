using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Gylebook.Tests.Shared;
using Microsoft.Data.Sqlite;

namespace Gylebook.Cli.Tests;

/// <summary>Readings of devices over HTTP, and tables of them from files.</summary>
public sealed class IntakeTests : IDisposable
{
    private const string AnyPort = "http://127.0.0.1:0";

    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-intake-").FullName;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    private string File => Path.Combine(_folder, "book.sqlite");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <remarks>The sender is ours, and does what a device ought to: what was not acknowledged is sent again.</remarks>
    [Fact]
    public async Task Twenty_thousand_readings_are_kept_once_each_though_the_server_is_killed_twice()
    {
        const int All = 20_000;
        string token = await DeviceAsync();
        string url = $"http://127.0.0.1:{FreePort().ToString(CultureInfo.InvariantCulture)}";
        ServedBook served = await ServedBook.StartAsync(File, url);
        ProcessStartInfo start = new("dotnet", [BuiltProgram.File, "simulate-sensor", "--to", url, "--token", token, "--count", All.ToString(CultureInfo.InvariantCulture), "--rate", "5000", "--every", "1", "--json"]) { RedirectStandardOutput = true };
        using Process sender = Process.Start(start)!;
        try
        {
            foreach (int some in new[] { 2_000, 9_000 })
            {
                // In the middle of its work: killed outright, no farewell, and started anew on what it left.
                await WaitUntilAsync(() => Rows() > some);
                await served.DisposeAsync();
                Assert.False(sender.HasExited);
                served = await ServedBook.StartAsync(File, url);
            }

            using var told = JsonDocument.Parse(await sender.StandardOutput.ReadToEndAsync(Cancellation).WaitAsync(TimeSpan.FromMinutes(2), Cancellation));
            Assert.Equal(JsonValueKind.Null, told.RootElement.GetProperty("fault").ValueKind);
            Assert.Equal(All, told.RootElement.GetProperty("taken").GetInt32() + told.RootElement.GetProperty("known").GetInt32());
            Assert.True(told.RootElement.GetProperty("sentAgain").GetInt32() >= 2);
            Assert.Equal(All, Rows());
            Assert.Equal(All, Sql("SELECT count(DISTINCT at_ticks) FROM sensor_rows"));
        }
        finally
        {
            sender.Kill();
            await served.DisposeAsync();
        }

        Assert.Equal(0, GylebookProgram.Run(["check", File]).ExitCode);
    }

    [Fact]
    public async Task What_is_sent_is_taken_reading_by_reading_and_refused_by_field_value_and_limit()
    {
        string token = await DeviceAsync();
        await using ServedBook served = await ServedBook.StartAsync(File, AnyPort);
        using HttpClient client = new() { BaseAddress = served.Url };
        Assert.Equal((HttpStatusCode.OK, 1, 0), Counted(await SendAsync(client, token, """{ "gravity": 1.048, "temperature": "68 °F", "battery": 3.9, "id": 7 }""")));
        Assert.Equal((HttpStatusCode.OK, 0, 1), Counted(await SendAsync(client, token, """{ "gravity": 1.048, "id": "7" }""")));
        Assert.Equal((HttpStatusCode.OK, 0, 0), Counted(await SendAsync(client, token, "[]")));

        (HttpStatusCode status, string text) = await SendAsync(client, token, """
            [ { "at": "2026-03-01T18:00:00Z", "gravity": "12.1 °P" }, { "at": "2026-03-01T18:00:00", "gravity": 1.05 }, { "at": 1772388000, "gravity": 2.5 },
              { "at": "2026-03-01T19:00:00+01:00", "temperature": 200 }, { "tilt": 25 }, { "battery": 4 }, 5, { "at": "1970-01-01T00:00:05Z", "gravity": 1.05 }, { "at": 1772388000, "gravity": 1048 },
              { "gravity": true }, { "gravity": 1.05, "id": "" } ]
            """);
        using var answer = JsonDocument.Parse(text);
        Assert.Equal((HttpStatusCode.OK, 2, 0), Counted((status, text)));
        (int, string, string)[] expected =
        [
            (1, "at", "with its zone"), (2, "gravity", "gravity 2.5: an SG is from 0.9 to 1.2"), (3, "temperature", "temperature 200: must be a number from -30 °C to 110 °C"),
            (4, "", "\"tilt\" is no field"), (5, "", "a gravity, a temperature or a pressure"), (6, "", "a reading is an object"), (7, "at", "must be from 2001-01-01 to"), (9, "gravity", "gravity true: must be a number"), (10, "id", "1 to 100 letters"),
        ];
        JsonElement[] refused = [.. answer.RootElement.GetProperty("refused").EnumerateArray()];
        Assert.Equal(expected.Length, refused.Length);
        Assert.All(refused.Zip(expected), pair =>
        {
            (JsonElement was, (int item, string field, string message)) = pair;
            Assert.Equal((item, field), (was.GetProperty("item").GetInt32(), was.GetProperty("field").GetString()));
            Assert.Contains(message, was.GetProperty("message").GetString(), StringComparison.Ordinal);
        });

        Assert.Equal((HttpStatusCode.BadRequest, 0, 0), Counted(await SendAsync(client, token, """{ "gravity": 2.5 }""")));
        Assert.Equal((HttpStatusCode.BadRequest, true), Says(await SendAsync(client, token, "gravity=1.048"), "This is no JSON, in line 1 at byte"));
        Assert.Equal((HttpStatusCode.RequestEntityTooLarge, true), Says(await SendAsync(client, token, $"[{string.Join(',', Enumerable.Repeat("{}", 5001))}]"), "5001 readings at once; at most 5000"));
        Assert.Equal((HttpStatusCode.RequestEntityTooLarge, true), Says(await SendAsync(client, token, new string(' ', (1 << 20) + 1) + "{}"), "More than 1048576 bytes"));
        Assert.Equal(3, Rows());
    }

    [Fact]
    public async Task A_token_is_asked_for_in_every_mode_and_opens_nothing_else()
    {
        string token = await DeviceAsync();
        await using (ServedBook alone = await ServedBook.StartAsync(File, AnyPort))
        {
            using HttpClient here = new() { BaseAddress = alone.Url };
            foreach (string? wrong in new[] { null, "", "wrong", token + "x", new string('x', 5000) })
            {
                Assert.Equal((HttpStatusCode.Unauthorized, true), Says(await SendAsync(here, wrong, """{ "gravity": 1.048 }"""), "Authorization: Bearer TOKEN"));
            }
        }

        // Opened to others: the device needs no password, and its token is none.
        await using ServedBook open = await ServedBook.StartAsync(File, "http://0.0.0.0:0");
        using HttpClient device = new() { BaseAddress = new Uri($"http://127.0.0.1:{open.Url.Port.ToString(CultureInfo.InvariantCulture)}") };
        Assert.Equal(HttpStatusCode.OK, (await SendAsync(device, token, """{ "gravity": 1.048 }""")).Status);
        Assert.Equal(HttpStatusCode.Unauthorized, (await SendAsync(device, null, """{ "gravity": 1.048 }""")).Status);
        device.DefaultRequestHeaders.Authorization = new("Bearer", token);
        using HttpResponseMessage log = await device.GetAsync("/api/gyles/00000000-0000-0000-0000-000000000001/log", Cancellation);
        Assert.Equal(HttpStatusCode.Unauthorized, log.StatusCode);
        using HttpResponseMessage page = await device.GetAsync("/intake", Cancellation);
        Assert.DoesNotContain("Gyle 1", await page.Content.ReadAsStringAsync(Cancellation), StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_and_a_table_are_put_into_a_gyle_on_the_terminal()
    {
        Assert.Equal(0, GylebookProgram.Run(["gyle", "start", RepositoryFile.PathOf("samples/recipes/plain-bitter.json"), "--as", "Gyle 1", "--book", File]).ExitCode);
        Ran added = GylebookProgram.Run(["device", "add", "Red float", "--gyle", "Gyle 1", "--book", File, "--json"]);
        Assert.True(added.ExitCode == 0, added.Errors);
        Assert.Contains("\"Red float\", in \"Gyle 1\": has sent nothing yet", GylebookProgram.Run(["device", "list", "--book", File]).Output, StringComparison.Ordinal);
        Assert.Contains("in no gyle from now on", GylebookProgram.Run(["device", "move", "red float", "--out", "--book", File]).Output, StringComparison.Ordinal);
        Ran none = GylebookProgram.Run(["device", "move", "blue float", "--gyle", "Gyle 1", "--book", File]);
        Assert.Equal((1, true), (none.ExitCode, none.Errors.Contains("there are \"Red float\"", StringComparison.Ordinal)));

        string table = Path.Combine(_folder, "float.csv");
        string made = GylebookProgram.Run(["simulate-sensor", "--csv", "--count", "50", "--from", "2026-03-01T18:00:00Z", "--seed", "a table"]).Output;
        Assert.StartsWith("# Invented", made, StringComparison.Ordinal);
        System.IO.File.WriteAllText(table, made + "yesterday,1.040,20,\n");
        Ran first = GylebookProgram.Run(["gyle", "read", "Gyle 1", "ferment", "--csv", table, "--book", File]);
        Assert.Equal((1, "50 readings taken, 0 known already, 1 line refused."), (first.ExitCode, first.Output.Trim()));
        Assert.Contains("line 53: time \"yesterday\"", first.Errors, StringComparison.Ordinal);
        System.IO.File.WriteAllText(table, made);
        Ran again = GylebookProgram.Run(["gyle", "read", "Gyle 1", "ferment", "--csv", table, "--book", File, "--json"]);
        using var told = JsonDocument.Parse(again.Output);
        Assert.Equal((0, 0, 50), (again.ExitCode, told.RootElement.GetProperty("taken").GetInt32(), told.RootElement.GetProperty("known").GetInt32()));
        Assert.Equal(50, Rows());
    }

    [Theory]
    [InlineData("--csv is for readings at ferment", "gyle", "read", "Gyle 1", "cast", "--csv", "x.csv")]
    [InlineData("stands without a gravity", "gyle", "read", "Gyle 1", "ferment", "--csv", "x.csv", "--gravity", "1.048")]
    [InlineData("Say a device's token", "simulate-sensor")]
    [InlineData("--spikes 2: must be a number from 0 to 1", "simulate-sensor", "--csv", "--spikes", "2")]
    [InlineData("--count 0: must be a number from 1 to 1000000", "simulate-sensor", "--csv", "--count", "0")]
    [InlineData("--from \"soon\"", "simulate-sensor", "--csv", "--from", "soon")]
    [InlineData("--kind boat", "device", "add", "Red", "--kind", "boat")]
    [InlineData("either --gyle GYLE or --out", "device", "move", "Red")]
    public void Invalid_usage_gets_one_line_that_names_it(string told, params string[] arguments)
    {
        Ran ran = GylebookProgram.Run(arguments);
        Assert.Equal(("", 2), (ran.Output, ran.ExitCode));
        Assert.Contains(told.Replace("--csv is", "'--csv' is", StringComparison.Ordinal), Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    /// <summary>A book with a float in it, and without the demo.</summary>
    /// <returns>The float's token.</returns>
    private async Task<string> DeviceAsync()
    {
        const string Token = "a token of this test";
        await using Book book = await SqliteBook.OpenAsync(File, TimeProvider.System, cancellation: Cancellation);
        await book.Demo.MarkHereAsync(Cancellation);
        await book.Devices.AddAsync("Red float", DeviceKind.Floating, Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(Token))), Cancellation);
        return Token;
    }

    private static async Task<(HttpStatusCode Status, string Text)> SendAsync(HttpClient client, string? token, string body)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, "/intake") { Content = new StringContent(body, Encoding.UTF8) };
        if (token is not null)
        {
            request.Headers.TryAddWithoutValidation("Authorization", $"Bearer {token}");
        }

        using HttpResponseMessage answer = await client.SendAsync(request, Cancellation);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(Cancellation));
    }

    private static (HttpStatusCode Status, int Taken, int Known) Counted((HttpStatusCode Status, string Text) answer)
    {
        using var told = JsonDocument.Parse(answer.Text);
        return (answer.Status, told.RootElement.GetProperty("taken").GetInt32(), told.RootElement.GetProperty("known").GetInt32());
    }

    private static (HttpStatusCode Status, bool Says) Says((HttpStatusCode Status, string Text) answer, string words) =>
        (answer.Status, answer.Text.Replace("\\u0022", "\"", StringComparison.Ordinal).Contains(words, StringComparison.Ordinal));

    private int Rows() => Sql("SELECT count(*) FROM sensor_rows");

    private int Sql(string sql)
    {
        using SqliteConnection connection = new($"Data Source={File};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        return (int)(long)command.ExecuteScalar()!;
    }

    private static async Task WaitUntilAsync(Func<bool> isSo)
    {
        for (int i = 0; i < 600 && !isSo(); i++)
        {
            await Task.Delay(50, Cancellation);
        }

        Assert.True(isSo(), "It did not happen.");
    }

    private static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
