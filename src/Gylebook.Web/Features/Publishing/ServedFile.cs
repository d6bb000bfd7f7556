using System.IO.Compression;
using System.Security.Cryptography;
using Gylebook.Site.Folder;

namespace Gylebook.Web.Features.Publishing;

/// <summary>A file as it is served: plain, packed where that is shorter, and the mark by which a browser knows that it has it.</summary>
/// <param name="File">The file.</param>
/// <param name="Packed">The same by Brotli; null where nobody packed it.</param>
/// <param name="Mark">Its entity tag, in quotes.</param>
internal sealed record ServedFile(SiteFile File, ReadOnlyMemory<byte>? Packed, string Mark)
{
    /// <summary>A page or what belongs to it, packed here.</summary>
    public static ServedFile Of(SiteFile file)
    {
        using MemoryStream packed = new();
        using (BrotliStream brotli = new(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            brotli.Write(file.Bytes.Span);
        }

        return new ServedFile(file, packed.Length < file.Bytes.Length ? packed.ToArray() : null, MarkOf(file));
    }

    /// <summary>A file that is packed already.</summary>
    public static ServedFile Of(SiteFile file, SiteFile? packed) => new(file, packed?.Bytes, MarkOf(file));

    private static string MarkOf(SiteFile file) => $"\"{Convert.ToHexStringLower(SHA256.HashData(file.Bytes.Span).AsSpan(0, 8))}\"";
}

/// <summary>The engine for readers' browsers, read once.</summary>
internal static class ServedEngine
{
    private static readonly Lazy<IReadOnlyDictionary<string, ServedFile>> Read = new(() =>
    {
        Dictionary<string, SiteFile> files = (SiteEngine.IsHere ? SiteEngine.Files() : []).ToDictionary(file => file.Path, StringComparer.Ordinal);
        return files.Values.ToDictionary(file => file.Path, file => ServedFile.Of(file, files.GetValueOrDefault(file.Path + ".br")), StringComparer.Ordinal);
    });

    /// <summary>Its files by path in the folder.</summary>
    public static IReadOnlyDictionary<string, ServedFile> All => Read.Value;
}
