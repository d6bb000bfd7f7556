using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Site.Leaves;
using Gylebook.Site.Publications;
using Gylebook.Tests.Shared;

namespace Gylebook.Site.Tests;

/// <summary>Samples as they would be given out.</summary>
internal static class Given
{
    public static readonly DateOnly Day = new(2027, 3, 1);

    public static string[] Samples { get; } = ["hedgerow-brown", "plain-bitter", "chestnut-mild", "apricot-cardamom-wheat"];

    private static Larder Foods { get; } = new(Directory.EnumerateFiles(RepositoryFile.PathOf("samples/recipes/foods"), "*.json").Order(StringComparer.Ordinal)
        .Select(file => FoodFile.Read(File.ReadAllBytes(file)).Value).OfType<LarderSheet>());

    public static Publication Of(string sample, Func<Recipe, Recipe>? change = null, Larder? larder = null, string? water = null, Func<Kit, Kit>? kit = null)
    {
        Recipe recipe = RecipeFile.Read(Text($"samples/recipes/{sample}.json")).Value!;
        Kit onKit = KitFile.Read(Text("samples/kits/lantern-shed.json")).Value!;
        GyleInputs inputs = new(change?.Invoke(recipe) ?? recipe, kit?.Invoke(onKit) ?? onKit, larder ?? Foods, water is null ? null : WaterFile.Read(water).Value);
        return new Publication
        {
            Name = inputs.Recipe.Name, Slug = sample, Version = 3, Day = Day, By = "Lantern Shed", Files = PublicFiles.Of(inputs, water),
        };
    }

    public static Leaf Leaf(string sample, Func<Recipe, Recipe>? change = null) => Assert.IsType<Leaf>(Leaves.Leaf.Of(Of(sample, change)).Leaf);

    public static string Text(string path) => File.ReadAllText(RepositoryFile.PathOf(path));
}
