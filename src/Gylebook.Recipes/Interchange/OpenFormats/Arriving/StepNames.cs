namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving;

/// <summary>Names of steps, for which rests of ours have no place.</summary>
internal static class StepNames
{
    private static readonly string[] Ours = ["Boil", "Stand", "Rack", "Heat to the boil"];

    /// <summary>Tells of all that somebody else gave.</summary>
    public static void Leave(TravelList travels, string path, IEnumerable<string?> names)
    {
        string[] theirs = [.. names.OfType<string>().Where(name => name.Length > 0 && !Ours.Contains(name) && !name.StartsWith("Rest ", StringComparison.Ordinal)).Select(FindingList.Shorten)];
        if (theirs.Length > 0)
        {
            travels.Leave(path, $"names of steps, {string.Join(", ", theirs.Take(10))}: rests have no names here");
        }
    }
}
