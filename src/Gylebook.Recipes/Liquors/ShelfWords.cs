using System.Globalization;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Liquors;

/// <summary>Salts and acids by the words people write for them.</summary>
public static class ShelfWords
{
    /// <summary>Form of a density, for messages.</summary>
    public const string DensityForm = "a number from 0.99 to 2 with kg/L or g/mL, at 20 °C";
    private const double LightestAcid = 0.99;
    private const double HeaviestAcid = 2;

    /// <summary>Share below which an acid is mostly water, and that water would count as liquor. Our choice.</summary>
    private const double WeakestAcid = 0.01;

    /// <summary>Names of the salts we know.</summary>
    public static string KnownSalts { get; } = string.Join(", ", BrewingSalts.All.Select(salt => salt.Name));

    /// <summary>Names of the acids as sold that we know.</summary>
    public static string KnownAcids { get; } = string.Join(", ", AcidAsSold.Shelf.Select(acid => acid.Name));

    /// <summary>The salt of that id, name, or beginning of a name; null when there is none.</summary>
    public static BrewingSalt? Salt(string typed) =>
        BrewingSalts.All.FirstOrDefault(salt => Same(typed, salt.Id) || Same(typed, salt.Name))
        ?? (typed.Length < 3 ? null : BrewingSalts.All.FirstOrDefault(salt => salt.Name.StartsWith(typed, StringComparison.OrdinalIgnoreCase)));

    /// <summary>The acid a text begins with; null when there is none.</summary>
    public static Acid? Acid(string typed) =>
        Acids.All.FirstOrDefault(acid => typed.StartsWith(acid.Id, StringComparison.OrdinalIgnoreCase))
        ?? Acids.All.FirstOrDefault(acid => typed.Replace("sulfuric", "sulphuric", StringComparison.OrdinalIgnoreCase).StartsWith(acid.Id, StringComparison.OrdinalIgnoreCase));

    /// <summary>The bottle or powder behind "lactic acid 88 %", "phosphoric 10 % w/v", "lactic-88" or "citric"; null when we know none of that strength.</summary>
    /// <param name="typed">The acid with its strength: by mass, or in grams for 100 mL where it says w/v.</param>
    /// <param name="kilogramsPerLitre">Density of the bottle, for a strength by mass that the shelf has not; null when unstated.</param>
    public static AcidAsSold? Sold(string typed, double? kilogramsPerLitre = null)
    {
        double? strength = Strength(typed);
        if (strength < WeakestAcid)
        {
            return null;
        }

        if (Acid(typed) is { } acid && strength is double share && (IsByVolume(typed) || kilogramsPerLitre is not null))
        {
            string id = Invariant($"{acid.Id}-{share * 100:0.##}");
            return IsByVolume(typed)
                ? AcidAsSold.ByVolume($"{id}-wv", acid, share * 100)
                : AcidAsSold.ByMass(id, acid, Fraction.FromRatio(share), kilogramsPerLitre!.Value);
        }

        return AcidAsSold.Shelf.FirstOrDefault(sold => Same(typed, sold.Id) || Same(typed, sold.Name))
            ?? (Acid(typed) is { } known ? AcidAsSold.Shelf.FirstOrDefault(sold => sold.Acid == known && IsOfStrength(sold, strength)) : null);
    }

    /// <summary>Why no bottle was found, and what would do.</summary>
    public static string UnknownAcid(string typed) => Strength(typed) < WeakestAcid
        ? Invariant($"{typed}; must be at least {100 * WeakestAcid:0} %: a weaker acid is mostly water, which is not counted")
        : Acid(typed) is { } acid && Strength(typed) is not null
        ? $"{typed}; no density of that strength in our tables: give its density as well, or the strength as w/v; known: {string.Join(", ", AcidAsSold.Shelf.Where(sold => sold.Acid == acid).Select(sold => sold.Name))}"
        : $"{typed}; known, with their strength: {KnownAcids}";

    /// <summary>Whether a strength is mass in volume: g for 100 mL.</summary>
    public static bool IsByVolume(string typed) =>
        typed.Contains("w/v", StringComparison.OrdinalIgnoreCase) || typed.Contains("m/v", StringComparison.OrdinalIgnoreCase);

    /// <summary>A density in kg/L from "1.06 kg/L" or "1.06 g/mL"; null when it is none that an acid in water has.</summary>
    public static double? Density(string typed)
    {
        string text = typed.Replace(',', '.');
        double? density = NumberBefore.Unit(text, "kg/L") ?? NumberBefore.Unit(text, "g/mL") ?? NumberBefore.Unit(text, "g/cm3") ?? NumberBefore.Unit(text, "g/cm³");
        return density is >= LightestAcid and <= HeaviestAcid ? density : null;
    }

    /// <summary>The number in front of a per cent sign, as a share; null when there is none.</summary>
    public static double? Strength(string typed)
    {
        string[] words = typed.Replace("%", " % ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        int sign = Array.IndexOf(words, "%");
        return sign > 0 && double.TryParse(words[sign - 1], NumberStyles.Float, CultureInfo.InvariantCulture, out double percent) && percent is > 0 and <= 100
            ? percent / 100
            : null;
    }

    private static bool IsOfStrength(AcidAsSold sold, double? strength) =>
        strength is double share
            ? sold.Id.EndsWith(Invariant($"-{share * 100:0.##}"), StringComparison.Ordinal)
            : sold.Unit != DoseUnit.Millilitre;

    private static bool Same(string typed, string name) => string.Equals(typed.Trim(), name, StringComparison.OrdinalIgnoreCase);
}
