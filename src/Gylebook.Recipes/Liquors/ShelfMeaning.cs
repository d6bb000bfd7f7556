using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Liquors;

/// <summary>The salts and acids that the words of a water sheet mean.</summary>
internal static class ShelfMeaning
{
    private const double MostGramsPerLitre = 20;

    public static List<OfferedSalt> Salts(IReadOnlyList<SaltSheet> offers, FindingList findings)
    {
        List<OfferedSalt> salts = [];
        for (int i = 0; i < offers.Count; i++)
        {
            if (Salt(offers[i], new PartCursor(Invariant($"salts[{i}]"), findings)) is { } salt)
            {
                salts.Add(salt);
            }
        }

        return salts;
    }

    public static List<OfferedAcid> Acids(IReadOnlyList<AcidSheet> offers, FindingList findings)
    {
        List<OfferedAcid> acids = [];
        for (int i = 0; i < offers.Count; i++)
        {
            PartCursor at = new(Invariant($"acids[{i}]"), findings);
            AcidSheet offer = offers[i];
            if (offer.Acid.Length == 0)
            {
                // It could not be read, and that is told.
                continue;
            }

            if (ShelfWords.Sold(offer.Acid, offer.Density?.KilogramsPerLitre) is not { } sold)
            {
                at.Error("acid.unknown", "acid", ShelfWords.UnknownAcid(FindingList.Shorten(offer.Acid)), offer.Acid, ShelfWords.KnownAcids);
                continue;
            }

            acids.Add(new OfferedAcid(offer.Acid, sold, Units(offer.Most, sold, at, "most")));
        }

        return acids;
    }

    /// <summary>What a meter read of the mash, with how much of the plan's acid was in.</summary>
    public static MeterReading Mash(MeterSheet reading, IReadOnlyList<OfferedAcid> acids, FindingList findings)
    {
        PartCursor at = new("mashReading", findings);
        if (reading.Acid is not null && acids.Count == 0)
        {
            at.Error("reading.acid", "acid", "says how much of the plan's acid was in, but the plan offers none");
        }

        return new MeterReading(reading.Ph, reading.Sample, acids.Count == 0 ? null : Units(reading.Acid, acids[0].Acid, at, "acid"));
    }

    /// <summary>Millilitres of a bottle, grams of a powder.</summary>
    private static double? Units(Amount? amount, AcidAsSold sold, PartCursor at, string key)
    {
        if (amount is not { } given)
        {
            return null;
        }

        bool isPowder = sold.Unit == DoseUnit.Gram;
        if (isPowder ? given.Mass is null : given.Volume is null)
        {
            string wanted = isPowder ? "a mass, since it is a powder" : "a volume, since it is a liquid";
            at.Error("quantity.wrong", key, $"{given.Text}: must be {wanted}", given.Text, isPowder ? UnitTable.RangeOf<Mass>() : UnitTable.RangeOf<VolumeAt20C>());
        }

        return isPowder ? given.Mass?.Value.Grams : given.Volume?.Value.Millilitres;
    }

    private static OfferedSalt? Salt(SaltSheet offer, PartCursor at)
    {
        BrewingSalt? salt = ShelfWords.Salt(offer.Salt);
        if (salt is null && offer.Salt.Length > 0)
        {
            at.Error("salt.unknown", "salt", $"\"{FindingList.Shorten(offer.Salt)}\"; known: {ShelfWords.KnownSalts}", offer.Salt, ShelfWords.KnownSalts);
        }

        LiquorPlace into = offer.Into ?? LiquorPlace.Liquor;
        if (into == LiquorPlace.Package && salt is { AlkalinityPerMole: > 0 })
        {
            at.Error("salt.package", "into", $"{salt.Name} is alkaline: in finished beer it lifts the pH that keeps it sound, and chalk does not dissolve; only neutral salts go into the package", "package");
        }

        CheckDose(at, "most", offer.Most);
        CheckDose(at, "least", offer.Least);
        salt = OfAssay(at, salt, offer.Assay);
        if (offer.Least is { } low && (offer.Most is { } high ? low.Value.CompareTo(high.Value) > 0 : salt is not null && low.Value.MilligramsPerLitre > 1000 * UsualMost(salt)))
        {
            string limit = offer.Most?.Text ?? Invariant($"{UsualMost(salt!):0.###} g/L");
            at.Error("salt.limits", "least", $"{low.Text}; more than the most there may be, {limit}", low.Text, limit);
        }

        return salt is null ? null : new OfferedSalt(salt, into, offer.Most, offer.Least, offer.Price?.Value);
    }

    private static void CheckDose(PartCursor at, string key, Entered<Concentration>? dose)
    {
        if (dose is { } given && given.Value.MilligramsPerLitre > 1000 * MostGramsPerLitre)
        {
            string limit = Invariant($"{MostGramsPerLitre} g/L");
            at.Error("salt.tooMuch", key, $"{given.Text}; at most {limit}", given.Text, limit);
        }
    }

    private static double UsualMost(BrewingSalt salt) => SaltSolver.UsualOffer(salt, IonProfile.Distilled).MostGramsPerLitre;

    /// <summary>Calcium chloride takes up water: its label's share of CaCl2, where one is given.</summary>
    private static BrewingSalt? OfAssay(PartCursor at, BrewingSalt? salt, Entered<Fraction>? given)
    {
        if (given is not { } assay || salt is null)
        {
            return salt;
        }

        bool isChloride = salt.Id == BrewingSalts.CalciumChloride.Id || salt.Id == BrewingSalts.AnhydrousCalciumChloride.Id;
        if (isChloride && assay.Value.Ratio > 0)
        {
            return BrewingSalts.CalciumChlorideOfAssay(assay.Value) with { Id = BrewingSalts.CalciumChloride.Id };
        }

        at.Error("salt.assay", "assay", $"{assay.Text}; an assay is the CaCl2 of calcium chloride, above 0 %", assay.Text);
        return salt;
    }
}
