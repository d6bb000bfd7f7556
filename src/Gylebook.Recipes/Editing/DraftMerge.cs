using System.Text.Json.Nodes;

namespace Gylebook.Recipes.Editing;

/// <summary>One thing you changed, and what they made of the same.</summary>
/// <param name="Yours">Your change.</param>
/// <param name="Theirs">What they say there; null when they left it alone, so that both can be had.</param>
public sealed record MergeChoice(DraftChange Yours, string? Theirs)
{
    /// <summary>Whether somebody has to choose.</summary>
    public required bool IsConflict { get; init; }
}

/// <summary>Two edits of the same draft, made apart: what each changed, and one text out of both.</summary>
public sealed class DraftMerge
{
    private readonly RecipeDraft _basis;
    private readonly RecipeDraft _theirs;

    private DraftMerge(RecipeDraft basis, RecipeDraft theirs, IReadOnlyList<MergeChoice> choices)
    {
        _basis = basis;
        _theirs = theirs;
        Choices = choices;
    }

    /// <summary>All that you changed and they did not change alike.</summary>
    public IReadOnlyList<MergeChoice> Choices { get; }

    /// <summary>Whether both changed the same field, or one took out a line the other changed.</summary>
    public bool HasConflicts => Choices.Any(c => c.IsConflict);

    /// <summary>Compares both with what both had seen.</summary>
    public static DraftMerge Of(RecipeDraft basis, RecipeDraft theirs, RecipeDraft yours)
    {
        IReadOnlyList<DraftChange> they = DraftComparison.Between(basis, theirs);
        List<MergeChoice> choices = [];
        foreach (DraftChange change in DraftComparison.Between(basis, yours).Select(c => AsWide(c, they, basis, yours)).Where(c => !they.Any(c.IsSameAs)))
        {
            DraftChange? against = they.FirstOrDefault(change.Touches);
            // Two lines alike are two lines: only a list that was widened twice is one change.
            if (!change.IsNewLine && choices.Any(c => c.Yours.IsSameAs(change)))
            {
                continue;
            }

            choices.Add(new MergeChoice(change, against is null ? null : against.After ?? "taken out") { IsConflict = against is not null });
        }

        return new DraftMerge(basis, theirs, choices);
    }

    /// <summary>A change within a list that they replaced is a change of the whole list: its items may be gone.</summary>
    private static DraftChange AsWide(DraftChange change, IReadOnlyList<DraftChange> they, RecipeDraft basis, RecipeDraft yours)
    {
        DraftChange? wider = change.Line is null
            ? they.FirstOrDefault(t => t.Line is null && t.Path.Length < change.Path.Length && change.Touches(t))
            : null;
        return wider is null ? change : DraftComparison.OfField(wider.Path, basis, yours);
    }

    /// <summary>Their text with the chosen of your changes made on it.</summary>
    /// <param name="isYours">Whether your side is taken, for each of <see cref="Choices"/>.</param>
    public RecipeDraft With(Func<int, bool> isYours)
    {
        int[] pair = LinePairs.Of(_basis.Lines, _theirs.Lines);
        JsonObject[] originals = [.. RecipeDraft.LinesIn(_basis.Copy())];
        return _theirs.Changed(file =>
        {
            // Nodes, not numbers: a line that comes or goes does not move the others.
            JsonObject[] there = [.. RecipeDraft.LinesIn(file)];
            JsonObject?[] nodes = [.. pair.Select(place => place < 0 ? null : there[place])];
            Dictionary<int, JsonNode> newest = [];
            for (int i = 0; i < Choices.Count; i++)
            {
                if (isYours(i))
                {
                    Make(Choices[i].Yours, file, nodes, originals, newest);
                }
            }
        });
    }

    private static void Make(
        DraftChange change, JsonObject file, JsonObject?[] nodes, JsonObject[] originals, Dictionary<int, JsonNode> newest)
    {
        JsonArray lines = FileDraft.ListIn(file, "ingredients");
        if (change.Line is not int number)
        {
            PutField(file, change);
        }
        else if (change.IsNewLine)
        {
            JsonNode added = change.Node!.DeepClone();
            lines.Insert(newest.TryGetValue(number, out JsonNode? last) ? lines.IndexOf(last) + 1 : PlaceBehind(lines, nodes, number), added);
            newest[number] = added;
        }
        else if (change.Path.Length == 0)
        {
            if (nodes[number] is { } gone)
            {
                lines.Remove(gone);
                nodes[number] = null;
            }
        }
        else
        {
            if (nodes[number] is not { } line)
            {
                // They took the line out and you still work on it: it comes back.
                line = (JsonObject)originals[number].DeepClone();
                lines.Insert(PlaceBehind(lines, nodes, number - 1), line);
                nodes[number] = line;
            }

            PutKey(line, change);
        }
    }

    private static int PlaceBehind(JsonArray lines, JsonObject?[] nodes, int number)
    {
        for (; number >= 0; number--)
        {
            if (nodes[number] is { } above)
            {
                return lines.IndexOf(above) + 1;
            }
        }

        return 0;
    }

    private static void PutKey(JsonObject line, DraftChange change)
    {
        if (change.Node is null)
        {
            line.Remove(change.Path);
        }
        else
        {
            FieldPath.Put(line, change.Path, change.Node.DeepClone());
        }
    }

    private static void PutField(JsonObject file, DraftChange change)
    {
        if (change.Node is null)
        {
            FieldPath.Remove(file, change.Path);
        }
        else if (change.Path.EndsWith(']'))
        {
            int open = change.Path.LastIndexOf('[');
            var list = (JsonArray)FieldPath.Find(file, change.Path[..open])!;
            list[int.Parse(change.Path[(open + 1)..^1], System.Globalization.CultureInfo.InvariantCulture)] = change.Node.DeepClone();
        }
        else
        {
            FieldPath.Set(file, change.Path, change.Node.DeepClone());
        }
    }
}
