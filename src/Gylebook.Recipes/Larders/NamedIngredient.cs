using Gylebook.Recipes.Data;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Larders;

/// <summary>Something that can go into a beer, by the name somebody gave it: of the brewer's own larder, or else of the tables.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Of">What a recipe calls it by.</param>
/// <param name="Name">What people call it.</param>
public sealed record NamedIngredient(IngredientKind Kind, string Of, string Name)
{
    private const string Water = "water";

    /// <summary>The brewer's own sheet of it; null for what the tables have.</summary>
    public LarderSheet? Sheet { get; private init; }

    /// <summary>The one of that name.</summary>
    /// <param name="name">Its name or id, whatever its case.</param>
    /// <param name="kinds">The sorts that are wanted, the likeliest first.</param>
    /// <param name="larder">The brewer's own sheets.</param>
    /// <param name="nearest">What is called nearly so; null for nothing.</param>
    /// <returns>Null where nothing is called so.</returns>
    public static NamedIngredient? Find(string name, IReadOnlyList<IngredientKind> kinds, Larder larder, out string? nearest)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(larder);
        List<string> near = [];
        NamedIngredient? found = kinds.Select(kind => larder.Sheet(kind, name) is { } own ? new NamedIngredient(kind, own.Id, own.Name) { Sheet = own } : null).FirstOrDefault(own => own is not null)
            ?? InTables(name, near).FirstOrDefault(row => row is not null && kinds.Contains(row.Kind));
        nearest = found is null ? NearestWord.To(name, near) : null;
        return found;
    }

    private static IEnumerable<NamedIngredient?> InTables(string name, List<string> near)
    {
        yield return Row(FoodTable.Find(name), food => new(food.Kind, food.Id, food.Name));
        yield return Row(Sugars.Find(name), sugar => new(sugar.Kind, sugar.Id, sugar.Name));
        yield return Row(HopCultivars.Find(name), hop => new(IngredientKind.Hop, hop.Name, hop.Name));
        yield return Row(YeastStyles.Find(name), yeast => new(IngredientKind.Yeast, yeast.Name, yeast.Name));
        yield return Row(Finings.Find(name), fining => new(IngredientKind.Fining, fining.Name, fining.Name));
        yield return string.Equals(name, Water, StringComparison.OrdinalIgnoreCase) ? new(IngredientKind.Water, Water, Water) : null;

        NamedIngredient? Row<T>(Found<T> found, Func<T, NamedIngredient> made)
            where T : class
        {
            near.AddRange(found.Nearest);
            return found.Match is { } match ? made(match) : null;
        }
    }
}
