using System.Globalization;
using Gylebook.Forecast.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.LayingOut;

/// <summary>Finds finings, salts, acids and plain liquor.</summary>
internal static class Chemistry
{
    private static readonly Dictionary<Acid, Component> AcidParts = new()
    {
        [Acids.Lactic] = Component.LacticAcid,
        [Acids.Acetic] = Component.AceticAcid,
        [Acids.Citric] = Component.CitricAcid,
        [Acids.Malic] = Component.MalicAcid,
        [Acids.Tartaric] = Component.TartaricAcid,
        [Acids.Phosphoric] = Component.PhosphoricAcid,

        // Strong acids leave nothing of themselves but their anion.
        [Acids.Hydrochloric] = Component.Minerals,
        [Acids.Sulphuric] = Component.Minerals,
    };

    /// <summary>Looks a line up.</summary>
    public static LaidLine? Find(int number, IngredientLine line, string path, List<Finding> findings) => line.Kind switch
    {
        IngredientKind.Salt => Salt(number, line, path, findings),
        IngredientKind.Acid => AcidOf(number, line, path, findings),
        IngredientKind.Water => Pure(number, line, Component.Water),
        _ => Pure(number, line, Component.Break),
    };

    /// <summary>The salt of that id or name, or the first whose name begins so: plain "calcium chloride" is the one with its water.</summary>
    public static BrewingSalt? SaltOf(string name) =>
        BrewingSalts.All.FirstOrDefault(s => Names(name, s.Id, s.Name))
        ?? BrewingSalts.All.FirstOrDefault(s => s.Name.StartsWith(name, StringComparison.OrdinalIgnoreCase));

    private static LaidLine? Salt(int number, IngredientLine line, string path, List<Finding> findings)
    {
        if (SaltOf(line.Of) is not { } salt || line.Amount.Mass is not { } mass)
        {
            string known = string.Join(", ", BrewingSalts.All.Select(s => s.Name));
            findings.Add(new("salt.unknown", Severity.Error, $"{path}.salt", $"{line.Of}, {line.Amount.Text}; known, by weight: {known}", line.Of, known));
            return null;
        }

        double kg = mass.Value.Kilograms;
        Wort makeup = default;
        makeup[Component.Water] = kg * salt.WaterShare;
        makeup[Component.Minerals] = kg * (1 - salt.WaterShare);
        makeup[Component.Sodium] = kg * 1000 * salt.PerGramInALitre[Ion.Sodium];
        return new LaidLine(number, line, line.As ?? salt.Name, kg) { Makeup = makeup };
    }

    /// <summary>An acid with the strength it is sold at behind its name: "lactic acid 88 %". A powder needs none.</summary>
    private static LaidLine? AcidOf(int number, IngredientLine line, string path, List<Finding> findings)
    {
        Acid? acid = Acids.All.FirstOrDefault(a => line.Of.StartsWith(a.Id, StringComparison.OrdinalIgnoreCase));
        double? strength = StrengthOf(line.Of);
        AcidAsSold? sold = acid is null ? null : AcidAsSold.Shelf.FirstOrDefault(a => a.Acid == acid && IsOfStrength(a, strength));
        if (acid is null || (line.Amount.Mass is null && sold is not { Unit: DoseUnit.Millilitre }))
        {
            string known = string.Join(", ", AcidAsSold.Shelf.Select(a => a.Id));
            findings.Add(new("acid.unknown", Severity.Error, $"{path}.acid", $"{line.Of}, {line.Amount.Text}; known by the jug or by weight: {known}; others by weight, with their strength", line.Of, known));
            return null;
        }

        double share = strength ?? 1;
        double kilograms = line.Amount.Mass?.Value.Kilograms
            ?? line.Amount.Volume!.Value.Value.Millilitres * sold!.MillimolesPerUnit * acid.MolarMass / 1e6 / share;
        Wort makeup = default;
        makeup[AcidParts[acid]] = kilograms * share;
        makeup[Component.Water] = kilograms * (1 - share);
        return new LaidLine(number, line, line.As ?? line.Of, kilograms) { Makeup = makeup };
    }

    private static bool IsOfStrength(AcidAsSold sold, double? strength) =>
        strength is double share
            ? sold.Id.EndsWith(string.Create(CultureInfo.InvariantCulture, $"-{share * 100:0.##}"), StringComparison.Ordinal)
            : sold.Unit != DoseUnit.Millilitre;

    /// <summary>The number in front of a per cent sign, as a share; null when there is none.</summary>
    private static double? StrengthOf(string name)
    {
        string[] words = name.Replace("%", " %", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        int sign = Array.IndexOf(words, "%");
        return sign > 0 && double.TryParse(words[sign - 1], NumberStyles.Float, CultureInfo.InvariantCulture, out double percent) && percent is > 0 and <= 100
            ? percent / 100
            : null;
    }

    private static bool Names(string typed, string id, string name) =>
        string.Equals(typed, id, StringComparison.OrdinalIgnoreCase) || string.Equals(typed, name, StringComparison.OrdinalIgnoreCase);

    private static LaidLine Pure(int number, IngredientLine line, Component component)
    {
        double kg = line.Amount.Mass?.Value.Kilograms ?? (line.Amount.Volume!.Value.Value.Litres * Wort.WaterKilogramsPerLitre);
        Wort makeup = default;
        makeup[component] = kg;
        return new LaidLine(number, line, line.As ?? line.Of, kg) { Makeup = makeup };
    }
}
