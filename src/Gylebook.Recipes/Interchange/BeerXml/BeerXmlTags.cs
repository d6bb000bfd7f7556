using System.Collections.Frozen;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>The tags of BeerXML 1.0 that hold others.</summary>
internal static class BeerXmlTags
{
    /// <summary>Each set with the record it holds.</summary>
    public static FrozenDictionary<string, string> Sets { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["RECIPES"] = "RECIPE", ["HOPS"] = "HOP", ["FERMENTABLES"] = "FERMENTABLE", ["YEASTS"] = "YEAST", ["MISCS"] = "MISC", ["WATERS"] = "WATER",
        ["STYLES"] = "STYLE", ["EQUIPMENTS"] = "EQUIPMENT", ["MASHS"] = "MASH", ["MASH_STEPS"] = "MASH_STEP",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Each record with the set it belongs to.</summary>
    public static FrozenDictionary<string, string> SetOf { get; } = Sets.ToFrozenDictionary(pair => pair.Value, pair => pair.Key, StringComparer.Ordinal);

    /// <summary>Tags of free text.</summary>
    public static FrozenSet<string> Prose { get; } = new[] { "NAME", "NOTES", "TASTE_NOTES", "BREWER", "USE_FOR", "BEST_FOR", "SUBSTITUTES" }.ToFrozenSet(StringComparer.Ordinal);
}
