using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Forecast.Tests.Report;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Tests.Foods;

/// <summary>What a food's own page says of a dose, the forecast of a recipe with that dose says too: every caution, every allergen.</summary>
public sealed class LabelReachesTheGlassTests
{
    /// <summary>The grams a litre that are dosed where nobody tells a usual dose.</summary>
    private const double Usual = 20;

    private static readonly string[] Places = ["mash", "knock-out", "ferment day 3", "package"];

    public static TheoryData<string> Foods => [.. FoodTable.All.Select(food => food.Id)];

    [Theory]
    [MemberData(nameof(Foods))]
    public void Every_caution_and_allergen_of_a_food_of_the_table_is_in_a_recipe_with_it(string id) =>
        Holds(id, SampleFoods.OfTable(id));

    /// <summary>With all that a pack may say, and no table.</summary>
    [Theory]
    [InlineData("Almond butter", "nuts", "Peanuts, salt.", "sesame, milk")]
    [InlineData("Mango purée", "tropical-fruit", "Mango, preservative (potassium sorbate, sodium benzoate, sulphur dioxide).", "mustard")]
    [InlineData("Pesto", "other", "Basil, pine nuts, cheese, nutmeg, xylitol.", "celery, lupin, crustaceans, molluscs")]
    [InlineData("Trail mix", "dried-fruit", "Raisins, macadamia, dark chocolate, soya lecithin.", "egg, fish, wheat")]
    public void And_of_a_sheet(string name, string family, string ingredients, string mayContain) => Holds("own", FoodMakeups.From(new FoodSheet
    {
        Id = "own", Name = name, Family = family, Ingredients = ingredients, MayContain = mayContain,
        Composition = new FoodComposition { Water = 5, Protein = 20, Fat = 40, Carbohydrate = 30, Source = "made up for the test" },
    }));

    private static void Holds(string id, MadeUpFood food)
    {
        foreach (AdditionTime at in Places.Select(SampleFoods.At))
        {
            double grams = FoodFamilies.Of(food.Makeup!.FamilyId).DoseTypical ?? Usual;
            Recipe recipe = Bitters.With(Typed.Line(IngredientKind.Food, id, 20 * grams / 1000, at.Point, at.Count)) with
            {
                Package = new PackageWish(Typed.Litres(20), "bottle", null),
            };
            BrewForecast told = Forecaster.Forecast(recipe, Bitters.AtTheSea, Larder.OfFoods(food.Makeup with { Id = id }), "test");
            double into = told.Number(at.Point >= AdditionPoint.Rack ? "packagedLitres" : "castLitres");
            FoodLabelReport page = FoodLabelReport.Of(
                id, food.Makeup.Name, food, new(Mass.FromGrams(20 * grams), "a dose"), new(VolumeAt20C.FromLitres(into), "a batch"), [at], Bitters.AtTheSea);
            Caution[] missing = [.. page.Places.Single().Cautions.Where(caution => !told.Cautions.Any(c => c.Code == caution.Code && c.Where == caution.Where))];
            Assert.True(missing.Length == 0, $"{id} at {at}: {string.Join(", ", missing.Select(c => $"{c.Code} at {c.Where}"))}");
            Assert.Empty(page.Allergens.Us.Except(told.Allergens.Us));
            Assert.Empty(page.Allergens.Eu.Except(told.Allergens.Eu));
            Assert.Empty(page.Allergens.MayContainUs.Except(told.Allergens.MayContainUs));
            Assert.Empty(page.Allergens.MayContainEu.Except(told.Allergens.MayContainEu));
        }
    }

    [Fact]
    public void A_food_named_after_one_nut_and_made_of_another_is_told_with_both()
    {
        static MadeUpFood Sheet(string name, string? ingredients) => FoodMakeups.From(new FoodSheet
        {
            Id = "butter", Name = name, Family = "nuts", Ingredients = ingredients, Composition = new FoodComposition { Water = 2, Carbohydrate = 20, Fat = 50, Protein = 20 },
        });
        MadeUpFood other = Sheet("Almond butter", "Peanuts, salt.");
        Assert.Contains(other.Findings, f => f is { Code: "food.nameDiffers", Severity: Severity.Warning, Where: "foods/butter.ingredients" });
        AllergenOutlook told = AllergenOutlookOf(other);
        Assert.Contains("Peanuts", told.Us);
        Assert.Contains("Tree nuts (almond butter)", told.Us);
        Assert.All(
            new[] { Sheet("Almond butter", "Almonds (99 %), salt."), Sheet("Almond butter", null), Sheet("Mixed nut butter", "Cashews, hazelnuts."), Sheet("Coconut flakes", "Coconut.") },
            fine => Assert.DoesNotContain(fine.Findings, f => f.Code == "food.nameDiffers"));
    }

    /// <summary>Dogs are harmed by what is in a food, whatever it is called.</summary>
    [Fact]
    public void A_hazard_is_told_by_the_ingredients_and_not_by_the_name_alone()
    {
        FoodMakeup mix = FoodMakeups.From(new FoodSheet
        {
            Id = "mix", Name = "Party mix", Family = "nuts", Ingredients = "Macadamias, raisins.", Composition = new FoodComposition { Water = 5, Carbohydrate = 20 },
        }).Makeup!;
        Recipe recipe = Bitters.With(Typed.Line(IngredientKind.Food, "mix", 0.3, AdditionPoint.Mash));
        Assert.Contains(Forecaster.Forecast(recipe, Bitters.AtTheSea, Larder.OfFoods(mix), "test").Cautions, c => c.Code == "pets.feed");
    }

    private static AllergenOutlook AllergenOutlookOf(MadeUpFood food) => FoodLabelReport.Of("butter", "butter", food, null, null, [], null).Allergens;
}
