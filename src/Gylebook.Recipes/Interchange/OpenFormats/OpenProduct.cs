using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Interchange.OpenFormats;

/// <summary>What our own files write where a standard has a maker's number: the kind of line and the name in larder or tables.</summary>
internal static class OpenProduct
{
    private const string Prefix = "gylebook/";

    /// <summary>The number of a line.</summary>
    public static string Write(IngredientKind kind, string of) => $"{Prefix}{FileWords.Kinds.Word(kind)}/{of}";

    /// <summary>What a number of ours says; null for anybody else's.</summary>
    public static (IngredientKind Kind, string Of)? Read(string? number)
    {
        if (number is null || !number.StartsWith(Prefix, StringComparison.Ordinal))
        {
            return null;
        }

        string[] parts = number[Prefix.Length..].Split('/', 2);
        return parts is [var kind, { Length: > 0 } of] && FileWords.Kinds.Value(kind) is { } known && OpenNames.IsName(of) ? (known, of) : null;
    }
}
