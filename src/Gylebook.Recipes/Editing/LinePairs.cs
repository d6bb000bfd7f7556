namespace Gylebook.Recipes.Editing;

/// <summary>Finds which line of one draft is which line of another.</summary>
internal static class LinePairs
{
    /// <summary>For each line before, its number after; -1 when it is gone or was moved past others.</summary>
    /// <remarks>
    /// The longest common sequence of lines of the same thing, those that agree in all else preferred: so of two hops of one
    /// name the one that was left alone is the one that is matched.
    /// </remarks>
    public static int[] Of(IReadOnlyList<DraftLine> before, IReadOnlyList<DraftLine> after)
    {
        int[,] best = new int[before.Count + 1, after.Count + 1];
        for (int i = before.Count - 1; i >= 0; i--)
        {
            for (int j = after.Count - 1; j >= 0; j--)
            {
                int apart = Math.Max(best[i + 1, j], best[i, j + 1]);
                int together = Likeness(before[i], after[j]);
                best[i, j] = together > 0 ? Math.Max(apart, together + best[i + 1, j + 1]) : apart;
            }
        }

        int[] pair = new int[before.Count];
        Array.Fill(pair, -1);
        for (int i = 0, j = 0; i < before.Count && j < after.Count;)
        {
            int together = Likeness(before[i], after[j]);
            if (together > 0 && best[i, j] == together + best[i + 1, j + 1])
            {
                pair[i++] = j++;
            }
            else if (best[i, j] == best[i + 1, j])
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        return pair;
    }

    private static int Likeness(DraftLine one, DraftLine other)
    {
        if (one.Kind != other.Kind || !string.Equals(one.Of, other.Of, StringComparison.OrdinalIgnoreCase))
        {
            return 0;
        }

        bool[] same = [one.At == other.At, one.Amount == other.Amount, one.Portion == other.Portion, one with { Number = 0 } == (other with { Number = 0 })];
        return 8 + same.Count(yes => yes);
    }
}
