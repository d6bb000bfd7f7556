using Gylebook.Recipes.Data;

namespace Gylebook.Recipes.Foods;

/// <summary>What a food holds of stimulants, mg per 100 g; null where it was not read.</summary>
/// <param name="Name">The food's name in the table of foods.</param>
/// <param name="Caffeine">Caffeine.</param>
/// <param name="Theobromine">Theobromine.</param>
public sealed record Stimulant(string Name, double? Caffeine, double? Theobromine);

/// <summary>Caffeine and theobromine of foods: <c>data/foods-stimulants.csv</c>.</summary>
public static class Stimulants
{
    private static readonly Lazy<IReadOnlyList<Stimulant>> Rows = new(() =>
    [
        .. ReferenceData.Table("foods-stimulants.csv").Rows.Select(row =>
            new Stimulant(row.Required("name"), row.NumberOrNull("caffeine_mg"), row.NumberOrNull("theobromine_mg"))),
    ]);

    /// <summary>The row of that food; null when it has none.</summary>
    public static Stimulant? Of(string name) =>
        Rows.Value.FirstOrDefault(row => string.Equals(row.Name, name, StringComparison.OrdinalIgnoreCase));
}
