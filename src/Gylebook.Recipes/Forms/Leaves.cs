using System.Globalization;
using Gylebook.Recipes.Documents;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Forms;

/// <summary>The kinds of value that hold no others: names, quantities, numbers, words.</summary>
internal static class Leaves
{
    /// <summary>A name, on one line.</summary>
    public static ValueForm<string> Name { get; } = new NameForm();

    /// <summary>Text of any length.</summary>
    public static ValueForm<string> Prose { get; } = new ProseForm();

    /// <summary>Yes or no.</summary>
    public static ValueForm<bool> Flag { get; } = new FlagForm();

    /// <summary>A day, "2026-03-01".</summary>
    public static ValueForm<DateOnly> Day { get; } = new DayForm();

    /// <summary>A number with a unit.</summary>
    public static ValueForm<Entered<T>> Of<T>()
        where T : struct, IQuantity<T> => QuantityForm<T>.Only;

    /// <summary>A bare number within limits.</summary>
    public static ValueForm<double> Number(double low, double high) => new NumberForm(low, high);

    /// <summary>One of a few words.</summary>
    public static ValueForm<TEnum> Word<TEnum>(WordTable<TEnum> table)
        where TEnum : struct, Enum => new WordForm<TEnum>(table);

    private sealed class NameForm : ValueForm<string>
    {
        private const int Longest = 200;

        public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Text(isLong: false);

        internal override bool TryRead(NodeCursor at, out string value)
        {
            string? text = at.Text(Longest);
            value = text ?? "";
            if (text is null)
            {
                return false;
            }

            if (string.IsNullOrWhiteSpace(value) || value.Any(char.IsControl))
            {
                at.Error("text.empty", "must have at least one visible character, all on one line", value);
                return false;
            }

            return true;
        }

        internal override Node Write(string value) => new TextNode(value);

        internal override ObjectNode Schema(SchemaParts parts) => parts.Named("name", () => Node.Object(
            ("description", new TextNode("Something to call it by, on one line.")), ("type", new TextNode("string")),
            ("minLength", new BareNode("1")), ("maxLength", SchemaParts.Number(Longest)),
            ("pattern", new TextNode(@"^[^\u0000-\u001f\u007f-\u009f]*\S[^\u0000-\u001f\u007f-\u009f]*$"))));
    }

    private sealed class ProseForm : ValueForm<string>
    {
        private const int Longest = 100_000;

        public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Text(isLong: true);

        internal override bool TryRead(NodeCursor at, out string value) => (value = at.Text(Longest)!) is not null;

        internal override Node Write(string value) => new TextNode(value);

        internal override ObjectNode Schema(SchemaParts parts) =>
            Node.Object(("type", new TextNode("string")), ("maxLength", SchemaParts.Number(Longest)));
    }

    private sealed class FlagForm : ValueForm<bool>
    {
        public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Flag();

        internal override bool TryRead(NodeCursor at, out bool value)
        {
            value = at.Node.Says(BareNode.True);
            if (value || at.Node.Says(BareNode.False))
            {
                return true;
            }

            at.IsNot("true or false");
            return false;
        }

        internal override Node Write(bool value) => value ? BareNode.True : BareNode.False;

        internal override Node Typed(string text) => text switch { "true" => BareNode.True, "false" => BareNode.False, _ => base.Typed(text) };

        internal override ObjectNode Schema(SchemaParts parts) => Node.Object(("type", new TextNode("boolean")));
    }

    private sealed class DayForm : ValueForm<DateOnly>
    {
        private const string Iso = "yyyy-MM-dd";

        public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Day();

        internal override bool TryRead(NodeCursor at, out DateOnly value)
        {
            value = default;
            if (at.Text(int.MaxValue) is not { } text)
            {
                return false;
            }

            if (DateOnly.TryParseExact(text, Iso, CultureInfo.InvariantCulture, DateTimeStyles.None, out value))
            {
                return true;
            }

            at.Error("date.wrong", $"\"{FindingList.Shorten(text)}\"; write a day as \"2026-03-01\": year, month, day", text, Iso);
            return false;
        }

        internal override Node Write(DateOnly value) => new TextNode(value.ToString(Iso, CultureInfo.InvariantCulture));

        internal override ObjectNode Schema(SchemaParts parts) => parts.Named("day", () => Node.Object(
            ("description", new TextNode("A day: year, month, day.")), ("type", new TextNode("string")), ("format", new TextNode("date")),
            ("pattern", new TextNode("^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$"))));
    }

    private sealed class QuantityForm<T> : ValueForm<Entered<T>>
        where T : struct, IQuantity<T>
    {
        private const int Longest = 64;

        public static QuantityForm<T> Only { get; } = new();

        public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Quantity<T>();

        internal override bool TryRead(NodeCursor at, out Entered<T> value)
        {
            value = default;
            if (at.Node is BareNode { IsNumber: true } number)
            {
                string bare = FindingList.Shorten(number.Written);
                at.Error("quantity.bare", $"{bare} has no unit; write it as text with one, such as \"1 {UnitTable.UnitsOf<T>()[0]}\"", bare);
                return false;
            }

            if (at.Text(Longest) is not { } text)
            {
                return false;
            }

            if (UnitTable.TryParse(text, out value, out string problem))
            {
                return true;
            }

            at.Error("quantity.wrong", problem.TrimEnd('.'), text, UnitTable.RangeOf<T>());
            return false;
        }

        internal override Node Write(Entered<T> value) => new TextNode(value.Text);

        internal override ObjectNode Schema(SchemaParts parts) => parts.Quantity<T>(Longest);
    }

    private sealed class NumberForm(double low, double high) : ValueForm<double>
    {
        private string Limit => Invariant($"{low:0.######} to {high:0.######}");

        public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Number();

        internal override bool TryRead(NodeCursor at, out double value)
        {
            value = 0;
            if (at.Node is not BareNode { IsNumber: true } number)
            {
                at.IsNot($"a number from {Limit}");
                return false;
            }

            value = double.Parse(number.Written, CultureInfo.InvariantCulture);
            if (value >= low && value <= high)
            {
                return true;
            }

            at.Error("number.range", $"{FindingList.Shorten(number.Written)}; must be from {Limit}", number.Written, Limit);
            return false;
        }

        internal override Node Write(double value) => SchemaParts.Number(value);

        internal override Node Typed(string text) => TypedNumber(text) ?? base.Typed(text);

        internal override ObjectNode Schema(SchemaParts parts) => Node.Object(
            ("type", new TextNode("number")), ("minimum", SchemaParts.Number(low)), ("maximum", SchemaParts.Number(high)));
    }

    private sealed class WordForm<TEnum>(WordTable<TEnum> table) : ValueForm<TEnum>
        where TEnum : struct, Enum
    {
        public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Choice([.. table.Words]);

        internal override bool TryRead(NodeCursor at, out TEnum value)
        {
            value = default;
            if (at.Text(int.MaxValue) is not { } text)
            {
                return false;
            }

            if (table.Value(text) is { } known)
            {
                value = known;
                return true;
            }

            string typed = FindingList.Shorten(text);
            string words = string.Join(", ", table.Words);
            at.Error("word.unknown", $"\"{typed}\" is not one of {words}; the nearest is \"{NearestWord.To(typed, table.Words)}\"", typed, words);
            return false;
        }

        internal override Node Write(TEnum value) => new TextNode(table.Word(value));

        internal override ObjectNode Schema(SchemaParts parts) =>
            Node.Object(("enum", new ListNode([.. table.Words.Select(word => new TextNode(word))])));
    }

    /// <summary>A number typed into a field, a comma before its decimals read too; null for what is none.</summary>
    public static BareNode? TypedNumber(string text) =>
        decimal.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out decimal number)
            ? new BareNode(number.ToString(CultureInfo.InvariantCulture))
            : null;
}

/// <summary>A value that is written as text of a kind of its own: "100 billion", "± 0.3 L".</summary>
/// <param name="code">The finding's code when it cannot be read.</param>
/// <param name="read">Reads the text; null when it cannot be.</param>
/// <param name="write">Its text.</param>
/// <param name="wanted">What is wanted instead, given the text as shortened: what, and the limit.</param>
/// <param name="schema">What a schema says of it.</param>
/// <typeparam name="T">What it is read as.</typeparam>
internal sealed class SpelledForm<T>(
    string code, Func<string, (bool, T)> read, Func<T, string> write, Func<string, (string Message, string Limit)> wanted, params (string, Node)[] schema) : ValueForm<T>
{
    public const int Longest = 64;

    /// <summary>Whether a bare number does as well as its text.</summary>
    public bool TakesNumbers { get; init; }

    public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Text(isLong: false);

    internal override bool TryRead(NodeCursor at, out T value)
    {
        value = default!;
        string? text = TakesNumbers && at.Node is BareNode { IsNumber: true } number ? number.Written : at.Text(Longest);
        if (text is null)
        {
            return false;
        }

        (bool isRead, value) = read(text);
        if (!isRead)
        {
            (string message, string limit) = wanted(FindingList.Shorten(text));
            at.Error(code, message, text, limit);
        }

        return isRead;
    }

    internal override Node Write(T value) => new TextNode(write(value));

    internal override ObjectNode Schema(SchemaParts parts) => Node.Object(
        [("type", TakesNumbers ? new ListNode([new TextNode("string"), new TextNode("number")]) : new TextNode("string")), ("maxLength", SchemaParts.Number(Longest)), .. schema]);
}

/// <summary>A kind of value of which not every one is allowed.</summary>
/// <param name="wide">All of them.</param>
/// <param name="allows">Whether one is; it tells why not.</param>
/// <param name="schema">What a schema says of it; null for what it says of all of them.</param>
/// <typeparam name="T">What it is read as.</typeparam>
internal sealed class NarrowedForm<T>(ValueForm<T> wide, Func<NodeCursor, T, bool> allows, ObjectNode? schema = null) : ValueForm<T>
{
    public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => wide.Accept(visitor);

    internal override bool TryRead(NodeCursor at, out T value) => wide.TryRead(at, out value) && allows(at, value);

    internal override Node Write(T value) => wide.Write(value);

    internal override Node Typed(string text) => wide.Typed(text);

    internal override ObjectNode Schema(SchemaParts parts) => schema ?? wide.Schema(parts);
}
