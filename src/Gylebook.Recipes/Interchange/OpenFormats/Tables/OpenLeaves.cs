using System.Globalization;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Interchange.OpenFormats.Tables;

/// <summary>The kinds of value that hold no others, as both formats have them.</summary>
internal static class OpenLeaves
{
    /// <summary>Text.</summary>
    public static OpenValue<string> Text { get; } = new TextValue();

    /// <summary>A bare number.</summary>
    public static OpenValue<double> Number { get; } = new NumberValue();

    /// <summary>Yes or no.</summary>
    public static OpenValue<bool> Flag { get; } = new FlagValue();

    /// <summary>One of a few words.</summary>
    public static OpenValue<TEnum> Word<TEnum>(WordTable<TEnum> words)
        where TEnum : struct, Enum => new WordValue<TEnum>(words);

    /// <summary>A list; an item that cannot be read stays behind, alone.</summary>
    public static OpenValue<IReadOnlyList<T>> ListOf<T>(OpenValue<T> item) => new ListValue<T>(item);

    /// <summary>The number in a text or in a bare node; a decimal comma is read, and told.</summary>
    public static double? NumberIn(Node node, OpenCursor at)
    {
        string? text = node switch { BareNode { IsNumber: true } bare => bare.Written, TextNode typed => typed.Text.Trim(), _ => null };
        if (text is null)
        {
            return null;
        }

        const NumberStyles Style = NumberStyles.Float & ~NumberStyles.AllowTrailingWhite;
        if (double.TryParse(text, Style, CultureInfo.InvariantCulture, out double number))
        {
            return double.IsFinite(number) ? number : null;
        }

        if (!text.Contains('.', StringComparison.Ordinal) && double.TryParse(text.Replace(',', '.'), Style, CultureInfo.InvariantCulture, out number) && double.IsFinite(number))
        {
            at.Repair($"\"{FindingList.Shorten(text)}\" has a decimal comma; read as {number.ToString("R", CultureInfo.InvariantCulture)}");
            return number;
        }

        return null;
    }

    private sealed class TextValue : OpenValue<string>
    {
        public override bool TryRead(Node node, OpenCursor at, out string value)
        {
            value = node switch { TextNode { Text: var text } => text, BareNode bare => bare.Written, _ => "" };
            return node is TextNode or BareNode || IsNot(node, at, "text");
        }

        public override Node Write(string value, OpenCursor at) => new TextNode(value);
    }

    private sealed class NumberValue : OpenValue<double>
    {
        public override bool TryRead(Node node, OpenCursor at, out double value)
        {
            value = NumberIn(node, at) ?? 0;
            return NumberIn(node, at with { Travels = new TravelList() }) is not null || IsNot(node, at, "a number");
        }

        public override Node Write(double value, OpenCursor at) => new BareNode(value.ToString("R", CultureInfo.InvariantCulture));
    }

    private sealed class FlagValue : OpenValue<bool>
    {
        public override bool TryRead(Node node, OpenCursor at, out bool value)
        {
            string text = node switch { BareNode bare => bare.Written, TextNode typed => typed.Text.Trim(), _ => "" };
            value = text.Equals("true", StringComparison.OrdinalIgnoreCase) || text is "1";
            return value || text.Equals("false", StringComparison.OrdinalIgnoreCase) || text is "0" || IsNot(node, at, "true or false");
        }

        public override Node Write(bool value, OpenCursor at) => value ? BareNode.True : BareNode.False;
    }

    private sealed class WordValue<TEnum>(WordTable<TEnum> words) : OpenValue<TEnum>
        where TEnum : struct, Enum
    {
        public override bool TryRead(Node node, OpenCursor at, out TEnum value)
        {
            value = default;
            string? typed = (node as TextNode)?.Text.Trim();
            foreach ((TEnum known, string word) in words.Rows)
            {
                if (string.Equals(word, typed, StringComparison.OrdinalIgnoreCase))
                {
                    value = known;
                    if (word != typed)
                    {
                        at.Repair($"\"{typed}\"; read as \"{word}\"");
                    }

                    return true;
                }
            }

            return IsNot(node, at, $"one of {string.Join(", ", words.Words)}");
        }

        public override Node Write(TEnum value, OpenCursor at) => new TextNode(words.Word(value));
    }

    private sealed class ListValue<T>(OpenValue<T> item) : OpenValue<IReadOnlyList<T>>
    {
        private const int Longest = 1000;

        public override bool TryRead(Node node, OpenCursor at, out IReadOnlyList<T> value)
        {
            List<T> items = [];
            value = items;
            if (node is not ListNode list)
            {
                return IsNot(node, at, "a list");
            }

            int read = 0;
            while (read < Math.Min(list.Items.Length, Longest) && at.Travels.MayReadOne())
            {
                if (item.TryRead(list.Items[read], at.At(read), out T one))
                {
                    items.Add(one);
                }

                read++;
            }

            if (read < list.Items.Length)
            {
                at.Leave(Invariant($"{list.Items.Length - read} of {list.Items.Length} items; so many are not read"));
            }

            return true;
        }

        public override Node Write(IReadOnlyList<T> value, OpenCursor at) => new ListNode([.. value.Select((one, i) => item.Write(one, at.At(i)))]);
    }
}
