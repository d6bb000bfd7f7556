using CsCheck;
using Gylebook.Recipes.Foods;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;
using static Gylebook.Recipes.Tests.Foods.FoodFixture;

namespace Gylebook.Recipes.Tests.Foods;

public class FoodMakeupsTests
{
    public static TheoryData<string> Ids => [.. FoodTable.All.Select(food => food.Id)];

    [Fact]
    public void The_table_has_all_its_foods() => Assert.Equal(229, FoodTable.All.Count);

    // No source within reach has figures of these: the row says so, and its family answers until a label does.
    [Theory]
    [InlineData("apple", "pome-fruit")]
    [InlineData("hibiscus", "flower-sour")]
    [InlineData("oak-chips", "wood")]
    [InlineData("bread-wheat", "bread")]
    [InlineData("tea-black", "tea-leaf")]
    public void A_row_without_figures_says_so_and_is_reckoned_as_its_family(string id, string family)
    {
        var made = FoodMakeups.From(FoodTable.Find(id).Match!);
        Assert.Contains(made.Findings, found => found.Code == "food.noFigures" && found.Severity == Severity.Warning);
        Assert.Equal(family, made.Makeup!.FamilyId);
        Assert.Equal(FoodFamilies.Of(family).Moisture / 100, made.Makeup.Water, 0.07);
        Assert.DoesNotContain(FoodMakeups.From(FoodTable.Find("raspberries").Match!).Findings, found => found.Code == "food.noFigures");
    }

    // No label prints acid: the brewer's own lemon juice keeps the citric acid and the pH of the table's.
    [Fact]
    public void A_sheet_with_the_id_of_a_row_keeps_that_rows_acids()
    {
        FoodSheet sheet = new()
        {
            Id = "lemon-juice",
            Name = "lemon juice from a bottle",
            Family = "sour-juice",
            Composition = new FoodComposition { Water = 91, Carbohydrate = 8, Source = "made up for the test" },
        };
        var made = FoodMakeups.From(sheet).Makeup!;
        Assert.Equal(FoodAcidTable.Find("lemon-juice")!.Total / 100, made.Acids, 1e-9);
        Assert.Equal(2.4, made.OwnPh!.Likely);
        Assert.Equal(0, FoodMakeups.From(sheet with { Id = "another" }).Makeup!.Acids);
    }

    // JP8: 2.9 g of sorbitol in 100 g of pear, 0.6 of apple; a stone fruit's 0.3 to 0.7. Stones are for stone fruit alone.
    [Fact]
    public void Pome_fruit_is_not_stone_fruit()
    {
        var (pear, plum) = (OfTable("pear"), OfTable("plum"));
        Assert.Equal(0.029, pear.Polyols, 1e-9);
        Assert.True(pear.Fructose > pear.Glucose + pear.Sucrose && plum.Sucrose > plum.Fructose);
        Assert.False(FoodFamilies.Of(pear.FamilyId).HasStones);
        Assert.True(FoodFamilies.Of(plum.FamilyId).HasStones);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_food_is_made_up_of_masses_that_add_up_to_one(string id)
    {
        var makeup = OfTable(id);
        Assert.All(Parts(makeup), part => Assert.InRange(part, 0, 1));
        // Rounding of a dozen doubles.
        Assert.Equal(1, Total(makeup), 1e-12);
        // Sodium is part of the minerals.
        Assert.True(makeup.Minerals >= makeup.SodiumMilligramsPerKilogram / 1e6);
    }

    // As published, g/100 g: USDA SR26 NDB 09302, 08014, 20422, 01115, 02050; IFCT 2017 A006.
    [Theory]
    [InlineData("raspberries-raw", 85.75, 0.65, 0.2, 1.86, 2.35, 0, 0, 0)]
    [InlineData("sweetened-chocolate-puffed-rice-cereal", 2.81, 2.7, 38.6 * 0.95, 38.6 * 0.03, 38.6 * 0.02, 0, 0, 43.8)]
    [InlineData("maize-meal-degermed", 11.18, 1.75, 0.68, 0.56, 0.17, 0.19, 0, 73.3)]
    [InlineData("maize-dry", 9.26, 3.77, 0.7, 0.8, 0.16, 0, 0, 59.35)]
    [InlineData("whey-powder-sweet", 3.19, 1.07, 0, 0, 0, 0, 74.46, 0)]
    [InlineData("vanilla-extract", 52.58, 0.06, 12.65, 0, 0, 0, 0, 0)]
    public void Published_figures_are_carried_over_as_they_are(
        string id, double water, double fat, double sucrose, double glucose, double fructose, double maltose, double lactose, double starch)
    {
        var food = OfTable(id);
        double[] got = [food.Water, food.Fat, food.Sucrose, food.Glucose, food.Fructose, food.Maltose, food.Lactose, food.Starch];
        double[] published = [water, fat, sucrose, glucose, fructose, maltose, lactose, starch];
        Assert.All(got.Zip(published), pair => Assert.Equal(pair.Second / 100, pair.First, 1e-9));
    }

    // USDA SR26 NDB 16398: carbohydrate 19.56 by difference (100 - 1.81 - 25.09 - 50.39 - 3.15), less fibre 6 and sugars 9.22 leaves 4.34
    // for a measured starch of 4.79.
    [Fact]
    public void A_part_that_does_not_fit_the_carbohydrate_is_cut_and_found()
    {
        var made = FoodMakeups.From(FoodTable.Find("peanut-butter-smooth-no-salt-added").Match!);
        Assert.Equal(0.0434, made.Makeup!.Starch, 1e-9);
        var finding = Assert.Single(made.Findings, finding => finding.Code == "food.carbohydrateOverfull");
        Assert.Equal(
            ("foods/peanut-butter-smooth-no-salt-added.composition.starch", "4.79 g/100 g", "4.34 g/100 g"), (finding.Where, finding.Value, finding.Limit));
    }

    // USDA SR26 NDB 02050 adds up to 65.6 g without the ethanol it does not list; the rest of 100 g.
    [Fact]
    public void Vanilla_extract_keeps_its_alcohol() => Assert.Equal(0.3439, OfTable("vanilla-extract").Ethanol, 1e-12);

    // USDA SR26 NDB 43058 books its sorbitol among the sugars.
    [Fact]
    public void Sorbitol_is_no_sugar()
    {
        var candy = OfTable("hard-candy-sugar-free");
        Assert.Equal(0.93, candy.Polyols, 1e-12);
        Assert.Equal(0, Sugars(candy));
    }

    // Honey names kinds for 79.02 of 82.12 g (3.1 g is galactose); molasses for 54.11 of 74.72 g, and half to three quarters ferment.
    [Fact]
    public void Sugars_without_a_name_go_where_the_family_says()
    {
        Assert.Equal(0.8212, Sugars(OfTable("honey")), 1e-9);
        var molasses = OfTable("molasses");
        Assert.Equal(0.5411, Sugars(molasses), 1e-9);
        Assert.Equal(0.7472 - 0.5411, molasses.Dextrin, 0.0005);
    }

    [Fact]
    public void Suspect_rows_say_so() => Assert.All(FoodTable.All, food => Assert.Equal(
        food.Provenance.Status == "seen-suspect", FoodMakeups.From(food).Findings.Any(finding => finding.Code == "food.suspect")));

    // Insolubles with the share of starch that settles unmashed, worked out by hand from the same composition and cut to 0.01: one unit of
    // the last place. Cocoa powder (0.60 by hand) is left out: it would need r = 0.58, and no reason is known; see docs/science/foods.md.
    // Ground coffee is left out because its shares were fitted to the figure.
    [Theory]
    [InlineData("peanut-flour-defatted", 0.65)]
    [InlineData("almonds", 0.31)]
    [InlineData("coconut-desiccated-unsweetened", 0.21)]
    [InlineData("tahini", 0.29)]
    [InlineData("raspberries-raw", 0.06)]
    [InlineData("mango-raw", 0.02)]
    [InlineData("pumpkin-canned-no-salt", 0.04)]
    [InlineData("dates-semi-dry-variety", 0.08)]
    [InlineData("raisins-seedless", 0.06)]
    [InlineData("sweetened-chocolate-puffed-corn-cereal", 0.47)]
    [InlineData("cinnamon-ground", 0.72)]
    public void Insolubles_with_unmashed_starch_come_to_the_hand_worked_share(string id, double share)
    {
        Assert.Equal(share, OfTable(id).InsolubleUnmashed, 0.01);
    }

    [Fact]
    public void What_the_family_filled_is_listed()
    {
        // NDB 12114 measures neither fibre nor sugars nor starch.
        var assumed = OfTable("coconut-desiccated-toasted").Assumed;
        Assert.All(
            (string[])["fibre", "sugars", "starch", "sugarAlcohols", "kindsOfSugar", "solubleProtein", "insolubleFibre", "insolubleAsh",
             "insolubleOther", "starchIsOpen", "settledHold", "bagHold"],
            what => Assert.Contains(assumed, entry => entry.What == what && entry.Source.Contains("coconut", StringComparison.Ordinal)));
        Assert.DoesNotContain(assumed, entry => entry.What is "moisture" or "ash" or "sodium" or "protein" or "fat");
    }

    [Fact]
    public void Whatever_is_typed_the_masses_add_up_to_one()
    {
        // One in six is unknown.
        var figure = Gen.Double[-20, 100].Select(drawn => drawn < 0 ? (double?)null : drawn);
        var any = Gen.Select(figure, figure, figure, figure, figure, figure, figure, figure);
        Gen.Select(any, Gen.Int[0, FoodFamilies.All.Count - 1]).Sample((figures, index) =>
        {
            var family = FoodFamilies.All[index];
            var (water, protein, fat, ash, carbohydrate, fibre, starch, sugars) = figures;
            var composition = new FoodComposition
            {
                Water = water, Protein = protein, Fat = fat, Ash = ash, Carbohydrate = carbohydrate, Fibre = fibre, Starch = starch, Sugars = sugars,
            };
            var made = FoodMakeups.From(Sheet(family.Id) with { Composition = composition });
            if (made.Makeup is null)
            {
                Assert.True(water is null && carbohydrate is null);
                return;
            }
            Assert.All(Parts(made.Makeup), part => Assert.InRange(part, -1e-12, 1 + 1e-12));
            Assert.Equal(1, Total(made.Makeup), 1e-9);
        }, seed: "0000KTNnC3P2");
    }

    [Fact]
    public void A_composition_goes_before_the_label()
    {
        var label = new LabelPanel { Style = PanelStyle.Us, Serving = G(30), Protein = P(18), Fat = P(3), Carbohydrate = P(6) };
        var sheet = Sheet("nut or seed flour, defatted", label) with { Composition = new FoodComposition { Fat = 9.5 } };
        Assert.Equal(0.095, FoodMakeups.From(sheet).Makeup!.Fat, 1e-12);
    }

    [Fact]
    public void What_the_brewer_states_of_insolubles_and_hold_goes_before_the_family()
    {
        var sheet = Sheet("nut or seed flour, defatted") with
        {
            Composition = FoodTable.Find("peanut-flour-defatted").Match!.Composition,
            Assume = new FoodAssume(new Entered<Fraction>(Fraction.FromPercent(50), "50 %"), 2.0),
        };
        var makeup = FoodMakeups.From(sheet).Makeup!;
        Assert.Equal(0.5, makeup.Insoluble, 1e-12);
        Assert.Equal(2.0, makeup.SettledHold * makeup.InsolubleUnmashed, 1e-12);
        Assert.Equal(2.0, makeup.BagHold * makeup.Insoluble, 1e-12);
        Assert.Equal(1, Total(makeup), 1e-12);
        Assert.Contains(makeup.Assumed, entry => entry is { What: "insolubleShare", Value: "0.5" });
    }

    [Fact]
    public void A_food_of_which_nothing_is_known_is_an_error_not_a_guess()
    {
        var made = FoodMakeups.From(Sheet("berries"));
        Assert.Null(made.Makeup);
        Assert.Contains(made.Findings, finding => finding is { Code: "food.nothingKnown", Severity: Severity.Error });
    }

    [Fact]
    public void An_unknown_family_names_the_nearest()
    {
        var made = FoodMakeups.From(Sheet("beries") with { Composition = new FoodComposition { Water = 85 } });
        var finding = Assert.Single(made.Findings, finding => finding.Code == "food.familyUnknown");
        Assert.Contains("berries", finding.Message, StringComparison.Ordinal);
        Assert.Equal("foods/food.family", finding.Where);
    }

    [Fact]
    public void Each_family_splits_its_sugars_to_one_and_keeps_its_shares_between_nothing_and_all() => Assert.All(FoodFamilies.All, family =>
    {
        Assert.Equal(1, family.SugarSplit.Total, 1e-12);
        Assert.All(
            (double[])[family.SolubleProtein, family.InsolubleFibre, family.InsolubleAsh, family.InsolubleOther, family.StarchShare,
             family.FibreOfCarbohydrate, family.SugarsOfCarbohydrate],
            share => Assert.InRange(share, 0, 1));
        Assert.InRange(family.SettledHold, family.SettledHoldLow, family.SettledHoldHigh);
        Assert.True((family.DoseLow ?? 0) <= (family.DoseHigh ?? 0));
    });
}
