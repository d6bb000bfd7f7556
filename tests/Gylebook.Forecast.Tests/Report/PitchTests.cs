using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

public sealed class PitchTests
{
    private static IngredientLine Liquid(double billions, double days, string yeast = "American ale") => Typed.Yeast(yeast) with
    {
        Form = IngredientForm.Liquid,
        Cells = new CellCount(billions, $"{billions} billion"),
        Age = new(Duration.FromDays(days), $"{days} d"),
    };

    // 0.75 million a mL and °P (Fix, from memory) of the cast; a gram of dry yeast is 10·10⁹ cells.
    [Fact]
    public void Dry_yeast_is_counted_by_the_gram_and_wants_no_oxygen()
    {
        BrewForecast told = Bitters.With(Typed.Yeast("American ale")).Forecast();
        PitchAdvice pitch = told.Pitch!;
        double wanted = 0.75 * told.Number("castLitres") * SucroseSolution.PlatoAt(told.Number("castGravity"));
        Near.Equal(wanted, pitch.CellsNeededBillions, 1e-6);
        Near.Equal(wanted / 10, pitch.DryYeastGrams, 1e-6);
        Near.Equal(115, pitch.CellsBillions!.Value, 1e-9);
        Assert.Null(pitch.OxygenMgPerL);
        Assert.Empty(pitch.Starters);
        Assert.Contains(told.Cautions, c => c.Code == "pitch.under");
    }

    // 40 days: 1 − 0.007·40 = 0.72 by the straight rule, 0.8^(40/30) = 0.7427 by the compounding one.
    [Fact]
    public void Liquid_yeast_ages_by_both_rules()
    {
        PitchAdvice pitch = Bitters.With(Liquid(100, 40)).Forecast().Pitch!;
        Near.Equal(72.0, pitch.CellsLowBillions!.Value, 0.005);
        Near.Equal(74.27, pitch.CellsHighBillions!.Value, 0.005);
        Assert.InRange(pitch.CellsBillions!.Value, pitch.CellsLowBillions.Value, pitch.CellsHighBillions.Value);
        Assert.Equal(8, pitch.OxygenMgPerL);
    }

    [Fact]
    public void Too_few_cells_are_brought_up_by_a_starter_of_either_model()
    {
        BrewForecast told = Bitters.With(Liquid(100, 40)).Forecast();
        Assert.Equal([StarterHandling.Still, StarterHandling.Stirred], told.Pitch!.Starters.Select(s => s.Handling));
        Assert.All(told.Pitch.Starters, starter =>
        {
            Assert.True(starter.Reaches);
            Assert.Equal(told.Pitch.CellsLowBillions!.Value, starter.Steps[0].StartBillions, 1e-9);
            Assert.True(starter.Steps[^1].EndBillions >= told.Pitch.CellsNeededBillions);

            // 10 °P is 104 g of extract a litre; dry extract carries a few per cent of water besides.
            Assert.All(starter.Steps, s => Assert.InRange(s.DryExtractGrams / s.Litres, 104, 115));
        });
        Assert.Contains(told.Cautions, c => c.Code == "starter.hot");
    }

    [Fact]
    public void A_small_vessel_does_not_reach_it_and_says_so()
    {
        ForecastRequest small = new() { MostStarter = VolumeAt20C.FromLitres(0.2) };
        Assert.Contains(Bitters.With(Liquid(30, 90)).Forecast(small).Pitch!.Starters, s => !s.Reaches);
    }

    [Fact]
    public void Slurry_is_counted_by_the_millilitre()
    {
        IngredientLine slurry = Typed.Yeast("English ale") with { Form = IngredientForm.Slurry, Amount = new(null, Typed.Litres(0.2)) };
        PitchAdvice pitch = Bitters.With(slurry).Forecast().Pitch!;
        Near.Equal(200, pitch.CellsBillions!.Value, 1e-9);
        Near.Equal(pitch.CellsNeededBillions, pitch.SlurryMillilitres, 1e-6);
    }

    /// <remarks>
    /// A third of the slurry's cells are counted dead by the straight rule, 0.7 % a day, and 1 − 0.8^(45/30) by the other; the sheet
    /// says 2 billion in a millilitre. Both rules: common practice, see <see cref="Gylebook.Science.Fermenting.YeastViability"/>.
    /// </remarks>
    [Fact]
    public void Of_a_harvested_jar_as_much_is_wanted_as_holds_the_cells_that_live()
    {
        YeastSheet sheet = new()
        {
            Id = "jar", Name = "Jar", Like = "English ale",
            Lots = [new() { Name = "one", Assay = new() { Cells = new(2, "2 billion"), Per = new(null, Typed.Litres(0.001)), Harvest = new() { Day = new(2026, 3, 1), MayContain = "sesame" } } }],
        };
        IngredientLine line = Typed.Yeast("jar") with { Lot = "one", Amount = new(null, Typed.Litres(0.1)) };
        BrewForecast fresh = Forecast(new(2026, 3, 1)), old = Forecast(new DateOnly(2026, 3, 1).AddDays(45));

        PitchAdvice pitch = fresh.Pitch!;
        Near.Equal(200, pitch.CellsBillions!.Value, 1e-9);
        Near.Equal(pitch.CellsNeededBillions / 2, pitch.OfThisSlurryMillilitres!.Value.Low, 1e-6);
        Near.Equal(pitch.OfThisSlurryMillilitres!.Value.Low, pitch.OfThisSlurryMillilitres.Value.High, 1e-9);

        Near.Equal(pitch.CellsNeededBillions / 2 / Math.Pow(0.8, 1.5), old.Pitch!.OfThisSlurryMillilitres!.Value.Low, 1e-6);
        Near.Equal(pitch.CellsNeededBillions / 2 / (1 - (0.007 * 45)), old.Pitch!.OfThisSlurryMillilitres!.Value.High, 1e-6);
        Assert.Equal(["sesame"], old.Allergens.MayContainEu);
        Assert.Null(Bitters.With().Forecast().Pitch!.OfThisSlurryMillilitres);

        BrewForecast Forecast(DateOnly day) => Forecaster.Forecast(Bitters.With(line), Bitters.AtTheSea, new Larder([sheet]).On(day), "test");
    }

    [Fact]
    public void Yeast_that_does_not_say_how_many_is_unknown_not_none()
    {
        BrewForecast told = Bitters.With(Typed.Yeast("English ale") with { Form = IngredientForm.Liquid }).Forecast();
        Assert.Null(told.Pitch!.CellsBillions);
        Assert.Contains(told.Cautions, c => c.Code == "pitch.unknown");
    }

    [Fact]
    public void A_lager_wants_twice_the_cells_and_more_oxygen_than_air_gives()
    {
        BrewForecast lager = (Bitters.With(Liquid(100, 10, "lager")) with { Ferment = [Typed.Days(10, 21)] }).Forecast();
        Near.Equal(2, lager.Pitch!.CellsNeededBillions / Bitters.With(Liquid(100, 10)).Forecast().Pitch!.CellsNeededBillions, 1e-9);
        Assert.Equal(10, lager.Pitch.OxygenMgPerL);
        Assert.Contains(lager.Cautions, c => c.Code == "oxygen.fire");
    }

    /// <summary>20 kg of fruit bring the same sugar at the pitch as at knock-out; the kit loses nothing between the two.</summary>
    [Theory]
    [InlineData("cherries-red", 20)]
    [InlineData("honey", 2)]
    public void What_goes_in_at_the_pitch_is_counted_as_what_goes_in_at_knock_out(string food, double kilograms)
    {
        double Cells(AdditionPoint at, double count = 0) =>
            Bitters.With(Typed.Line(IngredientKind.Food, food, kilograms, at, count)).Forecast().Pitch!.CellsNeededBillions;
        double none = Bitters.With().Forecast().Pitch!.CellsNeededBillions;
        Near.Equal(Cells(AdditionPoint.KnockOut), Cells(AdditionPoint.Pitch), 0.01 * Cells(AdditionPoint.KnockOut));
        Near.Equal(Cells(AdditionPoint.Pitch), Cells(AdditionPoint.Ferment, 3), 0.01 * Cells(AdditionPoint.Pitch));
        Assert.True(Cells(AdditionPoint.Pitch) > 1.2 * none);
    }

    /// <summary>
    /// 150 mg/L of free amino nitrogen are wanted at 12 °P (O'Connor-Cox and Ingledew 1989, second hand), and the richest malt wort holds 250
    /// there (from memory): so from 60 % of malt on it may be enough. 4 kg of pale malt bring about 3.1 kg of extract, 3 kg of it with a tenth unconverted.
    /// </summary>
    [Theory]
    [InlineData(0, 4, null)]
    [InlineData(1.5, 4, null)]
    [InlineData(3, 4, Severity.Note)]
    [InlineData(3, 0, Severity.Warning)]
    public void Sugar_in_the_place_of_malt_is_told_to_lack_nitrogen(double sugar, double malt, Severity? severity)
    {
        Recipe recipe = Bitters.With(Typed.Line(IngredientKind.Sugar, "white sugar", sugar, AdditionPoint.Boil, 10));
        recipe = malt > 0 ? recipe : recipe with { Mash = null, Liquor = null, Ingredients = [.. recipe.Ingredients.Skip(1)] };
        Assert.Equal(severity, recipe.Forecast().Cautions.SingleOrDefault(c => c.Code == "pitch.nitrogen")?.Severity);
    }

    [Fact]
    public void A_strong_beer_asks_much_of_its_yeast()
    {
        Recipe strong = Bitters.With(Typed.Line(IngredientKind.Sugar, "white sugar", 3, AdditionPoint.Boil, 10), Typed.Yeast("English ale"));
        BrewForecast told = strong.Forecast();
        Assert.True(told.Number("alcoholByVolume") > 9);
        Assert.Contains(told.Cautions, c => c.Code == "yeast.tolerance");
        Assert.Contains(told.Cautions, c => c.Code == "yeast.strongWort");
        Assert.Contains(told.Pitch!.HarvestDoubts, d => d.Contains("alcohol", StringComparison.Ordinal));
        Assert.DoesNotContain(Bitters.With().Forecast().Cautions, c => c.Code is "yeast.tolerance" or "yeast.strongWort");
    }

    [Fact]
    public void Preservatives_and_what_settles_are_named()
    {
        FoodMakeup syrup = FoodMakeups.From(new FoodSheet
        {
            Id = "cordial",
            Name = "cordial",
            Family = "other",
            Ingredients = "sugar, water, citric acid, preservative: potassium sorbate, sodium benzoate. May contain sulphites.",
            Composition = new FoodComposition { Water = 40, Protein = 0, Fat = 0, Carbohydrate = 59, Source = "made up for the test" },
        }).Makeup!;
        Recipe recipe = Bitters.With(
            Typed.Line(IngredientKind.Food, "cordial", 0.5, AdditionPoint.Ferment, 3),
            Typed.Line(IngredientKind.Food, "raspberries-raw", 1, AdditionPoint.Ferment, 3),
            Bitters.Hop(20, AdditionPoint.Ferment, 5));
        BrewForecast told = Forecaster.Forecast(recipe, Bitters.AtTheSea, Larder.OfFoods(syrup), "test");
        Assert.Contains(told.Cautions, c => c.Code == "preservative.sorbate");
        Assert.Contains(told.Pitch!.HarvestDoubts, d => d.Contains("preservative", StringComparison.Ordinal));
        Assert.Equal(3, told.Pitch.HarvestDoubts.Count);
        Assert.Contains(told.Cautions, c => c.Code == "yeast.harvest");
        Assert.Empty(Bitters.With().Forecast().Pitch!.HarvestDoubts);
    }
}
