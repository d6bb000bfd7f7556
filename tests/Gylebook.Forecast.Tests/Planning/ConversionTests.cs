using CsCheck;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Tests.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>What converts: heat and time to open starch, alpha-amylase that lasts, power enough for the starch there is.</summary>
public sealed class ConversionTests
{
    private static readonly Recipe Bitter = Bitters.With();

    [Fact]
    public void The_rule_for_pale_malt_is_the_same_rule_for_its_starch() => Near.Equal(
        MashStep.StarchOfPaleMalt,
        Bitter.PlanOn(Kits.Lossless).Lines.Single(line => line.Malt is not null) is { } pale ? pale.Makeup[Component.Starch] / pale.Kilograms : 0, 0.0005);

    // No evidence of an effect of time from half an hour up at 62 to 69 °C is in print: the forecast may not move by more than a malt's extract
    // scatters between laboratories, 0.5 % of dry (1.2/2.8, from memory), and the limit not at all.
    [Fact]
    public void From_half_an_hour_at_62_to_69_time_moves_nothing() => Gen.Select(Gen.Double[62, 69], Gen.Double[30, 120]).Sample(
        (celsius, minutes) =>
        {
            BrewForecast short_ = Rested((celsius, 30)), long_ = Rested((celsius, minutes));
            Near.Equal(short_.Number("originalGravity"), long_.Number("originalGravity"), 0.005 * 0.05);
            Near.Equal(short_.Number("apparentAttenuation"), long_.Number("apparentAttenuation"), 0.05);
        }, iter: 20);

    // By Brandam's constants, from memory: 32 % open after a minute at 66 °C and 97.9 after ten; 3.2 % after an hour at 40 °C, 79 at 55. A minute
    // of alpha-amylase is 0.285 of the 3.5 that an hour at 80 °C gives.
    [Theory]
    [InlineData(66, 1, 0.3217 * 0.283, 0.004)]
    [InlineData(66, 10, 0.979, 0.002)]
    [InlineData(40, 60, 0.032, 0.001)]
    [InlineData(55, 60, 0.792, 0.002)]
    [InlineData(90, 60, 0.122, 0.002)]
    [InlineData(66, 60, 1, 1e-6)]
    [InlineData(80, 60, 1, 1e-9)]
    public void What_heat_and_time_convert_at_most(double celsius, double minutes, double share, double close)
    {
        RestCourse rests = new([new RestStep(celsius, minutes)], towardsPlateau: 0.5);
        Near.Equal(share, rests.PlannedOpenShare * rests.PlannedAlphaShare, close);
    }

    [Theory]
    [InlineData(66, 60, null)]
    [InlineData(60, 30, null)]
    [InlineData(72, 30, null)]
    [InlineData(66, 29, Severity.Note)]
    [InlineData(66, 1, Severity.Warning)]
    [InlineData(55, 60, Severity.Warning)]
    [InlineData(74, 60, Severity.Note)]
    public void Where_no_rate_is_published_the_number_is_said_to_be_the_most(double celsius, double minutes, Severity? severity) =>
        Assert.Equal(severity, Rested((celsius, minutes)).Cautions.SingleOrDefault(c => c.Code == "mash.conversion")?.Severity);

    // Nothing converted leaves the malt's own sugar, protein and minerals: 0.12 × 0.93 + 0.07 of its extract, about a sixth of the points.
    [Fact]
    public void There_the_headline_is_bounds_from_none_converted_to_the_most()
    {
        Band gravity = Rested((55, 60)).Headline.Single(h => h.Name == "originalGravity").Band!;
        Assert.Equal(BandKind.Bounds, gravity.Kind);
        Assert.InRange(gravity.Low, 1.004, 1.012);
        Near.Equal(gravity.Likely, gravity.High, 1e-12);
        Assert.Equal(BandKind.Point, Rested((66, 60)).Headline.Single(h => h.Name == "originalGravity").Band!.Kind);
    }

    [Fact]
    public void A_colder_or_shorter_mash_makes_a_weaker_wort()
    {
        double[] gravities = [.. new[] { (40.0, 60.0), (50, 60), (55, 60), (66, 60) }.Select(rest => Rested(rest).Number("originalGravity"))];
        Assert.Equal(gravities.Order(), gravities);
        Assert.True(Rested((66, 1)).Number("originalGravity") < Rested((66, 10)).Number("originalGravity"));
        Assert.True(gravities[0] < 1.015 && gravities[^1] > 1.035);
    }

    [Theory]
    [InlineData(7.9, true)]
    [InlineData(8.1, false)]
    public void A_mash_thicker_than_was_measured_is_told(double litres, bool told)
    {
        Recipe thick = Bitter with { Liquor = new LiquorPlan(Typed.Litres(litres), Typed.Litres(20)) };
        Assert.Equal(told, thick.Forecast().Cautions.Any(c => c.Code == "mash.thick"));
    }

    // Raw pumpkin, 8 % of it solid, in a mash of 4 kg of pale malt and some unmalted wheat: each kilogram brings its own sugar, and takes none
    // of the enzyme that the starch has need of.
    [Fact]
    public void More_pumpkin_in_the_mash_never_makes_less_extract()
    {
        double[] extract = [.. new[] { 0, 3.3, 5, 8 }.Select(kilograms => Made(Pumpkin(kilograms)))];
        Assert.Equal(extract.Order(), extract);
        Assert.True(extract[^1] > extract[0] + 0.1);
        double[] kettle = [.. new[] { 0, 3.3, 5, 8 }.Select(kilograms => OneRun.Of(Pumpkin(kilograms).PlanOn(Bitters.AtTheSea)).At(Stage.Lift).ExtractMass)];
        Assert.Equal(kettle.Order(), kettle);
    }

    // Any food of the table, any amount, with a grist that has enzyme enough, too little, or next to none. What a food's own solids hold back in
    // the bag is another law: the extract is that of the mash, before anything is lifted out.
    [Fact]
    public void Any_food_added_never_lowers_the_extract_the_mash_makes()
    {
        Food[] foods = [.. FoodTable.All];
        Gen.Select(Gen.Int[0, foods.Length - 1], Gen.Double[0, 8], Gen.Double[0, 5], Gen.Double[0, 4]).Sample((at, less, more, flakes) =>
        {
            Recipe With(double kilograms) => Bitter with
            {
                Liquor = new LiquorPlan(Typed.Litres(40), null),
                Ingredients =
                [
                    Typed.Malt("pale ale malt", 1), Typed.Malt("maize flakes", flakes),
                    Typed.Line(IngredientKind.Food, foods[at].Id, kilograms, AdditionPoint.Mash), Typed.Yeast("English ale"),
                ],
            };
            double before = Made(With(less)), after = Made(With(less + more));
            Assert.True(after >= before - (1e-9 * before), $"{foods[at].Id}: {less} kg {before}, {less + more} kg {after}");
        }, iter: 200);
    }

    private static Recipe Pumpkin(double kilograms) => Bitter with
    {
        Ingredients =
        [
            Typed.Malt("pale ale malt", 4), Typed.Malt("raw wheat", 1),
            Typed.Line(IngredientKind.Food, "pumpkin-raw", kilograms, AdditionPoint.Mash), Typed.Yeast("English ale"),
        ],
    };

    private static double Made(Recipe recipe) => OneRun.Of(recipe.PlanOn(Bitters.AtTheSea)).At(Stage.Mash).ExtractMass;

    private static BrewForecast Rested(params (double Celsius, double Minutes)[] rests) =>
        (Bitter with { Mash = Bitter.Mash! with { Rests = [.. rests.Select(rest => Typed.Rest(rest.Celsius, rest.Minutes))] } }).Forecast();
}
