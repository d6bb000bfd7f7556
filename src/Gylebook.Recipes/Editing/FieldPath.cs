using System.Globalization;
using System.Text.Json.Nodes;

namespace Gylebook.Recipes.Editing;

/// <summary>Finds and fills fields by the paths that findings use: <c>ingredients[2].amount</c>.</summary>
internal static class FieldPath
{
    /// <summary>Keys in the order of the guide, so that a field typed later stands where a person would have written it.</summary>
    private static readonly string[] Order =
    [
        "format", "name", "notes", "sources", "recipe",
        "malt", "extract", "sugar", "food", "hop", "spice", "yeast", "fining", "salt", "acid", "water",
        "as", "colour", "alpha", "form", "age", "storage", "cells", "attenuation", "amount", "at", "portion",
        "culture", "method", "rests", "volume", "in", "carbonation", "temperature", "pack", "lost", "time", "share", "from", "strike", "topUp", "sparge",
        "package", "mash", "liquor", "souring", "boil", "stand", "ferment", "portions", "ingredients",
        "distilled", "boiled", "boiledTo", "report", "balance", "targets", "salts", "acids", "dilution", "mashPh", "spargePh", "wortPh",
        "mashReading", "wortReading", "malts", "grist", "ion", "weight", "into", "least", "most", "price", "assay", "density", "distilledPh", "buffer",
        "calcium", "magnesium", "hardness", "alkalinity", "bicarbonate", "carbonate", "sulphate", "sulphateSulphur", "chloride",
        "nitrate", "nitrateNitrogen", "sodium", "potassium", "ph", "sample", "conductivity",
    ];

    /// <summary>The node at a path, or null.</summary>
    public static JsonNode? Find(JsonNode file, string path)
    {
        JsonNode? at = file;
        foreach (string part in Parts(path))
        {
            at = at switch
            {
                JsonObject pairs => pairs[part],
                JsonArray list when int.TryParse(part, CultureInfo.InvariantCulture, out int i) && i >= 0 && i < list.Count => list[i],
                _ => null,
            };
        }

        return at;
    }

    /// <summary>Sets the text at a path; the objects on the way are made, items of lists are not.</summary>
    public static void Set(JsonObject file, string path, JsonNode value)
    {
        string[] parts = Parts(path);
        JsonNode at = file;
        for (int i = 0; i < parts.Length - 1; i++)
        {
            JsonNode? next = Find(at, parts[i]);
            if (next is null && at is JsonObject parent)
            {
                Put(parent, parts[i], next = new JsonObject());
            }

            at = next ?? throw new ArgumentOutOfRangeException(nameof(path), path, "There is no such place in the recipe.");
        }

        Put(at as JsonObject ?? throw new ArgumentOutOfRangeException(nameof(path), path, "There is no such field in the recipe."), parts[^1], value);
    }

    /// <summary>Takes a field out, and each object that is empty after it.</summary>
    public static void Remove(JsonObject file, string path)
    {
        string[] parts = Parts(path);
        string parent = string.Join('.', parts[..^1]);
        JsonNode? at = parent.Length == 0 ? file : Find(file, parent);
        if (at is not JsonObject pairs)
        {
            return;
        }

        pairs.Remove(parts[^1]);
        if (pairs.Count == 0 && parent.Length > 0 && !int.TryParse(parts[^2], CultureInfo.InvariantCulture, out _))
        {
            Remove(file, parent);
        }
    }

    /// <summary>Puts a key into an object, at its place in the order.</summary>
    public static void Put(JsonObject pairs, string key, JsonNode value)
    {
        if (pairs.ContainsKey(key))
        {
            pairs[key] = value;
            return;
        }

        int rank = Array.IndexOf(Order, key);
        int place = 0;
        while (place < pairs.Count && Array.IndexOf(Order, pairs.GetAt(place).Key) <= rank)
        {
            place++;
        }

        pairs.Insert(place, key, value);
    }

    private static string[] Parts(string path) =>
        path.Split(['.', '[', ']'], StringSplitOptions.RemoveEmptyEntries);
}
