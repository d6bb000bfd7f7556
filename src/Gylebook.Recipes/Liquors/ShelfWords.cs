using System.Globalization;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Liquors;

/// <summary>Salts and acids by the words people write for them.</summary>
public static class ShelfWords
{
    /// <summary>Names of the salts we know.</summary>
    public static string KnownSalts { get; } = string.Join(", ", BrewingSalts.All.Select(salt => salt.Name));

    /// <summary>Names of the acids as sold that we know.</summary>
    public static string KnownAcids { get; } = string.Join(", ", AcidAsSold.Shelf.Select(acid => acid.Id));

    /// <summary>The salt of that id, name, or beginning of a name; null when there is none.</summary>
    public static BrewingSalt? Salt(string typed) =>
        BrewingSalts.All.FirstOrDefault(salt => Same(typed, salt.Id) || Same(typed, salt.Name))
        ?? (typed.Length < 3 ? null : BrewingSalts.All.FirstOrDefault(salt => salt.Name.StartsWith(typed, StringComparison.OrdinalIgnoreCase)));

    /// <summary>The acid a text begins with; null when there is none.</summary>
    public static Acid? Acid(string typed) =>
        Acids.All.FirstOrDefault(acid => typed.StartsWith(acid.Id, StringComparison.OrdinalIgnoreCase))
        ?? Acids.All.FirstOrDefault(acid => typed.Replace("sulfuric", "sulphuric", StringComparison.OrdinalIgnoreCase).StartsWith(acid.Id, StringComparison.OrdinalIgnoreCase));

    /// <summary>The bottle or powder behind "lactic acid 88 %", "lactic-88" or "citric"; null when we know none of that strength.</summary>
    public static AcidAsSold? Sold(string typed) => AcidAsSold.Shelf.FirstOrDefault(sold => Same(typed, sold.Id))
        ?? (Acid(typed) is { } acid ? AcidAsSold.Shelf.FirstOrDefault(sold => sold.Acid == acid && IsOfStrength(sold, Strength(typed))) : null);

    /// <summary>The number in front of a per cent sign, as a share; null when there is none.</summary>
    public static double? Strength(string typed)
    {
        string[] words = typed.Replace("%", " %", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        int sign = Array.IndexOf(words, "%");
        return sign > 0 && double.TryParse(words[sign - 1], NumberStyles.Float, CultureInfo.InvariantCulture, out double percent) && percent is > 0 and <= 100
            ? percent / 100
            : null;
    }

    private static bool IsOfStrength(AcidAsSold sold, double? strength) =>
        strength is double share
            ? sold.Id.EndsWith(string.Create(CultureInfo.InvariantCulture, $"-{share * 100:0.##}"), StringComparison.Ordinal)
            : sold.Unit != DoseUnit.Millilitre;

    private static bool Same(string typed, string name) => string.Equals(typed.Trim(), name, StringComparison.OrdinalIgnoreCase);
}
