using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Interchange.OpenFormats;

/// <summary>What our tables call a thing.</summary>
internal static class TableNames
{
    /// <summary>The name of what a line of that kind names; null when the tables have none such.</summary>
    public static string? Of(IngredientKind kind, string of) => kind switch
    {
        IngredientKind.Malt => Malts.Find(of).Match?.Name,
        IngredientKind.Extract or IngredientKind.Sugar => Sugars.Find(of).Match?.Name,
        IngredientKind.Food or IngredientKind.Spice => FoodTable.Find(of).Match?.Name ?? Sugars.Find(of).Match?.Name,
        IngredientKind.Hop => HopCultivars.Find(of).Match?.Name,
        IngredientKind.Yeast => YeastStyles.Find(of).Match?.Name,
        IngredientKind.Fining => Finings.Find(of).Match?.Name,
        IngredientKind.Salt => Liquors.ShelfWords.Salt(of)?.Name,
        IngredientKind.Acid => Liquors.ShelfWords.Sold(of)?.Name,
        _ => null,
    };
}
