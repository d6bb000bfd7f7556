using System.Text.Json;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook draft: a first recipe from a wish, written only when it can be had.</summary>
public sealed class DraftTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-draft-").FullName;

    private static string[] Wish(params string[] more) => ["draft", "--alcohol", "5 %", "--colour", "20 EBC", "--bitterness", "30 IBU", "--litres", "20 L", .. more];

    [Fact]
    public void A_forecast_of_what_was_written_comes_to_the_wish()
    {
        string written = Path.Combine(_folder, "first.json");
        Ran ran = GylebookProgram.Run(Wish("--food", "roasted chestnuts", "--amount", "600 g", "--out", written));
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        Assert.Contains("colour: 20.0 EBC", ran.Output, StringComparison.Ordinal);
        using JsonDocument told = JsonDocument.Parse(WarmProgram.Run(["forecast", written, "--json", "--draws", "0"]).Output);
        JsonElement headline = told.RootElement.GetProperty("headline");

        // Weights as a scale shows them: FirstRecipeTests; EBC is SRM times 25/12.7.
        Assert.Equal(5, headline.GetProperty("alcoholByVolume").GetProperty("likely").GetDouble(), 0.01);
        Assert.Equal(20 * 12.7 / 25, headline.GetProperty("colourSrm").GetProperty("likely").GetDouble(), 0.16);
        Assert.Equal(30, headline.GetProperty("bitterness").GetProperty("likely").GetDouble(), 0.15);
    }

    [Fact]
    public void Without_a_file_the_recipe_is_printed_and_what_it_comes_to_is_said_beside_it()
    {
        Ran ran = GylebookProgram.Run(["draft", "--gravity", "1.060", "--colour", "15 SRM", "--bitterness", "25 IBU", "--litres", "5 US gal"]);
        Assert.True(ran.ExitCode == 0, ran.Errors);
        using JsonDocument recipe = JsonDocument.Parse(ran.Output);
        Assert.Equal("5 US gal", recipe.RootElement.GetProperty("package").GetProperty("volume").GetString());
        Assert.Contains("change anything", recipe.RootElement.GetProperty("notes").GetString(), StringComparison.Ordinal);
        Assert.Contains("original gravity: 1.060", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_food_file_will_do_and_it_is_said_where_to_lay_it()
    {
        string food = Path.Combine(Path.GetDirectoryName(SampleFile.Recipe("hedgerow-brown"))!, "foods", "pumpkin-seed-flour.json"), written = Path.Combine(_folder, "first.json");
        Ran ran = WarmProgram.Run(Wish("--food", food, "--amount", "600 g", "--out", written));
        Assert.True(ran.ExitCode == 0, ran.Errors);
        Assert.Contains("beside the recipe as foods/pumpkin-seed-flour.json", ran.Output, StringComparison.Ordinal);
        Directory.CreateDirectory(Path.Combine(_folder, "foods"));
        File.Copy(food, Path.Combine(_folder, "foods", "pumpkin-seed-flour.json"));
        Assert.Equal(0, WarmProgram.Run(["forecast", written, "--draws", "0"]).ExitCode);
    }

    [Theory]
    [InlineData("--alcohol", "40 %", "--alcohol: 40 %: must be from 0.5 to 12 %.")]
    [InlineData("--colour", "20", "--colour: 20")]
    [InlineData("--colour", "1 EBC", "--colour: 1 EBC: must be from 2 to 200 EBC.")]
    [InlineData("--bitterness", "500 IBU", "--bitterness: 500 IBU: must be from 0 to 120 IBU.")]
    [InlineData("--litres", "2O L", "--litres: 2O L: a volume is written with L")]
    [InlineData("--amount", "600 g", "--food: 600 g, but of what?")]
    [InlineData("--food", "chestnuts, roasted", "--amount: how much of chestnuts, roasted?")]
    public void A_wish_that_cannot_be_names_field_value_and_limit(string option, string value, string said)
    {
        string[] wish = Wish();
        int at = Array.IndexOf(wish, option);
        string written = Path.Combine(_folder, "no.json");
        Ran ran = WarmProgram.Run([.. at < 0 ? [.. wish, option, value] : wish.Index().Select(entry => entry.Index == at + 1 ? value : entry.Item), "--out", written]);
        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(written));
    }

    [Fact]
    public void Half_a_wish_is_bad_usage()
    {
        Ran ran = WarmProgram.Run(["draft", "--alcohol", "5 %"]);
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("--colour, --bitterness and --litres", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_lies_there_is_left_alone()
    {
        string written = Path.Combine(_folder, "mine.json");
        File.WriteAllText(written, "mine");
        Ran ran = WarmProgram.Run(Wish("--out", written, "--force"));
        Assert.Equal(1, ran.ExitCode);
        Assert.Equal("mine", File.ReadAllText(written));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
