using Gylebook.Engine.Readings;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Readings;

/// <summary>A fermentation that stopped early, named by the gravity read after it.</summary>
public sealed class StallTests
{
    private static readonly Recipe Bitter = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;

    // The same integral by parabolas over 20,000 steps of the logarithm, outside of this program. With 200 strata the engine leaves out the last of the tail.
    [Theory]
    [InlineData(-2, 0.003, 1.045, 0.0039)]
    [InlineData(0, 0.003, 1.045, 0.0191)]
    [InlineData(1, 0.003, 1.045, 0.0519)]
    [InlineData(2, 0.003, 1.045, 0.1678)]
    [InlineData(3.5, 0.003, 1.045, 0.7751)]
    [InlineData(2, 0.0015, 1.060, 0.1254)]
    public void The_chance_of_a_stall_is_bayes_theorem(double off, double deviation, double originalGravity, double chance) =>
        Assert.Equal(chance, StallCheck.ChanceOf(new GatedReading(1.012, deviation, off, ReadingTrust.AsItIs, 0), originalGravity), 0.001);

    [Fact]
    public void The_higher_the_gravity_the_likelier_and_no_brew_is_named_that_went_as_planned()
    {
        double[] chances = [.. Enumerable.Range(-30, 100).Select(tenths => StallCheck.ChanceOf(new GatedReading(1.012, 0.003, tenths / 10.0, ReadingTrust.AsItIs, 0), 1.045))];
        Assert.Equal(chances.Order(), chances);
        Assert.All(chances, chance => Assert.InRange(chance, 0, 1));
        Assert.DoesNotContain(Findings("1.0120"), finding => finding.Code == "reading.stall");
    }

    [Fact]
    public void A_stall_is_named_with_its_danger_and_what_to_do_and_a_later_sound_reading_takes_it_back()
    {
        Finding stall = Assert.Single(Findings("1.0215"), finding => finding.Code == "reading.stall");
        Assert.Equal(Severity.Warning, stall.Severity);
        Assert.Contains("burst", stall.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Findings("1.0215", "1.0120"), finding => finding.Code == "reading.stall");
    }

    private static IReadOnlyList<Finding> Findings(params string[] gravities)
    {
        string readings = string.Join(", ", gravities.Select(gravity => $$"""{ "at": "ferment", "gravity": "{{gravity}}", "temperature": "20 °C", "degassed": true }"""));
        return Forecaster.Forecast(Bitter, BuiltInKit.LanternShed, Larder.Empty, "stall", null, new ForecastRequest
        {
            Draws = 1000,
            Readings = ReadingsFile.Read($$"""{ "format": "gylebook-readings/1", "name": "test", "readings": [ {{readings}} ] }""").Value!,
        }).Findings;
    }
}
