using System.Globalization;
using System.Text;

namespace Gylebook.Science.Foods.Words;

/// <summary>A word of a text, folded for comparison.</summary>
/// <param name="Folded">Lower case, no accents, singular, sulph for sulf.</param>
/// <param name="Position">Where it starts in the text.</param>
/// <param name="StartsSentence">Whether a full stop or a line end lies before it.</param>
/// <param name="StartsItem">Whether anything but a space or a hyphen lies before it: phrases do not reach across.</param>
internal readonly record struct IngredientWord(string Folded, int Position, bool StartsSentence, bool StartsItem);

/// <summary>Cuts a text into folded words; "E 202", "E-202" and "INS 202" become one word, <c>e202</c>.</summary>
internal static class IngredientWords
{
    public static List<IngredientWord> Of(string text)
    {
        List<IngredientWord> words = [];
        int at = 0;
        bool sentence = true;
        bool item = true;
        while (at < text.Length)
        {
            if (!char.IsLetterOrDigit(text[at]))
            {
                // A full stop inside a number or an abbreviation is not an end: it must be followed by a space or nothing.
                sentence |= text[at] is '\n' or ';'
                    || (text[at] is '.' && (at + 1 == text.Length || char.IsWhiteSpace(text[at + 1])));
                item |= !char.IsWhiteSpace(text[at]) && text[at] is not ('-' or '‐' or '‑' or '\'' or '’');
                at++;
                continue;
            }

            int start = at;
            while (at < text.Length && (char.IsLetterOrDigit(text[at]) || IsCombining(text[at])))
            {
                at++;
            }

            Add(words, new(Fold(text[start..at]), start, sentence, item));
            (sentence, item) = (false, false);
        }

        return words;
    }

    private static void Add(List<IngredientWord> words, IngredientWord word)
    {
        bool joins = words.Count > 0
            && !word.StartsItem
            && words[^1].Folded is "e" or "ins"
            && char.IsAsciiDigit(word.Folded[0])
            && !(words.Count > 1 && words[^2].Folded == "vitamin");
        if (joins)
        {
            words[^1] = words[^1] with { Folded = "e" + word.Folded };
            return;
        }

        words.Add(word);
    }

    private static string Fold(string word)
    {
        StringBuilder folded = new(word.Length);
        foreach (char c in word.Normalize(NormalizationForm.FormD))
        {
            if (!IsCombining(c))
            {
                folded.Append(char.ToLowerInvariant(c));
            }
        }

        return Singular(folded.Replace("sulf", "sulph").ToString());
    }

    // Applied to the word list as well as to the text, so it need only be consistent, not good English.
    private static string Singular(string word) => word switch
    {
        _ when word.Length <= 3 => word,
        _ when word.EndsWith("ies", StringComparison.Ordinal) => word[..^3] + "y",
        _ when word.EndsWith("ie", StringComparison.Ordinal) => word[..^2] + "y",
        _ when word.EndsWith("oes", StringComparison.Ordinal) => word[..^2],
        _ when word.EndsWith("shes", StringComparison.Ordinal) || word.EndsWith("ches", StringComparison.Ordinal) => word[..^2],
        _ when word.EndsWith("ss", StringComparison.Ordinal) || word.EndsWith("us", StringComparison.Ordinal) => word,
        _ when word.EndsWith('s') => word[..^1],
        _ => word,
    };

    private static bool IsCombining(char c) => CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.NonSpacingMark;
}
