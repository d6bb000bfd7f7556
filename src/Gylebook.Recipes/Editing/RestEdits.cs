using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Editing;

/// <summary>Edits of rests and portions, and of stages a recipe may lack. Usual figures are common practice, no source.</summary>
public static class RestEdits
{
    /// <summary>Adds a rest at the end of <c>mash.rests</c> or <c>ferment</c>.</summary>
    public static DraftEdit<RecipeDraft> AddRest(this RecipeDraft draft, string list) => list == "ferment"
        ? draft.AddItem(list, ("temperature", "20 °C"), ("time", "3 d"))
        : draft.AddItem(list, ("temperature", "72 °C"), ("time", "15 min"));

    /// <summary>Divides the cast in two halves, or adds a portion to those there are.</summary>
    public static DraftEdit<RecipeDraft> AddPortion(this RecipeDraft draft) => draft.CountOf("portions") is > 0 and int count
        ? draft.AddItem("portions", ("name", Invariant($"portion {count + 1}")), ("share", "0 %"), ("from", "cast"))
        : draft.AddItem("portions", ("name", "first"), ("share", "50 %"), ("from", "cast")).After
            .AddItem("portions", ("name", "second"), ("share", "50 %"), ("from", "cast"));

    /// <summary>Adds souring in the kettle.</summary>
    public static DraftEdit<RecipeDraft> AddSouring(this RecipeDraft draft) =>
        draft.AddPart("souring", ("culture", "lactobacillus"), ("temperature", "38 °C"), ("ph", "3.4"), ("time", "24 h"));

    /// <summary>Adds a boil.</summary>
    public static DraftEdit<RecipeDraft> AddBoil(this RecipeDraft draft) => draft.AddPart("boil", ("time", "60 min"));

    /// <summary>Adds a stand after knock-out.</summary>
    public static DraftEdit<RecipeDraft> AddStand(this RecipeDraft draft) => draft.AddPart("stand", ("temperature", "80 °C"), ("time", "20 min"));

    /// <summary>Adds a mash in a bag.</summary>
    public static DraftEdit<RecipeDraft> AddMash(this RecipeDraft draft)
    {
        DraftEdit<RecipeDraft> mash = draft.AddPart("mash", ("method", "bag"));
        return mash with { After = mash.After.AddItem("mash.rests", ("temperature", "66 °C"), ("time", "60 min")).After };
    }

    /// <summary>Chooses how the grain is rinsed; none takes the whole rinse out, another one brings usual figures along.</summary>
    public static DraftEdit<RecipeDraft>? Sparge(this RecipeDraft draft, SpargeMethod method)
    {
        string word = FileWords.SpargeMethods.Word(method);
        string before = draft["mash.sparge.method"] ?? "none";
        if (before == word)
        {
            return null;
        }

        RecipeDraft changed = method == SpargeMethod.None
            ? draft.WithFields(("mash.sparge", null))
            : draft.WithFields(
                ("mash.sparge.method", word),
                ("mash.sparge.volume", draft["mash.sparge.volume"] ?? "5 L"),
                ("mash.sparge.temperature", draft["mash.sparge.temperature"] ?? "77 °C"));
        return new DraftEdit<RecipeDraft>(changed, $"sparge: {before} → {word}");
    }
}
