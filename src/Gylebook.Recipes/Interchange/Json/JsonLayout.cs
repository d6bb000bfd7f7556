using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Gylebook.Recipes.Interchange.Json;

/// <summary>Lays JSON out as a person would: what is short and flat on one line, the rest a key a line.</summary>
internal static class JsonLayout
{
    private const int LongestLine = 120;
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The text, two spaces a step, lines ending in a line feed.</summary>
    internal static string Write(JsonObject file)
    {
        var text = new StringBuilder();
        Open(text, file, 0);
        return text.Append('\n').ToString();
    }

    private static void Append(StringBuilder text, string key, JsonNode? node, int indent)
    {
        text.Append(' ', indent).Append(key);
        if (OnOneLine(node, 2) is { } line && (node is not (JsonObject or JsonArray) || indent + key.Length + line.Length < LongestLine))
        {
            text.Append(line);
        }
        else
        {
            Open(text, node!, indent);
        }
    }

    private static void Open(StringBuilder text, JsonNode node, int indent)
    {
        var (first, last) = node is JsonObject ? ('{', '}') : ('[', ']');
        text.Append(first);
        var separator = "\n";
        foreach (var (key, value) in Items(node))
        {
            text.Append(separator);
            Append(text, key, value, indent + 2);
            separator = ",\n";
        }

        text.Append('\n').Append(' ', indent).Append(last);
    }

    /// <summary>The node on one line; null when it holds more levels than that, a list of flat objects being one.</summary>
    private static string? OnOneLine(JsonNode? node, int levels)
    {
        if (node is not (JsonObject or JsonArray))
        {
            return node is null ? "null" : node.ToJsonString(Plain);
        }

        var (first, last, inner) = node is JsonObject ? ("{ ", " }", 0) : ("[ ", " ]", levels - 1);
        var items = Items(node).Select(item => levels > 0 && OnOneLine(item.Value, inner) is { } line ? item.Key + line : null).ToList();
        return items.Contains(null) ? null
            : items.Count == 0 ? node is JsonObject ? "{}" : "[]"
            : first + string.Join(", ", items) + last;
    }

    private static IEnumerable<(string Key, JsonNode? Value)> Items(JsonNode node) => node is JsonObject pairs
        ? pairs.Select(pair => ($"{JsonValue.Create(pair.Key).ToJsonString(Plain)}: ", pair.Value))
        : node.AsArray().Select(item => ("", item));
}
