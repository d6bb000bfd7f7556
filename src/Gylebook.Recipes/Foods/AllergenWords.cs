using Gylebook.Recipes.Data;

namespace Gylebook.Recipes.Foods;

/// <summary>Finds allergens in an ingredient text by everyday words: <c>data/allergen-words.csv</c>.</summary>
/// <remarks>A word list reads worse than a person. What it finds is to be declared; what it misses is not thereby absent.</remarks>
public static class AllergenWords
{
    private static readonly Lazy<IReadOnlyList<(string[] Words, string Allergen)>> Phrases = new(Read);

    /// <summary>The allergens that a text gives away, each once, in alphabetical order.</summary>
    public static IReadOnlyList<string> In(string? text)
    {
        var words = Lower(text ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var found = new SortedSet<string>(StringComparer.Ordinal);
        var used = new bool[words.Length];
        foreach (var (phrase, allergen) in Phrases.Value)
        {
            for (var start = 0; start + phrase.Length <= words.Length; start++)
            {
                if (!Fits(words, used, start, phrase))
                {
                    continue;
                }
                Array.Fill(used, true, start, phrase.Length);
                if (allergen.Length > 0)
                {
                    found.Add(allergen);
                }
            }
        }
        return [.. found];
    }

    private static bool Fits(string[] words, bool[] used, int start, string[] phrase)
    {
        for (var i = 0; i < phrase.Length; i++)
        {
            var word = words[start + i];
            if (used[start + i] || (word != phrase[i] && word != phrase[i] + "s" && word != phrase[i] + "es"))
            {
                return false;
            }
        }
        return true;
    }

    private static IReadOnlyList<(string[] Words, string Allergen)> Read() =>
        [.. CsvTable.Embedded("allergen-words.csv").Rows
            .Select(row => (Words: row.Required("phrase").Split(' '), Allergen: row.Text("allergen")))
            .OrderByDescending(phrase => phrase.Words.Length)];

    private static string Lower(string text) =>
        string.Create(text.Length, text, static (letters, source) =>
        {
            for (var i = 0; i < source.Length; i++)
            {
                letters[i] = char.IsLetter(source[i]) ? char.ToLowerInvariant(source[i]) : ' ';
            }
        });
}
