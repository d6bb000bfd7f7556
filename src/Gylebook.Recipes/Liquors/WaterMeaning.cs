using Gylebook.Recipes.Interchange;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Liquors;

/// <summary>What a water sheet means: names looked up, shares added up, balances spelled out.</summary>
internal static class WaterMeaning
{
    private const double ShareTolerance = 0.001;
    private const double LeastLitres = 0.1;
    private const double MostLitres = 100_000;
    private const double LeastGrist = 0.01;
    private const double MostGrist = 50_000;

    /// <summary>The plan that a sheet means; what stands in the way is told.</summary>
    public static WaterPlan Of(WaterSheet sheet, FindingList findings)
    {
        IReadOnlyList<OfferedAcid> acids = ShelfMeaning.Acids(sheet.Acids, findings);
        CheckLitres(sheet, findings);
        WaterPlan plan = new()
        {
            Name = sheet.Name,
            Notes = sheet.Notes,
            Sources = Sources(sheet.Sources, findings),
            Recipe = sheet.Recipe,
            Strike = sheet.Strike,
            Sparge = sheet.Sparge,
            Package = sheet.Package,
            Targets = Targets(sheet, findings),
            Salts = ShelfMeaning.Salts(sheet.Salts, findings),
            Acids = acids,
            Dilution = sheet.Dilution,
            MashPh = sheet.MashPh,
            SpargePh = sheet.SpargePh,
            WortPh = sheet.WortPh,
            WortReading = sheet.WortReading is { } wort ? new MeterReading(wort.Ph, wort.Sample, null) : null,
            MashReading = sheet.MashReading is { } mash ? ShelfMeaning.Mash(mash, acids, findings) : null,
            Malts = GristMeaning.Titrated(sheet.Malts, findings),
            Grist = GristMeaning.Of(sheet.Grist, findings),
        };
        CheckGrist(plan, findings);
        return plan;
    }

    private static void CheckLitres(WaterSheet sheet, FindingList findings)
    {
        foreach ((string key, Entered<VolumeAt20C>? volume, bool mayBeNone) in new[] { ("strike", sheet.Strike, false), ("sparge", sheet.Sparge, true), ("package", sheet.Package, false) })
        {
            if (volume is { } given && given.Value.Litres is < LeastLitres or > MostLitres && !(mayBeNone && given.Value.Litres == 0))
            {
                string limit = Invariant($"{LeastLitres} to {MostLitres} L");
                findings.Error("liquor.litres", key, $"{given.Text}; must be {limit}", given.Text, limit);
            }
        }
    }

    private static void CheckGrist(WaterPlan plan, FindingList findings)
    {
        double kilograms = plan.Grist.Sum(line => line.Amount.Kilograms);
        if (plan.Grist.Count > 0 && kilograms is < LeastGrist or > MostGrist)
        {
            string limit = Invariant($"{LeastGrist} to {MostGrist} kg");
            findings.Error("grist.weight", "grist", Invariant($"weighs {kilograms:0.###} kg in all; must be {limit}"), null, limit);
        }

        if (plan.Recipe is not null && plan.Grist.Count > 0)
        {
            findings.Error("grist.twice", "grist", "the recipe has a grist already; keep one of the two");
        }
    }

    private static IReadOnlyList<WaterSource> Sources(IReadOnlyList<WaterSourceSheet> sources, FindingList findings)
    {
        if (sources.Count == 0 && !findings.HasErrors)
        {
            findings.Error("sources.none", "sources", "at least one water is needed");
        }

        if (sources.Count == 1 && sources[0].Share is null)
        {
            return [Source(sources[0])];
        }

        double sum = sources.Sum(source => source.Share?.Value.Ratio ?? 0);
        if (sources.Count > 0 && (sources.Any(source => source.Share is null) || Math.Abs(sum - 1) > ShareTolerance))
        {
            string percent = Invariant($"{100 * sum:0.##} %");
            findings.Error("sources.shares", "sources", $"the shares add up to {percent}; every water needs one, and together they must be 100 %", percent, "100 %");
        }

        return [.. sources.Select(Source)];
    }

    private static WaterSource Source(WaterSourceSheet source) => new(
        source.Name, source.Share?.Value ?? Fraction.FromRatio(1), source.Report is { } report ? Report(report) : null, source.IsBoiled == true, source.BoiledTo?.Value);

    private static WaterReport Report(ReportSheet sheet) => new()
    {
        Calcium = sheet.Calcium?.Value,
        Magnesium = sheet.Magnesium?.Value,
        Sodium = sheet.Sodium?.Value,
        Potassium = sheet.Potassium?.Value,
        Alkalinity = sheet.Alkalinity?.Value,
        Bicarbonate = sheet.Bicarbonate?.Value,
        Carbonate = sheet.Carbonate?.Value,
        Hardness = sheet.Hardness?.Value,
        Sulphate = sheet.Sulphate?.Value,
        SulphateSulphur = sheet.SulphateSulphur?.Value,
        Chloride = sheet.Chloride?.Value,
        Nitrate = sheet.Nitrate?.Value,
        NitrateNitrogen = sheet.NitrateNitrogen?.Value,
        Ph = sheet.Ph,
        ConductivityMicrosiemens = sheet.Conductivity?.Microsiemens,
    };

    /// <summary>The balance's ions, each overruled by a line of its own.</summary>
    private static List<IonTarget> Targets(WaterSheet sheet, FindingList findings)
    {
        Dictionary<Ion, IonTarget> targets = [];
        if (sheet.Balance is { } words)
        {
            var found = WaterBalances.Find(words);
            string nearest = string.Join(", ", found.Nearest);
            if (found.Match is null)
            {
                findings.Error("balance.unknown", "balance", $"\"{FindingList.Shorten(words)}\" is no balance we know; the nearest: {nearest}", words, nearest);
            }

            foreach (IonTarget target in found.Match?.Targets ?? [])
            {
                targets[target.Ion] = target;
            }
        }

        HashSet<Ion> own = [];
        for (int i = 0; i < sheet.Targets.Count; i++)
        {
            IonWish wish = sheet.Targets[i];
            if (!own.Add(wish.Ion))
            {
                findings.Error("target.twice", Invariant($"targets[{i}]"), $"{WaterForm.IonWords.Word(wish.Ion)} has two targets; keep one");
                continue;
            }

            targets[wish.Ion] = new IonTarget(wish.Ion, wish.Amount.Value.MilligramsPerLitre, wish.Weight ?? 1);
        }

        return [.. targets.Values.OrderBy(target => target.Ion)];
    }
}
