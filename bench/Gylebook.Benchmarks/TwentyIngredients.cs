using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Gylebook.Benchmarks;

/// <summary>A recipe of twenty lines and a kit, as files: what the targets of speed are meant for.</summary>
internal static partial class TwentyIngredients
{
    public const string Kit = """
        {
          "format": "gylebook-kit/1",
          "name": "Bench",
          "kettle": { "brim": "50 L", "usable": "45 L", "evaporation": "4 L/h", "leftBehind": "1 L", "solidsLeft": "20 %" },
          "bag": { "liquorKept": "0.7 L/kg", "rinsingShare": "60 %", "brewsInKettle": true },
          "racking": { "leftBehind": "0.3 L" },
          "conversion": "92 %",
          "fermenter": { "brim": "40 L", "usable": "32 L" },
          "packages": [ { "kind": "bottle", "brim": "0.35 L", "fill": "0.33 L", "maxVolumes": 3.2 } ],
          "grainTemperature": "18 °C"
        }
        """;

    public static string Recipe
    {
        get
        {
            string[] lines =
            [
                """{ "malt": "pale ale malt", "amount": "3 kg" }""",
                """{ "malt": "munich malt", "amount": "500 g" }""",
                """{ "malt": "wheat malt", "amount": "400 g" }""",
                """{ "malt": "caramel malt", "amount": "200 g" }""",
                """{ "malt": "chocolate malt", "amount": "100 g" }""",
                """{ "food": "rolled-oats-dry", "amount": "300 g", "at": "mash" }""",
                """{ "salt": "gypsum", "amount": "4 g", "at": "mash" }""",
                """{ "hop": "Fuggle", "form": "pellet", "amount": "25 g", "at": "boil 60 min" }""",
                """{ "hop": "Golding", "form": "pellet", "amount": "20 g", "at": "boil 20 min" }""",
                """{ "hop": "Cascade", "form": "whole", "amount": "20 g", "at": "boil 5 min" }""",
                """{ "sugar": "invert syrup", "amount": "200 g", "at": "boil 10 min" }""",
                """{ "spice": "coriander-seed", "amount": "8 g", "at": "boil 5 min" }""",
                """{ "food": "cocoa-powder-unsweetened", "amount": "150 g", "at": "knock-out" }""",
                """{ "sugar": "lactose monohydrate", "amount": "250 g", "at": "knock-out" }""",
                """{ "yeast": "English ale", "form": "dry", "amount": "11 g", "at": "pitch" }""",
                """{ "food": "honey", "amount": "200 g", "at": "ferment day 3" }""",
                """{ "food": "raspberries-raw", "amount": "1 kg", "at": "ferment day 5" }""",
                """{ "hop": "Cascade", "form": "pellet", "amount": "30 g", "at": "ferment day 8" }""",
                """{ "food": "coffee-brewed-from-grounds", "amount": "300 g", "at": "rack" }""",
                """{ "food": "vanilla-extract", "amount": "10 g", "at": "rack" }""",
            ];
            StringBuilder text = new("""
                {
                  "format": "gylebook-recipe/1",
                  "name": "Twenty",
                  "package": { "volume": "20 L", "in": "bottle", "carbonation": "2.4 volumes" },
                  "mash": { "method": "bag", "rests": [ { "temperature": "66 °C", "time": "60 min" } ], "sparge": { "method": "pour", "volume": "5 L", "temperature": "77 °C" } },
                  "boil": { "time": "60 min" },
                  "ferment": [ { "temperature": "19 °C", "time": "14 d" }, { "temperature": "2 °C", "time": "3 d" } ],
                  "ingredients": [
                """);
            text.AppendJoin(",\n", lines);
            return text.Append("]}").ToString();
        }
    }

    /// <summary>So many times those lines, told apart by a number in the name; the larder knows none of the later ones.</summary>
    public static string Times(int times)
    {
        string twenty = Recipe;
        string lines = twenty[twenty.IndexOf("{ \"malt\"", StringComparison.Ordinal)..^2];
        IEnumerable<string> more = Enumerable.Range(1, times - 1)
            .Select(number => lines.Replace("\", \"amount\"", string.Create(CultureInfo.InvariantCulture, $" {number}\", \"amount\""), StringComparison.Ordinal));
        return twenty[..^2] + string.Concat(more.Select(some => ",\n" + some)) + "]}";
    }

    /// <summary>So many times those lines, each with so much less of it: the same beer from many lines.</summary>
    public static string InParts(int parts)
    {
        string twenty = Recipe;
        int from = twenty.IndexOf("{ \"malt\"", StringComparison.Ordinal);
        string lines = Amount().Replace(twenty[from..^2], amount =>
            string.Create(CultureInfo.InvariantCulture, $"\"amount\": \"{double.Parse(amount.Groups[1].Value, CultureInfo.InvariantCulture) / parts:0.####}"));
        return twenty[..from] + string.Join(",\n", Enumerable.Repeat(lines, parts)) + "]}";
    }

    [GeneratedRegex("\"amount\": \"([0-9.]+)")]
    private static partial Regex Amount();
}
