using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook carbonate, run as a person runs it.</summary>
public sealed class CarbonateTests
{
    // Carbonation chart of BrewingTechniques 2(1), Table I: 38 °F and 12 psi 2.57, 32 °F and 10 psi 2.70. The equation's own worst on it is 0.052.
    [Theory]
    [InlineData("38 F", "12 psi", 2.57)]
    [InlineData("32 F", "10 psi", 2.70)]
    [InlineData("3.33 °C", "0.8274 bar", 2.57)]
    public void Volumes_under_a_pressure_are_those_of_the_chart(string temperature, string pressure, double volumes) =>
        Assert.Equal(volumes, Told("--temperature", temperature, "--pressure", pressure).GetProperty("volumes").GetDouble(), 0.057);

    // A brewery's chart for 2.5 volumes: 11.3 psi at 38 °F; at 5000 ft 2.5 more. Tolerance 0.3 psi, what 0.03 volumes are worth.
    [Fact]
    public void The_pressure_that_keeps_two_and_a_half_volumes()
    {
        double sea = Told("--temperature", "38 F", "--volumes", "2.5").GetProperty("pressure").GetDouble();
        double high = Told("--temperature", "38 F", "--volumes", "2.5 vol", "--altitude", "5000 ft").GetProperty("pressure").GetDouble();
        Assert.Equal(11.3, sea, 0.3);
        Assert.Equal(2.47, high - sea, 0.01);
    }

    // By hand: 40 psi at 38 °F 5.287 volumes; from 0.86, half a day of 2.5: 5.287 − 4.427·e^(−0.2) = 1.662; of 5: 1.281; of 1.5: 2.115.
    [Fact]
    public void A_burst_is_a_band()
    {
        JsonElement still = Told("--temperature", "38 F", "--burst", "40 psi", "--hours", "12", "--into", "19 L", "--start", "0.86").GetProperty("volumes");
        Assert.Equal((1.281, 1.662, 2.115), (Of(still, "low"), Of(still, "likely"), Of(still, "high")), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) + Math.Abs(a.Item3 - b.Item3) < 0.003);
        JsonElement shaken = Told("--temperature", "38 F", "--burst", "40 psi", "--hours", "12", "--into", "19 L", "--start", "0.86", "--shaken").GetProperty("volumes");
        Assert.Equal(Of(still, "low"), Of(shaken, "low"));
        Assert.Equal(5.287, Of(shaken, "high"), 0.001);
    }

    [Fact]
    public void Half_as_much_beer_takes_half_the_time()
    {
        JsonElement half = Told("--temperature", "38 F", "--burst", "40 psi", "--hours", "12", "--into", "9.5 L").GetProperty("volumes");
        JsonElement full = Told("--temperature", "38 F", "--burst", "40 psi", "--hours", "24 h").GetProperty("volumes");
        Assert.Equal(Of(full, "likely"), Of(half, "likely"), 1e-3);
    }

    [Theory]
    [InlineData("--pressure \"12 psi\"", "weakest rated part")]
    [InlineData("--burst \"40 psi\" --hours 12", "Left on, the gas goes on to 5.3 volumes")]
    [InlineData("--burst \"40 psi\" --hours 12", "plastic fermenting keg")]
    [InlineData("--burst \"40 psi\" --hours 1 --shaken", "nobody has published")]
    public void Words_tell_what_to_look_out_for(string asked, string told)
    {
        Ran ran = WarmProgram.Run(["carbonate", "--temperature", "38 F", .. asked.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Contains(told, ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--temperature|38 F", "exactly one")]
    [InlineData("--temperature|38 F|--pressure|12 psi|--volumes|2.5", "exactly one")]
    [InlineData("--temperature|38 F|--pressure|12 furlongs", "--pressure: 12 furlongs")]
    [InlineData("--temperature|38 F|--pressure|900 psi", "from 0 to 10 bar")]
    [InlineData("--temperature|90 °C|--pressure|12 psi", "--temperature: 90 °C; must be from -2 to 40 °C")]
    [InlineData("--temperature|38 F|--volumes|25", "--volumes: 25 volumes; must be from 0 to 10 volumes")]
    [InlineData("--temperature|38 F|--volumes|fizzy", "--volumes: fizzy")]
    [InlineData("--temperature|38 F|--burst|40 psi", "--hours: missing")]
    [InlineData("--temperature|38 F|--burst|40 psi|--hours|9999", "--hours: 9999 h; must be from 0 to 720 h")]
    [InlineData("--temperature|38 F|--burst|40 psi|--hours|12|--into|0 L", "--into: 0 L; must be from 0.1 to 1000 L")]
    [InlineData("--temperature|38 F|--pressure|12 psi|--hours|12", "--hours: belongs to --burst")]
    [InlineData("--temperature|38 F|--pressure|12 psi|--altitude|9 km", "--altitude: 9000 m; must be from -400 to 5000 m")]
    public void What_is_wrong_names_option_value_and_limit(string asked, string told)
    {
        Ran ran = WarmProgram.Run(["carbonate", .. asked.Split('|')]);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains(told, ran.Errors, StringComparison.Ordinal);
    }

    private static double Of(JsonElement band, string name) => band.GetProperty(name).GetDouble();

    private static JsonElement Told(params string[] asked)
    {
        Ran ran = GylebookProgram.Run(["carbonate", .. asked, "--json"]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Empty(PublishedSchema.Objections("carbonation", ran.Output));
        return JsonDocument.Parse(ran.Output).RootElement.Clone();
    }
}
