namespace Gylebook.Recipes.Editing;

/// <summary>Edits of a hop line that touch several of its fields at once.</summary>
public static class HopEdits
{
    /// <summary>What a store nobody described is taken for: 20 °C, as the recipe check says too.</summary>
    private const string AssumedTemperature = "20 °C";

    /// <summary>Says what kept the air from a hop; an empty word takes back all that was said of its storage.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="line">Which ingredient line.</param>
    /// <param name="pack">As files say it: <c>open</c>, <c>some air</c>, <c>airless</c>.</param>
    public static DraftEdit<RecipeDraft>? Packed(this RecipeDraft draft, int line, string pack)
    {
        string storage = $"{draft.Lines[line].Path}.storage";
        if (pack.Length == 0)
        {
            return draft.Drop(storage) is { } dropped ? dropped with { Label = $"{draft.Lines[line].Name}, storage: unsaid" } : null;
        }

        if (draft.Put($"{storage}.pack", pack) is not { } edit)
        {
            return null;
        }

        return draft[$"{storage}.temperature"] is null
            ? edit with { After = edit.After.WithFields(($"{storage}.temperature", AssumedTemperature)) }
            : edit;
    }

    /// <summary>Puts a hop line to another time, with another amount.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="line">Which ingredient line.</param>
    /// <param name="at">When, as recipes say it.</param>
    /// <param name="amount">How much.</param>
    /// <param name="why">What for, for the log.</param>
    public static DraftEdit<RecipeDraft>? Moved(this RecipeDraft draft, int line, string at, string amount, string why) =>
        Rewritten(draft, line, why, ("at", at), ("amount", amount));

    /// <summary>Puts another hop in a line's place: what was said of the old one's name, assay, age and storage goes with it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="line">Which ingredient line.</param>
    /// <param name="hop">Name of the other hop.</param>
    /// <param name="alpha">Its alpha acids; null for the table's.</param>
    /// <param name="amount">How much.</param>
    /// <param name="why">What for, for the log.</param>
    public static DraftEdit<RecipeDraft>? Swapped(this RecipeDraft draft, int line, string hop, string? alpha, string amount, string why) =>
        Rewritten(draft, line, why, ("hop", hop), ("alpha", alpha), ("amount", amount), ("as", null), ("age", null), ("storage", null));

    private static DraftEdit<RecipeDraft>? Rewritten(RecipeDraft draft, int line, string why, params (string Key, string? Text)[] fields) =>
        LineEdits.Changed(draft, why, fields.Select(field => ($"{draft.Lines[line].Path}.{field.Key}", field.Text)));
}
