using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>Bitterness, style and pitch, asked for as a person asks.</summary>
public sealed class HopsAndYeastTests
{
    private static readonly string Bitter = SampleFile.Recipe("plain-bitter");
    private static readonly string Aged = SampleFile.Recipe("edges/aged-hops");

    [Fact]
    public void Either_bitterness_is_shown_on_request_and_the_other_stands_beside_it()
    {
        using JsonDocument table = Json("forecast", Aged, "--json");
        using JsonDocument kinetics = Json("forecast", Aged, "--bitterness", "isomerisation", "--json");
        double byTable = Bitterness(table);
        double byKinetics = Bitterness(kinetics);
        Assert.True(byKinetics > byTable);

        // Each row is written to 0.01 IBU.
        JsonElement[] rows = [.. table.RootElement.GetProperty("bitternessBy").EnumerateArray()];
        Assert.Equal(byTable, rows.Sum(r => r.GetProperty("ibu").GetDouble()), 0.005 * rows.Length);
        Assert.Equal(byKinetics, rows.Sum(r => r.GetProperty("otherIbu").GetDouble()), 0.005 * rows.Length);
        Assert.All(rows, r => Assert.Equal("timeGravity", r.GetProperty("model").GetString()));
        Assert.All(kinetics.RootElement.GetProperty("bitternessBy").EnumerateArray(), r => Assert.Equal("isomerisation", r.GetProperty("model").GetString()));
    }

    [Fact]
    public void The_glass_asked_for_is_the_glass_told()
    {
        using JsonDocument forecast = Json("forecast", Bitter, "--glass", "2 cm", "--json");
        JsonElement seen = forecast.RootElement.GetProperty("appearance");
        Assert.Equal(2, seen.GetProperty("pathLengthCm").GetDouble());
        Assert.Equal("D65", seen.GetProperty("illuminant").GetString());
        Assert.Matches("^#[0-9A-F]{6}$", seen.GetProperty("hex").GetString());
    }

    [Fact]
    public void A_style_is_told_in_a_sentence_and_a_table()
    {
        Ran ran = GylebookProgram.Run(["forecast", Bitter, "--style", "best bitter"]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Contains("Best Bitter (BJCP Beer Style Guidelines 2021)", ran.Output, StringComparison.Ordinal);
        Assert.Contains("1.040 to 1.048", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Pitch_tells_cells_starters_and_cautions()
    {
        using JsonDocument pitch = Json("pitch", Aged, "--starter", "3 L", "--json");
        JsonElement told = pitch.RootElement.GetProperty("pitch");
        Assert.True(told.GetProperty("cellsLowBillions").GetDouble() < told.GetProperty("cellsHighBillions").GetDouble());
        Assert.Equal(2, told.GetProperty("starters").GetArrayLength());
        string[] codes = [.. pitch.RootElement.GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("code").GetString()!)];
        Assert.Contains("pitch.under", codes);
        Assert.DoesNotContain("scald.liquor", codes);

        using JsonDocument forecast = Json("forecast", Aged, "--json");
        Assert.Equal(
            forecast.RootElement.GetProperty("pitch").GetProperty("cellsNeededBillions").GetDouble(),
            told.GetProperty("cellsNeededBillions").GetDouble());
    }

    [Fact]
    public void Pitch_reads_as_lines_too()
    {
        Ran ran = GylebookProgram.Run(["pitch", Aged]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Contains("billion cells wanted", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Stirred starter (± 45 %):", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pitch", "--starter", "40 L", "--starter: 40 L; must be from 0.1 L to 20 L, where the published table of starters ends.")]
    [InlineData("pitch", "--starter", "2 kg", "--starter: ")]
    [InlineData("forecast", "--bitterness", "gravity", "--bitterness: gravity; must be timeGravity or isomerisation.")]
    [InlineData("forecast", "--style", "Best Biter", "--style: Best Biter; not in the table. Nearest: Best Bitter, ")]
    [InlineData("forecast", "--glass", "2 m", "--glass: 2 m; must be from 1 mm to 1 m.")]
    [InlineData("forecast", "--glass", "wide", "--glass: ")]
    public void An_option_that_cannot_be_gets_one_line_with_its_limits(string verb, string option, string value, string expected)
    {
        Ran ran = WarmProgram.Run([verb, Bitter, option, value]);
        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        Assert.StartsWith(expected, Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pitch", "--starter")]
    [InlineData("pitch", "--kit")]
    [InlineData("forecast", "--bitterness")]
    [InlineData("forecast", "--style")]
    [InlineData("forecast", "--glass")]
    public void An_option_without_its_value_is_bad_usage(string verb, string option)
    {
        Ran ran = WarmProgram.Run([verb, Bitter, option]);
        Assert.Equal(("", 2), (ran.Output, ran.ExitCode));
        Assert.Contains(option, ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Hops_that_cannot_be_are_named_with_their_limits()
    {
        Ran ran = WarmProgram.Run(["check", RepositoryFile.PathOf("samples/bad/hops-absurd.json")]);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("10000 d; must be at most 3650 d", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("0 %; must be above 0 %", ran.Errors, StringComparison.Ordinal);
        Ran formless = WarmProgram.Run(["check", RepositoryFile.PathOf("samples/bad/hops-and-yeast.json")]);
        Assert.Contains("-5 min: a duration is from 0 min", formless.Errors, StringComparison.Ordinal);
    }

    private static double Bitterness(JsonDocument forecast) =>
        forecast.RootElement.GetProperty("headline").GetProperty("bitterness").GetProperty("likely").GetDouble();

    private static JsonDocument Json(params string[] arguments)
    {
        Ran ran = WarmProgram.Run(arguments);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        return JsonDocument.Parse(ran.Output);
    }
}
