namespace Gylebook.Pictures;

/// <summary>Caution codes in a word or two, for marks that have no room for the sentence.</summary>
internal static class CautionWords
{
    /// <summary>Whole codes first, then what stands before their point.</summary>
    private static readonly Dictionary<string, string> Said = new(StringComparer.Ordinal)
    {
        ["scald"] = "scald",
        ["lift"] = "heavy lift",
        ["boilover.hops"] = "boil-over, hops",
        ["boilover.powder"] = "boil-over, powder",
        ["boilover.syrup"] = "burns on, syrup",
        ["fat"] = "fat and head",
        ["foam"] = "foam",
        ["acid"] = "acid",
        ["salt"] = "caustic",
        ["co2"] = "carbon dioxide",
        ["oxygen"] = "oxygen and fire",
        ["pressure.glass"] = "pressure in glass",
        ["pressure"] = "pressure",
        ["bottle"] = "sugar in the bottle",
        ["bottle.strayYeast"] = "sugar left in the bottle",
        ["starch"] = "starch left over",
        ["starch.cookFirst"] = "cook it first",
        ["food.raw"] = "raw food",
        ["food.lowAcid"] = "low-acid food",
        ["preservative"] = "preservative",
        ["honey"] = "raw honey",
        ["plant"] = "know the plant",
        ["pits"] = "kernels and stones",
        ["caffeine"] = "caffeine",
        ["coumarin"] = "coumarin",
        ["nutmeg"] = "nutmeg",
        ["pets"] = "no feed for animals",
        ["grapefruit"] = "medicines",
        ["liquorice"] = "blood pressure",
        ["safrole"] = "not for eating",
        ["alcohol"] = "alcohol",
        ["alcohol.little"] = "little alcohol",
        ["bitterness"] = "bitterness",
        ["colour.lowerBound"] = "colour, at least",
        ["colour"] = "colour",
        ["souring.germs"] = "germs in warm wort",
        ["souring.discard"] = "mould",
        ["souring.boil"] = "boil-over, sour wort",
        ["souring.gas"] = "gas while souring",
        ["souring"] = "souring",
        ["ph.foodAcids"] = "acid of foods",
        ["ph"] = "pH, a range",
        ["mashPh.unmeasured"] = "mash pH, measure it",
        ["mashPh"] = "mash pH, a range",
        ["wort"] = "wort pH, measure it",
        ["sodium"] = "sodium, at least",
        ["ions"] = "ions, a range",
        ["gravity"] = "strong",
        ["attenuation"] = "attenuation",
        ["pitch"] = "yeast count",
        ["pitch.nitrogen"] = "yeast nutrient",
        ["starter"] = "starter",
        ["yeast"] = "yeast",
        ["mash"] = "mash",
        ["mash.shortRest"] = "short rest",
        ["chill"] = "chilling",
        ["chill.scald"] = "scald",
        ["chill.hoses"] = "hot hoses",
        ["chill.hotVessel"] = "hot closed vessel",
        ["chill.slow"] = "slow cooling",
        ["liquor"] = "liquor",
        ["sparge"] = "sparge",
        ["water"] = "water",
    };

    /// <summary>A code in words; a code not known here says itself, with a space for its point.</summary>
    public static string Of(string code) =>
        Said.TryGetValue(code, out string? whole) ? whole
        : Said.TryGetValue(code.Split('.')[0], out string? kind) ? kind
        : code.Replace('.', ' ');
}
