using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving;

/// <summary>Names of sheets that hide no row of the tables: a larder is asked before them.</summary>
internal static class SheetNames
{
    private const string From = "from the file";

    /// <summary>An id that is no row's.</summary>
    public static string Free(string id) =>
        Malts.Find(id).Match is not null || HopCultivars.Find(id).Match is not null || YeastStyles.Find(id).Match is not null
        || Sugars.Find(id).Match is not null || Finings.Find(id).Match is not null || FoodTable.Find(id).Match is not null || Liquors.ShelfWords.Salt(id) is not null
            ? $"{id}-from-file"
            : id;

    /// <summary>A name that is no row's.</summary>
    public static string Beside(string name, bool isInTables) => isInTables ? $"{name}, {From}" : name;
}
