using Gylebook.Recipes.Data;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Data;

namespace Gylebook.Recipes.Foods;

/// <summary>A row of the food table.</summary>
/// <param name="Id">Stable id: <c>peanut-flour-defatted</c>.</param>
/// <param name="Name">Generic name: <c>peanut flour, defatted</c>.</param>
/// <param name="Family">Whose habits it borrows.</param>
/// <param name="Composition">What it is made of.</param>
/// <param name="Allergens">Words to declare; a pack may bring more than a generic row can know.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Food(
    string Id, string Name, FoodFamily Family, FoodComposition Composition, IReadOnlyList<string> Allergens, Provenance Provenance)
{
    /// <summary>What sort of line it makes: a food or a spice, by its family.</summary>
    public IngredientKind Kind => Family.IsSpice ? IngredientKind.Spice : IngredientKind.Food;
}

/// <summary>Composition of foods: <c>data/foods.csv</c>.</summary>
public static class FoodTable
{
    private static readonly Lazy<Table<Food>> Rows = new(() => new Table<Food>(ReferenceData.Table("foods.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<Food> All => Rows.Value.All;

    /// <summary>Other names it answers to.</summary>
    public static IReadOnlyList<string> OtherNames(Food food) => Rows.Value.OtherNames(food);

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<Food> Find(string idOrName) => Rows.Value.Find(idOrName);

    private static Food Make(CsvRow row) => new(
        row.Required("id"),
        row.Required("name"),
        FoodFamilies.Of(row.Required("family")),
        new FoodComposition
        {
            Water = row.NumberOrNull("water_g"),
            Protein = row.NumberOrNull("protein_g"),
            Fat = row.NumberOrNull("fat_g"),
            Ash = row.NumberOrNull("ash_g"),
            Carbohydrate = row.NumberOrNull("carb_by_diff_g"),
            Fibre = row.NumberOrNull("fibre_g"),
            Starch = row.NumberOrNull("starch_g"),
            Sugars = row.NumberOrNull("sugars_g"),
            Sucrose = row.NumberOrNull("sucrose_g"),
            Glucose = row.NumberOrNull("glucose_g"),
            Fructose = row.NumberOrNull("fructose_g"),
            Maltose = row.NumberOrNull("maltose_g"),
            Lactose = row.NumberOrNull("lactose_g"),
            Polyols = row.NumberOrNull("polyols_g") ?? FoodMineralTable.PolyolsOf(row.Required("id")),
            Ethanol = row.NumberOrNull("ethanol_g"),
            SodiumMilligrams = row.NumberOrNull("sodium_mg"),
            Acids = FoodAcidTable.Find(row.Required("id")),
            Ph = FoodPhTable.Find(row.Required("id")),
            Source = row.Required("source"),
        }.With(FoodMineralTable.Find(row.Required("id"))),
        row.Words("allergens"),
        Provenance.Of(row));
}
