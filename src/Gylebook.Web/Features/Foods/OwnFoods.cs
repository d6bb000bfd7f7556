using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;

namespace Gylebook.Web.Features.Foods;

/// <summary>Food sheets of the book, made up for the balance; a forecast asks them before the tables.</summary>
public sealed class OwnFoods
{
    private readonly Dictionary<string, FoodMakeup> _makeups;

    private OwnFoods(Dictionary<string, FoodMakeup> makeups, IReadOnlyList<(string Id, string Name)> names) => (_makeups, Names) = (makeups, names);

    /// <summary>What they are called, in the order of the book.</summary>
    public IReadOnlyList<(string Id, string Name)> Names { get; }

    /// <summary>All that stand in the book and can be read; the one last changed, should two claim an id.</summary>
    public static async Task<OwnFoods> OfAsync(Book book, CancellationToken cancellation = default)
    {
        List<(FoodSheet Food, DateTimeOffset Updated)> foods = [];
        foreach (Sheet sheet in await book.Foods.ListAsync(cancellation: cancellation))
        {
            if (FoodFile.Read(sheet.Document).Value is { } food)
            {
                foods.Add((food, sheet.Updated));
            }
        }

        Dictionary<string, FoodMakeup> makeups = new(StringComparer.OrdinalIgnoreCase);
        foreach ((FoodSheet food, _) in foods.OrderBy(f => f.Updated))
        {
            if (FoodMakeups.From(food).Makeup is { } makeup)
            {
                makeups[food.Id] = makeup;
            }
        }

        return new OwnFoods(makeups, [.. foods.Select(f => (f.Food.Id, f.Food.Name))]);
    }

    /// <summary>The food of that id; null when the book has no sheet of it.</summary>
    public FoodMakeup? Find(string id) => _makeups.GetValueOrDefault(id);
}
