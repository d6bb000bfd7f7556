using System.Text;

namespace Gylebook.Site.Folder;

/// <summary>A file of a published folder.</summary>
/// <param name="Path">Where it lies in the folder, with slashes.</param>
/// <param name="Bytes">What is in it.</param>
public sealed record SiteFile(string Path, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>A file of text, UTF-8.</summary>
    public static SiteFile Of(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));

    /// <summary>What a server says it is.</summary>
    public string MediaType => System.IO.Path.GetExtension(Path) switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".svg" => "image/svg+xml",
        ".json" => "application/json",
        ".xml" => Path.EndsWith("feed.xml", StringComparison.Ordinal) ? "application/atom+xml" : "application/xml",
        ".txt" => "text/plain; charset=utf-8",
        ".wasm" => "application/wasm",
        _ => "application/octet-stream",
    };
}
