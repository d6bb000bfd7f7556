using System.Globalization;
using Gylebook.Recipes.Foods;
using Gylebook.Store;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>What a food is called until somebody says better, and its id.</summary>
/// <remarks>A recipe calls a food by its id, so the id follows the first name somebody gives and stays from then on.</remarks>
internal static class NewFoodName
{
    private const string Start = "Food of ";

    /// <summary>A name and an id for today that no other food has.</summary>
    public static async Task<(string Name, string Id)> ForAsync(DateTimeOffset today, Book book)
    {
        string name = Start + today.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
        string id = await FreeIdAsync(name, book);
        string number = id[IdOf(name).Length..].TrimStart('-');
        return (number.Length == 0 ? name : $"{name}, {number}", id);
    }

    /// <summary>Whether nobody has named it yet.</summary>
    public static bool IsSuggested(FoodSheet food) => food.Name.StartsWith(Start, StringComparison.Ordinal) && food.Id.StartsWith(IdOf(Start), StringComparison.Ordinal);

    /// <summary>An id made of that name which no other food has.</summary>
    public static async Task<string> FreeIdAsync(string name, Book book)
    {
        string wanted = IdOf(name);
        string id = wanted;
        for (int n = 2; FoodTable.All.Any(food => food.Id == id) || await book.Foods.FindAsync(id) is not null; n++)
        {
            id = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{n}");
        }

        return id;
    }

    /// <summary>Small letters, digits, and hyphens for all the rest.</summary>
    private static string IdOf(string name)
    {
        char[] letters = [.. FoodSearch.Fold(name).Select(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) ? c : '-')];
        string id = string.Join('-', new string(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
        return id.Length == 0 ? "food" : id;
    }
}
