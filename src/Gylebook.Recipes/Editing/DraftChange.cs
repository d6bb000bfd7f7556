using Gylebook.Recipes.Documents;

namespace Gylebook.Recipes.Editing;

/// <summary>One difference between two drafts, in words, and enough to make it again on a third.</summary>
/// <param name="What">The field or the item: <c>pale ale malt</c>.</param>
/// <param name="Before">What it said; null for nothing.</param>
/// <param name="After">What it says; null for nothing.</param>
public sealed record DraftChange(string What, string? Before, string? After)
{
    /// <summary>The field, outside lists whose items are matched; the field within such an item; empty for the item as a whole.</summary>
    internal string Path { get; init; } = "";

    /// <summary>The list whose item it is about; null outside them.</summary>
    internal string? List { get; init; }

    /// <summary>The item of the first draft that it is about; for a new item the one it stands behind, -1 for the top.</summary>
    internal int Item { get; init; } = -1;

    /// <summary>Whether an item as a whole came.</summary>
    internal bool IsNewItem { get; init; }

    /// <summary>What to put there; null to take away.</summary>
    internal Node? Node { get; init; }

    /// <summary>Whether both cannot be had: they touch the same field, or the same item as a whole.</summary>
    internal bool Touches(DraftChange other)
    {
        if (IsNewItem || other.IsNewItem || List != other.List || Item != other.Item)
        {
            return false;
        }

        return Path.Length == 0 || other.Path.Length == 0 || Path == other.Path
            || IsWithin(Path, other.Path) || IsWithin(other.Path, Path);
    }

    /// <summary>Whether both did the same.</summary>
    internal bool IsSameAs(DraftChange other) =>
        Path == other.Path && List == other.List && Item == other.Item && IsNewItem == other.IsNewItem && Documents.Node.Same(Node, other.Node);

    private static bool IsWithin(string inner, string outer) =>
        inner.StartsWith(outer, StringComparison.Ordinal) && inner[outer.Length] is '.' or '[';
}
