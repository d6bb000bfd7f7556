using System.Text;
using ZstdSharp;

namespace Gylebook.Store;

/// <summary>A text of the edit log as bytes: a Zstandard frame, alone or as the difference to another text.</summary>
/// <remarks>
/// The other text is the frame's dictionary, as raw content, in UTF-8. Any Zstandard reads it: <c>zstd -d -D other.json</c>.
/// Source: RFC 8878, DOI 10.17487/RFC8878. See decision 0022.
/// </remarks>
internal static class PackedText
{
    // Higher levels save a tenth at most, and take a long text a millisecond and more: docs/benchmarks.md.
    private const int Level = 6;

    // Far above any document: a frame that claims more is damaged.
    private const int MostBytes = 64 << 20;

    /// <summary>Packs a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="other">The text it is the difference to; null to pack it alone.</param>
    public static byte[] Pack(string text, string? other = null)
    {
        using var compressor = new Compressor(Level);
        if (other is not null)
        {
            compressor.LoadDictionary(Encoding.UTF8.GetBytes(other));
        }

        return compressor.Wrap(Encoding.UTF8.GetBytes(text)).ToArray();
    }

    /// <summary>The text again; null when the bytes are damaged.</summary>
    /// <param name="packed">From <see cref="Pack"/>.</param>
    /// <param name="other">The text it is the difference to; null where it was packed alone.</param>
    public static string? Open(byte[] packed, string? other = null)
    {
        try
        {
            using var decompressor = new Decompressor();
            if (other is not null)
            {
                decompressor.LoadDictionary(Encoding.UTF8.GetBytes(other));
            }

            return Encoding.UTF8.GetString(decompressor.Unwrap(packed, MostBytes));
        }
        catch (ZstdException)
        {
            return null;
        }
    }
}
