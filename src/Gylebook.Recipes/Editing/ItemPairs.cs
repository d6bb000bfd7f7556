using System.Collections.Immutable;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Editing;

/// <summary>Finds which item of one list is which item of another.</summary>
internal static class ItemPairs
{
    /// <summary>What being of the same thing counts, beside one field that is said alike: more than all fields together.</summary>
    private const int OfTheSame = 64;

    /// <summary>For each item before, its number after; -1 when it is gone or was moved past others.</summary>
    /// <remarks>
    /// The longest common sequence of items of the same thing, those that agree in all else preferred: so of two hops of one
    /// name the one that was left alone is the one that is matched.
    /// </remarks>
    public static int[] Of(IListForm list, ListNode first, ListNode second)
    {
        ImmutableArray<Node> before = first.Items;
        ImmutableArray<Node> after = second.Items;
        int same = 0;
        while (same < before.Length && same < after.Length && ReferenceEquals(before[same], after[same]))
        {
            same++;
        }

        int[] pair = new int[before.Length];
        Array.Fill(pair, -1);
        for (int i = 0; i < same; i++)
        {
            pair[i] = i;
        }

        Rest(list, before.AsSpan()[same..], after.AsSpan()[same..], pair.AsSpan(same), same);
        return pair;
    }

    private static void Rest(IListForm list, ReadOnlySpan<Node> before, ReadOnlySpan<Node> after, Span<int> pair, int offset)
    {
        int[,] best = new int[before.Length + 1, after.Length + 1];
        for (int i = before.Length - 1; i >= 0; i--)
        {
            for (int j = after.Length - 1; j >= 0; j--)
            {
                int apart = Math.Max(best[i + 1, j], best[i, j + 1]);
                int together = Likeness(list, before[i], after[j]);
                best[i, j] = together > 0 ? Math.Max(apart, together + best[i + 1, j + 1]) : apart;
            }
        }

        for (int i = 0, j = 0; i < before.Length && j < after.Length;)
        {
            int together = Likeness(list, before[i], after[j]);
            if (together > 0 && best[i, j] == together + best[i + 1, j + 1])
            {
                pair[i++] = offset + j++;
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
    }

    private static int Likeness(IListForm list, Node one, Node other)
    {
        if (ReferenceEquals(one, other))
        {
            return (2 * OfTheSame) - 1;
        }

        if (one is not ObjectNode first || other is not ObjectNode second || !IsOfTheSame(list, first, second))
        {
            return 0;
        }

        int alike = Math.Min(OfTheSame - 2, first.Pairs.Count(pair => Node.Same(pair.Value, second[pair.Key])));
        return OfTheSame + alike + (first.Says(second) ? 1 : 0);
    }

    private static bool IsOfTheSame(IListForm list, ObjectNode one, ObjectNode other)
    {
        foreach (string key in list.MatchedBy)
        {
            (string? first, string? second) = (FileDraft.TextOf(one[key]), FileDraft.TextOf(other[key]));
            if (first is not null || second is not null)
            {
                return string.Equals(first, second, StringComparison.OrdinalIgnoreCase);
            }
        }

        // Neither says what it is of.
        return true;
    }
}
