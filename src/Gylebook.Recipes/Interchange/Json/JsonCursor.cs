using System.Globalization;
using System.Text.Json;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.Json;

/// <summary>A value in a file, with the path that leads to it and the list that takes its findings.</summary>
/// <remarks>Each reading returns null, and has told why, when the value is not of that sort.</remarks>
internal readonly record struct JsonCursor(JsonElement Element, string Path, FindingList Findings)
{
    private const int LongestQuantity = 64;
    private const int LongestList = 1000;

    internal string? Text(int longest)
    {
        if (!Is(JsonValueKind.String, "text"))
        {
            return null;
        }

        var text = Element.GetString()!;
        if (text.Length <= longest)
        {
            return text;
        }

        var limit = Invariant($"{longest} characters");
        Findings.Error("text.long", Path, $"the text is too long; at most {limit}", text, limit);
        return null;
    }

    internal bool? Flag()
    {
        if (Element.ValueKind is JsonValueKind.True or JsonValueKind.False)
        {
            return Element.GetBoolean();
        }

        Is(JsonValueKind.True, "true or false");
        return null;
    }

    internal double? Number(double low, double high)
    {
        if (!Is(JsonValueKind.Number, "a number"))
        {
            return null;
        }

        var number = Element.GetDouble();
        if (number >= low && number <= high)
        {
            return number;
        }

        var limit = Invariant($"{low:0.######} to {high:0.######}");
        Findings.Error("number.range", Path, $"{FindingList.Shorten(Element.GetRawText())}; must be from {limit}", Element.GetRawText(), limit);
        return null;
    }

    internal Entered<T>? Quantity<T>()
        where T : struct, IQuantity<T>
    {
        if (Element.ValueKind == JsonValueKind.Number)
        {
            var bare = FindingList.Shorten(Element.GetRawText());
            Findings.Error("quantity.bare", Path, $"{bare} has no unit; write it as text with one, such as \"1 {UnitTable.UnitsOf<T>()[0]}\"", bare);
            return null;
        }

        if (Text(LongestQuantity) is not { } text)
        {
            return null;
        }

        if (UnitTable.TryParse<T>(text, out var entered, out var problem))
        {
            return entered;
        }

        Findings.Error("quantity.wrong", Path, problem.TrimEnd('.'), text, UnitTable.RangeOf<T>());
        return null;
    }

    internal TEnum? Word<TEnum>(WordTable<TEnum> table)
        where TEnum : struct, Enum
    {
        if (Text(int.MaxValue) is not { } text)
        {
            return null;
        }

        if (table.Value(text) is { } value)
        {
            return value;
        }

        var typed = FindingList.Shorten(text);
        var words = string.Join(", ", table.Words);
        Findings.Error(
            "word.unknown", Path, $"\"{typed}\" is not one of {words}; the nearest is \"{NearestWord.To(typed, table.Words)}\"", typed, words);
        return null;
    }

    internal IReadOnlyList<T> List<T>(Func<JsonCursor, T> read)
    {
        if (!Is(JsonValueKind.Array, "a list"))
        {
            return [];
        }

        if (Element.GetArrayLength() > LongestList)
        {
            Findings.Error(
                "list.long", Path, $"the list is too long; at most {LongestList} items",
                Element.GetArrayLength().ToString(CultureInfo.InvariantCulture), $"{LongestList} items");
            return [];
        }

        var items = new List<T>(Element.GetArrayLength());
        foreach (var item in Element.EnumerateArray())
        {
            items.Add(read(this with { Element = item, Path = $"{Path}[{items.Count}]" }));
        }

        return items;
    }

    internal bool Is(JsonValueKind kind, string inWords)
    {
        if (Element.ValueKind == kind)
        {
            return true;
        }

        Findings.Error("json.kind", Path, $"must be {inWords}; this is {InWords(Element.ValueKind)}", InWords(Element.ValueKind), inWords);
        return false;
    }

    private static string InWords(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "text",
        JsonValueKind.Number => "a number",
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "null",
    };
}
