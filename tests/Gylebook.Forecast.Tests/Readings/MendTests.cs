using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Readings;

/// <summary>Ways on from a reading: what is offered, where it lands, and what it takes.</summary>
public sealed class MendTests
{
    private const string Weak = """
        { "at": "copper-up", "gravity": "1.0335", "temperature": "20 °C", "instrument": "hydrometerNarrow", "checked": true },
        { "at": "copper-up", "volume": "28 L", "temperature": "66 °C", "checked": true }
        """;

    private static readonly Recipe Bitter = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;

    private static readonly WaterPlan Water = WaterFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/water/measured-mash.json"))).Value! with { MashReading = null, Malts = [], Strike = null, Sparge = null };

    [Fact]
    public void Ways_on_land_near_the_plan_as_bands_the_nearest_first_and_fit()
    {
        BrewForecast plan = Forecast(null), forecast = Forecast(Weak);
        IReadOnlyList<Mend> mends = forecast.AfterReadings!.Mends;
        double og = plan.Headline.First(headline => headline.Name == "originalGravity").Band!.Likely;
        Assert.InRange(mends.Count, 2, 5);
        Assert.Equal(mends.Select(mend => mend.Off).Order(), mends.Select(mend => mend.Off));
        Assert.Equal("let it be", mends[^1].Words);
        Assert.All(mends.SkipLast(1), mend =>
        {
            Landing gravity = mend.Lands.First(landing => landing.Readout == BeerReadouts.OriginalGravity);
            Assert.Equal(og, gravity.Planned, 1e-9);

            // Ten grams, a decilitre or a minute of boil: less than half a point.
            Assert.Equal(og, gravity.Band.Likely, 0.0005);
            Assert.InRange(gravity.Band.Likely, gravity.Band.Low, gravity.Band.High);
        });
    }

    /// <summary>The middle of the draws lies off the likely run: a brew that does as it was told needs nothing for all that.</summary>
    [Fact]
    public void A_brew_that_goes_as_planned_asks_for_nothing()
    {
        StageRow copperUp = Forecast(null).Stages.First(stage => stage.Stage == Stage.CopperUp);
        IReadOnlyList<Mend> mends = Forecast(Invariant($$"""
            { "at": "copper-up", "gravity": "{{copperUp.Gravity:0.000000}}", "temperature": "20 °C", "instrument": "hydrometerNarrow", "checked": true }
            """)).AfterReadings!.Mends;
        Assert.Equal("let it be", mends[0].Words);
        Assert.Equal(0, mends[0].Off, 0.02);
    }

    [Theory]
    [InlineData("5.75", "lactic acid")]
    [InlineData("5.05", "baking soda")]
    public void A_mash_off_its_pH_is_offered_what_is_at_hand(string ph, string what)
    {
        BrewForecast forecast = Forecast($$"""{ "at": "mash", "ph": {{ph}}, "temperature": "20 °C", "checked": true }""", water: Water);
        Mend best = forecast.AfterReadings!.Mends[0];
        Assert.Contains(what, best.Words, StringComparison.OrdinalIgnoreCase);
        Assert.EndsWith("into the mash", best.Words, StringComparison.Ordinal);
        Landing reached = Assert.Single(best.Lands, landing => landing.Readout == PhReadouts.MashPh);

        // A hand-held meter shows hundredths; the step of the measure is 0.1 mL or 0.1 g.
        Assert.Equal(Water.MashPh!.Value, reached.Band.Likely, 0.03);
        Assert.InRange(reached.Band.Likely, reached.Band.Low, reached.Band.High);
    }

    [Fact]
    public void A_warm_sample_of_mash_is_read_lower_than_a_cool_one()
    {
        // Briggs et al. (2004), ch. 4: 0.35 lower at 65 °C.
        double warm = Meant("5.20", "65 °C"), cool = Meant("5.55", "20 °C");
        Assert.Equal(cool, warm, 1e-9);

        double Meant(string ph, string celsius) =>
            Forecast($$"""{ "at": "mash", "ph": {{ph}}, "temperature": "{{celsius}}" }""", water: Water).AfterReadings!.Readings[0].Reading.Meant.Value;
    }

    [Fact]
    public void Much_more_to_ferment_than_planned_wants_more_yeast()
    {
        // Half as much again in litres × °P wants half as much yeast again: the pitch rate is cells per millilitre and °P.
        BrewForecast forecast = Forecast("""
            { "at": "cast", "gravity": "1.090", "temperature": "20 °C", "instrument": "hydrometerNarrow", "checked": true, "sure": true },
            { "at": "cast", "volume": "28 L", "temperature": "20 °C", "checked": true, "sure": true }
            """);
        Mend pitch = Assert.Single(forecast.AfterReadings!.Mends, mend => mend.Words.StartsWith("pitch ", StringComparison.Ordinal));
        Assert.EndsWith("rather than 11 g", pitch.Words, StringComparison.Ordinal);
        Assert.True(double.Parse(pitch.Words.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture) > 12);
    }

    [Fact]
    public void Sugar_that_primes_is_weighed_for_the_beer_there_is()
    {
        Recipe primed = Bitter with { Ingredients = [.. Bitter.Ingredients, Sugar(0.11)] };
        BrewForecast plan = Forecast(null, primed);
        double litres = plan.Headline.First(headline => headline.Name == "packagedLitres").Band!.Likely;
        BrewForecast forecast = Forecast(Invariant($$"""{ "at": "rack", "volume": "{{0.8 * litres:0.0}} L", "temperature": "20 °C", "checked": true, "sure": true }"""), primed);
        Mend priming = Assert.Single(forecast.AfterReadings!.Mends, mend => mend.Words.Contains("priming sugar", StringComparison.Ordinal));
        Assert.Contains("weigh −", priming.Words, StringComparison.Ordinal);

        static IngredientLine Sugar(double kilograms) => new()
        {
            Kind = IngredientKind.Sugar, Of = "white sugar", At = new(AdditionPoint.Package), Amount = new(new Entered<Mass>(Mass.FromKilograms(kilograms), Invariant($"{1000 * kilograms} g")), null),
        };
    }

    [Fact]
    public void A_longer_boil_tells_its_minutes_and_the_heat_of_a_full_flame()
    {
        Mend boil = Forecast(Weak).AfterReadings!.Mends.First(mend => mend.Words.Contains("longer", StringComparison.Ordinal));
        double kilowatts = BuiltInKit.LanternShed.Kettle.Power!.Value.Value.Kilowatts;
        Assert.Equal(kilowatts * boil.Minutes!.Value / 60, boil.KilowattHours!.Value, 1e-9);
        Assert.Contains("kW·h", boil.Sentence, StringComparison.Ordinal);
    }

    private static BrewForecast Forecast(string? readings, Recipe? recipe = null, WaterPlan? water = null)
    {
        BrewReadings? meant = readings is null ? null : ReadingsFile.Read($$"""{ "format": "gylebook-readings/1", "name": "test", "readings": [ {{readings}} ] }""").Value!;
        return Forecaster.Forecast(recipe ?? Bitter, BuiltInKit.LanternShed, Larder.Empty, "mends", water, new ForecastRequest { Draws = 1000, Readings = meant });
    }
}
