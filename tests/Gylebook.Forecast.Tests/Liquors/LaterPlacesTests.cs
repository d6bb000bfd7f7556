using Gylebook.Engine.State;
using System.Globalization;
using CsCheck;
using Gylebook.Forecast.Liquors;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Water;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Liquors;

/// <summary>Salts into the package, what a salt costs, and acid for the wort.</summary>
public sealed class LaterPlacesTests
{
    private const string Still = "\"sources\": [ { \"name\": \"still\", \"distilled\": true } ], \"strike\": \"20 L\"";

    /// <summary>By formula 1 g/L of table salt is 393.39 mg/L of sodium and 606.61 of chloride: 100 mg/L of sodium in 20 L are 5.08 g.</summary>
    [Fact]
    public void Salts_into_the_package_are_counted_on_its_litres()
    {
        WaterOutcome outcome = Plans.Treat($$"""
            {{Still}}, "package": "20 L", "targets": [ { "ion": "sodium", "amount": "100 mg/L" } ], "salts": [ { "salt": "table salt", "into": "package" } ]
            """);
        Assert.Empty(outcome.Mash.Salts);
        Near.Equal(5.08, Assert.Single(outcome.Package.Salts).Grams, 0.05);
        Near.Equal(606.61 * outcome.Package.Salts[0].Grams / 20, outcome.Package.Ions.Chloride, 0.01);
        IngredientLine line = Assert.Single(WaterTreatment.RecipeLinesOf(outcome));
        Assert.Equal((IngredientKind.Salt, AdditionPoint.Package), (line.Kind, line.At.Point));
        Near.Equal(outcome.Package.Salts[0].Grams, line.Amount.Mass!.Value.Value.Grams, 1e-9);
    }

    [Fact]
    public void What_mash_and_kettle_brought_is_not_brought_again()
    {
        WaterOutcome outcome = Plans.Treat($$"""
            {{Still}}, "package": "18 L", "targets": [ { "ion": "chloride", "amount": "120 mg/L" } ],
            "salts": [ { "salt": "table salt", "into": "mash", "most": "0.1 g/L" }, { "salt": "calcium chloride dihydrate", "into": "package" } ]
            """);
        double before = outcome.Kettle.Ions.Chloride;
        Near.Equal(60.661, before, 0.01);

        // 482.29 mg/L of chloride for a gram in a litre, by formula; half a step is 1.3 mg/L.
        Near.Equal((120 - before) / 482.29 * 18, Assert.Single(outcome.Package.Salts).Grams, 0.05);
    }

    /// <summary>Sodium comes in the package alone, calcium in the kettle: neither mash nor sparge is blamed for what they lack.</summary>
    [Fact]
    public void An_ion_is_told_where_the_last_salt_goes_in_and_with_the_limit_that_holds_it()
    {
        const string Plan = """
            "sources": [ { "name": "still", "distilled": true } ], "strike": "20 L", "sparge": "10 L",
            "targets": [ { "ion": "calcium", "amount": "60 mg/L" }, { "ion": "sulphate", "amount": "150 mg/L" } ],
            """;
        WaterOutcome outcome = Plans.Treat($$"""
            {{Plan}} "salts": [ { "salt": "gypsum", "into": "mash", "most": "0.1 g/L" }, { "salt": "calcium chloride dihydrate", "into": "kettle" } ]
            """);
        string[] told = [.. outcome.Findings.Where(finding => finding.Code == "liquor.missed").Select(finding => finding.Where)];
        Assert.DoesNotContain(told, where => where.EndsWith("calcium", StringComparison.Ordinal));
        Assert.Contains("mash.sulphate", told);
        Assert.Contains("gypsum is at its limit", outcome.Findings.First(finding => finding.Where == "mash.sulphate").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Package_salts_without_litres_are_said() => Assert.Contains(
        Plans.Treat($$"""
            {{Still}}, "targets": [ { "ion": "sodium", "amount": "100 mg/L" } ], "salts": [ { "salt": "table salt", "into": "package" } ]
            """).Findings,
        finding => finding is { Code: "key.missing", Where: "package", Severity: Recipes.Severity.Error });

    /// <summary>Gypsum with magnesium chloride makes the same ions as calcium chloride with Epsom salt: price decides.</summary>
    [Fact]
    public void Of_two_ways_to_the_same_ions_the_cheaper_is_taken()
    {
        string Salts(string gypsum, string chloride) => string.Join(", ", Plans.Treat($$"""
            {{Still}}, "targets": [ { "ion": "calcium", "amount": "60 mg/L" }, { "ion": "magnesium", "amount": "20 mg/L" }, { "ion": "sulphate", "amount": "79 mg/L" } ],
            "salts": [ { "salt": "gypsum", "price": "{{gypsum}}" }, { "salt": "calcium chloride dihydrate", "price": "{{chloride}}" }, { "salt": "Epsom salt" }, { "salt": "magnesium chloride hexahydrate" } ]
            """).Mash.Salts.Select(dose => dose.Salt.Id).Order(StringComparer.Ordinal));
        Assert.Equal("calcium-chloride, epsom", Salts("50 %", "0 %"));
        Assert.Equal("gypsum, magnesium-chloride", Salts("0 %", "50 %").Replace("calcium-chloride, ", "", StringComparison.Ordinal));
    }

    [Fact]
    public void A_dearer_salt_is_never_used_more() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[20, 200]).Sample(
        (one, other, wanted) =>
        {
            double Grams(double price) => Plans.Treat($$"""
                {{Still}}, "targets": [ { "ion": "sulphate", "amount": "{{N(wanted)}} mg/L" }, { "ion": "calcium", "amount": "50 mg/L" } ],
                "salts": [ { "salt": "gypsum", "price": "{{N(100 * price)}} %" }, { "salt": "Epsom salt" }, { "salt": "calcium chloride dihydrate" } ]
                """).Mash.Salts.Where(dose => dose.Salt.Id == "gypsum").Sum(dose => dose.Grams);

            // The exact optimum is monotone; rounding to a tenth of a gram may move a salt by two steps.
            Assert.True(Grams(Math.Max(one, other)) <= Grams(Math.Min(one, other)) + 0.2 + 1e-9);
        },
        iter: 100, seed: "0000price001");

    /// <summary>No price said is the price there was: 1 g/L as √0.001, 3.16 %, of one target.</summary>
    [Fact]
    public void The_usual_price_is_what_the_guide_says()
    {
        SaltOffer usual = SaltSolver.UsualOffer(BrewingSalts.Gypsum, IonProfile.Distilled);
        Near.Equal(0.0316, Math.Sqrt(usual.Price), 0.0001);
    }

    /// <summary>German rule for wort, in print: 30 mL of 80 % lactic acid for 100 kg of malt and 0.1 pH; from 5.5 to 5.4 it is the low end, 31 mEq/(kg·pH).</summary>
    [Fact]
    public void Known_acid_for_wort()
    {
        WaterOutcome outcome = Plans.Treat("""
            "sources": [ { "name": "still", "distilled": true } ], "strike": "300 L", "sparge": "400 L", "acids": [ { "acid": "lactic acid 80 %" } ],
            "wortPh": 5.4, "wortReading": { "ph": 5.5, "sample": "20 °C" }, "grist": [ { "malt": "pilsner malt", "amount": "100 kg" } ]
            """);
        WortSouring wort = outcome.Wort!;

        // 31 in print is 30.7 of the 30 mL, rounded.
        Near.Equal(30, wort.Amount.Low, 0.5);
        Assert.True(wort.Amount.Low < wort.Amount.Likely && wort.Amount.Likely < wort.Amount.High);
        Near.Equal(wort.Amount.Likely, Assert.Single(outcome.Kettle.Acids).Units, 0.05 + 1e-9);
        Assert.Contains(outcome.Cautions, caution => caution is { Code: "acid.handle", Place.Stage: Stage.CopperUp });
        Assert.Contains(outcome.Cautions, caution => caution.Code == "wort.measure");
        IngredientLine line = Assert.Single(WaterTreatment.RecipeLinesOf(outcome));
        Assert.Equal((IngredientKind.Acid, "lactic", AdditionPoint.CopperUp), (line.Kind, line.Of, line.At.Point));

        // 80 % by weight, 1.187 g/mL.
        Near.Equal(outcome.Kettle.Acids[0].Units * 1.187 * 0.8, line.Amount.Mass!.Value.Value.Grams, 0.01);
    }

    [Fact]
    public void Wort_without_a_reading_starts_at_the_mash_and_says_so()
    {
        const string Plan = """
            "sources": [ { "name": "still", "distilled": true } ], "strike": "15 L", "acids": [ { "acid": "hydrochloric 10 %", "most": "4 mL" } ], "wortPh": 5.3
            """;
        WaterOutcome outcome = Plans.Treat($$"""{{Plan}}, "grist": [ { "malt": "pilsner malt", "amount": "4 kg" } ]""");
        Near.Equal(outcome.MashPh!.Likely, outcome.Wort!.From.Likely, 1e-12);
        Assert.Contains(outcome.Findings, finding => finding is { Code: "default.taken", Where: "wortReading" });
        Assert.Contains(outcome.Findings, finding => finding is { Code: "wort.phNotReached", Where: "wortPh" });
        Near.Equal(4, Assert.Single(outcome.Kettle.Acids).Units, 1e-9);

        // 4 mL of 2.873 mol/L with 35.45 mg of chloride to the millimole, in 15 L.
        Near.Equal(4 * 2.873 * 35.45 / 15, outcome.Kettle.Ions.Chloride, 0.01);
        Assert.Contains(Plans.Treat(Plan).Findings, finding => finding is { Code: "wort.noStart", Where: "wortPh" });
        WaterOutcome sour = Plans.Treat("""
            "sources": [ { "name": "still", "distilled": true } ], "strike": "15 L", "acids": [ { "acid": "lactic 88 %" } ], "wortPh": 5.3,
            "wortReading": { "ph": 5.1, "sample": "20 °C" }, "grist": [ { "malt": "pilsner malt", "amount": "4 kg" } ]
            """);
        Assert.Contains(sour.Findings, finding => finding.Code == "wort.sourAlready");
        Assert.Empty(sour.Kettle.Acids);
    }

    [Fact]
    public void No_place_takes_more_acid_than_there_is() => Gen.Select(Gen.Double[0, 12], Gen.Double[4.2, 5.2], Gen.Double[5.2, 6]).Sample(
        (most, wort, mash) =>
        {
            WaterOutcome outcome = Plans.Treat($$"""
                {{Plans.Source("\"alkalinity\": \"150 mg/L CaCO3\", \"ph\": 7.5, \"calcium\": \"60 mg/L\"")}}, "strike": "15 L", "sparge": "10 L",
                "acids": [ { "acid": "lactic 88 %", "most": "{{N(most)}} mL" } ], "mashPh": 5.3, "spargePh": 5.6, "wortPh": {{N(wort)}},
                "mashReading": { "ph": {{N(mash)}}, "sample": "20 °C" }, "grist": [ { "malt": "pilsner malt", "amount": "4 kg" } ]
                """);
            double used = outcome.Mash.Acids.Concat(outcome.Sparge.Acids).Concat(outcome.Kettle.Acids).Sum(dose => dose.Units)
                + (outcome.Mend is { Acid: not null } mend ? mend.Units : 0);
            Assert.InRange(used, 0, most + 1e-9);
        },
        iter: 100, seed: "0000acid0002");

    private static string N(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
