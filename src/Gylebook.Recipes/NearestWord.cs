namespace Gylebook.Recipes;

/// <summary>Which known word somebody most likely meant.</summary>
internal static class NearestWord
{
    /// <summary>The known word with the fewest changed, missing, added or swapped letters; null when none is known.</summary>
    internal static string? To(string typed, IEnumerable<string> known) => known.MinBy(word => Distance(typed, word));

    /// <summary>Edit distance with neighbours swapped (optimal string alignment), letter case counting half.</summary>
    internal static double Distance(string typed, string word)
    {
        var rows = new double[typed.Length + 1, word.Length + 1];
        for (var i = 0; i <= typed.Length; i++)
        {
            for (var j = 0; j <= word.Length; j++)
            {
                rows[i, j] = i == 0 || j == 0 ? i + j : Step(typed, word, i, j, rows);
            }
        }

        return rows[typed.Length, word.Length];
    }

    private static double Step(string typed, string word, int i, int j, double[,] rows)
    {
        var best = Math.Min(
            Math.Min(rows[i - 1, j] + 1, rows[i, j - 1] + 1),
            rows[i - 1, j - 1] + Change(typed[i - 1], word[j - 1]));
        return i > 1 && j > 1 && typed[i - 1] == word[j - 2] && typed[i - 2] == word[j - 1]
            ? Math.Min(best, rows[i - 2, j - 2] + 1)
            : best;
    }

    private static double Change(char typed, char meant) => typed == meant ? 0
        : char.ToLowerInvariant(typed) == char.ToLowerInvariant(meant) ? 0.5
        : 1;
}
