using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Gylebook.Recipes.Documents;

/// <summary>Bytes of JSON to a node, or the line and column where they stop being one.</summary>
/// <remarks>Nothing here recurses, so no depth of nesting can overflow the stack.</remarks>
internal static class NodeText
{
    internal const int MostBytes = 50_000_000;
    internal const int DeepestNesting = 64;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    internal static Node? Read(string text, FindingList findings)
    {
        if (text.Length > MostBytes)
        {
            TooLarge(text.Length, findings);
            return null;
        }

        try
        {
            return Read(Strict.GetBytes(text), findings);
        }
        catch (EncoderFallbackException broken)
        {
            findings.Error("file.encoding", "", Invariant($"character {broken.Index + 1} is half of a pair; the text cannot be written as UTF-8"));
            return null;
        }
    }

    internal static Node? Read(Stream stream, FindingList findings) => BytesOf(stream, findings) is { } bytes ? Read(bytes, findings) : null;

    /// <summary>All bytes of a stream; null, with a finding, when it is too large.</summary>
    internal static ReadOnlyMemory<byte>? BytesOf(Stream stream, FindingList findings)
    {
        if (stream.CanSeek && stream.Length - stream.Position > MostBytes)
        {
            TooLarge(stream.Length - stream.Position, findings);
            return null;
        }

        using var copy = new MemoryStream();
        var part = new byte[81_920];
        for (int read; (read = stream.Read(part)) > 0;)
        {
            copy.Write(part, 0, read);
            if (copy.Length > MostBytes)
            {
                TooLarge(copy.Length, findings);
                return null;
            }
        }

        return copy.GetBuffer().AsMemory(0, (int)copy.Length);
    }

    internal static Node? Read(ReadOnlyMemory<byte> bytes, FindingList findings)
    {
        if (bytes.Length > MostBytes)
        {
            TooLarge(bytes.Length, findings);
            return null;
        }

        bytes = WithoutMark(bytes);
        return IsUtf8(bytes.Span, findings) ? Parse(bytes.Span, findings) : null;
    }

    /// <summary>The bytes without the mark that some editors put before UTF-8.</summary>
    internal static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> bytes) =>
        bytes.Span.StartsWith(Encoding.UTF8.Preamble) ? bytes[Encoding.UTF8.Preamble.Length..] : bytes;

    private static bool IsUtf8(ReadOnlySpan<byte> bytes, FindingList findings)
    {
        if (Utf8.IsValid(bytes))
        {
            return true;
        }

        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var length) == OperationStatus.Done)
        {
            at += length;
        }

        findings.Error("file.encoding", "", $"{Place(bytes, at)}: not UTF-8; save the file as UTF-8", $"byte 0x{bytes[at]:X2}");
        return false;
    }

    private static Node? Parse(ReadOnlySpan<byte> bytes, FindingList findings)
    {
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = 2 * DeepestNesting });
        try
        {
            var tree = new Growing();
            while (reader.Read())
            {
                if (reader.TokenType is JsonTokenType.StartArray or JsonTokenType.StartObject && reader.CurrentDepth >= DeepestNesting)
                {
                    findings.Error(
                        "file.depth", "", $"{Place(bytes, (int)reader.TokenStartIndex)}: nested more than {DeepestNesting} deep",
                        null, $"{DeepestNesting}");
                    return null;
                }

                tree.Take(ref reader);
            }

            return tree.Whole;
        }
        catch (JsonException broken)
        {
            var at = Offset(bytes, broken.LineNumber ?? 0, broken.BytePositionInLine ?? 0);
            findings.Error("file.json", "", $"{Place(bytes, at)}: the JSON is broken: {Reason(broken.Message)}");
            return null;
        }
        catch (InvalidOperationException)
        {
            findings.Error("file.encoding", "", $"{Place(bytes, (int)reader.TokenStartIndex)}: an escape in this text is half of a character pair");
            return null;
        }
    }

    private static string Reason(string message)
    {
        var end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return (end < 0 ? message : message[..end]).TrimEnd('.');
    }

    private static int Offset(ReadOnlySpan<byte> bytes, long line, long column)
    {
        var start = 0;
        for (; line > 0; line--)
        {
            start += bytes[start..].IndexOf((byte)'\n') + 1;
        }

        return (int)Math.Min(start + column, bytes.Length);
    }

    private static string Place(ReadOnlySpan<byte> bytes, int at)
    {
        var before = bytes[..at];
        var line = before.Count((byte)'\n') + 1;
        var column = Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]) + 1;
        return Invariant($"line {line}, column {column}");
    }

    internal static void TooLarge(long length, FindingList findings) => findings.Error(
        "file.large", "", $"the file is larger than {MostBytes / 1_000_000} MB and was not read",
        Invariant($"{length} bytes"), $"{MostBytes / 1_000_000} MB");

    /// <summary>A node while its parts arrive; what is open stands on a stack of its own.</summary>
    private sealed class Growing
    {
        private readonly Stack<(string? Key, List<KeyValuePair<string, Node>>? Pairs, List<Node>? Items)> _open = new();
        private string? _key;

        public Node? Whole { get; private set; }

        public void Take(ref Utf8JsonReader reader)
        {
            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName:
                    _key = reader.GetString();
                    break;
                case JsonTokenType.StartObject:
                    _open.Push((_key, [], null));
                    break;
                case JsonTokenType.StartArray:
                    _open.Push((_key, null, []));
                    break;
                case JsonTokenType.EndObject or JsonTokenType.EndArray:
                    var (key, pairs, items) = _open.Pop();
                    _key = key;
                    Add(pairs is not null ? new ObjectNode([.. pairs]) : new ListNode([.. items!]));
                    break;
                case JsonTokenType.String:
                    Add(new TextNode(reader.GetString()!));
                    break;
                default:
                    Add(new BareNode(Encoding.UTF8.GetString(reader.ValueSpan)));
                    break;
            }
        }

        private void Add(Node node)
        {
            if (!_open.TryPeek(out var parent))
            {
                Whole = node;
            }
            else if (parent.Pairs is { } pairs)
            {
                pairs.Add(new(_key!, node));
            }
            else
            {
                parent.Items!.Add(node);
            }
        }
    }
}
