using System.Globalization;
using System.Text.Json.Nodes;

namespace Gylebook.Recipes.Editing;

/// <summary>Edits of a water plan. Each gives the plan after it; one that would change nothing gives the plan itself.</summary>
public static class WaterEdits
{
    /// <summary>Fields that hold a number without a unit.</summary>
    private static readonly string[] Numbers = ["mashPh", "spargePh", "wortPh", "ph", "weight", "distilledPh", "buffer"];

    /// <summary>Fields a plan cannot do without: emptied, they stay and say so.</summary>
    private static readonly string[] Needed = ["name", "salt", "acid", "ion", "amount", "malt", "food"];

    /// <summary>What belongs to one brew.</summary>
    private static readonly string[] OfOneBrew = ["recipe", "strike", "sparge", "package", "mashReading", "wortReading", "grist"];

    /// <summary>Types into a field.</summary>
    /// <param name="draft">The plan.</param>
    /// <param name="path">Which field, as in findings: <c>sources[0].report.calcium</c>.</param>
    /// <param name="typed">The text, kept as typed; blank to have the field say nothing.</param>
    public static WaterDraft Put(this WaterDraft draft, string path, string? typed)
    {
        if (WaterDraft.WishOf(path) is { } ion)
        {
            return Wish(draft, ion, typed?.Trim() ?? "");
        }

        string text = typed?.Trim() ?? "";
        string key = KeyOf(path);
        if (text == (draft[path] ?? "") || (text.Length == 0 && path == "name"))
        {
            // A plan always has a name: it is what the book finds it by.
            return draft;
        }

        return draft.Changed(file =>
        {
            if (text.Length > 0 || Needed.Contains(key))
            {
                FieldPath.Set(file, path, ValueOf(key, text));
            }
            else
            {
                Empty(file, path);
            }
        });
    }

    /// <summary>Answers a question of yes or no: <c>sources[0].boiled</c>.</summary>
    public static WaterDraft Flag(this WaterDraft draft, string path, bool isSo) => draft.Changed(file =>
    {
        if (isSo)
        {
            FieldPath.Set(file, path, true);
        }
        else
        {
            FieldPath.Remove(file, path);
        }
    });

    /// <summary>Moves what a field says to another one: "SO4" that was "SO4-S".</summary>
    public static WaterDraft Rename(this WaterDraft draft, string path, string to) => draft[path] is not { } text || path == to
        ? draft
        : draft.Changed(file =>
        {
            FieldPath.Set(file, to, text);
            FieldPath.Remove(file, path);
        });

    /// <summary>Puts an item behind the others of a list: a water, a salt, an acid, a wish.</summary>
    /// <param name="draft">The plan.</param>
    /// <param name="list">Which list: <c>salts</c>.</param>
    /// <param name="fields">What the item says.</param>
    public static WaterDraft Add(this WaterDraft draft, string list, params IReadOnlyList<(string Key, string Text)> fields) => draft.Changed(file =>
    {
        JsonObject item = [];
        foreach ((string key, string text) in fields)
        {
            FieldPath.Put(item, key, ValueOf(key, text));
        }

        FileDraft.ListIn(file, list).Add((JsonNode)item);
    });

    /// <summary>Takes an item out of a list; the list goes with its last one.</summary>
    public static WaterDraft RemoveAt(this WaterDraft draft, string list, int item) => draft.Changed(file =>
    {
        JsonArray items = FileDraft.ListIn(file, list);
        items.RemoveAt(item);
        if (items.Count == 0 && list != "sources")
        {
            file.Remove(list);
        }
    });

    /// <summary>Blends in another water, half and half with an only one.</summary>
    public static WaterDraft Blend(this WaterDraft draft)
    {
        bool isOnly = draft.CountOf("sources") == 1;
        WaterDraft shared = isOnly ? draft.Put("sources[0].share", "50 %") : draft;
        WaterDraft blended = shared.Add("sources", ("name", "another water"), ("share", isOnly ? "50 %" : "0 %"));
        return blended.Distil(blended.CountOf("sources") - 1, false);
    }

    /// <summary>Another plan's waters in place of one's own, shares and reports and all.</summary>
    public static WaterDraft TakeSources(this WaterDraft draft, WaterDraft from) => Take(draft, from, "sources");

    /// <summary>Another plan's salts and acids in place of one's own.</summary>
    public static WaterDraft TakeShelf(this WaterDraft draft, WaterDraft from) => Take(Take(draft, from, "salts"), from, "acids");

    /// <summary>The plan without what belongs to one brew: its recipe, litres and grist.</summary>
    public static WaterDraft WithoutBrew(this WaterDraft draft) => draft.Changed(file =>
    {
        foreach (string key in OfOneBrew)
        {
            file.Remove(key);
        }
    });

    /// <summary>Malts with titrations of the brewer's own, in place of what the plan knew of them.</summary>
    /// <param name="draft">The plan.</param>
    /// <param name="malts">Name, pH in distilled water and buffer of each, as the file has them.</param>
    public static WaterDraft Learn(this WaterDraft draft, IReadOnlyList<(string Malt, string DistilledPh, string Buffer)> malts)
    {
        WaterDraft learned = draft;
        for (int known = draft.CountOf("malts") - 1; known >= 0; known--)
        {
            if (malts.Any(malt => string.Equals(malt.Malt, draft[Invariant($"malts[{known}].malt")], StringComparison.OrdinalIgnoreCase)))
            {
                learned = learned.RemoveAt("malts", known);
            }
        }

        return malts.Aggregate(learned, (plan, malt) => plan.Add("malts", ("malt", malt.Malt), ("distilledPh", malt.DistilledPh), ("buffer", malt.Buffer)));
    }

    /// <summary>A water that is distilled, or one with a report.</summary>
    public static WaterDraft Distil(this WaterDraft draft, int source, bool isDistilled) => draft.Changed(file =>
    {
        string path = Invariant($"sources[{source}]");
        if (isDistilled)
        {
            ((JsonObject)FieldPath.Find(file, path)!).Remove("report");
            FieldPath.Remove(file, $"{path}.boiled");
            FieldPath.Remove(file, $"{path}.boiledTo");
            FieldPath.Set(file, $"{path}.distilled", true);
        }
        else
        {
            FieldPath.Remove(file, $"{path}.distilled");
            FieldPath.Set(file, $"{path}.report", new JsonObject());
        }
    });

    /// <summary>Wants that much of an ion; blank to want nothing of one's own of it.</summary>
    private static WaterDraft Wish(WaterDraft draft, string ion, string text) =>
        draft.PlaceOfWish(ion) is not { } place ? text.Length == 0 ? draft : draft.Add("targets", ("ion", ion), ("amount", text))
        : text.Length == 0 ? draft.RemoveAt("targets", place)
        : Put(draft, Invariant($"targets[{place}].amount"), text);

    private static WaterDraft Take(WaterDraft draft, WaterDraft from, string list) => draft.Changed(file =>
    {
        file.Remove(list);
        if (from.Copy()[list] is { } theirs)
        {
            FieldPath.Put(file, list, theirs.DeepClone());
        }
    });

    /// <summary>Takes a field out; a report stays, empty, since it says that the water is no distilled one.</summary>
    private static void Empty(JsonObject file, string path)
    {
        int dot = path.LastIndexOf('.');
        if (dot > 0 && FieldPath.Find(file, path[..dot]) is JsonObject { Count: 1 } parent && path[..dot].EndsWith(".report", StringComparison.Ordinal))
        {
            parent.Clear();
            return;
        }

        FieldPath.Remove(file, path);
    }

    /// <summary>A number as a number, where one is wanted; text that is none stays text, with its finding.</summary>
    private static JsonValue ValueOf(string key, string text) =>
        Numbers.Contains(key) && decimal.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out decimal number)
            ? JsonValue.Create(number)
            : JsonValue.Create(text);

    private static string KeyOf(string path) => path[(path.LastIndexOf('.') + 1)..];
}
