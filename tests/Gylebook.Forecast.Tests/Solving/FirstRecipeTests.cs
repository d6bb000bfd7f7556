using Gylebook.Forecast.Report;
using Gylebook.Forecast.Solving;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Tests.Solving;

/// <summary>A draft made from a wish is written, read again and forecast anew, by the forecast and not by the solver: the wish must come out of it.</summary>
public sealed class FirstRecipeTests
{
    // Malt above 1 kg is written to 10 g, below to 1 g. The least grist here, 2.4 kg for 3 % in 20 L, is off by 5 g of its base and half a gram of its coloured
    // malt: 0.23 % of 3 %. A grist of 9 % is written as coarsely and weighs thrice as much.
    private const double AlcoholOfWrittenWeights = 0.01;

    // Half a gram of the darkest malt, 1400 EBC or 533 °L, in 22 L: MCU = 8.3454·kg·°L/L, 0.10, of a law whose slope is below 1.5 at every colour
    // but the palest (docs/science/colour.md): 0.15 SRM. The base malt's 5 g add 0.004.
    private const double SrmOfWrittenWeights = 0.16;

    // Hops are written to 0.1 g: 0.05 g of each of two lines at 5 % alpha in 20 L, a third of it isomerised: 0.08 IBU. Malt's rounding adds what it adds there (RecipeSolverTests).
    private const double IbuOfWrittenWeights = 0.15;

    public static TheoryData<double, double, double> Wishes() =>
        [.. from alcohol in new[] { 3.0, 5, 7, 9 } from ebc in new[] { 8.0, 20, 40, 80 } from ibu in new[] { 5.0, 30, 60 } select (alcohol, ebc, ibu)];

    [Theory]
    [MemberData(nameof(Wishes))]
    public void The_forecast_of_the_draft_comes_to_the_wish(double alcohol, double ebc, double ibu)
    {
        FirstDraft draft = Of(Wish(alcohol, ebc, ibu, 20));
        if (draft.Recipe is null)
        {
            // So strong a beer cannot be so pale: the palest malt alone is darker. The proof is a brew of nothing else.
            Finding why = Assert.Single(draft.Findings);
            Assert.Equal("colour", why.Where);
            Assert.True(PalestSrm(alcohol) > BeerColour.FromEbc(ebc).Srm, why.Message);
            return;
        }

        Recipe written = RecipeFile.Read(RecipeFile.Write(draft.Recipe)).Value!;
        BrewForecast told = Forecaster.Forecast(written, BuiltInKit.LanternShed, Larder.Empty, "draft");
        Assert.DoesNotContain(told.Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(alcohol, Number(told, "alcoholByVolume"), AlcoholOfWrittenWeights);
        Assert.Equal(BeerColour.FromEbc(ebc).Srm, Number(told, "colourSrm"), SrmOfWrittenWeights);
        Assert.Equal(ibu, Number(told, "bitterness"), IbuOfWrittenWeights);
        Assert.Equal(20, Number(told, "packagedLitres"), 1e-6);
        Assert.All(draft.Reached, reached => Assert.Equal(Number(told, reached.Readout), reached.Reached, 1e-9));
    }

    [Theory]
    [InlineData(1.032, 12)]
    [InlineData(1.055, 25)]
    [InlineData(1.090, 60)]
    public void A_gravity_may_be_wished_in_place_of_the_alcohol(double gravity, double ebc)
    {
        FirstDraft draft = Of(Wish(5, ebc, 25, 12) with { Alcohol = null, OriginalGravity = new(SpecificGravity.FromRatio(gravity), Invariant($"{gravity}")) });
        Assert.Empty(draft.Findings);
        BrewForecast told = Forecaster.Forecast(draft.Recipe!, BuiltInKit.LanternShed, Larder.Empty, "draft");

        // As in RecipeSolverTests: malt is written to 10 g.
        Assert.Equal(gravity, Number(told, "originalGravity"), 0.0004);
    }

    [Theory]
    [InlineData("tun-and-kettle", 8)]
    [InlineData("big-pot", 8)]
    [InlineData("lantern-shed", 2)]
    public void Another_kit_has_another_draft_of_the_same_beer(string kit, double litres)
    {
        Kit on = Kits.Sample(kit);
        FirstDraft draft = new FirstRecipe(on, Larder.Empty).Of(Wish(5, 24, 30, litres));
        Assert.Empty(draft.Findings);
        BrewForecast told = Forecaster.Forecast(draft.Recipe!, on, Larder.Empty, "draft");

        // In 8 L a gram of coloured malt is two and a half times as much of it as in 20 L, in 2 L ten times.
        Assert.Equal(5, Number(told, "alcoholByVolume"), AlcoholOfWrittenWeights * 20 / litres);
        Assert.Equal(BeerColour.FromEbc(24).Srm, Number(told, "colourSrm"), SrmOfWrittenWeights * 20 / litres);
        Assert.Equal(litres, Number(told, "packagedLitres"), 1e-6);
    }

    // Its kettle has 15 L and its fermenter 10 L: samples/kits/big-pot.json.
    [Fact]
    public void What_does_not_fit_the_kit_binds()
    {
        FirstDraft draft = new FirstRecipe(Kits.Sample("big-pot"), Larder.Empty).Of(Wish(5, 24, 30, 25));
        Assert.Null(draft.Recipe);
        Assert.Equal([("kettle.brim", "15.0 L"), ("fermenter.tooSmall", "10.0 L")], draft.Findings.Select(finding => (finding.Code, finding.Limit)));
    }

    // 9 % in 20 L is some 8 kg of grist: with all liquor at once it stands above the 35 L brim of samples/kits/lantern-shed.json.
    [Fact]
    public void Where_the_kettle_would_overflow_some_of_the_liquor_becomes_a_rinse()
    {
        Recipe strong = Of(Wish(9, 24, 30, 20)).Recipe!, weak = Of(Wish(4, 24, 30, 20)).Recipe!;
        Assert.Equal((SpargeMethod.Pour, SpargeMethod.None), (strong.Mash!.Sparge.Method, weak.Mash!.Sparge.Method));
        Recipe atOnce = strong with { Mash = strong.Mash with { Sparge = SpargePlan.None } };
        Assert.Contains(Forecaster.Forecast(atOnce, BuiltInKit.LanternShed, Larder.Empty, "draft").Findings, finding => finding.Code == "mash.brim");
    }

    // What they are made of is the tables': where enzymes are wanted, where germs are killed, where smell is kept.
    [Theory]
    [InlineData("roasted chestnuts", "800 g", AdditionPoint.Mash)]
    [InlineData("raspberries, raw", "2 kg", AdditionPoint.Ferment)]
    [InlineData("honey", "500 g", AdditionPoint.KnockOut)]
    [InlineData("cinnamon, ground", "10 g", AdditionPoint.KnockOut)]
    public void A_food_goes_where_it_suits_and_counts_in_the_wish(string food, string amount, AdditionPoint at)
    {
        FirstDraft draft = Of(Wish(5, 24, 25, 20) with { Food = food, FoodAmount = Entered<Mass>(amount) });
        Assert.True(draft.Recipe is not null, string.Join('\n', draft.Findings.Select(finding => finding.Message)));
        IngredientLine line = Assert.Single(draft.Recipe.Ingredients, line => line.Kind is IngredientKind.Food or IngredientKind.Spice);
        Assert.Equal((at, amount), (line.At.Point, line.Amount.Text));
        BrewForecast told = Forecaster.Forecast(RecipeFile.Read(RecipeFile.Write(draft.Recipe)).Value!, BuiltInKit.LanternShed, Larder.Empty, "draft");
        Assert.Equal(5, Number(told, "alcoholByVolume"), AlcoholOfWrittenWeights);
        Assert.Contains(amount, draft.Recipe.Notes, StringComparison.Ordinal);
    }

    [Fact]
    public void A_food_of_ones_own_is_asked_before_the_tables()
    {
        FirstDraft draft = new FirstRecipe(BuiltInKit.LanternShed, RecipeSolverTests.Foods).Of(Wish(5, 30, 25, 20) with { Food = "pumpkin-seed-flour", FoodAmount = Entered<Mass>("600 g") });
        Assert.Empty(draft.Findings);
        Assert.Contains(draft.Recipe!.Ingredients, line => line.Of == "pumpkin-seed-flour");
    }

    [Fact]
    public void A_draft_is_an_ordinary_recipe_and_says_that_the_choice_is_ours()
    {
        Recipe recipe = Of(Wish(5, 24, 30, 20)).Recipe!;
        Assert.True(RecipeDraft.Of(RecipeFile.Write(recipe)).IsReadable);
        Assert.Null(recipe.Hold);
        Assert.All(recipe.Ingredients, line => Assert.True(line.Share is null && line.Amount.Text.Length > 0));
        Assert.Contains("change anything", recipe.Notes, StringComparison.Ordinal);
        Assert.Contains("5 %", recipe.Notes, StringComparison.Ordinal);
    }

    // Black malt is bounded to a quarter of the grist, and there is little grist in so weak a beer.
    [Fact]
    public void A_weak_beer_cannot_be_as_dark_as_one_likes_and_the_limit_is_told()
    {
        Finding why = Assert.Single(Of(Wish(1, 190, 20, 20)).Findings);
        Assert.Equal(("draft.colour", "colour", "190 EBC"), (why.Code, why.Where, why.Value));
        Assert.Contains("black malt is used up to 25 % of the grist", why.Message, StringComparison.Ordinal);
        Assert.EndsWith("EBC or paler", why.Limit, StringComparison.Ordinal);
    }

    [Fact]
    public void Food_that_makes_more_alcohol_than_was_wished_binds()
    {
        Finding why = Assert.Single(Of(Wish(1, 20, 20, 5) with { Food = "honey", FoodAmount = Entered<Mass>("2 kg") }).Findings);
        Assert.Equal("alcohol", why.Where);
        Assert.Contains("what is not malt brings", why.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_that_cannot_be_is_told_at_once_with_value_and_limit()
    {
        IReadOnlyList<Finding> findings = Of(Wish(40, 900, 500, 5000) with { FoodAmount = Entered<Mass>("1 kg") }).Findings;
        Assert.Equal(["alcohol", "colour", "bitterness", "litres", "food"], findings.Select(finding => finding.Where));
        Assert.Equal("0.5 to 12 %", findings[0].Limit);
        Assert.All(findings, finding => Assert.StartsWith(finding.Value!, finding.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_food_that_nobody_knows_is_told_with_its_nearest()
    {
        Finding why = Assert.Single(Of(Wish(5, 20, 20, 20) with { Food = "raspberies", FoodAmount = Entered<Mass>("1 kg") }).Findings);
        Assert.Equal(("food", "raspberies"), (why.Where, why.Value));
        Assert.Contains("raspberries", why.Limit, StringComparison.Ordinal);
    }

    [Fact]
    public void Strength_is_said_once()
    {
        Assert.Equal("gravity", Assert.Single(Of(Wish(5, 20, 20, 20) with { OriginalGravity = Entered<SpecificGravity>("1.050") }).Findings).Where);
        Assert.Equal("alcohol", Assert.Single(Of(Wish(5, 20, 20, 20) with { Alcohol = null }).Findings).Where);
    }

    private static FirstDraft Of(FirstWish wish) => new FirstRecipe(BuiltInKit.LanternShed, Larder.Empty).Of(wish);

    private static FirstWish Wish(double alcohol, double ebc, double ibu, double litres) => new()
    {
        Alcohol = Entered<Fraction>(Invariant($"{alcohol} %")),
        Colour = Entered<BeerColour>(Invariant($"{ebc} EBC")),
        Bitterness = Entered<Bitterness>(Invariant($"{ibu} IBU")),
        Litres = Entered<VolumeAt20C>(Invariant($"{litres} L")),
    };

    private static Entered<T> Entered<T>(string text)
        where T : struct, IQuantity<T> =>
        UnitTable.TryParse(text, out Entered<T> entered, out string problem) ? entered : throw new ArgumentException(problem);

    private static double Number(BrewForecast forecast, string headline) => forecast.Headline.Single(line => line.Name == headline).Band!.Likely;

    /// <summary>Pilsner malt and yeast alone, weighed for that much alcohol by halving.</summary>
    private static double PalestSrm(double alcohol)
    {
        (double low, double high) = (0.5, 20);
        BrewForecast? told = null;
        while (high - low > 1e-4)
        {
            double kilograms = (low + high) / 2;
            told = Forecaster.Forecast(
                BlankRecipe.For(BuiltInKit.LanternShed, "pale") with { Ingredients = [Typed.Malt("pilsner malt", kilograms), Typed.Yeast("American ale")] },
                BuiltInKit.LanternShed, Larder.Empty, "pale");
            (low, high) = Number(told, "alcoholByVolume") < alcohol ? (kilograms, high) : (low, kilograms);
        }

        return Number(told!, "colourSrm");
    }
}
