using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Acidity;
using Gylebook.Science.Water;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>What foods and dry hops do to the pH and the ions of a beer.</summary>
public sealed class FruitPhTests(ITestOutputHelper output)
{
    private const double Litres = 20, Beer = 4.30, Buffering = 7;

    /// <summary>pH of 20 L of beer of pH 4.30 with so much of a food, from nothing but its acids and its own pH.</summary>
    private static double With(FoodAcids acids, double? ownPh, double kilograms, double buffering = Buffering)
    {
        double Millimoles(double grams, Acid acid) => grams * 10 * kilograms / acid.MolarMass * 1000;
        AcidLoad load = default(AcidLoad) with
        {
            Lactic = Millimoles(acids.Lactic, Acids.Lactic),
            Acetic = Millimoles(acids.Acetic, Acids.Acetic),
            Citric = Millimoles(acids.Citric, Acids.Citric),
            Malic = Millimoles(acids.Malic, Acids.Malic),
            Tartaric = Millimoles(acids.Tartaric, Acids.Tartaric),
            Quinic = Millimoles(acids.Quinic, Acids.Quinic),
            Litres = Litres,
        };
        return WortAcidity.PhOf(ownPh is { } own ? load.AnchoredAt(own) : load, buffering * Litres, Beer);
    }

    // Worked by hand: citric 2.0 and malic 0.1 g/100 g, own pH 3.4 (Belitz) or 3.22 to 3.95 (FDA); B 7, or 5 to 12.8 mEq/(L·pH).
    [Fact]
    public void Raspberries_as_worked()
    {
        FoodAcids raspberry = new(0, 0, 2.0, 0.1, 0, 0);
        Near.Equal(3.94, With(raspberry, 3.4, 1.5), 0.005);
        Near.Equal(3.77, With(raspberry, 3.22, 1.5, 5), 0.005);
        Near.Equal(4.21, With(raspberry with { Citric = 1.8, Malic = 0.1 }, 3.95, 1.5, 12.8), 0.006);
        Near.Equal(3.48, With(raspberry, null, 1.5), 0.005);
    }

    // 2 kg (lemon juice and tamarind 0.2) into 20 L of pH 4.3 at B 7: likely and bounds worked beside the tables.
    [Theory]
    [InlineData("raspberries-raw", 2, 3.69, 3.87, 4.19)]
    [InlineData("sour-cherries-raw", 2, 3.66, 3.82, 4.13)]
    [InlineData("blackcurrant", 2, 3.21, 3.57, 3.92)]
    [InlineData("passion-fruit-raw", 2, 3.16, 3.40, 3.89)]
    [InlineData("rhubarb", 2, 3.58, 3.71, 3.95)]
    [InlineData("plum", 2, 3.46, 3.78, 4.30)]
    [InlineData("pineapple-raw", 2, 3.83, 3.99, 4.26)]
    [InlineData("apricots-raw", 2, 3.78, 4.07, 4.36)]
    [InlineData("strawberries-raw", 2, 3.78, 4.10, 4.25)]
    [InlineData("peaches-raw", 2, 3.94, 4.14, 4.29)]
    [InlineData("sweet-cherries-raw", 2, 4.07, 4.19, 4.36)]
    [InlineData("mango-raw", 2, 4.10, 4.27, 4.34)]
    [InlineData("banana-raw", 2, 4.39, 4.45, 4.46)]
    [InlineData("tamarind-raw", 0.2, 3.26, 3.73, 4.08)]
    public void Fourteen_foods_lie_inside_their_bounds(string id, double kilograms, double low, double likely, double high)
    {
        FoodAcids acids = FoodAcidTable.Find(id)!;
        double ph = With(acids, FoodPhTable.Find(id)!.Likely, kilograms);
        output.WriteLine($"{id}: {ph:0.00}, worked {likely:0.00}, off by {ph - likely:+0.00;-0.00}");
        Assert.InRange(ph, low, high);
    }

    [Fact]
    public void At_its_own_pH_a_food_neither_gives_nor_takes() =>
        Near.Equal(Beer, With(FoodAcidTable.Find("raspberries-raw")!, Beer, 5), 1e-9);

    private static readonly Recipe Plain = new()
    {
        Name = "fruit",
        Package = new PackageWish(Typed.Litres(20), "bottle", Typed.Volumes(2.4)),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients = [Typed.Malt("pilsner malt", 4), Typed.Yeast("American ale")],
    };

    private static Recipe Brew(params (string Food, double Kilograms)[] foods) => Plain with
    {
        Ingredients = [.. Plain.Ingredients, .. foods.Select(food => Typed.Line(IngredientKind.Food, food.Food, food.Kilograms, AdditionPoint.Ferment, 3))],
    };

    private static BrewForecast Forecast(Recipe recipe) => Forecaster.Forecast(recipe, Kits.Whole, RandomBrews.Foods, "fruit");

    private static Band PhOf(Recipe recipe) => Forecast(recipe).Headline.Single(h => h.Name == "beerPh").Band!;

    // The run's beer has 4.2 of its own, and 35 mEq for each kilogram of malt in it: the same sum by hand, from its own state.
    [Fact]
    public void The_run_carries_acid_and_base_to_the_glass_as_the_sum_has_them()
    {
        RunOutcome run = RunOutcome.Likely(Brew(("raspberries-raw", 1.5)).PlanOn(Kits.Whole).Plan!);
        Wort beer = run.Trace.Wort(Stage.Pour);
        double citric = beer[Component.CitricAcid] / 192.123e-6, malic = beer[Component.MalicAcid] / 134.087e-6;
        Near.Equal((citric * Acids.Citric.ProtonsGivenUp(3.4)) + (malic * Acids.Malic.ProtonsGivenUp(3.4)), beer[Component.PairedBase], 1e-6);
        AcidLoad load = (default(AcidLoad) with { Citric = citric, Malic = malic, Litres = beer.Litres }).AnchoredAt(3.4);
        Near.Equal(WortAcidity.PhOf(load, 35 * beer[Component.MaltBuffer], 4.2), run[PhReadouts.BeerPh], 1e-6);
        Assert.InRange(run[PhReadouts.BeerPh], 3.8, 4.0);
    }

    [Fact]
    public void The_band_grows_by_what_tables_let_the_fruit_be()
    {
        Band plain = PhOf(Plain), fruited = PhOf(Brew(("raspberries-raw", 1.5)));
        Assert.True(fruited.Low < fruited.Likely && fruited.Likely < fruited.High);
        Assert.True(fruited.Likely < plain.Likely - 0.2 && fruited.Low < plain.Low && fruited.High < plain.High);
    }

    // FDA: dates 6.2 to 6.4, dried figs 5.05 to 5.98, banana 4.5 to 5.2, pumpkin 4.8 to 5.5: less sour than beer.
    [Theory]
    [InlineData("dates-soft", 1)]
    [InlineData("figs-dried", 1)]
    [InlineData("banana-raw", 2)]
    [InlineData("pumpkin-raw", 2)]
    public void What_is_less_sour_than_beer_raises_its_pH(string food, double kilograms)
    {
        Band plain = PhOf(Plain), with = PhOf(Brew((food, kilograms)));
        Assert.True(with.Likely > plain.Likely + 0.02, $"{with.Likely}");
        Assert.True(with.High >= plain.High - 0.01);
    }

    [Theory]
    [InlineData("coffee, roasted and ground", "less sour than beer")]
    [InlineData("instant coffee powder", "less sour than beer")]
    [InlineData("cow milk, whole", "less sour than beer")]
    [InlineData("molasses", "less sour than beer")]
    [InlineData("cocoa powder, unsweetened, alkalised", "less sour than beer")]
    [InlineData("cranberries, raw", "more sour than beer")]
    [InlineData("sour cherries, dried, sweetened", "can move it either way")]
    public void What_is_not_counted_is_named_with_the_way_it_pulls(string food, string says)
    {
        Caution told = Assert.Single(Forecast(Brew((food, 0.2), (food, 0.1))).Cautions, c => c.Code == "ph.foodAcids");
        Assert.Contains($"{food}, ", told.Message, StringComparison.Ordinal);
        Assert.Contains(says, told.Message, StringComparison.Ordinal);
        Assert.Equal(told.Message.IndexOf(food, StringComparison.Ordinal), told.Message.LastIndexOf(food, StringComparison.Ordinal));
    }

    [Fact]
    public void Foods_that_are_counted_are_named_as_that_and_those_that_do_nothing_not_at_all()
    {
        IReadOnlyList<Caution> told = Forecast(Brew(("raspberries-raw", 1), ("corn-flakes-low-sodium", 0.3), ("peanut-flour-defatted", 0.3))).Cautions;
        Assert.DoesNotContain(told, c => c.Code == "ph.foodAcids");
        Caution counted = Assert.Single(told, c => c.Code == "ph.foodsCounted");
        Assert.Contains("raspberries", counted.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("peanut", counted.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Forecast(Plain).Cautions, c => c.Code.StartsWith("ph.food", StringComparison.Ordinal));
    }

    // Maye 2016: 3.87 g/L of pellets raise pH by 0.14, a later paper 0.1 (0.026 to 0.036 per g/L), at 7 mEq/(L·pH).
    [Theory]
    [InlineData(AdditionPoint.Ferment, 0.10, 0.14)]
    [InlineData(AdditionPoint.Boil, 0, 0)]
    public void Dry_hops_raise_the_pH_as_was_measured_and_hot_ones_do_not(AdditionPoint at, double low, double high)
    {
        RunOutcome run = RunOutcome.Likely(Hopped(at).PlanOn(Kits.Whole).Plan!);
        Wort beer = run.Trace.Wort(Stage.Pour);

        // As much buffering as theirs, whatever this beer's malt.
        double rise = (run[PhReadouts.BeerPh] - 4.2) * 35 * beer[Component.MaltBuffer] / beer.Litres / Buffering * 3.87 / (1000 * 0.0774 / beer.Litres);
        Assert.InRange(rise, low - 0.002, high + 0.002);
    }

    private static Recipe Hopped(AdditionPoint at) => Plain with
    {
        Ingredients = [.. Plain.Ingredients, Typed.Line(IngredientKind.Hop, "Cascade", 0.0774, at, 3)],
    };

    // Published worts of 12 °P and beers, liquor in them: K 340 to 650, Mg 60 to 140, P 150 to 430, Cl 40 to 210 mg/L; here in distilled liquor.
    [Theory]
    [InlineData(Ion.Potassium, 340, 550, 650)]
    [InlineData(Ion.Magnesium, 60, 100, 140)]
    [InlineData(Ion.Chloride, 40, 125, 210)]
    public void Malt_brings_its_own_ions_in_proportion_to_its_extract(Ion ion, double low, double likely, double high)
    {
        RunOutcome run = RunOutcome.Likely(Plain.PlanOn(Kits.Whole).Plan!);
        Wort beer = run.Trace.Wort(Stage.Pour);
        double strength = beer[Component.MaltBuffer] / beer.Litres / (0.12 * 1.0465 * 1.334);
        Band told = IonTable.Of(run).Glass[ion];
        Near.Equal(low * strength, told.Low, 0.002 * low);
        Near.Equal(likely * strength, told.Likely, 0.002 * likely);
        Near.Equal(high * strength, told.High, 0.002 * high);
        Assert.Equal(BandKind.Bounds, told.Kind);
    }

    // NDB 09302: K 151, Ca 25, Mg 22, P 29 mg/100 g; of the last three 0.7 dissolves, as of the ash.
    [Fact]
    public void Fruit_brings_its_minerals_too()
    {
        RunOutcome plain = RunOutcome.Likely(Plain.PlanOn(Kits.Whole).Plan!), run = RunOutcome.Likely(Brew(("raspberries-raw", 1.5)).PlanOn(Kits.Whole).Plan!);
        Wort beer = run.Trace.Wort(Stage.Ferment);
        Near.Equal(1510 * 1.5, beer[Component.Potassium], 1);
        Near.Equal(0.7 * 250 * 1.5, beer[Component.FoodCalcium], 1);
        Near.Equal(0.7 * 290 * 1.5, beer[Component.Phosphorus], 1);
        Assert.True(IonTable.Of(run).Glass[Ion.Potassium].Likely > IonTable.Of(plain).Glass[Ion.Potassium].Likely + 50);
    }

    // JP8: prunes 12.1, sweet cherries 2.2 g of sorbitol in 100 g.
    [Theory]
    [InlineData("prunes", 0.121)]
    [InlineData("sweet-cherries-raw", 0.022)]
    public void Sorbitol_is_not_fermented(string food, double share)
    {
        FoodMakeup made = FoodMakeups.From(FoodTable.Find(food).Match!).Makeup!;
        Near.Equal(share, made.Polyols, 1e-9);
        Wort beer = RunOutcome.Likely(Brew((food, 1)).PlanOn(Kits.Whole).Plan!).Trace.Wort(Stage.Ferment);
        Near.Equal(share, beer[Component.Polyols], 1e-6);
    }

    [Fact]
    public void Every_food_weighs_what_it_weighs_with_its_acids_counted() => Assert.All(FoodTable.All, food =>
    {
        FoodMakeup made = FoodMakeups.From(food).Makeup!;
        Near.Equal(
            1, made.Water + made.Sucrose + made.Glucose + made.Fructose + made.Maltose + made.Lactose + made.Polyols + made.Starch + made.Dextrin + made.SolubleProtein
            + made.Minerals + made.Ethanol + made.Acids + made.Fat + made.Insoluble, 1e-9);
        Assert.True(made.Acids == 0 || Math.Abs((100 * made.Acids) - food.Composition.Acids!.Total) < 1e-9, $"{food.Id} has no room for its acid");
    });

    [Theory]
    [InlineData(AdditionPoint.Ferment, true)]
    [InlineData(AdditionPoint.Package, true)]
    [InlineData(AdditionPoint.Boil, false)]
    public void Raw_honey_in_the_cold_carries_an_enzyme(AdditionPoint at, bool isTold)
    {
        Recipe With(IngredientKind kind) => Plain with { Ingredients = [.. Plain.Ingredients, Typed.Line(kind, "honey", 0.3, at, 5)] };
        Assert.Equal(isTold, Forecast(With(IngredientKind.Food)).Cautions.Any(c => c.Code == "honey.diastase"));
    }
}
