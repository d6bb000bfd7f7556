using System.Globalization;
using CsCheck;
using Gylebook.Forecast.Liquors;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Liquors;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Liquors;

/// <summary>Whatever a file says: findings, and never an exception or a figure that is no number.</summary>
public sealed class HostilePlanTests
{
    /// <summary>Small, usual and huge numbers, and nought.</summary>
    private static readonly Gen<double> AnyNumber = Gen.OneOf(
        Gen.Const(0.0), Gen.Double[0, 1], Gen.Double[0, 100], Gen.Double[0, 5000], Gen.Double[-3, 6].Select(exponent => Math.Pow(10, exponent)));

    private static readonly Gen<string> AnySalt = Gen.Select(
        OneOf("gypsum", "calcium chloride dihydrate", "Epsom salt", "table salt", "baking soda", "chalk", "slaked lime", "sodium hydroxide"),
        OneOf("liquor", "mash", "sparge", "kettle"), Gen.Double[0, 20], Gen.Double[0, 1])
        .Select((salt, into, most, share) => $$"""{ "salt": "{{salt}}", "into": "{{into}}", "most": "{{N(most)}} g/L", "least": "{{N(most * share)}} g/L" }""");

    private static readonly Gen<string> AnyPlan = Gen.Select(
        Gen.Select(AnyNumber.Array[7], Gen.Double[4.5, 11], Gen.Double[0, 100]),
        Gen.Select(AnyNumber, AnyNumber, AnyNumber, Gen.Double[4.5, 6.5], Gen.Double[4.5, 8]),
        Gen.Select(AnySalt.Array[0, 5], AnyNumber.Array[5], OneOf("lactic 88 %", "sulphuric 96 %", "citric", "phosphoric 85 %", "hydrochloric 37 %")),
        Gen.Bool, Gen.Bool).Select((water, brew, offers, boiled, diluted) => $$"""
            { "format": "gylebook-water/1", "name": "any", "sources": [ { "name": "any", "boiled": {{(boiled ? "true" : "false")}}, "report": {
                "calcium": "{{N(water.Item1[0])}} mg/L", "magnesium": "{{N(water.Item1[1])}} mg/L", "sodium": "{{N(water.Item1[2])}} mg/L",
                "sulphate": "{{N(water.Item1[3])}} mg/L", "chloride": "{{N(water.Item1[4])}} mg/L", "potassium": "{{N(water.Item1[5])}} mg/L",
                "nitrate": "{{N(water.Item1[6])}} mg/L", "alkalinity": "{{N(water.Item3)}} mEq/L", "ph": {{N(water.Item2)}} } } ],
              "strike": "{{N(brew.Item1)}} L", "sparge": "{{N(brew.Item2)}} L", "mashPh": {{N(brew.Item4)}}, "spargePh": {{N(brew.Item5)}},
              {{(diluted ? "\"dilution\": \"100 %\"," : "")}}
              "salts": [ {{string.Join(", ", offers.Item1)}} ], "acids": [ { "acid": "{{offers.Item3}}" } ],
              "targets": [ { "ion": "calcium", "amount": "{{N(offers.Item2[0])}} mg/L" }, { "ion": "sodium", "amount": "{{N(offers.Item2[1])}} mg/L" },
                { "ion": "sulphate", "amount": "{{N(offers.Item2[2])}} mg/L" }, { "ion": "bicarbonate", "amount": "{{N(offers.Item2[3])}} mg/L", "weight": 0 } ],
              "grist": [ { "malt": "pale ale malt", "amount": "{{N(brew.Item3)}} kg" }, { "malt": "black malt", "amount": "{{N(offers.Item2[4])}} kg" } ] }
            """);

    [Fact]
    public void Numbers_of_any_size_are_refused_or_carried_out()
    {
        int carriedOut = 0;
        AnyPlan.Sample(
            text =>
            {
                WaterPlan? plan = WaterFile.Read(text).Value;
                if (plan is null)
                {
                    return;
                }

                Interlocked.Increment(ref carriedOut);
                WaterOutcome outcome = Plans.Treat(plan);
                Assert.All(
                    outcome.Mash.Salts.Select(dose => dose.Grams).Concat(outcome.Mash.Acids.Select(dose => dose.Units))
                        .Concat(outcome.Sparge.Acids.Select(dose => dose.Units)).Append(outcome.MashPh?.Likely ?? 0),
                    figure => Assert.True(double.IsFinite(figure) && figure >= 0));
                Assert.Equal(outcome.MashPh is null, outcome.Findings.Any(finding => finding.Code == "mash.tooThick"));
            },
            iter: 1000, seed: "0000hostile1");
        Assert.True(carriedOut > 100, $"{carriedOut} were carried out");
    }

    [Fact]
    public void A_damaged_file_makes_findings_and_no_exception()
    {
        string whole = File.ReadAllText(RepositoryFile.PathOf("samples/water/soft-blend.json"));
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Int[0, 30], OneOf("", "\"", "{", "]", "-1", "1e999", "null", "NaN", " mg/L")).Sample(
            (at, length, put) =>
            {
                string damaged = whole.Remove(at, Math.Min(length, whole.Length - at)).Insert(at, put);
                var reading = WaterFile.Read(damaged);
                Assert.True(reading.Value is not null || reading.Findings.Count > 0);
                if (reading.Value is { } plan)
                {
                    Plans.Treat(plan with { Strike = Typed.Litres(20), Grist = [Plans.Pale(4)] });
                }
            },
            iter: 1000, seed: "0000damaged1");
    }

    private static Gen<string> OneOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    private static string N(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
