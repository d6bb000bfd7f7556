namespace Gylebook.Recipes.Data;

/// <summary>Keys of files as people say them.</summary>
internal static class KeyWords
{
    /// <summary>The words of a key: <c>sugar alcohols</c> for <c>sugarAlcohols</c>.</summary>
    public static string Of(string key) => string.Concat(key.Select(letter => char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{letter}"));
}
