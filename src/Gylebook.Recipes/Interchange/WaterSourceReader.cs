using System.Text.Json;
using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Interchange;

/// <summary>The waters of a plan, each a laboratory's report or distilled.</summary>
internal static class WaterSourceReader
{
    /// <summary>No water to brew with has more of any one ion: our choice; the sea has 19 g/L of chloride.</summary>
    private const double MostMilligramsPerLitre = 5000;
    private const double ShareTolerance = 0.001;

    internal static IReadOnlyList<WaterSource> ReadAll(ObjectReader file)
    {
        var sources = file.ListOfObjects("sources", Read);
        if (sources.Count == 0 && !file.Findings.HasErrors)
        {
            file.Findings.Error("sources.none", file.PathOf("sources"), "at least one water is needed");
        }

        if (sources.Count == 1 && sources[0].Share is null)
        {
            return [sources[0].Source];
        }

        double sum = sources.Sum(source => source.Share?.Value.Ratio ?? 0);
        if (sources.Count > 0 && (sources.Any(source => source.Share is null) || Math.Abs(sum - 1) > ShareTolerance))
        {
            string percent = Invariant($"{100 * sum:0.##} %");
            file.Findings.Error("sources.shares", file.PathOf("sources"), $"the shares add up to {percent}; every water needs one, and together they must be 100 %", percent, "100 %");
        }

        return [.. sources.Select(source => source.Source)];
    }

    /// <summary>Tells of an amount that no liquor has.</summary>
    internal static void CheckMost(ObjectReader at, string key, double milligramsPerLitre, string text)
    {
        if (milligramsPerLitre > MostMilligramsPerLitre)
        {
            string limit = Invariant($"{MostMilligramsPerLitre} mg/L");
            at.Findings.Error("water.tooMuch", at.PathOf(key), $"{text}; no liquor has more than {limit} of it: look at the unit", text, limit);
        }
    }

    private static (WaterSource Source, Entered<Fraction>? Share) Read(ObjectReader at)
    {
        string name = at.Name("name");
        Entered<Fraction>? share = at.OptionalQuantity<Fraction>("share");
        bool distilled = at.Take("distilled")?.Flag() ?? false;
        WaterReport? report = at.OptionalObject("report", Report);
        bool boiled = at.Take("boiled")?.Flag() ?? false;
        Equivalents? boiledTo = Alkalinity(at, "boiledTo", 1);
        if (distilled == report is not null)
        {
            at.Findings.Error("source.kind", at.Path, distilled
                ? "distilled water has no report; keep one of the two"
                : "needs a report, or \"distilled\": true");
        }

        if (boiledTo is not null && !boiled)
        {
            at.Findings.Error("key.misplaced", at.PathOf("boiledTo"), "only boiled water has \"boiledTo\"; add \"boiled\": true");
        }

        return (new WaterSource(name, share?.Value ?? Fraction.FromRatio(1), report, boiled, boiledTo), share);
    }

    private static WaterReport Report(ObjectReader at)
    {
        WaterReport report = new()
        {
            Calcium = OfIon(at, "calcium", Ion.Calcium),
            Magnesium = OfIon(at, "magnesium", Ion.Magnesium),
            Sodium = Milligrams(at, "sodium"),
            Potassium = Milligrams(at, "potassium"),
            Alkalinity = Alkalinity(at, "alkalinity", 1),
            Bicarbonate = Milligrams(at, "bicarbonate"),
            Carbonate = Milligrams(at, "carbonate"),
            Hardness = Alkalinity(at, "hardness", HardnessUnits.Millimoles),
            Sulphate = Milligrams(at, "sulphate"),
            SulphateSulphur = Milligrams(at, "sulphateSulphur"),
            Chloride = Milligrams(at, "chloride"),
            Nitrate = Milligrams(at, "nitrate"),
            NitrateNitrogen = Milligrams(at, "nitrateNitrogen"),
            Ph = at.Take("ph")?.Number(4.5, 11),
            ConductivityMicrosiemens = Conductivity(at),
        };
        Twice(at, report.Sulphate is not null, report.SulphateSulphur is not null, "sulphateSulphur", "sulphate");
        Twice(at, report.Nitrate is not null, report.NitrateNitrogen is not null, "nitrateNitrogen", "nitrate");
        return report;
    }

    private static void Twice(ObjectReader at, bool one, bool other, string key, string with)
    {
        if (one && other)
        {
            at.Findings.Error("report.twice", at.PathOf(key), $"the report says {with} too; keep one of the two");
        }
    }

    private static Concentration? Milligrams(ObjectReader at, string key)
    {
        Entered<Concentration>? amount = at.OptionalQuantity<Concentration>(key);
        CheckMost(at, key, amount?.Value.MilligramsPerLitre ?? 0, amount?.Text ?? "");
        return amount?.Value;
    }

    /// <summary>Calcium or magnesium, as itself or as its hardness: "100 mg/L", "250 mg/L CaCO3", "14 dH".</summary>
    private static Concentration? OfIon(ObjectReader at, string key, Ion ion)
    {
        if (at.Take(key) is not { } cursor || cursor.Element.ValueKind != JsonValueKind.String
            || !(UnitTable.LooksLike<Equivalents>(cursor.Element.GetString()!) || Millimoles(cursor) is not null))
        {
            return Milligrams(at, key);
        }

        if (Alkalinity(at, key, HardnessUnits.Millimoles) is not { } hardness)
        {
            return null;
        }

        return Concentration.FromMilligramsPerLitre(hardness.MilliequivalentsPerLitre * ion.EquivalentWeight());
    }

    /// <summary>Hardness or alkalinity in any unit; what a mmol/L counts for depends on which of the two it is.</summary>
    private static Equivalents? Alkalinity(ObjectReader at, string key, double perMillimole)
    {
        if (at.Take(key) is not { } cursor)
        {
            return null;
        }

        Equivalents? read = Millimoles(cursor) is { } millimoles
            ? Equivalents.FromMilliequivalentsPerLitre(millimoles * perMillimole)
            : cursor.Quantity<Equivalents>()?.Value;
        if (read is not { } value || (value.MilliequivalentsPerLitre >= 0 && value.MilliequivalentsPerLitre <= MostMilliequivalents))
        {
            return read;
        }

        string limit = Invariant($"0 to {MostMilliequivalents} mEq/L");
        string text = FindingList.Shorten(cursor.Element.GetString()!);
        at.Findings.Error("water.tooMuch", at.PathOf(key), $"{text}; must be from {limit}: look at the unit", text, limit);
        return null;
    }

    /// <summary>5000 mg/L as CaCO3, as for the ions.</summary>
    private const double MostMilliequivalents = 100;

    private static double? Millimoles(JsonCursor cursor) => cursor.Element.ValueKind == JsonValueKind.String
        ? NumberBefore.Unit(cursor.Element.GetString()!, "mmol/L") : null;

    private static double? Conductivity(ObjectReader at)
    {
        const int Longest = 64;
        const double Most = 20_000;
        if (at.Take("conductivity") is not { } cursor || cursor.Text(Longest) is not { } text)
        {
            return null;
        }

        double? found = NumberBefore.Unit(text, "µS/cm") ?? NumberBefore.Unit(text, "μS/cm") ?? NumberBefore.Unit(text, "uS/cm")
            ?? (NumberBefore.Unit(text, "mS/cm") * 1000) ?? (NumberBefore.Unit(text, "mS/m") * 10);
        if (found is >= 0 and <= Most)
        {
            return found;
        }

        const string Form = "a number from 0 with µS/cm, mS/cm or mS/m, at 25 °C";
        at.Findings.Error("conductivity.wrong", cursor.Path, $"{FindingList.Shorten(text)}; must be {Form}", text, Form);
        return null;
    }
}
