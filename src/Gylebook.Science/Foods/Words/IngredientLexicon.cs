using System.Collections.Frozen;
using Gylebook.Science.Data;

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

    /// <summary>Words in its longest phrase.</summary>
    public int LongestPhrase { get; }

    /// <summary>Reads the word list: a phrase a row, and the kinds it brings, or "-" for none.</summary>
    /// <exception cref="InvalidDataException">A field is empty, a kind is unknown, or a phrase comes twice.</exception>
    public static IngredientLexicon Of(CsvTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        Dictionary<string, IngredientPhrase> phrases = new(StringComparer.Ordinal);
        foreach (CsvRow row in table.Rows)
        {
            string written = row.Required("phrase");

            // Folded like the text it will meet, so that both spellings find it.
            string phrase = string.Join(' ', IngredientWords.Of(written).Select(word => word.Folded));
            IngredientKind[] brought = row.Required("kinds") == "-" ? [] : [.. row.Words("kinds").Select(name => Kind(name, row))];
            if (!phrases.TryAdd(phrase, new(written, brought)))
            {
                throw row.Wrong("phrase", $"repeats '{phrase}'");
            }
        }

        return new(phrases);
    }

    /// <summary>The entry of a folded phrase.</summary>
    internal bool TryFind(string folded, out IngredientPhrase phrase) => _phrases.TryGetValue(folded, out phrase);

    private static IngredientKind Kind(string name, CsvRow row) =>
        Enum.TryParse(name, out IngredientKind kind) && Enum.IsDefined(kind)
            ? kind
            : throw row.Wrong("kinds", $"is an unknown kind: {name}");
}

/// <summary>An entry of the word list.</summary>
/// <param name="Text">The phrase as written there.</param>
/// <param name="Kinds">What it brings; empty when it is known to bring nothing.</param>
internal readonly record struct IngredientPhrase(string Text, IReadOnlyList<IngredientKind> Kinds);
