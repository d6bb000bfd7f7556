using Gylebook.Recipes.Data;
using Gylebook.Science.Foods.Words;

namespace Gylebook.Recipes.Foods;

/// <summary>Reads ingredient lists with our own word list: <c>data/ingredient-words.csv</c>.</summary>
/// <remarks>A word list reads worse than a person. What it finds is to be declared; what it misses is not thereby absent.</remarks>
public static class IngredientWords
{
    private static readonly Lazy<IngredientLexicon> List = new(() => IngredientLexicon.Of(ReferenceData.Table("ingredient-words.csv")));

    /// <summary>The words of a text that matter, in order.</summary>
    public static IReadOnlyList<IngredientHit> In(string text) => IngredientText.Read(text, List.Value);

    /// <summary>The words of a "may contain" line: possible traces, all of them.</summary>
    public static IReadOnlyList<IngredientHit> InTraces(string text) => [.. In(text).Select(hit => hit with { MayContainOnly = true })];
}
