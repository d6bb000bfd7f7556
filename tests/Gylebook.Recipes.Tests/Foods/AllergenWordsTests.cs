using Gylebook.Recipes.Foods;
using static Gylebook.Recipes.Tests.Foods.FoodFixture;

namespace Gylebook.Recipes.Tests.Foods;

public class AllergenWordsTests
{
    [Theory]
    [InlineData("Pumpkin seeds.", "")]
    [InlineData("Sugar, WHEAT flour, palm oil, eggs, skimmed milk", "egg,milk,wheat")]
    [InlineData("buckwheat flour, cocoa butter, coconut milk, butternut squash", "")]
    [InlineData("peanut butter, butter", "milk,peanut")]
    [InlineData("walnuts; tahini; barley malt syrup; preservative (sulphites)", "barley,sesame,sulphites,walnut")]
    [InlineData("almond milk", "almond")]
    [InlineData("", "")]
    [InlineData(null, "")]
    public void Everyday_words_give_allergens_away(string? text, string allergens) =>
        Assert.Equal(allergens, string.Join(',', AllergenWords.In(text)));

    [Fact]
    public void A_sheet_takes_allergens_from_its_ingredients_and_tells_the_brewer_to_read_the_pack()
    {
        var sheet = Sheet("nuts") with { Composition = new FoodComposition { Water = 5, Fat = 50 }, Ingredients = "Hazelnuts, lactose." };
        var made = FoodMakeups.From(sheet);
        Assert.Equal(["hazelnut", "milk"], made.Makeup!.Allergens);
        Assert.Contains(made.Findings, finding => finding.Code == "food.allergensRead");
    }

    [Fact]
    public void No_ingredient_list_is_not_no_allergens()
    {
        var made = FoodMakeups.From(Sheet("nuts") with { Composition = new FoodComposition { Water = 5 } });
        Assert.Contains(made.Findings, finding => finding.Message.Contains("unknown, not absent", StringComparison.Ordinal));
    }

    // Major allergens of the US and the EU; what law asks to declare.
    [Theory]
    [InlineData("tahini", "sesame")]
    [InlineData("peanut-flour-defatted", "peanut")]
    [InlineData("lactose-monohydrate", "milk")]
    [InlineData("rolled-oats-dry", "oats")]
    [InlineData("malted-milk-drink-powder", "milk,wheat,barley")]
    [InlineData("apricots-dried-sulphured", "sulphites")]
    [InlineData("coconut-milk-canned", "")]
    [InlineData("buckwheat-flour", "")]
    public void Foods_of_the_table_carry_their_allergens(string id, string allergens) =>
        Assert.Equal(allergens, string.Join(',', FoodTable.Find(id).Match!.Allergens));
}
