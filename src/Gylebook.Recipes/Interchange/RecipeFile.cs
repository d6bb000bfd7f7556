using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Interchange;

/// <summary>Recipe files, <c>gylebook-recipe/1</c>: JSON that people write by hand; see <c>docs/guide/files.md</c>.</summary>
/// <remarks>
/// Reading reports everything that is wrong at once and throws for nothing that stands in the file. It checks the form;
/// whether the beer makes sense is for <see cref="RecipeCheck"/>.
/// </remarks>
public static class RecipeFile
{
    /// <summary>What the file's <c>format</c> key says.</summary>
    public const string Format = "gylebook-recipe/1";

    /// <summary>The table of its fields.</summary>
    public static FileForm<Recipe> Form => RecipeForm.File;

    /// <summary>Reads a recipe from the text of a file.</summary>
    public static Reading<Recipe> Read(string text) => Form.Read(text);

    /// <summary>Reads a recipe from an open file; the stream stays open.</summary>
    public static Reading<Recipe> Read(Stream stream) => Form.Read(stream);

    /// <summary>Reads a recipe from UTF-8 bytes.</summary>
    public static Reading<Recipe> Read(ReadOnlyMemory<byte> bytes) => Form.Read(bytes);

    /// <summary>The text of the recipe's file: keys in a fixed order, quantities as they were typed.</summary>
    public static string Write(Recipe recipe) => Form.Write(recipe);
}
