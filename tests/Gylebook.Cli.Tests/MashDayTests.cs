using System.Text.Json;

namespace Gylebook.Cli.Tests;

/// <summary>The mash day and the chilling, as a person at the kettle reads them.</summary>
public sealed class MashDayTests
{
    private static readonly string Hedgerow = SampleFile.Recipe("hedgerow-brown");

    [Fact]
    public void What_is_done_stands_in_the_order_it_is_done()
    {
        string output = GylebookProgram.Run(["forecast", Hedgerow]).Output;
        string day = output[output.IndexOf("Mash day", StringComparison.Ordinal)..output.IndexOf("Allergens", StringComparison.Ordinal)];
        string[] starts = [.. day.Split('\n').Skip(1).Where(line => line.StartsWith("  ", StringComparison.Ordinal) && line[2] != ' ').Select(line => line.Trim().Split(' ')[0])];
        Assert.Equal(["Heat", "Rest", "Rinse", "Heat", "Chill"], starts);
        Assert.Contains("L of liquor to 69.", day, StringComparison.Ordinal);
        Assert.Contains("5.0 L of liquor at 77 °C", day, StringComparison.Ordinal);
        Assert.Contains("amylase left", day, StringComparison.Ordinal);
        Assert.Contains("how much heat the chiller carries", day, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("coil-and-element", "immersion", "stirred")]
    [InlineData("long-hose", "counterflow", "L/min of wort through the chiller")]
    [InlineData("overnight", "none", "Let it cool by itself")]
    public void Each_kind_of_chiller_is_told(string kit, string kind, string words)
    {
        string[] arguments = ["forecast", Hedgerow, "--kit", SampleFile.Kit(kit)];
        Assert.Contains(words, WarmProgram.Run(arguments).Output, StringComparison.Ordinal);
        using JsonDocument told = JsonDocument.Parse(WarmProgram.Run([.. arguments, "--json"]).Output);
        JsonElement chilling = told.RootElement.GetProperty("chilling");
        Assert.Equal(kind, chilling.GetProperty("kind").GetString());
        Assert.True(chilling.GetProperty("minutes").GetDouble() > 1);
        Assert.Equal(0, chilling.GetProperty("needs").GetArrayLength());
    }

    // One kit file at the sea and at 1500 m, 84.556 kPa (ISO 2533): water boils at 95.02 °C (Antoine), and a keg's gauge reads
    // 1.01325 − 0.84556 bar more for the same gas. JSON has 0.001 bar and 0.1 °C: half a digit on either.
    [Fact]
    public void Height_reaches_the_boil_the_hops_and_the_keg()
    {
        using JsonDocument sea = At("0 m");
        using JsonDocument high = At("1500 m");
        Assert.Equal(95.02, Boil(high), tolerance: 0.05);
        Assert.Equal(100, Boil(sea), tolerance: 0.05);
        Assert.Equal(0.16769, Gauge(high) - Gauge(sea), tolerance: 0.001);

        // An hour's kinetic yield is 0.762 of the sea's; cooling adds the same few minutes to either.
        Assert.InRange(Kinetics(high) / Kinetics(sea), 0.74, 0.79);

        static double Boil(JsonDocument told) => told.RootElement.GetProperty("stages").EnumerateArray()
            .Single(stage => stage.GetProperty("stage").GetString() == "knockOut").GetProperty("temperatureC").GetDouble();
        static double Gauge(JsonDocument told) => told.RootElement.GetProperty("package").GetProperty("keg").GetProperty("gaugeBar").GetDouble();
        static double Kinetics(JsonDocument told) => told.RootElement.GetProperty("bitternessBy")[0].GetProperty("otherIbu").GetDouble();
    }

    private static JsonDocument At(string height)
    {
        string folder = Directory.CreateTempSubdirectory("gylebook-height").FullName;
        try
        {
            string kit = Path.Combine(folder, "kit.json");
            File.WriteAllText(kit, File.ReadAllText(SampleFile.Kit("lantern-shed")).Replace("120 m", height, StringComparison.Ordinal));
            string recipe = Path.Combine(folder, "recipe.json");
            string keg = File.ReadAllText(SampleFile.Recipe("plain-bitter"));
            File.WriteAllText(recipe, keg.Replace("\"in\": \"bottle\"", "\"in\": \"keg\"", StringComparison.Ordinal));
            return JsonDocument.Parse(WarmProgram.Run(["forecast", recipe, "--kit", kit, "--json"]).Output);
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }
}
