using System.Globalization;
using System.Text.RegularExpressions;
using Gylebook.Recipes.Documents;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Forms;

/// <summary>The named parts of one JSON Schema while it is made, each written once however many fields refer to it.</summary>
internal sealed class SchemaParts
{
    private readonly SortedDictionary<string, Node> _named = new(StringComparer.Ordinal);

    /// <summary>All that were asked for.</summary>
    public ObjectNode All => new([.. _named]);

    /// <summary>A reference to a part; made at the first asking.</summary>
    public ObjectNode Named(string name, Func<ObjectNode> make)
    {
        if (!_named.ContainsKey(name))
        {
            _named[name] = make();
        }

        return Node.Object(("$ref", new TextNode($"#/$defs/{name}")));
    }

    /// <summary>A reference to a quantity.</summary>
    public ObjectNode Quantity<T>(int longest)
        where T : struct, IQuantity<T>
    {
        string name = JsonName(T.Limits.Name);
        return Named(name, () => Node.Object(
            ("description", new TextNode($"A number and its unit: {UnitTable.RangeOf<T>()}.")),
            ("type", new TextNode("string")),
            ("pattern", new TextNode(Pattern([.. UnitTable.UnitsOf<T>().SelectMany(u => u.Spellings.Prepend(u.Symbol))], isSigned: T.Limits.Low < 0, mayBeBare: UnitTable.KindOf<T>().Bare is not null))),
            ("maxLength", Number(longest)),
            Example(Typical<T>())));
    }

    public static BareNode Number(double number) => new(number.ToString("R", CultureInfo.InvariantCulture));

    /// <summary>The same value, or null.</summary>
    public static ObjectNode OrNull(ObjectNode schema)
    {
        if (schema["enum"] is ListNode words)
        {
            return schema.Replaced("enum", words.With(items => items.Add(BareNode.Null)));
        }

        return schema["type"] is TextNode type
            ? schema.Replaced("type", new ListNode([type, new TextNode("null")]))
            : Node.Object(("anyOf", new ListNode([schema, Node.Object(("type", new TextNode("null")))])));
    }

    /// <summary>With a description before all else.</summary>
    public static ObjectNode Described(ObjectNode schema, string? words) =>
        words is null ? schema : schema.Without("description").Inserted(0, "description", new TextNode(words));

    /// <summary>What such a value may look like.</summary>
    public static (string Key, Node Value) Example(string text) => ("examples", new ListNode([new TextNode(text)]));

    /// <summary>A number as the reader of quantities takes it, and one of the units, in any case: it takes them so too.</summary>
    public static string Pattern(IReadOnlyList<string> units, bool isSigned = false, bool mayBeBare = false)
    {
        string any = string.Join('|', units.Where(u => u is not ("" or "1")).Distinct(StringComparer.Ordinal).Select(Escaped));
        return $@"^\s*{(isSigned ? "[+-]?" : @"\+?")}([0-9]+([.,][0-9]+)?|[.,][0-9]+)([eE][+-]?[0-9]+)?\s*({any}){(mayBeBare ? "?" : "")}\s*$";
    }

    // Only what a regular expression of any dialect must have escaped.
    private static string Escaped(string unit) => Regex.Replace(unit, @"[.*+?^${}()|\[\]\\]", @"\$0");

    private static string JsonName(string name) => char.ToLowerInvariant(name[0]) + name[1..].Replace(" ", "", StringComparison.Ordinal);

    private static string Typical<T>()
        where T : struct, IQuantity<T> => UnitTable.Format(T.FromCanonical(T.Limits.Allow(20) ? 20 : T.Limits.High), UnitTable.UnitsOf<T>()[0].Symbol, 3);
}
