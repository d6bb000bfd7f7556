namespace Gylebook.Science.Foods.Words;

/// <summary>Reads an ingredient list for what a brewer must know of.</summary>
/// <remarks>
/// <para>What: whole words and phrases, the longest first; "E 202", "E-202" and "INS 202" are the same. A word followed by
/// "free" brings nothing ("lactose-free milk" is milk without lactose). From "may contain", "traces of" or "equipment also" to
/// the end of that sentence, words are only possible traces.</para>
/// <para>Source: <c>data/ingredient-words.csv</c> and the sources in its head.</para>
/// <para>Valid for: ingredient lists in English.</para>
/// <para>Accuracy: finds words, not molecules. A word that is not found proves nothing: the packet and its maker have the
/// last word on allergens.</para>
/// </remarks>
public static class IngredientText
{
    /// <summary>Everything found, in the order of the text.</summary>
    public static IReadOnlyList<IngredientHit> Read(string text, IngredientLexicon lexicon)
    {
        List<IngredientWord> words = IngredientWords.Of(text);
        List<IngredientHit> hits = [];
        bool tracesOnly = false;
        int at = 0;
        while (at < words.Count)
        {
            tracesOnly = (tracesOnly && !words[at].StartsSentence) || StartsTraces(words, at);
            int length = LongestPhrase(words, at, lexicon, out IngredientPhrase phrase);
            if (length > 0 && !IsFollowedByFree(words, at + length))
            {
                foreach (IngredientKind kind in phrase.Kinds)
                {
                    hits.Add(new(kind, phrase.Text, words[at].Position, tracesOnly));
                }
            }

            at += Math.Max(1, length);
        }

        return hits;
    }

    private static int LongestPhrase(
        List<IngredientWord> words, int at, IngredientLexicon lexicon, out IngredientPhrase phrase)
    {
        int most = 1;
        while (most < lexicon.LongestPhrase && at + most < words.Count && !words[at + most].StartsItem)
        {
            most++;
        }

        for (int length = most; length > 0; length--)
        {
            if (lexicon.TryFind(string.Join(' ', words.Skip(at).Take(length).Select(word => word.Folded)), out phrase))
            {
                return length;
            }
        }

        phrase = default;
        return 0;
    }

    private static bool IsFollowedByFree(List<IngredientWord> words, int at) =>
        at < words.Count && words[at].Folded == "free" && !words[at].StartsItem
        && !(at + 1 < words.Count && words[at + 1].Folded == "range" && !words[at + 1].StartsItem);

    // "May contain nuts", "traces of nuts", "made in a facility that also handles nuts".
    private static bool StartsTraces(List<IngredientWord> words, int at)
    {
        string next = at + 1 < words.Count ? words[at + 1].Folded : string.Empty;
        return words[at].Folded switch
        {
            "may" => next is "contain" or "also",
            "trace" => next is "of",
            "equipment" or "facility" or "factory" or "line" =>
                next is "that" or "which" or "with" or "also" or "used" or "where" or "handling" or "processing",
            _ => false,
        };
    }
}
