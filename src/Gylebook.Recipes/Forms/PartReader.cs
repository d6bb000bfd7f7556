using Gylebook.Recipes.Documents;

namespace Gylebook.Recipes.Forms;

/// <summary>Takes an object apart key by key; a key nobody asked for is a finding.</summary>
internal sealed class PartReader
{
    private readonly Dictionary<string, Node> _values = new(StringComparer.Ordinal);
    private readonly List<string> _asked = [];

    /// <summary>A reader of that object.</summary>
    public PartReader(ObjectNode node, FindingList findings)
    {
        Findings = findings;
        foreach ((string key, Node value) in node.Pairs)
        {
            if (!_values.TryAdd(key, value))
            {
                Findings.Error("key.duplicate", PathOf(key), "this key is written twice; keep one");
            }
        }
    }

    public FindingList Findings { get; }

    /// <summary>The value behind a key, or null when it is absent or null.</summary>
    public NodeCursor? Take(string key)
    {
        _asked.Add(key);
        return _values.TryGetValue(key, out Node? value) && value is not BareNode { IsNull: true }
            ? new NodeCursor(value, PathOf(key), Findings)
            : null;
    }

    /// <summary>The value behind a key that must be there.</summary>
    public NodeCursor? Need(string key)
    {
        NodeCursor? at = Take(key);
        if (at is null)
        {
            Findings.Error("key.missing", PathOf(key), "this key is missing");
        }

        return at;
    }

    /// <summary>The one key of these that is there; a finding when there is none, or more than one.</summary>
    public string? ExactlyOne(IReadOnlyCollection<string> keys)
    {
        List<string> there = [.. keys.Where(key => Take(key) is not null)];
        if (there.Count != 1)
        {
            string choice = string.Join(", ", keys);
            Findings.Error(
                there.Count == 0 ? "key.missing" : "key.several", "",
                $"needs exactly one of {choice}; it has {(there.Count == 0 ? "none" : string.Join(" and ", there))}",
                string.Join(", ", there), "1");
        }

        return there.Count == 1 ? there[0] : null;
    }

    public static string PathOf(string key) => FindingList.Shorten(key);

    /// <summary>Tells of every key that nobody asked for.</summary>
    public void Finish()
    {
        foreach (string key in _values.Keys.Except(_asked, StringComparer.Ordinal).TakeWhile(_ => !Findings.IsFull))
        {
            string typed = FindingList.Shorten(key);
            Findings.Error("key.unknown", PathOf(key), $"this key is not known here; the nearest known one is \"{NearestWord.To(typed, _asked)}\"", typed);
        }
    }
}
