using System.Net;
using Microsoft.Data.Sqlite;

namespace Gylebook.Browser.Tests;

/// <summary>What the site keeps to itself, and how it says no.</summary>
public sealed class SafetyTests(ChromiumFixture chromium)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_page_comes_with_headers_that_keep_it_to_itself()
    {
        using HttpClient client = new();
        using HttpResponseMessage answer = await client.GetAsync(chromium.Url, Cancellation);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        string policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Fact]
    public async Task A_page_that_is_not_there_says_so()
    {
        using HttpClient client = new();
        using HttpResponseMessage answer = await client.GetAsync(new Uri(chromium.Url + "/no-such-page"), Cancellation);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("There is no such page", await answer.Content.ReadAsStringAsync(Cancellation), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_address_for_programs_answers_with_problem_details()
    {
        using HttpClient client = new();
        using HttpResponseMessage answer = await client.GetAsync(new Uri(chromium.Url + "/api/nothing"), Cancellation);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task A_made_up_host_name_is_refused()
    {
        using HttpClient client = new();
        using HttpRequestMessage request = new(HttpMethod.Get, chromium.Url);
        request.Headers.Host = "elsewhere.example";
        using HttpResponseMessage answer = await client.SendAsync(request, Cancellation);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task A_page_that_fails_says_a_sentence_to_the_reader_and_the_rest_to_the_terminal()
    {
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync();
        await using (SqliteConnection connection = new($"Data Source={gylebook.Book};Pooling=False"))
        {
            await connection.OpenAsync(Cancellation);
            await using SqliteCommand command = connection.CreateCommand();
            command.CommandText = "ALTER TABLE kits RENAME TO kits_that_are_gone";
            await command.ExecuteNonQueryAsync(Cancellation);
        }

        using HttpClient client = new();
        using HttpResponseMessage answer = await client.GetAsync(new Uri(gylebook.Url + "/kits"), Cancellation);
        string page = await answer.Content.ReadAsStringAsync(Cancellation);
        Assert.Contains("Something went wrong", page, StringComparison.Ordinal);
        Assert.DoesNotContain("no such table", page, StringComparison.Ordinal);
        Assert.DoesNotContain(" at Gylebook.", page, StringComparison.Ordinal);
        Assert.Contains("no such table", (await gylebook.StopAsync()).Errors, StringComparison.Ordinal);
    }
}
