using System.Collections.Immutable;
using System.Text.Encodings.Web;

namespace Gylebook.Recipes.Documents;

/// <summary>A value in a file of ours: text, a bare number or word, a list, an object. Never changed; a change gives another.</summary>
/// <remarks>
/// Because nothing changes, an edit shares with the file before it all it did not touch, and what was worked out for a node
/// once (its text on one line, what it means) holds for as long as the node is there.
/// </remarks>
public abstract class Node
{
    /// <summary>The text that stands for a value of this sort in a sentence.</summary>
    internal abstract string Sort { get; }

    /// <summary>Whether both say the same, whatever the order of keys.</summary>
    internal abstract bool Says(Node? other);

    /// <summary>An object of those pairs.</summary>
    internal static ObjectNode Object(params IEnumerable<(string Key, Node Value)> pairs) =>
        new([.. pairs.Select(pair => new KeyValuePair<string, Node>(pair.Key, pair.Value))]);

    /// <summary>The same of two that may not be there.</summary>
    internal static bool Same(Node? one, Node? other) => ReferenceEquals(one, other) || (one is not null && one.Says(other));
}

/// <summary>A text.</summary>
/// <param name="text">What it says.</param>
internal sealed class TextNode(string text) : Node
{
    /// <summary>What it says.</summary>
    public string Text { get; } = text;

    internal override string Sort => "text";

    internal override bool Says(Node? other) => other is TextNode text && text.Text == Text;

    public override string ToString() => $"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(Text)}\"";
}

/// <summary>A number, true, false or null, as it was written.</summary>
/// <param name="written">The very characters.</param>
internal sealed class BareNode(string written) : Node
{
    public static BareNode True { get; } = new("true");

    public static BareNode False { get; } = new("false");

    public static BareNode Null { get; } = new("null");

    /// <summary>The very characters.</summary>
    public string Written { get; } = written;

    public bool IsNumber => Written[0] is '-' or (>= '0' and <= '9');

    public bool IsNull => Written == "null";

    internal override string Sort => IsNumber ? "a number" : Written;

    internal override bool Says(Node? other) => other is BareNode bare && bare.Written == Written;

    public override string ToString() => Written;
}

/// <summary>A list.</summary>
/// <param name="items">What is in it.</param>
internal sealed class ListNode(ImmutableArray<Node> items) : Node
{
    public static ListNode Empty { get; } = new([]);

    public ImmutableArray<Node> Items { get; } = items;

    internal override string Sort => "a list";

    internal override bool Says(Node? other) =>
        other is ListNode list && list.Items.Length == Items.Length && Items.Zip(list.Items).All(pair => Same(pair.First, pair.Second));

    public ListNode With(Func<ImmutableArray<Node>, ImmutableArray<Node>> change) => new(change(Items));
}

/// <summary>Keys and what stands behind them, in the order written.</summary>
/// <param name="pairs">The keys, each with its value; a file by hand may say one twice.</param>
internal sealed class ObjectNode(ImmutableArray<KeyValuePair<string, Node>> pairs) : Node
{
    public static ObjectNode Empty { get; } = new([]);

    public ImmutableArray<KeyValuePair<string, Node>> Pairs { get; } = pairs;

    internal override string Sort => "an object";

    /// <summary>What was read from it last: kept by the form that read it.</summary>
    internal object? Meaning { get; set; }

    /// <summary>Its text on one line, once laid out; empty when it does not go on one.</summary>
    internal string? OneLine { get; set; }

    /// <summary>The value behind a key; null when it is not there.</summary>
    public Node? this[string key]
    {
        get
        {
            foreach (KeyValuePair<string, Node> pair in Pairs)
            {
                if (pair.Key == key)
                {
                    return pair.Value;
                }
            }

            return null;
        }
    }

    public bool Has(string key) => this[key] is not null;

    internal override bool Says(Node? other) =>
        other is ObjectNode pairs && pairs.Pairs.Length == Pairs.Length && Pairs.All(pair => Same(pair.Value, pairs[pair.Key]));

    /// <summary>With a key that is there said anew.</summary>
    public ObjectNode Replaced(string key, Node value)
    {
        int place = PlaceOf(key);
        return new ObjectNode(Pairs.SetItem(place, new(key, value)));
    }

    /// <summary>With a key that was not there, at that place.</summary>
    public ObjectNode Inserted(int place, string key, Node value) => new(Pairs.Insert(place, new(key, value)));

    public ObjectNode Without(string key) => PlaceOf(key) is >= 0 and int place ? new ObjectNode(Pairs.RemoveAt(place)) : this;

    private int PlaceOf(string key)
    {
        for (int i = 0; i < Pairs.Length; i++)
        {
            if (Pairs[i].Key == key)
            {
                return i;
            }
        }

        return -1;
    }
}
