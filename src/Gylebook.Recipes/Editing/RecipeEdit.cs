namespace Gylebook.Recipes.Editing;

/// <summary>An edit: what the recipe says after it, and what was done, in plain words.</summary>
/// <param name="After">The draft after the edit.</param>
/// <param name="Label">For the log and the undo button: <c>pale ale malt: 3.6 kg → 4 kg</c>.</param>
public sealed record RecipeEdit(RecipeDraft After, string Label);
