using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Editing;

/// <summary>Edits of whole ingredient lines.</summary>
public static class LineEdits
{
    private const string Lines = "ingredients";

    /// <summary>Adds a line behind all others of its time, so that it appears where the brewer is looking.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="kind">What sort of thing.</param>
    /// <param name="of">Id or name.</param>
    /// <param name="amount">How much, as typed.</param>
    /// <param name="at">When.</param>
    public static DraftEdit<RecipeDraft> Add(this RecipeDraft draft, IngredientKind kind, string of, string amount, AdditionTime at)
    {
        string? form = kind switch { IngredientKind.Yeast => "dry", IngredientKind.Hop => "pellet", _ => null };
        ObjectNode line = Node.Object(
            new (string Key, string? Text)[] { (FileWords.Kinds.Word(kind), of), ("form", form), ("amount", amount), ("at", AdditionTimeText.Write(at)) }
                .Where(pair => pair.Text is not null)
                .Select(pair => (pair.Key, (Node)new TextNode(pair.Text!))));
        DraftLine? before = draft.Lines.LastOrDefault(other => other.Time.Point == at.Point);
        int place = before is null ? draft.Lines.Count : before.Number + 1;
        return new DraftEdit<RecipeDraft>(draft.WithItems(Lines, lines => lines.Insert(place, line)), $"{of}: added, {amount}");
    }

    /// <summary>Takes a line out.</summary>
    public static DraftEdit<RecipeDraft> Remove(this RecipeDraft draft, int line) =>
        new(draft.WithItems(Lines, lines => lines.RemoveAt(line)), $"{draft.Lines[line].Name}: taken out");

    /// <summary>Puts a copy of a line behind it.</summary>
    public static DraftEdit<RecipeDraft> Duplicate(this RecipeDraft draft, int line) =>
        new(draft.WithItems(Lines, lines => lines.Insert(line + 1, lines[line])), $"{draft.Lines[line].Name}: once more");

    /// <summary>Moves a line to another place; null when it is there already.</summary>
    public static DraftEdit<RecipeDraft>? Move(this RecipeDraft draft, int from, int to) => from == to
        ? null
        : new DraftEdit<RecipeDraft>(draft.WithItems(Lines, lines => lines.RemoveAt(from).Insert(to, lines[from])), $"{draft.Lines[from].Name}: moved {(to < from ? "up" : "down")}");

    /// <summary>Changes several amounts at once: what a solver found.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="amounts">Texts by number of the line.</param>
    /// <param name="why">What for: <c>grist for 1.050</c>.</param>
    public static DraftEdit<RecipeDraft>? Amounts(this RecipeDraft draft, IReadOnlyDictionary<int, string> amounts, string why) =>
        Changed(draft, why, amounts.Select(amount => (Invariant($"{Lines}[{amount.Key}].amount"), (string?)amount.Value)));

    /// <summary>The draft with some fields said anew, as one step; null when that changes nothing.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="why">What for, for the log.</param>
    /// <param name="fields">Which fields, and their texts; null takes one out.</param>
    public static DraftEdit<RecipeDraft>? Changed(this RecipeDraft draft, string why, IEnumerable<(string Path, string? Text)> fields)
    {
        RecipeDraft changed = draft.WithFields(fields);
        return changed.Says(draft) ? null : new DraftEdit<RecipeDraft>(changed, why);
    }
}
