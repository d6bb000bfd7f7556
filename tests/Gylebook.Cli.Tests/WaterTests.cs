using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook water, run as a person runs it.</summary>
public sealed class WaterTests
{
    private static readonly string[] AcidArguments =
    [
        "water", "acid", "--alkalinity", "100 mg/L CaCO3", "--ph", "7.5", "--calcium", "40 mg/L", "--magnesium", "5 mg/L",
        "--sodium", "10 mg/L", "--sulfate", "30 mg/L", "--chloride", "20 mg/L", "--temperature", "20 C", "--to", "5.6",
        "--volume", "15 L", "--acid", "lactic 88 %",
    ];

    public static TheoryData<string> Plans() =>
        [.. Directory.GetFiles(PathOf("samples", "water"), "*.json").Select(path => Path.GetFileName(path)!)];

    /// <summary>15 L, alkalinity 100 mg/L CaCO3, pH 7.5 to 5.6: 2.18 mL of 88 % lactic acid, worked and printed to 0.01.</summary>
    [Fact]
    public void Acid_for_a_sparge_is_the_known_amount()
    {
        Ran ran = GylebookProgram.Run([.. AcidArguments, "--json"]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Empty(PublishedSchema.Objections("acid", ran.Output));
        using JsonDocument json = JsonDocument.Parse(ran.Output);
        Assert.Equal(2.18, json.RootElement.GetProperty("millilitres").GetDouble(), 0.005);

        // 2.18 mL of 11.571 mEq/mL at pH 5.6 (printed strength) in 15 L.
        Assert.Equal(2.18 * 11.571 / 15, json.RootElement.GetProperty("milliequivalentsPerLitre").GetDouble(), 0.005);
    }

    /// <summary>100 mg/L CaCO3 is 1.998 mEq/L, and at rest with the air water of pH 5.6 has next to none (PHREEQC: 5.600 for pure water at 25 °C): all of it must go.</summary>
    [Fact]
    public void Acid_for_an_open_vessel_takes_all_alkalinity() =>
        Assert.Equal(1.998, Number([.. AcidArguments, "--open"], "milliequivalentsPerLitre"), 0.001);

    /// <summary>Phosphoric acid of 10 % is 1.075 mol/L by mass and 1.020 by volume; stated with the density of the first it is the first.</summary>
    [Fact]
    public void A_strength_by_volume_wants_more_of_it()
    {
        string[] Of(string acid) => [.. AcidArguments[..^1], acid];
        double byMass = Number(Of("phosphoric 10 %"), "millilitres");
        Assert.Equal(1.075 / 1.020, Number(Of("phosphoric 10 % w/v"), "millilitres") / byMass, 0.001);
        Assert.Equal(byMass, Number([.. Of("phosphoric 10 %"), "--density", "1.0532 kg/L"], "millilitres"), 1e-4);
        Assert.True(Number([.. Of("phosphoric 50 %"), "--density", "1.335 g/mL"], "millilitres") < byMass / 5);
    }

    private static double Number(string[] arguments, string name)
    {
        Ran ran = WarmProgram.Run([.. arguments, "--json"]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Empty(PublishedSchema.Objections("acid", ran.Output));
        using JsonDocument json = JsonDocument.Parse(ran.Output);
        return json.RootElement.GetProperty(name).GetDouble();
    }

    [Fact]
    public void A_measured_mash_in_words_says_what_to_add_and_what_was_learned()
    {
        Ran ran = GylebookProgram.Run(["water", PathOf("samples", "water", "measured-mash.json")], "de_DE.UTF-8");
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Contains("Meter: pH 5.52 in a sample at 22 °C", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Add to the mash now: ", ran.Output, StringComparison.Ordinal);
        Assert.Matches("\\{ \"malt\": \"pale ale malt\", \"distilledPh\": 5\\.\\d+, \"buffer\": 40 \\}", ran.Output);
        Assert.Contains("Caution, mash: The mash is hot and scalds", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Acid_in_words_carries_its_caution()
    {
        Ran ran = GylebookProgram.Run(AcidArguments);
        Assert.StartsWith("2.18 mL of lactic acid 88 % for 15 L", ran.Output, StringComparison.Ordinal);
        Assert.Contains("goggles", ran.Output, StringComparison.Ordinal);
        Assert.Equal(ran, GylebookProgram.Run(AcidArguments, "de_DE.UTF-8"));
    }

    [Theory]
    [InlineData("--ph", "15", "number.range", "--ph")]
    [InlineData("--ph", "sour", "ph.wrong", "--ph")]
    [InlineData("--alkalinity", "-3 dH", "number.range", "--alkalinity")]
    [InlineData("--volume", "15 kg", "quantity.wrong", "--volume")]
    [InlineData("--acid", "vinegar", "acid.unknown", "--acid")]
    [InlineData("--acid", "lactic 50 %", "acid.unknown", "--acid")]
    [InlineData("--temperature", "99 °C", "number.range", "--temperature")]
    [InlineData("--calcium", "9 g/L", "number.range", "--calcium")]
    public void Nonsense_is_refused_with_its_option_named(string option, string value, string code, string where)
    {
        string[] arguments = [.. AcidArguments];
        arguments[Array.IndexOf(arguments, option) + 1] = value;
        Ran ran = WarmProgram.Run([.. arguments, "--json"]);
        Assert.Equal(1, ran.ExitCode);
        using JsonDocument json = JsonDocument.Parse(ran.Output);
        JsonElement finding = Assert.Single(json.RootElement.GetProperty("findings").EnumerateArray());
        Assert.Equal((code, where), (finding.GetProperty("code").GetString(), finding.GetProperty("where").GetString()));
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_sample_plan_is_carried_out_in_the_published_form(string name)
    {
        Ran ran = WarmProgram.Run(["water", PathOf("samples", "water", name), "--json"]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Empty(PublishedSchema.Objections("liquor", ran.Output));
        using JsonDocument json = JsonDocument.Parse(ran.Output);
        Assert.True(json.RootElement.GetProperty("ions").GetProperty("mash").GetProperty("calcium").GetDouble() > 20);
    }

    [Fact]
    public void A_plan_in_words_names_every_dose_and_the_pH_with_its_temperature()
    {
        Ran ran = GylebookProgram.Run(["water", PathOf("samples", "water", "hard-well.json")], "de_DE.UTF-8");
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Contains("g gypsum", ran.Output, StringComparison.Ordinal);
        Assert.Contains("mL lactic acid 88 %", ran.Output, StringComparison.Ordinal);
        Assert.Contains("sample cooled to 20 °C", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Caution, mash: Lactic acid", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d,\d", ran.Output);

        // What was thinned on its way is not thinned again in the kettle.
        Assert.Matches(@"Into the mash \(18\.0 L\): \d+\.\d L of it distilled", ran.Output);
        Assert.DoesNotContain("Into the kettle", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("water-wrong.json", "sources[0].report.calcium")]
    [InlineData("water-absurd.json", "sources[0].report.chloride")]
    public void A_broken_plan_is_refused_with_every_line_named_and_no_figure(string name, string where)
    {
        Ran ran = WarmProgram.Run(["water", PathOf("samples", "bad", name), "--json"]);
        Assert.Equal(("", 1), (ran.Errors, ran.ExitCode));
        Assert.Empty(PublishedSchema.Objections("liquor", ran.Output));
        using JsonDocument json = JsonDocument.Parse(ran.Output);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("salts").ValueKind);
        Assert.Contains(json.RootElement.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("where").GetString() == where);
        Ran check = WarmProgram.Run(["check", PathOf("samples", "bad", name)]);
        Assert.Equal(1, check.ExitCode);
        Assert.Contains(where, check.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_forecast_with_water_is_in_the_published_form_and_knows_its_ions()
    {
        Ran ran = WarmProgram.Run(
            ["forecast", PathOf("samples", "recipes", "plain-bitter.json"), "--kit", PathOf("samples", "kits", "coil-and-element.json"),
             "--water", PathOf("samples", "water", "hard-well.json"), "--json"]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Empty(PublishedSchema.Objections("forecast", ran.Output));
        using JsonDocument json = JsonDocument.Parse(ran.Output);
        JsonElement headline = json.RootElement.GetProperty("headline");
        Assert.Equal("quantiles", headline.GetProperty("mashPh").GetProperty("kind").GetString());
        Assert.Equal("pH at 20 °C", headline.GetProperty("mashPh").GetProperty("unit").GetString());
        // The headline is what foods, liquor and salts brought; malt brings 20 to 30 mg/L at 12 °P besides, and this is a weaker beer.
        JsonElement sodium = json.RootElement.GetProperty("ions").GetProperty("glass").GetProperty("sodium");
        double brought = headline.GetProperty("sodiumMgPerL").GetProperty("likely").GetDouble();
        Assert.Equal("bounds", sodium.GetProperty("kind").GetString());
        Assert.InRange(sodium.GetProperty("low").GetDouble() - brought, 5, 25);
        Assert.Equal(30.0 / 20, (sodium.GetProperty("high").GetDouble() - brought) / (sodium.GetProperty("low").GetDouble() - brought), 0.01);
        Assert.True(json.RootElement.GetProperty("chilling").GetProperty("minutes").GetDouble() > 1);
        Assert.True(json.RootElement.GetProperty("balance").GetProperty("relativeError").GetDouble() <= 1e-12);
    }

    [Fact]
    public void A_forecast_in_words_tells_the_mash_day_and_the_ions()
    {
        Ran ran = GylebookProgram.Run(
            ["forecast", PathOf("samples", "recipes", "plain-bitter.json"), "--kit", PathOf("samples", "kits", "coil-and-element.json"),
             "--water", PathOf("samples", "water", "hard-well.json")], "de_DE.UTF-8");
        Assert.Equal(0, ran.ExitCode);
        Assert.Contains("Rest at 66 °C for 60 min, falls to 63.7 °C", ran.Output, StringComparison.Ordinal);
        Assert.Contains("glass, malt's own with them: calcium ", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("water")]
    [InlineData("water", "--json")]
    [InlineData("water", "acid")]
    [InlineData("water", "acid", "--to", "5.6")]
    [InlineData("forecast", "x.json", "--water")]
    public void Invalid_usage_gets_one_line_and_exit_code_2(params string[] arguments)
    {
        Ran ran = WarmProgram.Run(arguments);
        Assert.Equal(("", 2), (ran.Output, ran.ExitCode));
        Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    private static string PathOf(params string[] parts) => RepositoryFile.PathOf(Path.Combine(parts));
}
