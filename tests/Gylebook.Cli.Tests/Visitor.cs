using System.Net;
using System.Security.Cryptography;
using System.Text.RegularExpressions;

namespace Gylebook.Cli.Tests;

/// <summary>A browser, as far as cookies and forms go, in front of a book that asks for a password.</summary>
internal sealed partial class Visitor : IDisposable
{
    private readonly HttpClientHandler _handler;

    /// <summary>A browser of its own, with no cookie yet.</summary>
    /// <param name="book">Where the book is.</param>
    public Visitor(Uri book)
    {
        _handler = new()
        {
            AllowAutoRedirect = false,
            ServerCertificateCustomValidationCallback = (_, shown, _, _) =>
            {
                // Nobody vouches for it: which one it is, is what a test asks.
                Certificate = shown?.GetCertHashString(HashAlgorithmName.SHA256);
                return true;
            },
        };
        Client = new(_handler) { BaseAddress = book };
    }

    public HttpClient Client { get; }

    /// <summary>SHA-256 of the certificate that was shown last.</summary>
    public string? Certificate { get; private set; }

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public CookieCollection Cookies => _handler.CookieContainer.GetCookies(Client.BaseAddress!);

    public async Task<(HttpStatusCode Status, string Text)> GetAsync(string path)
    {
        using HttpResponseMessage answer = await Client.GetAsync(path, Cancellation);
        return (answer.StatusCode, answer.Headers.Location?.ToString() ?? await answer.Content.ReadAsStringAsync(Cancellation));
    }

    /// <summary>Opens the page with a form and sends it, as a browser would.</summary>
    public async Task<(HttpStatusCode Status, string Text)> SendFormAsync(string path, params (string Name, string Value)[] fields)
    {
        string page = (await GetAsync(path)).Text;
        return await PostAsync(path, [("__RequestVerificationToken", Token().Match(page).Groups[1].Value), .. fields]);
    }

    public async Task<(HttpStatusCode Status, string Text)> PostAsync(string path, params (string Name, string Value)[] fields)
    {
        using FormUrlEncodedContent form = new(fields.Select(field => KeyValuePair.Create(field.Name, field.Value)));
        using HttpResponseMessage answer = await Client.PostAsync(path, form, Cancellation);
        return (answer.StatusCode, answer.Headers.Location?.ToString() ?? await answer.Content.ReadAsStringAsync(Cancellation));
    }

    public void Dispose()
    {
        Client.Dispose();
        _handler.Dispose();
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
