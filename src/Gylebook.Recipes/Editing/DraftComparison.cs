using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Editing;

/// <summary>Compares two drafts by field and item, as a reader would: items are matched by what they are of, not by place.</summary>
public static class DraftComparison
{
    /// <summary>What has to be done to the first to get the second; empty when they say the same.</summary>
    public static IReadOnlyList<DraftChange> Between(FileDraft first, FileDraft second)
    {
        List<DraftChange> changes = [];
        List<DraftChange> ofItems = [];
        foreach (string key in Keys(first.File, second.File))
        {
            (Node? before, Node? after) = (first.File[key], second.File[key]);
            if (first.Form.PartAt(key) is IListForm { MatchedBy.Count: > 0 } list && before is null or ListNode && after is null or ListNode)
            {
                Items(first, key, list, before as ListNode ?? ListNode.Empty, after as ListNode ?? ListNode.Empty, ofItems);
            }
            else
            {
                Field(first, key, before, after, changes);
            }
        }

        return [.. changes, .. ofItems];
    }

    /// <summary>The change of a field or a list as a whole, whatever is in it.</summary>
    internal static DraftChange OfField(string path, FileDraft first, FileDraft second)
    {
        Node? after = NodePath.Find(second.File, path);
        return new DraftChange(FieldWords.Of(first, path), FieldWords.InWords(NodePath.Find(first.File, path)), FieldWords.InWords(after)) { Path = path, Node = after };
    }

    private static void Field(FileDraft draft, string path, Node? before, Node? after, List<DraftChange> changes)
    {
        if (Node.Same(before, after))
        {
            return;
        }

        if (before is ObjectNode former && after is ObjectNode latter)
        {
            foreach (string key in Keys(former, latter))
            {
                Field(draft, $"{path}.{key}", former[key], latter[key], changes);
            }
        }
        else if (before is ListNode old && after is ListNode now && old.Items.Length == now.Items.Length)
        {
            for (int i = 0; i < old.Items.Length; i++)
            {
                Field(draft, Invariant($"{path}[{i}]"), old.Items[i], now.Items[i], changes);
            }
        }
        else
        {
            changes.Add(new DraftChange(FieldWords.Of(draft, path), FieldWords.InWords(before), FieldWords.InWords(after)) { Path = path, Node = after });
        }
    }

    private static void Items(FileDraft draft, string key, IListForm list, ListNode before, ListNode after, List<DraftChange> changes)
    {
        if (Node.Same(before, after))
        {
            return;
        }

        int[] pair = ItemPairs.Of(list, before, after);
        for (int i = 0; i < pair.Length; i++)
        {
            if (pair[i] < 0)
            {
                changes.Add(new DraftChange(NameOf(list, before.Items[i]), AsWhole(list, before.Items[i]), null) { List = key, Item = i });
            }
            else if (before.Items[i] is ObjectNode old && after.Items[pair[i]] is ObjectNode twin)
            {
                foreach (string field in Keys(old, twin).Where(k => !Node.Same(old[k], twin[k])))
                {
                    changes.Add(new DraftChange(FieldWords.Of(draft, Invariant($"{key}[{i}].{field}")), FieldWords.InWords(old[field]), FieldWords.InWords(twin[field]))
                    {
                        Path = field,
                        List = key,
                        Item = i,
                        Node = twin[field],
                    });
                }
            }
        }

        for (int i = 0; i < after.Items.Length; i++)
        {
            if (!pair.Contains(i))
            {
                changes.Add(new DraftChange(NameOf(list, after.Items[i]), null, AsWhole(list, after.Items[i]))
                {
                    List = key,
                    Item = Array.FindLastIndex(pair, place => place >= 0 && place < i),
                    IsNewItem = true,
                    Node = after.Items[i],
                });
            }
        }
    }

    private static string NameOf(IListForm list, Node item) => item is ObjectNode pairs ? FieldWords.NameOf(list, pairs)! : FieldWords.InWords(item) ?? "";

    private static string AsWhole(IListForm list, Node item) => item is ObjectNode pairs ? FieldWords.AsWhole(list, pairs) : FieldWords.InWords(item) ?? "";

    private static List<string> Keys(ObjectNode first, ObjectNode second) =>
        [.. first.Pairs.Select(pair => pair.Key).Union(second.Pairs.Select(pair => pair.Key))];
}
