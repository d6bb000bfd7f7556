using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Gylebook.Fuzz.Tests;

/// <summary>Changes files as people and disks do: other numbers, other units, other types, lost keys, flipped bytes.</summary>
internal sealed partial class Mutation(Random random)
{
    private static readonly string[] Units =
    [
        "L", "mL", "gal", "qt", "g", "kg", "oz", "lb", "mg/L", "g/L", "°C", "°F", "min", "h", "d", "%", "P", "SG", "volumes", "L/kg", "kW", "bar", "psi", "m", "ft", "L/h", "mEq/L", "SRM", "EBC", "",
    ];

    private static readonly string[] Points = ["mash", "copper-up", "boil 10 min", "knock-out", "stand 5 min", "pitch", "ferment day 3", "rack", "package"];

    /// <summary>Lines and parts that a recipe may also have: what nobody thought of together.</summary>
    private static readonly (string Key, string Json)[] Parts =
    [
        ("liquor", """{ "strike": "12 L" }"""), ("liquor", """{ "topUp": "8 L" }"""), ("boil", """{ "time": "90 min" }"""),
        ("stand", """{ "temperature": "80 °C", "time": "20 min" }"""),
        ("mash", """{ "method": "part", "rests": [ { "temperature": "66 °C", "time": "60 min" } ], "sparge": { "method": "none" } }"""),
        ("mash", """{ "method": "bag", "rests": [ { "temperature": "45 °C", "time": "10 min" }, { "temperature": "66 °C", "time": "60 min" } ], "sparge": { "method": "dunk", "volume": "5 L" } }"""),
        ("souring", """{ "with": "lactobacillus plantarum", "temperature": "37 °C", "time": "30 h", "ph": 3.4 }"""),
        ("portions", """[ { "name": "a", "share": "99.999 %" }, { "name": "b", "share": "0.001 %" } ]"""),
    ];

    private static readonly string[] Lines =
    [
        """{ "sugar": "white sugar", "amount": "300 g", "at": "" }""", """{ "sugar": "lactose", "amount": "300 g", "at": "" }""",
        """{ "food": "pumpkin-seed-flour", "amount": "600 g", "at": "" }""", """{ "food": "raisins-seedless", "amount": "500 g", "at": "" }""",
        """{ "food": "roasted-squash-puree", "amount": "2 kg", "at": "" }""", """{ "salt": "table salt", "amount": "10 g", "at": "" }""",
        """{ "salt": "gypsum", "amount": "5 g", "at": "" }""", """{ "acid": "lactic 88 %", "amount": "5 mL", "at": "" }""",
        """{ "acid": "phosphoric 10 %", "amount": "20 mL", "at": "" }""", """{ "salt": "slaked lime", "amount": "5 g", "at": "" }""",
        """{ "hop": "Saaz", "amount": "40 g", "form": "pellet", "at": "" }""", """{ "malt": "pale ale malt", "amount": "2 kg", "at": "mash" }""",
        """{ "water": "water", "amount": "3 L", "at": "" }""", """{ "spice": "cinnamon", "amount": "10 g", "at": "" }""",
    ];

    /// <summary>One of them.</summary>
    public T OneOf<T>(IReadOnlyList<T> all) => all[random.Next(all.Count)];

    /// <summary>A dose from a pinch in a glass to a sack in a tank; mostly none, since a label takes as long as ten recipes.</summary>
    public FuzzDose? Dose() => random.Next(3) > 0 ? null : new(Math.Pow(10, random.NextDouble() * 10 - 4), OneOf(Points), Math.Pow(10, random.NextDouble() * 8 - 3));

    /// <summary>A recipe changed: often by a part or a line of its own as well.</summary>
    public byte[] Recipe(byte[] sample)
    {
        JsonObject file = (JsonObject)JsonNode.Parse(sample)!;
        if (random.Next(3) == 0)
        {
            (string key, string json) = OneOf(Parts);
            file[key] = JsonNode.Parse(json);
        }

        for (int lines = random.Next(3); lines > 0 && file["ingredients"] is JsonArray list; lines--)
        {
            JsonNode line = JsonNode.Parse(OneOf(Lines))!;
            line["at"] = (string?)line["at"] is "mash" ? "mash" : OneOf(Points);
            list.Insert(random.Next(list.Count + 1), line);
        }

        return Any(Encoding.UTF8.GetBytes(file.ToJsonString()));
    }

    /// <summary>A file left alone, or changed in one to four places; a few have bytes flipped besides.</summary>
    public byte[] Any(byte[] sample)
    {
        if (random.Next(4) == 0)
        {
            return sample;
        }

        JsonNode file = JsonNode.Parse(sample)!;
        for (int changes = random.Next(1, 4); changes > 0; changes--)
        {
            Change(file);
        }

        byte[] bytes = Encoding.UTF8.GetBytes(file.ToJsonString());
        for (int flips = random.Next(12) == 0 ? random.Next(1, 4) : 0; flips > 0; flips--)
        {
            bytes[random.Next(bytes.Length)] ^= (byte)(1 << random.Next(8));
        }

        return bytes;
    }

    private void Change(JsonNode file)
    {
        List<JsonValue> values = [.. ValuesIn(file)];
        if (values.Count == 0)
        {
            return;
        }

        JsonValue value = OneOf(values);
        switch (random.Next(20))
        {
            case 0: Take(value); break;
            case 1: value.ReplaceWith(JsonNode.Parse(OneOf(["null", "true", "[]", "{}", "-1", "1e999", "\"\"", "0"]))); break;
            case 2: value.ReplaceWith(OneOf(values).DeepClone()); break;
            case 3 or 4: value.ReplaceWith(WithUnit(TextOf(value))); break;
            default: value.ReplaceWith(Scaled(value)); break;
        }
    }

    /// <summary>Gone, with its key or its place in the list.</summary>
    private static void Take(JsonValue value)
    {
        if (value.Parent is JsonObject parent)
        {
            parent.Remove(value.GetPropertyName());
        }
        else if (value.Parent is JsonArray list)
        {
            list.Remove(value);
        }
    }

    private string WithUnit(string text) => Number().Match(text) is { Success: true } number ? $"{number.Value} {OneOf(Units)}" : text + "x";

    /// <summary>Mostly 0.1 to 10 times as much; now and then 0, the other sign, or 10 to the power of -12 to 12 times as much.</summary>
    private JsonNode Scaled(JsonValue value)
    {
        string text = TextOf(value);
        if (Number().Match(text) is not { Success: true } number)
        {
            return value.DeepClone();
        }

        double times = random.Next(8) switch
        {
            0 => Math.Pow(10, random.Next(-12, 13)),
            1 => random.Next(4) switch { 0 => 0, 1 => -1, _ => 100 },
            _ => Math.Pow(10, (random.NextDouble() * 2) - 1),
        };
        double scaled = times * double.Parse(number.Value, CultureInfo.InvariantCulture);
        string written = scaled.ToString(Math.Abs(scaled) is > 1e-4 and < 1e6 ? "0.####" : "R", CultureInfo.InvariantCulture);
        return value.GetValueKind() == System.Text.Json.JsonValueKind.Number
            ? JsonNode.Parse(written)!
            : Number().Replace(text, written, 1);
    }

    private static string TextOf(JsonValue value) => value.TryGetValue(out string? text) ? text : value.ToJsonString();

    private static IEnumerable<JsonValue> ValuesIn(JsonNode? node) => node switch
    {
        JsonObject part => part.SelectMany(pair => ValuesIn(pair.Value)),
        JsonArray list => list.SelectMany(ValuesIn),
        JsonValue value => [value],
        _ => [],
    };

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex Number();
}
