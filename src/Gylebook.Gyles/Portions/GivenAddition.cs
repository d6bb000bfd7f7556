using System.Text.Json.Nodes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Gyles.Portions;

/// <summary>Something that hands put into the fermenter and the plan did not have.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Of">What a recipe calls it by.</param>
/// <param name="Amount">How much, as it was typed.</param>
public sealed record GivenAddition(IngredientKind Kind, string Of, string Amount)
{
    /// <summary>Sorts of things that go into beer after the pitch.</summary>
    public static IReadOnlyList<IngredientKind> Kinds { get; } = [IngredientKind.Food, IngredientKind.Spice, IngredientKind.Sugar, IngredientKind.Extract, IngredientKind.Hop, IngredientKind.Yeast, IngredientKind.Water];

    /// <summary>The brewer's own sheet of it, as a file, as it was that day; null for what the tables have.</summary>
    public string? Sheet { get; init; }

    /// <summary>As the log keeps it.</summary>
    public string Write()
    {
        JsonObject detail = new() { ["kind"] = Word(Kind), ["of"] = Of, ["amount"] = Amount };
        if (Sheet is not null)
        {
            detail["sheet"] = Sheet;
        }

        return detail.ToJsonString(DetailText.Plain);
    }

    /// <summary>Of an entry of the log; null where it cannot be read.</summary>
    public static GivenAddition? Read(string? detail) =>
        DetailText.Parsed(detail) is { } node && (string?)node["of"] is { } of && (string?)node["amount"] is { } amount && Kinds.Where(kind => Word(kind) == (string?)node["kind"]).ToArray() is [var kind]
            ? new(kind, of, amount) { Sheet = (string?)node["sheet"] } : null;

    private static string Word(IngredientKind kind) => kind.ToString().ToLowerInvariant();
}
