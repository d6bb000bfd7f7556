using System.Collections.Frozen;

namespace Gylebook.Science.Foods.Words;

/// <summary>The word list that ingredient texts are read with: <c>data/ingredient-words.csv</c>.</summary>
public sealed class IngredientLexicon
{
    private readonly FrozenDictionary<string, IngredientPhrase> _phrases;

    private IngredientLexicon(Dictionary<string, IngredientPhrase> phrases)
    {
        _phrases = phrases.ToFrozenDictionary(StringComparer.Ordinal);
        LongestPhrase = phrases.Count == 0 ? 0 : phrases.Keys.Max(phrase => phrase.Count(c => c == ' ') + 1);
    }

    /// <summary>How many phrases it has.</summary>
    public int Count => _phrases.Count;

    /// <summary>Words in its longest phrase.</summary>
    public int LongestPhrase { get; }

    /// <summary>Reads the word list, line by line as in the file.</summary>
    /// <exception cref="FormatException">A line is not "phrase,kinds", a kind is unknown, or a phrase comes twice.</exception>
    public static IngredientLexicon Parse(IEnumerable<string> lines)
    {
        Dictionary<string, IngredientPhrase> phrases = new(StringComparer.Ordinal);
        int number = 0;
        foreach (string line in lines)
        {
            number++;
            if (line.Length == 0 || line[0] == '#' || line == "phrase,kinds")
            {
                continue;
            }

            string[] cells = line.Split(',');
            if (cells.Length != 2 || cells[0].Length == 0 || cells[1].Length == 0)
            {
                throw new FormatException(Invariant($"Line {number} of the word list is not 'phrase,kinds': {line}"));
            }

            // Folded like the text it will meet, so that both spellings find it.
            string phrase = string.Join(' ', IngredientWords.Of(cells[0]).Select(word => word.Folded));
            IngredientKind[] brought = cells[1] == "-" ? [] : [.. cells[1].Split(';').Select(name => Kind(name, number))];
            if (!phrases.TryAdd(phrase, new(cells[0], brought)))
            {
                throw new FormatException(Invariant($"Line {number} of the word list repeats '{phrase}'."));
            }
        }

        return new(phrases);
    }

    /// <summary>The entry of a folded phrase.</summary>
    internal bool TryFind(string folded, out IngredientPhrase phrase) => _phrases.TryGetValue(folded, out phrase);

    private static IngredientKind Kind(string name, int number) =>
        Enum.TryParse(name, out IngredientKind kind) && Enum.IsDefined(kind)
            ? kind
            : throw new FormatException(Invariant($"Line {number} of the word list has an unknown kind '{name}'."));
}

/// <summary>An entry of the word list.</summary>
/// <param name="Text">The phrase as written there.</param>
/// <param name="Kinds">What it brings; empty when it is known to bring nothing.</param>
internal readonly record struct IngredientPhrase(string Text, IReadOnlyList<IngredientKind> Kinds);
