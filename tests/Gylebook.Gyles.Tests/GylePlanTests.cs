using System.Text.Json.Nodes;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Readings;
using Gylebook.Tests.Shared;

namespace Gylebook.Gyles.Tests;

/// <summary>The frozen plan: what it keeps, that it opens for ever, and that it never moves.</summary>
public sealed class GylePlanTests
{
    private static string Released => File.ReadAllText(RepositoryFile.PathOf("tests/Gylebook.Gyles.Tests/Plans/plan-1.json"));

    [Fact]
    public void A_plan_is_read_as_it_was_written()
    {
        GylePlan plan = BrewStepsTests.Frozen("hedgerow-brown", "lantern-shed").Plan!;
        string text = GylePlanFile.Write(plan);
        GylePlan? read = GylePlanFile.Read(text, out string? fault);
        Assert.Null(fault);
        Assert.Equal(text, GylePlanFile.Write(read!));
        Assert.Equal(plan.Steps.Select(step => step.Say), read!.Steps.Select(step => step.Say));
        Assert.Equal(plan.Priors, read.Priors);
        Assert.Contains(plan.Priors, prior => prior is { Id: "kit.kettle.evaporation", Low: < 4, High: > 4 });
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(plan.Forecast), JsonNode.Parse(read.Forecast)));
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(plan.Recipe), JsonNode.Parse(read.Recipe)));
    }

    /// <summary>The numbers below stand in the released document; they were its engine's, and no later engine may move them.</summary>
    [Fact]
    public void A_released_plan_opens_and_shows_the_old_numbers_whatever_the_engine_says_today()
    {
        GylePlan plan = GylePlanFile.Read(Released, out string? fault)!;
        Assert.Null(fault);
        Assert.Equal(("Old Bitter", "0.0.1", "old"), (plan.Name, plan.Engine, plan.Seed));
        FrozenForecast frozen = FrozenForecast.Of(plan);
        Assert.Equal((1.1234, 99.9, 12.3), (frozen.Likely("originalGravity"), frozen.Likely("packagedLitres"), frozen.End("packagedLitres", "low")));
        Assert.Equal("Heat the 12.3 L of liquor to 45.6 °C.", Assert.Single(plan.Steps).Say);
        Assert.Equal(GylePlanFile.Write(plan), GylePlanFile.Write(GylePlanFile.Read(GylePlanFile.Write(plan), out _)!));
        Assert.NotNull(GyleInputs.Of(plan));
    }

    [Theory]
    [InlineData("{}", "it has no format")]
    [InlineData("[]", "it has no format")]
    [InlineData("""{ "format": "gylebook-plan/9" }""", "gylebook-plan/9; this program reads gylebook-plan/1")]
    [InlineData("not JSON", "cannot be read")]
    [InlineData("""{ "format": "gylebook-plan/1", "name": "half" }""", "cannot be read")]
    public void What_is_no_plan_says_why(string text, string why)
    {
        Assert.Null(GylePlanFile.Read(text, out string? fault));
        Assert.Contains(why, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void The_live_forecast_is_the_plan_until_something_is_read_and_listens_then()
    {
        (_, GylePlan? plan) = BrewStepsTests.Frozen("plain-bitter", "lantern-shed");
        GyleInputs inputs = GyleInputs.Of(GylePlanFile.Read(GylePlanFile.Write(plan!), out _)!)!;
        FrozenForecast frozen = FrozenForecast.Of(plan!);
        BrewForecast before = inputs.Forecast(plan!.Seed, []);
        Assert.Equal(frozen.Likely("originalGravity")!.Value, Likely(before, "originalGravity"), 5e-6);
        TakenReading weak = ReadingsFile.ReadEntry("""{ "at": "copper-up", "gravity": "1.0335", "temperature": "20 °C", "instrument": "hydrometerNarrow", "checked": true }""").Reading!;
        BrewForecast after = inputs.Forecast(plan.Seed, [weak]);
        Assert.True(Likely(after, "originalGravity") < Likely(before, "originalGravity") - 0.001);
        Assert.NotEmpty(after.AfterReadings!.Mends);

        static double Likely(BrewForecast forecast, string name) => forecast.Headline.First(headline => headline.Name == name).Band!.Likely;
    }

    [Fact]
    public void A_reading_is_kept_as_it_was_typed()
    {
        TakenReading reading = ReadingsFile.ReadEntry("""{ "at": "cast", "gravity": "12.4 °P", "temperature": "68 °F", "called": "the old one", "sure": true }""").Reading!;
        Assert.Equal(reading, ReadingsFile.ReadEntry(ReadingsFile.WriteEntry(reading)).Reading);
        (TakenReading? none, IReadOnlyList<Recipes.Finding> findings) = ReadingsFile.ReadEntry("""{ "at": "nowhere", "gravity": "1.050" }""");
        Assert.Null(none);
        Assert.NotEmpty(findings);
    }
}
