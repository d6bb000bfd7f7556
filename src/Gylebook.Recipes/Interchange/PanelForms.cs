using System.Collections.Immutable;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>A line of a nutrition panel. Those that panels of its style have are written even when nothing is printed there.</summary>
internal sealed class PanelLine<T>(string key, string words, ValueForm<T> value, Func<LabelPanel, T?> of, Func<LabelPanel, T?, LabelPanel> with, Func<LabelPanel, bool> isShown)
    : Field<LabelPanel>(key, words, FieldNotes.None)
    where T : struct
{
    public override ValueForm Value => value;

    public override bool IsOptional => true;

    internal override LabelPanel Read(PartReader reader, LabelPanel part) =>
        reader.Take(Key) is { } at && value.TryRead(at, out T read) ? with(part, read) : part;

    internal override void Write(LabelPanel part, ImmutableArray<KeyValuePair<string, Node>>.Builder pairs)
    {
        if (of(part) is { } there)
        {
            pairs.Add(new(Key, value.Write(there)));
        }
        else if (isShown(part))
        {
            pairs.Add(new(Key, BareNode.Null));
        }
    }

    internal override IEnumerable<(string Key, Node Value)> Schema(SchemaParts parts) => [(Key, SchemaParts.OrNull(value.Schema(parts)))];
}

/// <summary>A printed figure, or "less than 1 g", "&lt; 1 g".</summary>
internal sealed class PrintedForm : ValueForm<PrintedMass>
{
    private const string LessThan = "less than ";

    public static PrintedForm Only { get; } = new();

    public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Quantity<Mass>();

    internal override bool TryRead(NodeCursor at, out PrintedMass value)
    {
        if (at.Node is TextNode { Text: var text } && Bound(text.Trim()) is { } bound && UnitTable.TryParse(bound, out Entered<Mass> most, out _))
        {
            value = PrintedMass.LessThan(most.Value, text);
            return true;
        }

        bool isRead = Leaves.Of<Mass>().TryRead(at, out Entered<Mass> amount);
        value = isRead ? PrintedMass.Of(amount) : default;
        return isRead;
    }

    internal override Node Write(PrintedMass value) => new TextNode(value.Text);

    internal override ObjectNode Schema(SchemaParts parts) => parts.Named("printed", () => Node.Object(
        ("description", new TextNode("As printed, '< 1 g' too.")),
        ("type", new TextNode("string")),
        ("maxLength", new BareNode("64")),
        ("pattern", new TextNode(@"^\s*((<|less than)\s*)?([0-9]+([.,][0-9]+)?|[.,][0-9]+)([eE][+-]?[0-9]+)?\s*(kg|g|mg|lb|oz)\s*$"))));

    private static string? Bound(string text) => text.StartsWith('<') ? text[1..]
        : text.StartsWith(LessThan, StringComparison.Ordinal) ? text[LessThan.Length..]
        : null;
}

/// <summary>What is in 100 g of a food: a mass of at most as much, kept as a number.</summary>
internal sealed class InHundred : ValueForm<double>
{
    private const double Whole = 100;
    private readonly string _unit;
    private readonly double _perGram;

    private InHundred(string unit, double perGram) => (_unit, _perGram) = (unit, perGram);

    public static InHundred Grams { get; } = new("g", 1);

    public static InHundred Milligrams { get; } = new("mg", 1000);

    public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Quantity<Mass>();

    internal override bool TryRead(NodeCursor at, out double value)
    {
        bool isRead = Leaves.Of<Mass>().TryRead(at, out Entered<Mass> entered);
        value = entered.Value.Grams * _perGram;
        if (isRead && entered.Value.Grams > Whole)
        {
            at.Error("composition.range", Invariant($"{entered}; must be at most {Whole} g in {Whole} g of the food"), entered.Text, Invariant($"{Whole} g"));
            return false;
        }

        return isRead;
    }

    internal override Node Write(double value) => new TextNode(Invariant($"{value:0.#########} {_unit}"));

    internal override ObjectNode Schema(SchemaParts parts) => Leaves.Of<Mass>().Schema(parts);
}

/// <summary>An id that recipes can call a sheet by.</summary>
internal static class SheetId
{
    private const string Form = "small letters a to z, digits and hyphens between them";

    public static ValueForm<string> Only { get; } = new NarrowedForm<string>(
        Leaves.Name,
        IsId,
        Node.Object(("type", new TextNode("string")), ("maxLength", new BareNode("200")), ("pattern", new TextNode("^[a-z0-9]([a-z0-9-]*[a-z0-9])?$"))));

    private static bool IsId(NodeCursor at, string id)
    {
        bool isId = id.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') && id[0] != '-' && id[^1] != '-';
        if (!isId)
        {
            at.Error("id.wrong", $"\"{FindingList.Shorten(id)}\"; must be {Form}", id, Form);
        }

        return isId;
    }
}
