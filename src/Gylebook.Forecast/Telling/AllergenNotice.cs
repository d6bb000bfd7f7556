using Gylebook.Forecast.LayingOut;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Telling;

/// <summary>What must be told of allergens, from everything that goes in: malt, sugar, food, fining.</summary>
internal static class AllergenNotice
{
    /// <summary>The words, each once, and a plain sentence of them. Gylebook informs; the brewer checks the packets.</summary>
    public static AllergenOutlook Of(IReadOnlyList<LaidLine> lines)
    {
        string[] words = [.. lines.SelectMany(WordsOf).Where(w => w.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)];
        string sentence = $"Made with: {string.Join(", ", words)}.";
        return new AllergenOutlook(words, words, sentence, sentence);
    }

    private static IEnumerable<string> WordsOf(LaidLine line) => line switch
    {
        { Malt: Malt malt } => [malt.Cereal],
        { Sugar: Sugar sugar } => [sugar.Allergen],
        { Food: { } food } => food.Allergens,
        { Line.Kind: IngredientKind.Fining } => [line.Line.Of],
        _ => [],
    };
}
