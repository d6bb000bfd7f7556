using Gylebook.Forecast.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.LayingOut;

/// <summary>Finds finings, salts, acids and plain liquor.</summary>
internal static class Chemistry
{
    /// <summary>Acids by the first word of their name. Sold strengths follow it: "lactic acid 88 %".</summary>
    private static readonly Dictionary<string, (Component Component, double KilogramsPerLitre)> Acids = new(StringComparer.OrdinalIgnoreCase)
    {
        ["lactic"] = (Component.LacticAcid, 1.206),
        ["phosphoric"] = (Component.PhosphoricAcid, 1.053),
        ["citric"] = (Component.CitricAcid, 1),
        ["malic"] = (Component.MalicAcid, 1),
        ["acetic"] = (Component.AceticAcid, 1.05),
    };

    /// <summary>Looks a line up.</summary>
    public static LaidLine? Find(int number, IngredientLine line, string path, List<Finding> findings) => line.Kind switch
    {
        IngredientKind.Salt => Salt(number, line, path, findings),
        IngredientKind.Acid => Acid(number, line, path, findings),
        IngredientKind.Water => Of(number, line, 1, Component.Water, 1),
        _ => Of(number, line, 1, Component.Break, 1),
    };

    /// <summary>The salt of that id or name; plain "calcium chloride" is the one with its water, as it is sold.</summary>
    public static BrewingSalt? SaltOf(string name) =>
        BrewingSalts.All.FirstOrDefault(salt => IsCalled(salt.Name, name) || IsCalled(salt.Id, name))
        ?? BrewingSalts.All.FirstOrDefault(salt => salt.Name.StartsWith(name + " ", StringComparison.OrdinalIgnoreCase) && salt.CrystalWaterShare > 0);

    private static LaidLine? Salt(int number, IngredientLine line, string path, List<Finding> findings)
    {
        if (SaltOf(line.Of) is not { } salt || line.Amount.Mass is not { } mass)
        {
            string known = string.Join(", ", BrewingSalts.All.Select(one => one.Name));
            findings.Add(new("salt.unknown", Severity.Error, $"{path}.salt", $"{line.Of}, {line.Amount.Text}; known, by mass: {known}", line.Of, known));
            return null;
        }

        double kg = mass.Value.Kilograms;
        Wort makeup = default;
        makeup[Component.Water] = kg * salt.CrystalWaterShare;
        makeup[Component.Minerals] = kg * (1 - salt.CrystalWaterShare);
        makeup[Component.Sodium] = kg * 1000 * salt.PerGramInALitre[Ion.Sodium];
        return new LaidLine(number, line, line.As ?? line.Of, kg) { Makeup = makeup };
    }

    private static bool IsCalled(string known, string name) => string.Equals(known, name, StringComparison.OrdinalIgnoreCase);

    private static LaidLine? Acid(int number, IngredientLine line, string path, List<Finding> findings)
    {
        string[] words = line.Of.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0 || !Acids.TryGetValue(words[0], out var acid))
        {
            string known = string.Join(", ", Acids.Keys);
            findings.Add(new("acid.unknown", Severity.Error, $"{path}.acid", $"{line.Of}; known: {known}, with the strength sold, as in lactic acid 88 %", line.Of, known));
            return null;
        }

        return Of(number, line, acid.KilogramsPerLitre, acid.Component, StrengthOf(line.Of));
    }

    /// <summary>The strength written behind an acid's name, as a share of its mass; a solid one is pure.</summary>
    private static double StrengthOf(string name)
    {
        string digits = new([.. name.Where(c => char.IsAsciiDigit(c) || c == '.')]);
        return double.TryParse(digits, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out double percent) && percent is > 0 and <= 100
            ? percent / 100
            : 1;
    }

    private static LaidLine Of(int number, IngredientLine line, double kilogramsPerLitre, Component component, double share)
    {
        double kg = line.Amount.Mass?.Value.Kilograms ?? (line.Amount.Volume!.Value.Value.Litres * kilogramsPerLitre);
        Wort makeup = default;
        makeup[component] = kg * share;
        makeup[Component.Water] += kg * (1 - share);
        return new LaidLine(number, line, line.As ?? line.Of, kg) { Makeup = makeup };
    }
}
