using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Interchange;

/// <summary>The salts and acids at hand of a water plan.</summary>
internal static class ShelfReader
{
    private const double MostGramsPerLitre = 20;

    private static readonly WordTable<LiquorPlace> Places = new(
        (LiquorPlace.Liquor, "liquor"), (LiquorPlace.Mash, "mash"), (LiquorPlace.Sparge, "sparge"), (LiquorPlace.Kettle, "kettle"),
        (LiquorPlace.Package, "package"));

    internal static OfferedSalt? Salt(ObjectReader at)
    {
        string name = at.Name("salt");
        BrewingSalt? salt = ShelfWords.Salt(name);
        if (salt is null && name.Length > 0)
        {
            at.Findings.Error("salt.unknown", at.PathOf("salt"), $"\"{FindingList.Shorten(name)}\"; known: {ShelfWords.KnownSalts}", name, ShelfWords.KnownSalts);
        }

        LiquorPlace into = at.Take("into")?.Word(Places) ?? LiquorPlace.Liquor;
        Entered<Concentration>? most = at.OptionalQuantity<Concentration>("most");
        Entered<Concentration>? least = at.OptionalQuantity<Concentration>("least");
        Entered<Fraction>? price = at.OptionalQuantity<Fraction>("price");
        if (into == LiquorPlace.Package && salt is { AlkalinityPerMole: > 0 })
        {
            at.Findings.Error("salt.package", at.PathOf("into"), $"{salt.Name} is alkaline: in finished beer it lifts the pH that keeps it sound, and chalk does not dissolve; only neutral salts go into the package", "package");
        }

        CheckDose(at, "most", most);
        CheckDose(at, "least", least);
        salt = OfAssay(at, salt);
        if (least is { } low && (most is { } high ? low.Value.CompareTo(high.Value) > 0 : salt is not null && low.Value.MilligramsPerLitre > 1000 * UsualMost(salt)))
        {
            string limit = most?.Text ?? Invariant($"{UsualMost(salt!):0.###} g/L");
            at.Findings.Error("salt.limits", at.PathOf("least"), $"{low.Text}; more than the most there may be, {limit}", low.Text, limit);
        }

        return salt is null ? null : new OfferedSalt(salt, into, most, least, price?.Value);
    }

    private static void CheckDose(ObjectReader at, string key, Entered<Concentration>? dose)
    {
        if (dose is { } given && given.Value.MilligramsPerLitre > 1000 * MostGramsPerLitre)
        {
            string limit = Invariant($"{MostGramsPerLitre} g/L");
            at.Findings.Error("salt.tooMuch", at.PathOf(key), $"{given.Text}; at most {limit}", given.Text, limit);
        }
    }

    private static double UsualMost(BrewingSalt salt) => SaltSolver.UsualOffer(salt, IonProfile.Distilled).MostGramsPerLitre;

    /// <summary>Calcium chloride takes up water: its label's share of CaCl2, where one is given.</summary>
    private static BrewingSalt? OfAssay(ObjectReader at, BrewingSalt? salt)
    {
        if (at.OptionalQuantity<Fraction>("assay") is not { } assay || salt is null)
        {
            return salt;
        }

        bool isChloride = salt.Id == BrewingSalts.CalciumChloride.Id || salt.Id == BrewingSalts.AnhydrousCalciumChloride.Id;
        if (isChloride && assay.Value.Ratio > 0)
        {
            return BrewingSalts.CalciumChlorideOfAssay(assay.Value) with { Id = BrewingSalts.CalciumChloride.Id };
        }

        at.Findings.Error("salt.assay", at.PathOf("assay"), $"{assay.Text}; an assay is the CaCl2 of calcium chloride, above 0 %", assay.Text);
        return salt;
    }

    internal static OfferedAcid? Acid(ObjectReader at)
    {
        string name = at.Name("acid");
        AcidAsSold? sold = ShelfWords.Sold(name, Density(at));
        if (sold is null && name.Length > 0)
        {
            at.Findings.Error("acid.unknown", at.PathOf("acid"), ShelfWords.UnknownAcid(FindingList.Shorten(name)), name, ShelfWords.KnownAcids);
        }

        double? most = sold is { Unit: DoseUnit.Gram }
            ? at.OptionalQuantity<Mass>("most")?.Value.Grams
            : at.OptionalQuantity<VolumeAt20C>("most")?.Value.Millilitres;
        return sold is null ? null : new OfferedAcid(name, sold, most);
    }

    private static double? Density(ObjectReader at)
    {
        const int Longest = 64;
        if (at.Take("density") is not { } cursor || cursor.Text(Longest) is not { } text)
        {
            return null;
        }

        double? density = ShelfWords.Density(text);
        if (density is null)
        {
            at.Findings.Error("acid.density", cursor.Path, $"{FindingList.Shorten(text)}; must be {ShelfWords.DensityForm}", text, ShelfWords.DensityForm);
        }

        return density;
    }
}
