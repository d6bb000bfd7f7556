using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Interchange;

/// <summary>All forms of file that we read.</summary>
public static class FileForms
{
    /// <summary>Each once.</summary>
    public static IReadOnlyList<FileForm> All { get; } = [RecipeFile.Form, KitFile.Form, WaterFile.Form, ReadingsFile.Form, .. LarderFile.Forms];
}
