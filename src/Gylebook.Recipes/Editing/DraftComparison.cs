using System.Text.Json;
using System.Text.Json.Nodes;

namespace Gylebook.Recipes.Editing;

/// <summary>Compares two drafts by field and line, as a reader would: lines are matched by what they are of, not by place.</summary>
public static class DraftComparison
{
    /// <summary>What has to be done to the first to get the second; empty when they say the same.</summary>
    public static IReadOnlyList<DraftChange> Between(RecipeDraft first, RecipeDraft second)
    {
        List<DraftChange> changes = [];
        JsonObject before = first.Copy();
        JsonObject after = second.Copy();
        foreach (string key in before.Select(p => p.Key).Union(after.Select(p => p.Key)).Where(k => k != "ingredients").ToList())
        {
            Field(key, before[key], after[key], changes);
        }

        Lines(first, second, changes);
        return changes;
    }

    /// <summary>The change of a field or a list as a whole, whatever is in it.</summary>
    internal static DraftChange OfField(string path, RecipeDraft first, RecipeDraft second)
    {
        JsonNode? before = FieldPath.Find(first.Copy(), path);
        JsonNode? after = FieldPath.Find(second.Copy(), path);
        return new DraftChange(FieldWords.Of(path), InWords(before), InWords(after)) { Path = path, Node = after?.DeepClone() };
    }

    private static void Field(string path, JsonNode? before, JsonNode? after, List<DraftChange> changes)
    {
        if (JsonNode.DeepEquals(before, after))
        {
            return;
        }

        if (before is JsonObject && after is JsonObject)
        {
            foreach (string key in Keys(before, after))
            {
                Field($"{path}.{key}", before[key], after[key], changes);
            }
        }
        else if (before is JsonArray old && after is JsonArray now && old.Count == now.Count)
        {
            for (int i = 0; i < old.Count; i++)
            {
                Field(Invariant($"{path}[{i}]"), old[i], now[i], changes);
            }
        }
        else
        {
            changes.Add(new DraftChange(FieldWords.Of(path), InWords(before), InWords(after)) { Path = path, Node = after?.DeepClone() });
        }
    }

    private static void Lines(RecipeDraft first, RecipeDraft second, List<DraftChange> changes)
    {
        IReadOnlyList<DraftLine> before = first.Lines;
        IReadOnlyList<DraftLine> after = second.Lines;
        JsonObject[] old = [.. RecipeDraft.LinesIn(first.Copy())];
        JsonObject[] now = [.. RecipeDraft.LinesIn(second.Copy())];
        int[] pair = LinePairs.Of(before, after);
        foreach (DraftLine line in before)
        {
            if (pair[line.Number] < 0)
            {
                changes.Add(new DraftChange(line.Name, FieldWords.OfLineAsWhole(line), null) { Line = line.Number });
                continue;
            }

            JsonObject twin = now[pair[line.Number]];
            foreach (string key in Keys(old[line.Number], twin).Where(k => !JsonNode.DeepEquals(old[line.Number][k], twin[k])))
            {
                changes.Add(new DraftChange(FieldWords.OfField(line, key), InWords(old[line.Number][key]), InWords(twin[key]))
                {
                    Path = key,
                    Line = line.Number,
                    Node = twin[key]?.DeepClone(),
                });
            }
        }

        foreach (DraftLine line in after.Where(l => !pair.Contains(l.Number)))
        {
            DraftLine? above = before.LastOrDefault(b => pair[b.Number] >= 0 && pair[b.Number] < line.Number);
            changes.Add(new DraftChange(line.Name, null, FieldWords.OfLineAsWhole(line))
            {
                Line = above?.Number ?? -1,
                IsNewLine = true,
                Node = now[line.Number].DeepClone(),
            });
        }
    }

    private static List<string> Keys(JsonNode first, JsonNode second) =>
        [.. ((JsonObject)first).Select(p => p.Key).Union(((JsonObject)second).Select(p => p.Key))];

    private static string? InWords(JsonNode? node) => node switch
    {
        null => null,
        JsonObject pairs => string.Join(", ", pairs.Select(p => InWords(p.Value))),
        JsonArray list => string.Join("; ", list.Select(InWords)),
        _ => node.GetValueKind() == JsonValueKind.String ? node.GetValue<string>() : node.ToJsonString(),
    };
}
