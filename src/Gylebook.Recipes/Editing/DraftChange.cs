using System.Text.Json.Nodes;

namespace Gylebook.Recipes.Editing;

/// <summary>One difference between two drafts, in words, and enough to make it again on a third.</summary>
/// <param name="What">The field or the line: <c>pale ale malt</c>.</param>
/// <param name="Before">What it said; null for nothing.</param>
/// <param name="After">What it says; null for nothing.</param>
public sealed record DraftChange(string What, string? Before, string? After)
{
    /// <summary>The field, outside lines; the key, within a line; empty for a line as a whole.</summary>
    internal string Path { get; init; } = "";

    /// <summary>The line of the first draft that it is about; for a new line the one it stands behind, -1 for the top.</summary>
    internal int? Line { get; init; }

    /// <summary>Whether a line as a whole came.</summary>
    internal bool IsNewLine { get; init; }

    /// <summary>What to put there; null to take away.</summary>
    internal JsonNode? Node { get; init; }

    /// <summary>Whether both cannot be had: they touch the same field, or the same line as a whole.</summary>
    internal bool Touches(DraftChange other)
    {
        if (IsNewLine || other.IsNewLine || Line != other.Line)
        {
            return false;
        }

        return Path.Length == 0 || other.Path.Length == 0 || Path == other.Path
            || IsWithin(Path, other.Path) || IsWithin(other.Path, Path);
    }

    /// <summary>Whether both did the same.</summary>
    internal bool IsSameAs(DraftChange other) =>
        Path == other.Path && Line == other.Line && IsNewLine == other.IsNewLine && JsonNode.DeepEquals(Node, other.Node);

    private static bool IsWithin(string inner, string outer) =>
        inner.StartsWith(outer, StringComparison.Ordinal) && inner[outer.Length] is '.' or '[';
}
