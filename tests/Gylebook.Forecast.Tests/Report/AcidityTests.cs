using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Liquors;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>pH of wort and beer, and souring, as they are told.</summary>
public sealed class AcidityTests
{
    private static readonly Recipe Plain = new()
    {
        Name = "acids",
        Package = new PackageWish(Typed.Litres(20), "bottle", Typed.Volumes(2.4)),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients = [Typed.Malt("pilsner malt", 4), Typed.Yeast("American ale")],
    };

    private static readonly Recipe Soured = Plain with { Souring = Typed.Souring("lactobacillus", 40, 3.4) };

    /// <summary>Known: the Austrian food code's window, chapter B13: beer at most 4.9, bottom-fermented at least 4.0.</summary>
    [Theory]
    [InlineData("American ale", 3.8, 4.2, 4.9)]
    [InlineData("lager", 4.0, 4.4, 4.9)]
    public void Beer_without_added_acid_is_as_wide_as_ordinary_beers(string yeast, double low, double likely, double high)
    {
        Band beer = Beer(Plain with { Ingredients = [Plain.Ingredients[0], Typed.Yeast(yeast)] })!;
        Near.Equal(low, beer.Low, 1e-9);
        Near.Equal(likely, beer.Likely, 1e-9);
        Near.Equal(high, beer.High, 1e-9);
        Assert.Equal((BandKind.Bounds, "pH at 20 °C"), (beer.Kind, beer.Unit));
    }

    /// <summary>Known: after the boil 5.2 (Oxford Companion); mash 5.2 at least and boil down by 0.4 at most; 6.0 in distilled water, unboiled.</summary>
    [Fact]
    public void Wort_without_a_water_plan_is_as_wide_as_print()
    {
        Band wort = Wort(Plain)!;

        // What is free in the liquid takes a little: 0.016 mEq/L at 4.8, over 31 mEq/(kg·pH) and less than 0.2 kg/L.
        Near.Equal(4.8, wort.Low, 0.003);
        Near.Equal(5.2, wort.Likely, 0.003);
        Near.Equal(6.0, wort.High, 1e-9);
    }

    /// <summary>A wort whose mash pH is known and to which nothing more comes has that pH, until it is boiled.</summary>
    [Fact]
    public void With_a_water_plan_unboiled_wort_has_the_pH_of_its_mash()
    {
        BrewForecast told = Forecast(Plain with { Boil = null }, HardWell with { Salts = [] });
        Band mash = Of(told, "mashPh")!, wort = Of(told, "wortPh")!;
        Near.Equal(mash.Likely, wort.Likely, 0.002);
        Near.Equal(mash.Low, wort.Low, 0.002);
        Near.Equal(mash.High, wort.High, 0.002);
    }

    /// <summary>What the mash's own acid did is in its pH already: it is not counted in the beer again.</summary>
    [Fact]
    public void A_plan_leaves_the_beer_as_ordinary_as_its_mash()
    {
        Band beer = Of(Forecast(Plain, HardWell with { Salts = [] }), "beerPh")!;
        Near.Equal(4.2, beer.Likely, 0.01);
        Assert.InRange(beer.High, 4.8, 4.95);
    }

    [Theory]
    [InlineData("lactic acid 88 %", AdditionPoint.Mash)]
    [InlineData("lactic acid 88 %", AdditionPoint.Boil)]
    [InlineData("phosphoric acid 75 %", AdditionPoint.KnockOut)]
    [InlineData("hydrochloric acid 37 %", AdditionPoint.CopperUp)]
    [InlineData("citric", AdditionPoint.Ferment)]
    [InlineData("malic", AdditionPoint.Package)]
    public void More_acid_never_raises_a_pH(string acid, AdditionPoint at)
    {
        // Acid before the souring is made up for by the culture, which stops at the same pH: the test after this one.
        foreach (Recipe recipe in at > AdditionPoint.CopperUp ? new[] { Plain, Soured } : [Plain])
        {
            Band? wort = null, beer = null;
            foreach (double kilograms in new[] { 0, 0.001, 0.004, 0.02, 0.1, 0.3 })
            {
                BrewForecast told = Forecast(With(recipe, IngredientKind.Acid, acid, kilograms, at));
                wort = NotAbove(wort, Of(told, "wortPh")!);
                beer = NotAbove(beer, Of(told, "beerPh")!);
            }
        }

        static Band NotAbove(Band? before, Band after)
        {
            Assert.True(after.Low <= after.Likely && after.Likely <= after.High);
            const double Rounding = 1e-6;
            Assert.True(before is null || (after.Low <= before.Low + Rounding && after.Likely <= before.Likely + Rounding && after.High <= before.High + Rounding), $"{before} then {after}");
            return after;
        }
    }

    /// <summary>The culture makes what is missing to the target; of acid that goes past it, it makes none.</summary>
    [Fact]
    public void Acid_before_the_souring_spares_the_culture_and_never_lifts_the_wort_above_its_target()
    {
        double made = double.MaxValue;
        foreach (double kilograms in new[] { 0, 0.01, 0.03, 0.06, 0.2, 0.4 })
        {
            BrewForecast told = Forecast(With(Soured, IngredientKind.Acid, "lactic acid 88 %", kilograms, AdditionPoint.CopperUp));
            Caution acid = told.Cautions.Single(c => c.Code == "souring.acid");
            double now = double.Parse(acid.Message.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
            Assert.True(now < made || now == 0, $"{now} after {made}");
            made = now;
            Assert.InRange(Of(told, "wortPh")!.High, 2, 3.4 + 1e-3);
        }

        Assert.Equal(0, made);
    }

    [Fact]
    public void Acid_in_the_kettle_moves_the_beer_and_baking_soda_moves_it_back()
    {
        double plain = Beer(Plain)!.Likely;
        Assert.True(Beer(With(Plain, IngredientKind.Acid, "lactic acid 88 %", 0.02, AdditionPoint.Boil))!.Likely < plain - 0.1);
        Assert.True(Beer(With(Plain, IngredientKind.Salt, "baking soda", 0.01, AdditionPoint.Boil))!.Likely > plain + 0.1);
    }

    [Fact]
    public void Both_halves_of_a_cast_have_the_pH_of_the_whole()
    {
        Recipe acid = With(Soured, IngredientKind.Acid, "lactic acid 88 %", 0.01, AdditionPoint.Boil);
        Band whole = Beer(acid)!;
        Band parted = Beer(acid with { Portions = [new PortionShare("one", Typed.Share(0.5)), new PortionShare("two", Typed.Share(0.5))] })!;

        // Two fermenters lose a little more to their siphons; that moves the liquor planned, and no more.
        Near.Equal(whole.Likely, parted.Likely, 0.005);
        Near.Equal(whole.Low, parted.Low, 0.005);
        Near.Equal(whole.High, parted.High, 0.005);
    }

    [Fact]
    public void What_nothing_buffers_or_nothing_ferments_has_no_pH_told()
    {
        Recipe sugar = Plain with { Mash = null, Ingredients = [Typed.Line(IngredientKind.Sugar, "white sugar", 2, AdditionPoint.CopperUp), Typed.Yeast("American ale")] };
        Assert.Null(Wort(sugar));
        Assert.Null(Beer(sugar));
        Recipe still = Plain with { Ingredients = [Plain.Ingredients[0]] };
        Assert.NotNull(Wort(still));
        Assert.Null(Beer(still));
        Assert.Contains(Forecast(sugar with { Souring = Soured.Souring }).Cautions, c => c.Code == "souring.noMalt");
    }

    [Theory]
    [InlineData(IngredientKind.Acid, "hydrochloric acid 37 %")]
    [InlineData(IngredientKind.Acid, "lactic acid 88 %")]
    [InlineData(IngredientKind.Salt, "baking soda")]
    public void Absurd_amounts_are_no_pH_and_no_crash(IngredientKind kind, string what)
    {
        foreach (AdditionPoint at in new[] { AdditionPoint.Mash, AdditionPoint.CopperUp, AdditionPoint.Package })
        {
            BrewForecast told = Forecast(With(Soured, kind, what, 30, at));
            Assert.All(new[] { "wortPh", "beerPh" }, name => Assert.True(Of(told, name) is null or { Low: >= 0, High: <= 14 }));
        }
    }

    [Fact]
    public void A_soured_wort_is_told_at_its_target_its_stage_and_its_heat()
    {
        BrewForecast told = Forecast(Soured);
        Band wort = Of(told, "wortPh")!, beer = Of(told, "beerPh")!;
        Near.Equal(3.4, wort.Likely, 1e-3);
        Near.Equal(3.4, wort.High, 1e-3);
        Assert.InRange(wort.Low, 3.2, 3.4);
        Assert.InRange(beer.Low, 2.9, beer.Likely);
        Assert.InRange(beer.Likely, 3.1, 3.4);
        StageRow row = told.Stages.Single(s => s.Stage == Stage.Sour);
        Assert.Equal(40, row.TemperatureC);
        Assert.Equal([Stage.CopperUp, Stage.Sour, Stage.KnockOut], told.Stages.Select(s => s.Stage).SkipWhile(s => s != Stage.CopperUp).Take(3));
        string[] wanted = ["souring.germs", "souring.discard", "souring.measure", "souring.acid", "souring.boil", "souring.yeast", "ph.width"];
        Assert.Empty(wanted.Except(told.Cautions.Select(c => c.Code)));
        Assert.DoesNotContain(told.Cautions, c => c.Code == "souring.gas");
        Assert.Contains(Forecast(Plain with { Souring = Typed.Souring("leuconostoc", 25, 3.6) }).Cautions, c => c.Code == "souring.gas");
    }

    /// <summary>Souring makes acid of sugar alone: less of the gravity, and no fewer litres than water of hydrolysis takes.</summary>
    [Fact]
    public void A_sourer_beer_is_weaker()
    {
        double Alcohol(Recipe recipe) => Of(Forecast(recipe), "alcoholByVolume")!.Likely;
        Assert.True(Alcohol(Soured) < Alcohol(Plain));
        Assert.True(Alcohol(Plain with { Souring = Typed.Souring("lactobacillus", 40, 3.1) }) < Alcohol(Soured));
    }

    [Fact]
    public void Heating_to_the_boil_starts_where_souring_ends()
    {
        double Minutes(Recipe recipe) =>
            Forecaster.Forecast(recipe, Kits.Sample("coil-and-element"), RandomBrews.Foods, "acids").MashSchedule!.BoilHeatMinutes!.Value;
        Assert.True(Minutes(Soured) > Minutes(Plain) * 1.3);
    }

    [Theory]
    [InlineData("lactobazillus", "culture.unknown", "souring.culture")]
    [InlineData("leuconostoc", "culture.temperature", "souring.temperature")]
    public void A_culture_unknown_or_kept_wrong_is_found(string culture, string code, string where)
    {
        Finding finding = Assert.Single(Forecast(Plain with { Souring = Typed.Souring(culture, 40, 3.4) }).Findings, f => f.Code == code);
        Assert.Equal(where, finding.Where);
        Assert.False(string.IsNullOrEmpty(finding.Value) || string.IsNullOrEmpty(finding.Limit));
    }

    private static WaterPlan HardWell => WaterFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/water/hard-well.json"))).Value!;

    private static Recipe With(Recipe recipe, IngredientKind kind, string of, double kilograms, AdditionPoint at) =>
        recipe with { Ingredients = [.. recipe.Ingredients, Typed.Line(kind, of, kilograms, at, at == AdditionPoint.Ferment ? 3 : 0)] };

    private static BrewForecast Forecast(Recipe recipe, WaterPlan? water = null) =>
        Forecaster.Forecast(recipe, Kits.Whole, RandomBrews.Foods, "acids", water);

    private static Band? Wort(Recipe recipe) => Of(Forecast(recipe), "wortPh");

    private static Band? Beer(Recipe recipe) => Of(Forecast(recipe), "beerPh");

    private static Band? Of(BrewForecast told, string name) => told.Headline.Single(h => h.Name == name).Band;
}
