namespace Gylebook.Gyles.BrewDay;

/// <summary>What plans call a line of the recipe among all that goes in: <c>line-3</c> is the third.</summary>
public static class ItemKey
{
    private const string Line = "line-";

    /// <summary>The key of a line.</summary>
    /// <param name="number">Its number, from 0.</param>
    public static string OfLine(int number) => Invariant($"{Line}{number + 1}");

    /// <summary>Whether it is a line of the recipe, and no dose of the water plan.</summary>
    public static bool IsLine(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.StartsWith(Line, StringComparison.Ordinal);
    }
}
