using System.Text;

namespace Gylebook.Benchmarks;

/// <summary>A recipe of twenty lines and a kit, as files: what the targets of speed are meant for.</summary>
internal static class TwentyIngredients
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
}
