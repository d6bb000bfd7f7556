using System.Globalization;

namespace Gylebook.Recipes.Ingredients;

/// <summary>Ids of parts that points divide, of which a pattern leaves some open: <c>hop.*.alpha</c>.</summary>
internal static class IdPattern
{
    /// <summary>Whether an id is one of those that a pattern means.</summary>
    public static bool Fits(string pattern, string id)
    {
        string[] parts = pattern.Split('.'), asked = id.Split('.');
        return parts.Length == asked.Length && parts.Zip(asked).All(pair => pair.First == "*" || pair.First == pair.Second);
    }

    /// <summary>The first part that the pattern leaves open, as it is said: <c>pale ale malt</c>; nothing when it leaves none.</summary>
    public static string OpenPart(string pattern, string id)
    {
        int open = Array.IndexOf(pattern.Split('.'), "*");
        return open < 0 ? "" : id.Split('.')[open].Replace('-', ' ');
    }

    /// <summary>The id without the number that a second lot of one thing has.</summary>
    public static string WithoutLot(string id)
    {
        int point = id.LastIndexOf('.');
        return point > 0 && int.TryParse(id.AsSpan(point + 1), NumberStyles.None, CultureInfo.InvariantCulture, out _) ? id[..point] : id;
    }
}
