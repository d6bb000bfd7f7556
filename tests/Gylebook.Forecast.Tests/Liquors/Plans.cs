using Gylebook.Forecast.Liquors;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Tests.Liquors;

/// <summary>Water plans for tests.</summary>
internal static class Plans
{
    /// <summary>The plan of that text, which must be without fault.</summary>
    public static WaterPlan Read(string keys)
    {
        var reading = WaterFile.Read($$"""{ "format": "gylebook-water/1", "name": "test", {{keys}} }""");
        Assert.True(reading.Value is not null, string.Join('\n', reading.Findings.Select(finding => finding.Message)));
        return reading.Value;
    }

    /// <summary>Carries a plan out on the litres and the grist in it.</summary>
    public static WaterOutcome Treat(string keys) => Treat(Read(keys));

    /// <summary>Carries a plan out on the litres and the grist in it.</summary>
    public static WaterOutcome Treat(WaterPlan plan)
    {
        List<Recipes.Finding> findings = [];
        LiquorNeed? need = LiquorNeed.Of(plan, findings);
        Assert.Empty(findings);
        return WaterTreatment.Of(plan, need!);
    }

    /// <summary>A source of one report.</summary>
    public static string Source(string report) => $$""" "sources": [ { "name": "tap", "report": { {{report}} } } ] """;

    /// <summary>A water of any profile, whose charges need not cancel.</summary>
    public static WaterSource Water(IonProfile ions, double ph, double share = 1) => new(
        "any", Fraction.FromRatio(share),
        new WaterReport
        {
            Calcium = Milligrams(ions.Calcium), Magnesium = Milligrams(ions.Magnesium), Sodium = Milligrams(ions.Sodium),
            Potassium = Milligrams(ions.Potassium), Bicarbonate = Milligrams(ions.Bicarbonate),
            Sulphate = Milligrams(ions.Sulphate), Chloride = Milligrams(ions.Chloride), Ph = ph,
        },
        false, null);

    /// <summary>Pale malt with a curve of its own.</summary>
    public static GristLine Pale(double kilograms, double ph = 5.75, double buffer = 40) =>
        new("pale", Mass.FromKilograms(kilograms), new MaltTitration(ph, buffer, 0, new("test", "entered")));

    private static Concentration Milligrams(double value) => Concentration.FromMilligramsPerLitre(value);
}
