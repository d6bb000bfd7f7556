using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys of a water plan.</summary>
internal static class WaterReader
{
    internal const double LowestMashPh = 4.5;
    internal const double HighestMashPh = 6.5;
    private const double LeastLitres = 0.1;
    private const double MostLitres = 100_000;
    private const double LeastGrist = 0.01;
    private const double MostGrist = 50_000;
    private const double LowestSpargePh = 4.5;
    private const double HighestSpargePh = 8;
    private const double LowestWortPh = 4;
    private const double HighestWortPh = 6;

    internal static readonly WordTable<Ion> IonWords = new(
        (Ion.Calcium, "calcium"), (Ion.Magnesium, "magnesium"), (Ion.Sodium, "sodium"), (Ion.Potassium, "potassium"),
        (Ion.Bicarbonate, "bicarbonate"), (Ion.Sulphate, "sulphate"), (Ion.Chloride, "chloride"), (Ion.Nitrate, "nitrate"));

    internal static WaterPlan Read(ObjectReader file)
    {
        List<OfferedAcid> acids = [.. file.OptionalListOfObjects("acids", ShelfReader.Acid).OfType<OfferedAcid>()];
        WaterPlan plan = new()
        {
            Name = file.Name("name"),
            Notes = file.Prose("notes"),
            Sources = WaterSourceReader.ReadAll(file),
            Recipe = file.OptionalName("recipe"),
            Strike = Litres(file, "strike", mayBeNone: false),
            Sparge = Litres(file, "sparge", mayBeNone: true),
            Package = Litres(file, "package", mayBeNone: false),
            Targets = Targets(file),
            Salts = file.OptionalListOfObjects("salts", ShelfReader.Salt).OfType<OfferedSalt>().ToList(),
            Acids = acids,
            Dilution = file.OptionalQuantity<Fraction>("dilution"),
            MashPh = file.Take("mashPh")?.Number(LowestMashPh, HighestMashPh),
            SpargePh = file.Take("spargePh")?.Number(LowestSpargePh, HighestSpargePh),
            WortPh = file.Take("wortPh")?.Number(LowestWortPh, HighestWortPh),
            WortReading = file.OptionalObject("wortReading", at => MeterReader.Read(at, acids: null)),
            MashReading = file.OptionalObject("mashReading", at => MeterReader.Read(at, acids)),
            Malts = GristReader.Titrated(file),
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
}
