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
    /// The edit distance over the longer length. A name that has all the words that were asked for comes before any misspelling.
    /// </remarks>
    public static double Away(string asked, string name)
    {
        var words = name.Split(' ');
        if (asked.Length > 0 && asked.Split(' ').All(words.Contains))
        {
            return 0.001 * words.Length;
        }
        return NearestWord.Distance(asked, name) / Math.Max(1, Math.Max(asked.Length, name.Length));
    }

    private static string Singular(string word) => word switch
    {
        _ when word.Length > 4 && word.EndsWith("ies", StringComparison.Ordinal) => word[..^3] + "y",
        _ when word.Length > 3 && word[^1] == 's' && word[^2] != 's' => word[..^1],
        _ => word,
    };
}
