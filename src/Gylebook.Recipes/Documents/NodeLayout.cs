using System.Text;
using System.Text.Encodings.Web;

namespace Gylebook.Recipes.Documents;

/// <summary>Lays a file out as a person would: what is short and flat on one line, the rest a key a line.</summary>
internal static class NodeLayout
{
    private const int LongestLine = 120;

    /// <summary>The text, two spaces a step, lines ending in a line feed.</summary>
    internal static string Write(ObjectNode file)
    {
        StringBuilder text = new();
        Open(text, file, 0);
        return text.Append('\n').ToString();
    }

    private static void Append(StringBuilder text, string key, Node node, int indent)
    {
        text.Append(' ', indent).Append(key);
        if (OnOneLine(node, 2) is { } line && (node is not (ObjectNode or ListNode) || indent + key.Length + line.Length < LongestLine))
        {
            text.Append(line);
        }
        else
        {
            Open(text, node, indent);
        }
    }

    private static void Open(StringBuilder text, Node node, int indent)
    {
        text.Append(node is ObjectNode ? '{' : '[');
        string separator = "\n";
        foreach ((string key, Node value) in Items(node))
        {
            text.Append(separator);
            Append(text, key, value, indent + 2);
            separator = ",\n";
        }

        text.Append('\n').Append(' ', indent).Append(node is ObjectNode ? '}' : ']');
    }

    /// <summary>The node on one line; null when it holds more levels than that, a list of flat objects being one.</summary>
    private static string? OnOneLine(Node node, int levels)
    {
        if (node is not (ObjectNode or ListNode))
        {
            return node.ToString();
        }

        if (levels == 0)
        {
            // Inside something flat only what holds nothing is flat.
            return Items(node).Any() ? null : Empty(node);
        }

        if (node is ObjectNode flat)
        {
            flat.OneLine ??= Joined(flat, 0) ?? "";
            return flat.OneLine.Length > 0 ? flat.OneLine : null;
        }

        return Joined(node, levels - 1);
    }

    private static string? Joined(Node node, int inner)
    {
        List<string> items = [];
        foreach ((string key, Node value) in Items(node))
        {
            if (OnOneLine(value, inner) is not { } line)
            {
                return null;
            }

            items.Add(key + line);
        }

        return items.Count == 0 ? Empty(node)
            : node is ObjectNode ? $"{{ {string.Join(", ", items)} }}"
            : $"[ {string.Join(", ", items)} ]";
    }

    private static string Empty(Node node) => node is ObjectNode ? "{}" : "[]";

    private static IEnumerable<(string Key, Node Value)> Items(Node node) => node is ObjectNode pairs
        ? pairs.Pairs.Select(pair => ($"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(pair.Key)}\": ", pair.Value))
        : ((ListNode)node).Items.Select(item => ("", item));
}
