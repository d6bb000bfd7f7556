namespace Gylebook.Science.Foods.Words;

/// <summary>A word of an ingredient list that brings something.</summary>
/// <param name="Kind">What it brings.</param>
/// <param name="Word">The phrase of the word list it was recognised as: <c>potassium sorbate</c>, <c>e202</c>.</param>
/// <param name="Position">Where it starts in the text, counted in characters from 0.</param>
/// <param name="MayContainOnly">Whether the text only says that traces may be there.</param>
public readonly record struct IngredientHit(IngredientKind Kind, string Word, int Position, bool MayContainOnly = false);
