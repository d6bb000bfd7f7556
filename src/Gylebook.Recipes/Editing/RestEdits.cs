using System.Text.Json.Nodes;

namespace Gylebook.Recipes.Editing;

/// <summary>Edits of rests and portions, and of stages a recipe may lack. Usual figures are common practice, no source.</summary>
public static class RestEdits
{
    /// <summary>Adds a rest at the end of <c>mash.rests</c> or <c>ferment</c>.</summary>
    public static RecipeEdit AddRest(this RecipeDraft draft, string list)
    {
        JsonObject rest = list == "ferment" ? Rest("20 °C", "3 d") : Rest("72 °C", "15 min");
        RecipeDraft changed = draft.Changed(file =>
        {
            if (FieldPath.Find(file, list) is not JsonArray)
            {
                FieldPath.Set(file, list, new JsonArray());
            }

            ((JsonArray)FieldPath.Find(file, list)!).Add((JsonNode)rest);
        });
        return new RecipeEdit(changed, $"{FieldWords.Of(list)}: one more");
    }

    /// <summary>Takes an item out of <c>mash.rests</c>, <c>ferment</c> or <c>portions</c>.</summary>
    public static RecipeEdit RemoveFrom(this RecipeDraft draft, string list, int number)
    {
        RecipeDraft changed = draft.Changed(file =>
        {
            var items = (JsonArray)FieldPath.Find(file, list)!;
            items.RemoveAt(number);
            if (items.Count == 0 && list == "portions")
            {
                FieldPath.Remove(file, list);
            }
        });
        return new RecipeEdit(changed, Invariant($"{FieldWords.Of(list)}: number {number + 1} taken out"));
    }

    /// <summary>Divides the cast in two halves, or adds a portion to those there are.</summary>
    public static RecipeEdit AddPortion(this RecipeDraft draft)
    {
        RecipeDraft changed = draft.Changed(file =>
        {
            JsonArray portions = FileDraft.ListIn(file, "portions");
            if (portions.Count == 0)
            {
                portions.Add((JsonNode)Portion("first", "50 %"));
                portions.Add((JsonNode)Portion("second", "50 %"));
            }
            else
            {
                portions.Add((JsonNode)Portion(Invariant($"portion {portions.Count + 1}"), "0 %"));
            }
        });
        return new RecipeEdit(changed, "portions: one more");
    }

    /// <summary>Adds souring in the kettle.</summary>
    public static RecipeEdit AddSouring(this RecipeDraft draft) => new(
        draft.Changed(file => FieldPath.Put(file, "souring", new JsonObject
        {
            ["culture"] = "lactobacillus", ["temperature"] = "38 °C", ["ph"] = "3.4", ["time"] = "24 h",
        })),
        "souring: added");

    /// <summary>Adds a boil.</summary>
    public static RecipeEdit AddBoil(this RecipeDraft draft) =>
        new(draft.Changed(file => FieldPath.Set(file, "boil.time", "60 min")), "boil: added");

    /// <summary>Adds a stand after knock-out.</summary>
    public static RecipeEdit AddStand(this RecipeDraft draft) =>
        new(draft.Changed(file => FieldPath.Put(file, "stand", Rest("80 °C", "20 min"))), "stand: added");

    /// <summary>Adds a mash in a bag.</summary>
    public static RecipeEdit AddMash(this RecipeDraft draft) => new(
        draft.Changed(file => FieldPath.Put(
            file, "mash", new JsonObject { ["method"] = "bag", ["rests"] = new JsonArray(Rest("66 °C", "60 min")) })),
        "mash: added");

    internal static JsonObject Rest(string temperature, string time) => new() { ["temperature"] = temperature, ["time"] = time };

    private static JsonObject Portion(string name, string share) => new() { ["name"] = name, ["share"] = share, ["from"] = "cast" };
}
