using System.Collections.Concurrent;
using System.Net;

namespace Gylebook.Browser.Tests;

/// <summary>A web host that knows nothing: files of a folder as they lie there, not packed, by what their names end in.</summary>
internal sealed class PlainHost : IAsyncDisposable
{
    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        [".html"] = "text/html", [".css"] = "text/css", [".js"] = "text/javascript", [".json"] = "application/json", [".svg"] = "image/svg+xml", [".xml"] = "text/xml", [".wasm"] = "application/wasm",
    };

    private readonly HttpListener _listener = new();
    private readonly string _folder;
    private readonly Task _serving;

    /// <summary>Serves that folder from now on.</summary>
    public PlainHost(string folder)
    {
        _folder = Path.GetFullPath(folder);
        Url = $"http://127.0.0.1:{RunningGylebook.FreePort()}/";
        _listener.Prefixes.Add(Url);
        _listener.Start();
        _serving = ServeAsync();
    }

    /// <summary>Where it is.</summary>
    public string Url { get; }

    /// <summary>What was sent, in bytes, by path.</summary>
    public ConcurrentDictionary<string, long> Sent { get; } = new();

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await OpenTabs.CloseAsync(Url);
        _listener.Stop();
        await _serving;
        _listener.Close();
    }

    private async Task ServeAsync()
    {
        while (_listener.IsListening)
        {
            HttpListenerContext asked;
            try
            {
                asked = await _listener.GetContextAsync();
            }
            catch (Exception ended) when (ended is HttpListenerException or ObjectDisposedException)
            {
                return;
            }

            _ = AnswerAsync(asked);
        }
    }

    private async Task AnswerAsync(HttpListenerContext asked)
    {
        string path = asked.Request.Url!.AbsolutePath.TrimStart('/');
        string file = Path.GetFullPath(Path.Combine(_folder, path.Length == 0 || path.EndsWith('/') ? path + "index.html" : path));
        using HttpListenerResponse response = asked.Response;
        if (!file.StartsWith(_folder, StringComparison.Ordinal) || !File.Exists(file))
        {
            response.StatusCode = 404;
            return;
        }

        byte[] bytes = await File.ReadAllBytesAsync(file);
        Sent[path] = bytes.Length;
        response.ContentType = Types.GetValueOrDefault(Path.GetExtension(file), "application/octet-stream");
        response.ContentLength64 = bytes.Length;
        await response.OutputStream.WriteAsync(bytes);
    }
}
