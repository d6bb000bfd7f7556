using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Editing;

/// <summary>What people call the fields of a file, from its form.</summary>
public static class FieldWords
{
    /// <summary>A field away from its page: <c>mash, temperature</c>; of an item that has a name of its own, <c>Fuggle, alpha</c>.</summary>
    public static string Of(FileDraft draft, string path) => Of(draft.Form, path, draft.File);

    /// <summary>The same where the file is not at hand.</summary>
    public static string Of(FileForm form, string path) => Of(form, path, null);

    private static string Of(FileForm form, string path, Node? node)
    {
        string said = "";
        string? named = null;
        ValueForm? part = form.Whole;
        foreach (string step in NodePath.Steps(path))
        {
            if (part is IListForm list)
            {
                named = node is not null && NodePath.Find(node, step) is ObjectNode item ? NameOf(list, item) : null;
                said = named ?? list.ItemSaid ?? said;
            }
            else if (part?.FieldAt(step) is { } field)
            {
                said = field.Notes.Said switch
                {
                    "" => said,
                    { } words => named is null ? words : $"{named}, {words}",
                    null => said.Length > 0 ? $"{said}, {field.Words}" : field.Words,
                };
            }

            part = part?.Inside(step);
            node = node is null ? null : NodePath.Find(node, step);
        }

        return said.Length > 0 ? said : path;
    }

    /// <summary>What an item of a list is called, by what tells it from the others; null when nothing does.</summary>
    internal static string? NameOf(IListForm list, ObjectNode item) =>
        FileDraft.TextOf(item["as"]) ?? list.MatchedBy.Select(key => FileDraft.TextOf(item[key])).Where(text => !string.IsNullOrEmpty(text)).Select(text => SpokenName.Of(text!)).FirstOrDefault()
        ?? (list.MatchedBy.Count > 0 ? $"{list.ItemSaid ?? "a line"} without a name" : null);

    /// <summary>An item in one breath: <c>3.6 kg, mash</c>.</summary>
    internal static string AsWhole(IListForm list, ObjectNode item) => string.Join(
        ", ",
        item.Pairs.Where(pair => !list.MatchedBy.Contains(pair.Key) && pair.Key != "as").Select(pair => InWords(pair.Value)).Where(text => !string.IsNullOrEmpty(text)));

    /// <summary>A value as people read it; null for nothing.</summary>
    internal static string? InWords(Node? node) => node switch
    {
        null or BareNode { IsNull: true } => null,
        ObjectNode pairs => string.Join(", ", pairs.Pairs.Select(pair => InWords(pair.Value)).Where(text => text is not null)),
        ListNode list => string.Join("; ", list.Items.Select(InWords)),
        _ => FileDraft.TextOf(node),
    };
}
