using Gylebook.Recipes.Foods;

namespace Gylebook.Recipes.Ingredients;

/// <summary>What people call a thing that a file names by its id.</summary>
public static class SpokenName
{
    /// <summary>The table's name for an id of it; of any other id its words, for an id is a name with dashes; a name as it is.</summary>
    public static string Of(string idOrName)
    {
        ArgumentNullException.ThrowIfNull(idOrName);
        return !IsId(idOrName) ? idOrName : FoodTable.Find(idOrName).Match?.Name ?? Sugars.Find(idOrName).Match?.Name ?? idOrName.Replace('-', ' ');
    }

    private static bool IsId(string text) =>
        text.Contains('-', StringComparison.Ordinal) && text.All(letter => char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) || letter == '-');
}
