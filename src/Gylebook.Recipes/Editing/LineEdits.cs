using System.Text.Json.Nodes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Editing;

/// <summary>Edits of whole lines.</summary>
public static class LineEdits
{
    /// <summary>Adds a line behind all others of its time, so that it appears where the brewer is looking.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="kind">What sort of thing.</param>
    /// <param name="of">Id or name.</param>
    /// <param name="amount">How much, as typed.</param>
    /// <param name="at">When.</param>
    public static RecipeEdit Add(this RecipeDraft draft, IngredientKind kind, string of, string amount, AdditionTime at)
    {
        JsonObject line = [];
        FieldPath.Put(line, FileWords.Kinds.Word(kind), of);
        if (kind is IngredientKind.Yeast)
        {
            FieldPath.Put(line, "form", "dry");
        }
        else if (kind is IngredientKind.Hop)
        {
            FieldPath.Put(line, "form", "pellet");
        }

        FieldPath.Put(line, "amount", amount);
        FieldPath.Put(line, "at", AdditionTimeText.Write(at));
        DraftLine? before = draft.Lines.LastOrDefault(other => other.Time.Point == at.Point);
        int place = before is null ? draft.Lines.Count : before.Number + 1;
        return new RecipeEdit(draft.Changed(file => Lines(file).Insert(place, line)), $"{of}: added, {amount}");
    }

    /// <summary>Takes a line out.</summary>
    public static RecipeEdit Remove(this RecipeDraft draft, int line) =>
        new(draft.Changed(file => Lines(file).RemoveAt(line)), $"{draft.Lines[line].Name}: taken out");

    /// <summary>Puts a copy of a line behind it.</summary>
    public static RecipeEdit Duplicate(this RecipeDraft draft, int line) =>
        new(draft.Changed(file => Lines(file).Insert(line + 1, Lines(file)[line]!.DeepClone())), $"{draft.Lines[line].Name}: once more");

    /// <summary>Moves a line to another place; null when it is there already.</summary>
    public static RecipeEdit? Move(this RecipeDraft draft, int from, int to)
    {
        if (from == to)
        {
            return null;
        }

        RecipeDraft changed = draft.Changed(file =>
        {
            JsonArray lines = Lines(file);
            JsonNode? moved = lines[from];
            lines.RemoveAt(from);
            lines.Insert(to, moved);
        });
        return new RecipeEdit(changed, $"{draft.Lines[from].Name}: moved {(to < from ? "up" : "down")}");
    }

    private static JsonArray Lines(JsonObject file) => FileDraft.ListIn(file, "ingredients");
}
