using System.Globalization;
using CsCheck;
using Gylebook.Forecast.Liquors;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Liquors;

/// <summary>A meter reading in a plan: what it teaches, and what to add now.</summary>
public sealed class MashReadingTests
{
    private const string M2 = "\"alkalinity\": \"100 mg/L CaCO3\", \"ph\": 7.5, \"calcium\": \"40 mg/L\", \"magnesium\": \"5 mg/L\"";

    /// <summary>
    /// Worked mash M2 reads 5.823 and with 3.0 mL of 88 % lactic acid 5.642 (proton balance, in print to 0.001): a meter that reads the
    /// forecast finds no shift and asks for that acid. Half a step of the measure is 0.05 mL.
    /// </summary>
    [Fact]
    public void Known_mash_that_reads_as_forecast_is_mended_with_the_known_acid()
    {
        WaterOutcome outcome = Measured(5.823, "20 °C", 5.642);
        Near.Equal(0, outcome.MashReading!.Shift.Likely, 0.001);
        Near.Equal(3.0, outcome.Mend!.Units, 0.05 + 1e-9);
        Near.Equal(5.642, outcome.Mend.Ph.Likely, 0.004);
        Assert.True(outcome.Mend.Amount.Low < outcome.Mend.Amount.Likely && outcome.Mend.Amount.Likely < outcome.Mend.Amount.High);
        Near.Equal(5.75, Assert.Single(outcome.MashReading.Malts).DistilledPh.Likely, 0.001);
    }

    /// <summary>Briggs et al. 2004, ch. 4: at 65 °C a meter reads about 0.35 lower than of the cooled sample.</summary>
    [Fact]
    public void Known_reading_of_a_hot_sample_is_the_same_reading()
    {
        WaterOutcome cooled = Measured(5.60, "20 °C", 5.4), hot = Measured(5.25, "65 °C", 5.4);
        Near.Equal(cooled.MashReading!.PhAt20C, hot.MashReading!.PhAt20C, 1e-9);
        Near.Equal(cooled.Mend!.Units, hot.Mend!.Units, 1e-9);
    }

    [Fact]
    public void The_mash_measured_has_no_width_left_and_a_mend_only_that_of_its_step()
    {
        double Width(double wanted)
        {
            MashMend mend = Measured(5.70, "20 °C", wanted).Mend!;
            return mend.Ph.High - mend.Ph.Low;
        }

        Assert.True(Width(5.6) < Width(5.5) && Width(5.5) < Width(5.4));
        WaterOutcome plain = Plans.Treat(Plan("\"mashReading\": { \"ph\": 5.70, \"sample\": \"20 °C\" },", null));
        Near.Equal(5.70, plain.MashPh!.Low, 1e-9);
        Near.Equal(5.70, plain.MashPh.High, 1e-9);
        Assert.Null(plain.Mend);
    }

    [Fact]
    public void What_the_plan_puts_in_is_in_unless_said_otherwise()
    {
        WaterOutcome plan = Plans.Treat(Plan("", 5.4));
        double planned = Assert.Single(plan.Mash.Acids).Units;
        WaterOutcome unsaid = Plans.Treat(Plan("\"mashReading\": { \"ph\": 5.5, \"sample\": \"20 °C\" },", 5.4));
        WaterOutcome said = Plans.Treat(Plan($"\"mashReading\": {{ \"ph\": 5.5, \"sample\": \"20 °C\", \"acid\": \"{planned.ToString(CultureInfo.InvariantCulture)} mL\" }},", 5.4));
        Near.Equal(unsaid.MashReading!.Shift.Likely, said.MashReading!.Shift.Likely, 1e-9);
        Near.Equal(planned, Assert.Single(unsaid.Mash.Acids).Units, 1e-12);
        Assert.True(unsaid.Mend!.Units > 0);
    }

    [Fact]
    public void A_mash_too_sour_is_mended_with_the_alkaline_salt_at_hand()
    {
        WaterOutcome outcome = Plans.Treat("""
            "sources": [ { "name": "still", "distilled": true } ], "strike": "15 L", "mashPh": 5.5,
            "salts": [ { "salt": "baking soda", "into": "mash", "most": "1 g/L" } ],
            "mashReading": { "ph": 5.25, "sample": "20 °C" },
            "grist": [ { "malt": "pale ale malt", "amount": "4.5 kg", "distilledPh": 5.5, "buffer": 40 } ]
            """);
        Assert.Equal("baking-soda", outcome.Mend!.Salt!.Id);
        Near.Equal(5.5, outcome.Mend.Ph.Likely, 0.005);
        Assert.InRange(outcome.Mend.Units, 0, 15);
        Assert.DoesNotContain(outcome.Findings, finding => finding.Code == "mash.phNotReached");
    }

    [Fact]
    public void A_mend_never_takes_more_acid_than_there_is()
    {
        WaterOutcome outcome = Plans.Treat($$"""
            {{Plans.Source(M2)}}, "strike": "15 L", "mashPh": 5.2, "acids": [ { "acid": "lactic 88 %", "most": "3 mL" } ],
            "mashReading": { "ph": 5.7, "sample": "20 °C", "acid": "2 mL" },
            "grist": [ { "malt": "pale ale malt", "amount": "4.5 kg", "distilledPh": 5.75, "buffer": 40 } ]
            """);
        Near.Equal(1.0, outcome.Mend!.Units, 1e-9);
        Assert.Contains(outcome.Findings, finding => finding is { Code: "mash.phNotReached", Where: "mashPh" });
    }

    [Fact]
    public void A_reading_far_off_is_said()
    {
        Assert.Contains(Measured(6.4, "20 °C", 5.4).Findings, finding => finding is { Code: "mashPh.readingFarOff", Where: "mashReading.ph" });
        Assert.DoesNotContain(Measured(5.8, "20 °C", 5.4).Findings, finding => finding.Code == "mashPh.readingFarOff");
    }

    [Fact]
    public void A_reading_without_a_grist_is_said() => Assert.Contains(
        Plans.Treat("""
            "sources": [ { "name": "still", "distilled": true } ], "strike": "15 L", "mashReading": { "ph": 5.4, "sample": "20 °C" }
            """).Findings,
        finding => finding is { Code: "mash.noGrist", Where: "mashReading" });

    /// <summary>What was learned, put into the plan as printed, makes the forecast say what the meter said.</summary>
    [Fact]
    public void Learned_lines_put_into_the_plan_forecast_the_reading() => Gen.Select(
        Gen.Double[5.3, 5.9], Gen.Double[15, 80], Gen.Double[0, 0.8]).Sample(
        (ph, celsius, dark) =>
        {
            string grist = $$""" "grist": [ { "malt": "pale ale malt", "amount": "3 kg" }, { "malt": "wheat malt", "amount": "1 kg" }, { "malt": "roasted barley", "amount": "{{N(dark)}} kg" } ] """;
            string water = $$""" {{Plans.Source(M2)}}, "strike": "15 L", """;
            double hot = ph - (0.35 / 45 * (celsius - 20));
            WaterOutcome measured = Plans.Treat($$"""{{water}} "mashReading": { "ph": {{N(hot)}}, "sample": "{{N(celsius)}} °C" }, {{grist}}""");
            string learned = string.Join(", ", measured.MashReading!.Malts.Select(malt =>
                $$"""{ "malt": "{{malt.Malt.Name}}", "distilledPh": {{N(malt.DistilledPh.Likely)}}, "buffer": {{N(malt.Buffer)}} }"""));
            WaterOutcome next = Plans.Treat($$"""{{water}} "malts": [ {{learned}} ], {{grist}}""");

            // Figures go into the plan with nine decimals.
            Near.Equal(measured.MashReading.PhAt20C, next.MashPh!.Likely, 1e-6);
            Assert.Equal(["pale-ale-malt", "wheat-malt"], measured.MashReading.Malts.Select(malt => malt.Malt.Id));
        },
        iter: 100, seed: "0000learned1");

    [Fact]
    public void A_malt_of_the_brewers_own_overrules_the_table_and_one_not_in_the_grist_is_said()
    {
        const string Rest = """
            "sources": [ { "name": "still", "distilled": true } ], "strike": "15 L",
            "malts": [ { "malt": "pale ale malt", "distilledPh": 5.61, "buffer": 40 }, { "malt": "rye malt", "distilledPh": 6, "buffer": 40 } ],
            """;
        WaterOutcome outcome = Plans.Treat($$"""{{Rest}} "grist": [ { "malt": "pale ale malt", "amount": "4 kg" } ]""");
        Near.Equal(5.61, outcome.MashPh!.Likely, 0.0006);
        Assert.Contains(outcome.Findings, finding => finding is { Code: "malts.notInGrist", Where: "malts[1].malt" });
        WaterOutcome line = Plans.Treat($$"""{{Rest}} "grist": [ { "malt": "pale ale malt", "amount": "4 kg", "distilledPh": 5.8, "buffer": 40 } ]""");
        Near.Equal(5.80, line.MashPh!.Likely, 0.0006);
    }

    private static WaterOutcome Measured(double ph, string sample, double wanted) =>
        Plans.Treat(Plan($$""" "mashReading": { "ph": {{N(ph)}}, "sample": "{{sample}}", "acid": "0 mL" },""", wanted));

    private static string Plan(string reading, double? wanted) => $$"""
        {{Plans.Source(M2)}}, "strike": "15 L", {{(wanted is double ph ? $"\"mashPh\": {N(ph)}," : "")}} {{reading}}
        "acids": [ { "acid": "lactic 88 %" } ],
        "grist": [ { "malt": "pale ale malt", "amount": "4.5 kg", "distilledPh": 5.75, "buffer": 40 } ]
        """;

    private static string N(double number) => number.ToString("0.#########", CultureInfo.InvariantCulture);
}
