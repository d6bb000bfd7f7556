using System.Text.Json;
using Gylebook.Forecast.Report;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Pictures.Tests;

/// <summary>Real forecasts of the recipes in <c>samples/</c>, on the kit the demo brews with.</summary>
internal static class SampleForecasts
{
    public const string Parted = "apricot-cardamom-wheat.json";

    /// <summary>All that this kit can brew; the others have no run to draw, and a test says which.</summary>
    public static TheoryData<string> Brewable() => [.. Names.Where(n => Of(n).Stages.Count > 0)];

    public static IReadOnlyList<string> Names { get; } =
    [
        .. new[] { "", "edges" }.SelectMany(folder => Directory
            .EnumerateFiles(RepositoryFile.PathOf(Path.Combine("samples", "recipes", folder)), "*.json")
            .Select(path => Path.Combine(folder, Path.GetFileName(path)).Replace('\\', '/')))
            .Order(StringComparer.Ordinal),
    ];

    public static BrewForecast Of(string recipe, string kit = "lantern-shed.json", string? water = null) => Forecaster.Forecast(
        Recipe(recipe), KitFile.Read(Text("kits", kit)).Value!, Flour, "samples",
        water is null ? null : WaterFile.Read(Text("water", water)).Value!);

    public static Recipe Recipe(string name) => RecipeFile.Read(Text("recipes", name)).Value!;

    public static RecipeSheet SheetOf(string recipe, string? water = null, ReaderUnits? units = null) => SheetOf(Recipe(recipe), water, units);

    public static RecipeSheet SheetOf(Recipe recipe, string? water = null, ReaderUnits? units = null) => RecipeSheet.Of(
        recipe, KitFile.Read(Text("kits", "lantern-shed.json")).Value!, Flour, water is null ? null : WaterFile.Read(Text("water", water)).Value!, units);

    private static string Text(string folder, string name) => File.ReadAllText(RepositoryFile.PathOf(Path.Combine("samples", folder, name)));

    /// <summary>The one food sheet beside the recipes, its label read as it stands in the file.</summary>
    private static readonly Larder Flour = new([FlourSheet()]);

    private static FoodSheet FlourSheet()
    {
        using JsonDocument file = JsonDocument.Parse(Text("recipes", "foods/pumpkin-seed-flour.json"));
        JsonElement label = file.RootElement.GetProperty("label");
        Entered<Mass> Mass(string name) =>
            UnitTable.TryParse(label.GetProperty(name).GetString(), out Entered<Mass> mass, out string problem) ? mass : throw new InvalidDataException(problem);
        return new FoodSheet
        {
            Id = "pumpkin-seed-flour",
            Name = file.RootElement.GetProperty("name").GetString()!,
            Family = file.RootElement.GetProperty("family").GetString()!,
            Ingredients = file.RootElement.GetProperty("ingredients").GetString(),
            Label = new LabelPanel
            {
                Style = PanelStyle.Us,
                Serving = Mass("serving"),
                Fat = PrintedMass.Of(Mass("fat")),
                Sodium = PrintedMass.Of(Mass("sodium")),
                Carbohydrate = PrintedMass.Of(Mass("carbohydrate")),
                Fibre = PrintedMass.Of(Mass("fibre")),
                Sugars = PrintedMass.Of(Mass("sugars")),
                Protein = PrintedMass.Of(Mass("protein")),
            },
        };
    }
}
