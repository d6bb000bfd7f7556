using Gylebook.Recipes.Documents;

namespace Gylebook.Recipes.Forms;

/// <summary>A value in a file while it is read, with the path that leads to it and the list that takes its findings.</summary>
/// <param name="Node">The value.</param>
/// <param name="Path">Where it stands, from the part that is being read.</param>
/// <param name="Findings">What was found in that part.</param>
internal readonly record struct NodeCursor(Node Node, string Path, FindingList Findings)
{
    /// <summary>The text; null, and told why, when it is none or too long.</summary>
    public string? Text(int longest)
    {
        if (Node is not TextNode { Text: var text })
        {
            IsNot("text");
            return null;
        }

        if (text.Length <= longest)
        {
            return text;
        }

        string limit = Invariant($"{longest} characters");
        Findings.Error("text.long", Path, $"the text is too long; at most {limit}", text, limit);
        return null;
    }

    /// <summary>Tells that a value is of another sort than wanted.</summary>
    public void IsNot(string wanted) => Findings.Error("json.kind", Path, $"must be {wanted}; this is {Node.Sort}", Node.Sort, wanted);

    /// <summary>Tells of an error at this value.</summary>
    public void Error(string code, string message, string? value = null, string? limit = null) => Findings.Error(code, Path, message, value, limit);
}

/// <summary>A part of a file whose fields were read and now are held against each other.</summary>
/// <param name="Path">Where the part stands, from the part above.</param>
/// <param name="Findings">What was found in it.</param>
internal readonly record struct PartCursor(string Path, FindingList Findings)
{
    /// <summary>The path of one of its fields.</summary>
    public string PathOf(string key) => Path.Length == 0 ? FindingList.Shorten(key) : $"{Path}.{FindingList.Shorten(key)}";

    /// <summary>Tells of an error at one of its fields; at the part itself for an empty key.</summary>
    public void Error(string code, string key, string message, string? value = null, string? limit = null) =>
        Findings.Error(code, key.Length == 0 ? Path : PathOf(key), message, value, limit);

    /// <summary>Tells of something doubtful at one of its fields.</summary>
    public void Warning(string code, string key, string message) => Findings.Warning(code, PathOf(key), message);
}
