using Gylebook.Forecast.LayingOut;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Foods.Words;
using IngredientKind = Gylebook.Recipes.Ingredients.IngredientKind;

namespace Gylebook.Forecast.Telling;

/// <summary>What must be told of allergens, from everything that goes in: malt, sugar, food, fining.</summary>
internal static class AllergenNotice
{
    /// <summary>The lists and the ready statements. Gylebook informs; the brewer checks the packets.</summary>
    public static AllergenOutlook Of(IReadOnlyList<LaidLine> lines) => Of([.. lines.SelectMany(WordsOf)]);

    /// <summary>The same for words that were found already.</summary>
    public static AllergenOutlook Of(IReadOnlyList<IngredientHit> hits)
    {
        AllergenStatement us = Allergens.State(AllergenList.UsNine, hits);
        AllergenStatement eu = Allergens.State(AllergenList.EuFourteen, hits);
        return new AllergenOutlook(us.Contains, eu.Contains, us.Text, eu.Text);
    }

    private static IReadOnlyList<IngredientHit> WordsOf(LaidLine line) => line switch
    {
        { Malt: Malt malt } => IngredientWords.In(malt.Cereal),
        { Sugar: Sugar sugar } => IngredientWords.In(sugar.Allergen),
        { Food: { } food } => food.Words,
        { Line.Kind: IngredientKind.Fining } => IngredientWords.In(line.Line.Of),
        _ => [],
    };
}
