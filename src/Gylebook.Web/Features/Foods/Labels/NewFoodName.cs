using System.Globalization;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Store;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>What a food is called until somebody says better, and its id.</summary>
/// <remarks>A recipe calls a food by its id, so the id follows the first name somebody gives and stays from then on.</remarks>
internal static class NewFoodName
{
    private const string Start = "Food of ";
    private const string Otherwise = "food";

    /// <summary>A name and an id for today that no other food has.</summary>
    public static (string Name, string Id) For(DateTimeOffset today, IReadOnlySet<string> taken)
    {
        string name = Start + today.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
        string id = IdOf(name, taken);
        string number = id[FreeId.From(name, Otherwise).Length..].TrimStart('-');
        return (number.Length == 0 ? name : $"{name}, {number}", id);
    }

    /// <summary>That name, and an id for it that no other food has.</summary>
    public static (string Name, string Id) Of(string name, IReadOnlySet<string> taken) => (name, IdOf(name, taken));

    /// <summary>Whether nobody has named it yet.</summary>
    public static bool IsSuggested(FileDraft food) =>
        food.Name.StartsWith(Start, StringComparison.Ordinal) && food["id"]?.StartsWith(FreeId.From(Start, Otherwise), StringComparison.Ordinal) == true;

    /// <summary>An id made of that name which no other food has.</summary>
    public static string IdOf(string name, IReadOnlySet<string> taken) =>
        FreeId.Of(name, Otherwise, id => taken.Contains(id) || FoodTable.All.Any(food => food.Id == id));
}
