using System.Text.RegularExpressions;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Editing;

/// <summary>Edits that every form has: a field typed, a part taken out, an item added. Each gives null when it would change nothing.</summary>
public static partial class FieldEdits
{
    /// <summary>Types into a field.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="path">Which field, as in findings: <c>boil.time</c>, <c>ingredients[2].alpha</c>.</param>
    /// <param name="typed">The text, kept as typed; blank to have the field say nothing. A bare number keeps the unit it replaces.</param>
    /// <typeparam name="TDraft">Which sort of draft.</typeparam>
    public static DraftEdit<TDraft>? Put<TDraft>(this TDraft draft, string path, string? typed)
        where TDraft : FileDraft
    {
        Field? field = draft.Form.At(path);
        string? before = draft[path];
        bool clears = string.IsNullOrWhiteSpace(typed);
        string? after = clears ? (field?.IsOptional == true ? null : "") : WithUnitOf(before, typed!.Trim());
        // A file always has a name: it is what the book finds it by.
        bool changesNothing = after == before || (clears && (before is null || path == "name"));
        if (changesNothing)
        {
            return null;
        }

        TDraft changed = draft.With(file => after is null
            ? NodePath.Remove(file, draft.Form.Whole, path)
            : NodePath.Set(file, draft.Form.Whole, path, field?.Value.Typed(after) ?? new TextNode(after)));
        string nothing = field?.Notes.Nothing ?? "nothing";
        return new DraftEdit<TDraft>(changed, $"{FieldWords.Of(draft, path)}: {Said(before, nothing)} → {Said(after, nothing)}");
    }

    /// <summary>Answers a question of yes or no that may be left open; no leaves it out.</summary>
    public static DraftEdit<TDraft>? Flag<TDraft>(this TDraft draft, string path, bool isSo)
        where TDraft : FileDraft => draft.Put(path, isSo ? "true" : draft.Form.At(path)?.IsOptional == true ? null : "false");

    /// <summary>Takes a whole part out: <c>boil</c>, <c>stand</c>, <c>mash.sparge</c>.</summary>
    public static DraftEdit<TDraft>? Drop<TDraft>(this TDraft draft, string path)
        where TDraft : FileDraft => draft.Has(path)
        ? new DraftEdit<TDraft>(draft.With(file => NodePath.Remove(file, draft.Form.Whole, path)), $"{FieldWords.Of(draft, path)}: taken out")
        : null;

    /// <summary>Puts a whole part in, in place of what stands there.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="path">Which part.</param>
    /// <param name="fields">What it says at first; none for an empty one.</param>
    /// <typeparam name="TDraft">Which sort of draft.</typeparam>
    public static DraftEdit<TDraft> AddPart<TDraft>(this TDraft draft, string path, params IReadOnlyList<(string Key, string Text)> fields)
        where TDraft : FileDraft
    {
        ObjectNode part = Part(draft.Form, path, fields);
        return new DraftEdit<TDraft>(draft.With(file => NodePath.Set(file, draft.Form.Whole, path, part)), $"{FieldWords.Of(draft, path)}: added");
    }

    /// <summary>Puts an item behind the others of a list: a rest, a salt, a package.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="list">Which list: <c>mash.rests</c>.</param>
    /// <param name="fields">What the item says.</param>
    /// <typeparam name="TDraft">Which sort of draft.</typeparam>
    public static DraftEdit<TDraft> AddItem<TDraft>(this TDraft draft, string list, params IReadOnlyList<(string Key, string Text)> fields)
        where TDraft : FileDraft
    {
        ObjectNode item = Part(draft.Form, $"{list}[0]", fields);
        return new DraftEdit<TDraft>(draft.WithItems(list, items => items.Add(item)), $"{FieldWords.Of(draft, list)}: one more");
    }

    /// <summary>Takes an item out of a list; a list that may be left out goes with its last one.</summary>
    public static DraftEdit<TDraft> RemoveItem<TDraft>(this TDraft draft, string list, int number)
        where TDraft : FileDraft
    {
        bool goes = draft.CountOf(list) == 1 && draft.Form.At(list)?.IsOptional == true;
        TDraft changed = goes
            ? draft.With(file => NodePath.Remove(file, draft.Form.Whole, list))
            : draft.WithItems(list, items => items.RemoveAt(number));
        return new DraftEdit<TDraft>(changed, Invariant($"{FieldWords.Of(draft, list)}: number {number + 1} taken out"));
    }

    /// <summary>Several edits as one step; null when none of them changes anything.</summary>
    public static DraftEdit<TDraft>? InTurn<TDraft>(this TDraft draft, params IEnumerable<Func<TDraft, DraftEdit<TDraft>?>> edits)
        where TDraft : FileDraft
    {
        DraftEdit<TDraft>? done = null;
        foreach (Func<TDraft, DraftEdit<TDraft>?> make in edits)
        {
            if (make(done?.After ?? draft) is { } edit)
            {
                done = done is null ? edit : edit with { Label = $"{done.Label}; {edit.Label}" };
            }
        }

        return done;
    }

    /// <summary>The draft with its file changed.</summary>
    internal static TDraft With<TDraft>(this TDraft draft, Func<ObjectNode, ObjectNode> change)
        where TDraft : FileDraft => (TDraft)draft.Of(change(draft.File));

    /// <summary>The draft with a list in it changed; an empty one is made where there is none.</summary>
    internal static TDraft WithItems<TDraft>(
        this TDraft draft, string list, Func<System.Collections.Immutable.ImmutableArray<Node>, System.Collections.Immutable.ImmutableArray<Node>> change)
        where TDraft : FileDraft =>
        draft.With(file => NodePath.Change(file, draft.Form.Whole, list, there => (there as ListNode ?? ListNode.Empty).With(change)));

    /// <summary>The draft with some fields said anew, null to take one out.</summary>
    internal static TDraft WithFields<TDraft>(this TDraft draft, params IEnumerable<(string Path, string? Text)> fields)
        where TDraft : FileDraft =>
        draft.With(file => fields.Aggregate(file, (now, field) => field.Text is null
            ? NodePath.Remove(now, draft.Form.Whole, field.Path)
            : NodePath.Set(now, draft.Form.Whole, field.Path, draft.Form.At(field.Path)?.Value.Typed(field.Text) ?? new TextNode(field.Text))));

    private static ObjectNode Part(FileForm form, string path, IReadOnlyList<(string Key, string Text)> fields)
    {
        ObjectNode part = ObjectNode.Empty;
        foreach ((string key, string text) in fields)
        {
            part = NodePath.Put(part, form.PartAt(path), key, form.At($"{path}.{key}")?.Value.Typed(text) ?? new TextNode(text));
        }

        return part;
    }

    /// <summary>"4" typed over "3.6 kg" means 4 kg.</summary>
    private static string WithUnitOf(string? before, string typed) =>
        BareNumber().IsMatch(typed) && before is not null && NumberAndUnit().Match(before) is { Success: true } match
            ? $"{typed}{match.Groups["unit"].Value}"
            : typed;

    private static string Said(string? text, string nothing) =>
        string.IsNullOrEmpty(text) ? nothing : FindingList.Shorten(text);

    [GeneratedRegex(@"^\d+([.,]\d+)?$")]
    private static partial Regex BareNumber();

    [GeneratedRegex(@"^\s*\d+([.,]\d+)?(?<unit>\s*[^\d\s.,].*)$")]
    private static partial Regex NumberAndUnit();
}
