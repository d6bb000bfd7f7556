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

    /// <summary>What the other standard calls a field, and this one.</summary>
    private static readonly FrozenDictionary<string, string> AsHere = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["batch_size"] = "BATCH_SIZE", ["boil"] = "BOIL_TIME", ["fermentation"] = "FERMENTATION_STAGES", ["mash"] = "MASH", ["carbonation"] = "CARBONATION", ["packaging"] = "",
        ["name"] = "NAME", ["notes"] = "NOTES", ["amount"] = "AMOUNT", ["inventory"] = "INVENTORY", ["timing"] = "TIME", ["time"] = "", ["yield"] = "YIELD", ["potential"] = "",
        ["color"] = "COLOR", ["moisture"] = "MOISTURE", ["diastatic_power"] = "DIASTATIC_POWER", ["alpha_acid"] = "ALPHA", ["beta_acid"] = "BETA", ["percent_lost"] = "HSI",
        ["form"] = "FORM", ["attenuation"] = "ATTENUATION", ["product_id"] = "PRODUCT_ID", ["step_time"] = "STEP_TIME", ["pH"] = "PH", ["calcium"] = "CALCIUM",
        ["bicarbonate"] = "BICARBONATE", ["sulfate"] = "SULFATE", ["chloride"] = "CHLORIDE", ["sodium"] = "SODIUM", ["magnesium"] = "MAGNESIUM",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>A path whose fields are called as the tags are; what landing tells of is called by the other standard.</summary>
    public static string Path(string path) => string.Join('.', path.Split('.').Select(step => AsHere.GetValueOrDefault(step, step)).Where(step => step.Length > 0));
}
