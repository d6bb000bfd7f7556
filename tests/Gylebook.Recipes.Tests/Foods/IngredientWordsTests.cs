using Gylebook.Recipes.Foods;
using Gylebook.Science.Foods.Words;
using static Gylebook.Recipes.Tests.Foods.FoodFixture;

namespace Gylebook.Recipes.Tests.Foods;

public class IngredientWordsTests
{
    // Everyday words and what law counts them as: 21 U.S.C. 321(qq); Regulation (EU) 1169/2011, Annex II.
    [Theory]
    [InlineData("Pumpkin seeds.", "")]
    [InlineData("Sugar, WHEAT flour, palm oil, eggs, skimmed milk", "Wheat,Egg,Milk")]
    [InlineData("buckwheat flour, butternut squash", "")]
    [InlineData("peanut butter, butter", "Peanut,Milk")]
    [InlineData("walnuts; tahini; barley malt syrup", "TreeNut,Sesame,Barley")]
    [InlineData("almond milk", "TreeNut")]
    [InlineData("", "")]
    public void Everyday_words_give_allergens_away(string text, string kinds) =>
        Assert.Equal(kinds, string.Join(',', IngredientWords.In(text).Select(hit => hit.Kind).Distinct()));

    [Fact]
    public void A_sheet_takes_words_from_its_ingredients_and_tells_the_brewer_to_read_the_pack()
    {
        var sheet = Sheet("nuts") with { Composition = new FoodComposition { Water = 5, Fat = 50 }, Ingredients = "Hazelnuts, lactose." };
        var made = FoodMakeups.From(sheet);
        var kinds = made.Makeup!.Words.Select(hit => hit.Kind);
        Assert.Contains(IngredientKind.TreeNut, kinds);
        Assert.Contains(IngredientKind.Milk, kinds);
        Assert.DoesNotContain(made.Makeup.Words, hit => hit.MayContainOnly);
        Assert.Contains(made.Findings, finding => finding.Code == "food.allergensRead");
    }

    [Fact]
    public void What_it_may_contain_is_carried_as_traces_every_sentence_of_it()
    {
        var sheet = Sheet("nuts") with
        {
            Composition = new FoodComposition { Water = 5, Fat = 50 },
            Ingredients = "Pumpkin seeds.",
            MayContain = "Sesame. Also peanuts.",
        };
        var words = FoodMakeups.From(sheet).Makeup!.Words;
        Assert.Equal([IngredientKind.Sesame, IngredientKind.Peanut], words.Select(hit => hit.Kind));
        Assert.All(words, hit => Assert.True(hit.MayContainOnly));
    }

    [Fact]
    public void No_ingredient_list_is_not_no_allergens()
    {
        var made = FoodMakeups.From(Sheet("nuts") with { Composition = new FoodComposition { Water = 5 } });
        Assert.Contains(made.Findings, finding => finding.Message.Contains("unknown, not absent", StringComparison.Ordinal));
    }

    // Major allergens of the US and the EU; what law asks to declare.
    [Theory]
    [InlineData("tahini", "Sesame")]
    [InlineData("peanut-flour-defatted", "Peanut")]
    [InlineData("lactose-monohydrate", "Milk")]
    [InlineData("rolled-oats-dry", "Oats")]
    [InlineData("malted-milk-drink-powder", "Milk,Wheat,Barley")]
    [InlineData("apricots-dried-sulphured", "Sulphite")]
    [InlineData("buckwheat-flour", "")]
    public void Foods_of_the_table_carry_their_allergens(string id, string kinds)
    {
        var words = OfTable(id).Words.Select(hit => hit.Kind).ToHashSet();
        Assert.All(kinds.Split(',', StringSplitOptions.RemoveEmptyEntries), kind => Assert.Contains(Enum.Parse<IngredientKind>(kind), words));
        Assert.Equal(kinds.Length == 0, words.Count == 0);
    }

    [Fact]
    public void Every_allergen_of_the_table_is_a_word_of_the_list() => Assert.All(
        FoodTable.All.SelectMany(food => food.Allergens).Distinct(), word => Assert.NotEmpty(IngredientWords.In(word)));
}
