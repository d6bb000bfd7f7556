using System.Globalization;
using System.Text;

namespace Gylebook.Recipes.Data;

/// <summary>How names are compared when a brewer typed them.</summary>
internal static class Spelling
{
    private static readonly string[] SortWords = ["malt", "hop", "yeast"];

    /// <summary>Lower case, no accents, single spaces for everything that is neither letter nor digit.</summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark || letter is '\'' or '’')
            {
                continue;
            }
            if (char.IsLetterOrDigit(letter))
            {
                plain.Append(char.ToLowerInvariant(letter));
            }
            else if (plain.Length > 0 && plain[^1] != ' ')
            {
                plain.Append(' ');
            }
        }
        return plain.ToString().TrimEnd();
    }

    /// <summary>The same, with words in the singular and without a last word that only names the sort: malt, hop, yeast.</summary>
    public static string Loose(string text)
    {
        var words = Plain(text).Split(' ').Select(Singular).ToList();
        if (words.Count > 1 && SortWords.Contains(words[^1]))
        {
            words.RemoveAt(words.Count - 1);
        }
        return string.Join(' ', words);
    }

    /// <summary>How far a name is from what was asked: 0 is the same, 1 has nothing in common.</summary>
    /// <remarks>
    /// The least number of letters to add, drop, change or swap (optimal string alignment), over the longer length. A name that has
    /// all the words that were asked for comes before any misspelling.
    /// </remarks>
    public static double Away(string asked, string name)
    {
        var words = name.Split(' ');
        if (asked.Length > 0 && asked.Split(' ').All(words.Contains))
        {
            return 0.001 * words.Length;
        }
        return Edits(asked, name) / (double)Math.Max(1, Math.Max(asked.Length, name.Length));
    }

    private static string Singular(string word) => word switch
    {
        _ when word.Length > 4 && word.EndsWith("ies", StringComparison.Ordinal) => word[..^3] + "y",
        _ when word.Length > 3 && word[^1] == 's' && word[^2] != 's' => word[..^1],
        _ => word,
    };

    private static int Edits(string from, string to)
    {
        var cost = new int[from.Length + 1, to.Length + 1];
        for (var i = 0; i <= from.Length; i++)
        {
            for (var j = 0; j <= to.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    cost[i, j] = i + j;
                    continue;
                }
                var change = cost[i - 1, j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
                cost[i, j] = Math.Min(change, 1 + Math.Min(cost[i - 1, j], cost[i, j - 1]));
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                {
                    cost[i, j] = Math.Min(cost[i, j], cost[i - 2, j - 2] + 1);
                }
            }
        }
        return cost[from.Length, to.Length];
    }
}
