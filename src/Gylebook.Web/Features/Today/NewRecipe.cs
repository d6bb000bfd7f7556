using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;

namespace Gylebook.Web.Features.Today;

/// <summary>The document of a new recipe: an empty sheet.</summary>
public static class NewRecipe
{
    /// <summary>Its document, with the stages of that kit.</summary>
    public static string DocumentFor(Kit kit, string name = "New recipe") => RecipeFile.Write(BlankRecipe.For(kit, name));
}
