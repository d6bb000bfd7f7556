using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;
using static System.FormattableString;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys of a water plan.</summary>
internal static class WaterReader
{
    internal const double LowestMashPh = 4.5;
    internal const double HighestMashPh = 6.5;
    private const double MostGramsPerLitre = 20;
    private const double LeastLitres = 0.1;
    private const double MostLitres = 100_000;
    private const double LeastGrist = 0.01;
    private const double MostGrist = 50_000;
    private const double LowestSpargePh = 4.5;
    private const double HighestSpargePh = 8;

    internal static readonly WordTable<Ion> IonWords = new(
        (Ion.Calcium, "calcium"), (Ion.Magnesium, "magnesium"), (Ion.Sodium, "sodium"), (Ion.Potassium, "potassium"),
        (Ion.Bicarbonate, "bicarbonate"), (Ion.Sulphate, "sulphate"), (Ion.Chloride, "chloride"), (Ion.Nitrate, "nitrate"));

    private static readonly WordTable<LiquorPlace> Places = new(
        (LiquorPlace.Liquor, "liquor"), (LiquorPlace.Mash, "mash"), (LiquorPlace.Sparge, "sparge"), (LiquorPlace.Kettle, "kettle"));

    internal static WaterPlan Read(ObjectReader file)
    {
        WaterPlan plan = new()
        {
            Name = file.Name("name"),
            Notes = file.Prose("notes"),
            Sources = WaterSourceReader.ReadAll(file),
            Recipe = file.OptionalName("recipe"),
            Strike = Litres(file, "strike", mayBeNone: false),
            Sparge = Litres(file, "sparge", mayBeNone: true),
            Targets = Targets(file),
            Salts = file.OptionalListOfObjects("salts", Salt).OfType<OfferedSalt>().ToList(),
            Acids = file.OptionalListOfObjects("acids", Acid).OfType<OfferedAcid>().ToList(),
            Dilution = file.OptionalQuantity<Fraction>("dilution"),
            MashPh = file.Take("mashPh")?.Number(LowestMashPh, HighestMashPh),
            SpargePh = file.Take("spargePh")?.Number(LowestSpargePh, HighestSpargePh),
            Grist = file.OptionalListOfObjects("grist", GristReader.Read).OfType<GristLine>().ToList(),
        };
        CheckGrist(file, plan);
        return plan;
    }

    private static void CheckGrist(ObjectReader file, WaterPlan plan)
    {
        double kilograms = plan.Grist.Sum(line => line.Amount.Kilograms);
        if (plan.Grist.Count > 0 && kilograms is < LeastGrist or > MostGrist)
        {
            string limit = Invariant($"{LeastGrist} to {MostGrist} kg");
            file.Findings.Error("grist.weight", file.PathOf("grist"), Invariant($"weighs {kilograms:0.###} kg in all; must be {limit}"), null, limit);
        }

        if (plan.Recipe is not null && plan.Grist.Count > 0)
        {
            file.Findings.Error("grist.twice", file.PathOf("grist"), "the recipe has a grist already; keep one of the two");
        }
    }

    private static Entered<VolumeAt20C>? Litres(ObjectReader file, string key, bool mayBeNone)
    {
        Entered<VolumeAt20C>? volume = file.OptionalQuantity<VolumeAt20C>(key);
        if (volume is { } given && given.Value.Litres is < LeastLitres or > MostLitres && !(mayBeNone && given.Value.Litres == 0))
        {
            string limit = Invariant($"{LeastLitres} to {MostLitres} L");
            file.Findings.Error("liquor.litres", file.PathOf(key), $"{given.Text}; must be {limit}", given.Text, limit);
        }

        return volume;
    }

    /// <summary>The balance's ions, each overruled by a line of its own.</summary>
    private static List<IonTarget> Targets(ObjectReader file)
    {
        Dictionary<Ion, IonTarget> targets = [];
        if (file.OptionalName("balance") is { } words)
        {
            var found = WaterBalances.Find(words);
            string nearest = string.Join(", ", found.Nearest);
            if (found.Match is null)
            {
                file.Findings.Error("balance.unknown", file.PathOf("balance"), $"\"{FindingList.Shorten(words)}\" is no balance we know; the nearest: {nearest}", words, nearest);
            }

            foreach (IonTarget target in found.Match?.Targets ?? [])
            {
                targets[target.Ion] = target;
            }
        }

        HashSet<Ion> own = [];
        foreach ((IonTarget? target, string path) in file.OptionalListOfObjects("targets", Target))
        {
            if (target is not null && !own.Add(target.Ion))
            {
                file.Findings.Error("target.twice", path, $"{IonWords.Word(target.Ion)} has two targets; keep one");
            }
            else if (target is not null)
            {
                targets[target.Ion] = target;
            }
        }

        return [.. targets.Values.OrderBy(target => target.Ion)];
    }

    private static (IonTarget? Target, string Path) Target(ObjectReader at)
    {
        const double MostWeight = 1000;
        Ion ion = at.Word("ion", IonWords);
        Entered<Concentration> amount = at.Quantity<Concentration>("amount");
        double weight = at.Take("weight")?.Number(0, MostWeight) ?? 1;
        WaterSourceReader.CheckMost(at, "amount", amount.Value.MilligramsPerLitre, amount.Text);
        return (new IonTarget(ion, amount.Value.MilligramsPerLitre, weight), at.Path);
    }

    private static OfferedSalt? Salt(ObjectReader at)
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
        CheckDose(at, "most", most);
        CheckDose(at, "least", least);
        salt = OfAssay(at, salt);
        if (least is { } low && (most is { } high ? low.Value.CompareTo(high.Value) > 0 : salt is not null && low.Value.MilligramsPerLitre > 1000 * UsualMost(salt)))
        {
            string limit = most?.Text ?? Invariant($"{UsualMost(salt!):0.###} g/L");
            at.Findings.Error("salt.limits", at.PathOf("least"), $"{low.Text}; more than the most there may be, {limit}", low.Text, limit);
        }

        return salt is null ? null : new OfferedSalt(salt, into, most, least);
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

    private static OfferedAcid? Acid(ObjectReader at)
    {
        string name = at.Name("acid");
        AcidAsSold? sold = ShelfWords.Sold(name);
        if (sold is null && name.Length > 0)
        {
            at.Findings.Error("acid.unknown", at.PathOf("acid"), $"\"{FindingList.Shorten(name)}\"; known, with their strength: {ShelfWords.KnownAcids}", name, ShelfWords.KnownAcids);
        }

        double? most = sold is { Unit: DoseUnit.Gram }
            ? at.OptionalQuantity<Mass>("most")?.Value.Grams
            : at.OptionalQuantity<VolumeAt20C>("most")?.Value.Millilitres;
        return sold is null ? null : new OfferedAcid(name, sold, most);
    }
}
