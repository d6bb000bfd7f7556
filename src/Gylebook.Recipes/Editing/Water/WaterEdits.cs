using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Editing;

/// <summary>Edits that only a water plan has.</summary>
public static class WaterEdits
{
    /// <summary>What belongs to one brew.</summary>
    private static readonly string[] OfOneBrew = ["recipe", "strike", "sparge", "package", "mashReading", "wortReading", "grist"];

    /// <summary>Types into a field of a plan; a wish for an ion makes its line, and takes it out again.</summary>
    public static DraftEdit<WaterDraft>? Type(this WaterDraft draft, string path, string? typed)
    {
        if (WaterDraft.WishOf(path) is not { } ion)
        {
            return draft.Put(path, typed);
        }

        string text = typed?.Trim() ?? "";
        return draft.PlaceOfWish(ion) is not { } place ? text.Length == 0 ? null : draft.AddItem("targets", ("ion", ion), ("amount", text)) with { Label = $"{ion} wanted: {text}" }
            : text.Length == 0 ? draft.RemoveItem("targets", place) with { Label = $"{ion}: no longer wanted" }
            : draft.Put(Invariant($"targets[{place}].amount"), text);
    }

    /// <summary>Moves what a field says to another one: "SO4" that was "SO4-S".</summary>
    public static DraftEdit<WaterDraft>? Rename(this WaterDraft draft, string path, string to) => draft[path] is not { } text || path == to
        ? null
        : new DraftEdit<WaterDraft>(draft.WithFields((to, text), (path, null)), $"{FieldWords.Of(draft, path)} → {FieldWords.Of(draft, to)}");

    /// <summary>Blends in another water, half and half with an only one.</summary>
    public static DraftEdit<WaterDraft> Blend(this WaterDraft draft)
    {
        bool isOnly = draft.CountOf("sources") == 1;
        WaterDraft shared = isOnly ? draft.WithFields(("sources[0].share", "50 %")) : draft;
        DraftEdit<WaterDraft> blended = shared.AddItem("sources", ("name", "another water"), ("share", isOnly ? "50 %" : "0 %"));
        return blended with { After = blended.After.Distil(blended.After.CountOf("sources") - 1, false).After };
    }

    /// <summary>Another plan's waters in place of one's own, shares and reports and all.</summary>
    public static DraftEdit<WaterDraft> TakeSources(this WaterDraft draft, WaterDraft from) =>
        new(Take(draft, from, "sources"), $"waters: as in {from.Name}");

    /// <summary>Another plan's salts and acids in place of one's own.</summary>
    public static DraftEdit<WaterDraft> TakeShelf(this WaterDraft draft, WaterDraft from) =>
        new(Take(Take(draft, from, "salts"), from, "acids"), $"salts and acids: as in {from.Name}");

    /// <summary>The plan without what belongs to one brew: its recipe, litres and grist.</summary>
    public static WaterDraft WithoutBrew(this WaterDraft draft) => draft.WithFields(OfOneBrew.Select(key => (key, (string?)null)));

    /// <summary>Malts with titrations of the brewer's own, in place of what the plan knew of them.</summary>
    /// <param name="draft">The plan.</param>
    /// <param name="malts">Name, pH in distilled water and buffer of each, as the file has them.</param>
    public static DraftEdit<WaterDraft> Learn(this WaterDraft draft, IReadOnlyList<(string Malt, string DistilledPh, string Buffer)> malts)
    {
        WaterDraft learned = draft;
        for (int known = draft.CountOf("malts") - 1; known >= 0; known--)
        {
            if (malts.Any(malt => string.Equals(malt.Malt, draft[Invariant($"malts[{known}].malt")], StringComparison.OrdinalIgnoreCase)))
            {
                learned = learned.RemoveItem("malts", known).After;
            }
        }

        learned = malts.Aggregate(learned, (plan, malt) => plan.AddItem("malts", ("malt", malt.Malt), ("distilledPh", malt.DistilledPh), ("buffer", malt.Buffer)).After);
        return new DraftEdit<WaterDraft>(learned, $"learned: {string.Join(", ", malts.Select(malt => malt.Malt))}");
    }

    /// <summary>A water that is distilled, or one with a report.</summary>
    public static DraftEdit<WaterDraft> Distil(this WaterDraft draft, int source, bool isDistilled)
    {
        string path = Invariant($"sources[{source}]");
        string name = draft[$"{path}.name"] ?? "water";
        return isDistilled
            ? new(draft.WithFields(($"{path}.report", null), ($"{path}.boiled", null), ($"{path}.boiledTo", null), ($"{path}.distilled", "true")), $"{name}: distilled")
            : new(
                draft.With(file => NodePath.Set(NodePath.Remove(file, draft.Form.Whole, $"{path}.distilled"), draft.Form.Whole, $"{path}.report", ObjectNode.Empty)),
                $"{name}: with a report");
    }

    private static WaterDraft Take(WaterDraft draft, WaterDraft from, string list) => draft.With(file => from.File[list] is { } theirs
        ? NodePath.Set(file, draft.Form.Whole, list, theirs)
        : file.Without(list));
}
