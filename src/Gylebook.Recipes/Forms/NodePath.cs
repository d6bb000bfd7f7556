using System.Globalization;
using Gylebook.Recipes.Documents;

namespace Gylebook.Recipes.Forms;

/// <summary>Finds and fills fields by the paths that findings use: <c>ingredients[2].amount</c>.</summary>
/// <remarks>Each change gives another file, which shares with the old one all but the way down to the field.</remarks>
internal static class NodePath
{
    /// <summary>The steps of a path; a number is the place in a list.</summary>
    public static string[] Steps(string path) => path.Split(['.', '[', ']'], StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The node at a path, or null.</summary>
    public static Node? Find(Node file, string path)
    {
        Node? at = file;
        foreach (string step in Steps(path))
        {
            at = Step(at, step);
        }

        return at;
    }

    /// <summary>With that value at a path; the objects on the way are made, items of lists are not.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such place.</exception>
    public static ObjectNode Set(ObjectNode file, ValueForm form, string path, Node value) =>
        Change(file, form, path, _ => value);

    /// <summary>With what a change makes of the node at a path, null when there is none; a change to null takes it out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such place.</exception>
    public static ObjectNode Change(ObjectNode file, ValueForm form, string path, Func<Node?, Node?> change) =>
        (ObjectNode)(Changed(file, form, Steps(path), 0, change) ?? ObjectNode.Empty);

    /// <summary>Without the field at a path, and without each object that is empty after it, unless its form says that it stays.</summary>
    public static ObjectNode Remove(ObjectNode file, ValueForm form, string path) =>
        Find(file, path) is null ? file : Change(file, form, path, _ => null);

    private static Node? Changed(Node? at, ValueForm? form, string[] steps, int depth, Func<Node?, Node?> change)
    {
        if (depth == steps.Length)
        {
            return change(at);
        }

        string step = steps[depth];
        Node? inner = Changed(Step(at, step), form?.Inside(step), steps, depth + 1, change);
        switch (at)
        {
            case ListNode list when Place(list, step) is { } place:
                return list.With(items => inner is null ? items.RemoveAt(place) : items.SetItem(place, inner));
            case ObjectNode or null:
                ObjectNode pairs = at as ObjectNode ?? ObjectNode.Empty;
                ObjectNode changed = inner is null ? pairs.Without(step) : Put(pairs, form, step, inner);
                return changed.Pairs.IsEmpty && depth > 0 && Goes(form, steps, depth) ? null : changed;
            default:
                throw new ArgumentOutOfRangeException(nameof(steps), string.Join('.', steps), "There is no such place in the file.");
        }
    }

    /// <summary>With a key, at its place in the order of the form.</summary>
    public static ObjectNode Put(ObjectNode pairs, ValueForm? form, string key, Node value)
    {
        if (pairs.Has(key))
        {
            return pairs.Replaced(key, value);
        }

        IReadOnlyList<string> order = form?.Accept(KeysInOrder.Only) ?? [];
        int rank = Rank(order, key);
        int place = 0;
        while (place < pairs.Pairs.Length && Rank(order, pairs.Pairs[place].Key) <= rank)
        {
            place++;
        }

        return pairs.Inserted(place, key, value);
    }

    // An item of a list stays, however empty: its number is its place.
    private static bool Goes(ValueForm? form, string[] steps, int depth) =>
        !int.TryParse(steps[depth - 1], CultureInfo.InvariantCulture, out _) && form?.StaysEmpty != true;

    private static int Rank(IReadOnlyList<string> order, string key)
    {
        for (int i = 0; i < order.Count; i++)
        {
            if (order[i] == key)
            {
                return i;
            }
        }

        return -1;
    }

    private static Node? Step(Node? at, string step)
    {
        Node? inner = at switch
        {
            ObjectNode pairs => pairs[step],
            ListNode list when Place(list, step) is { } place => list.Items[place],
            _ => null,
        };
        return inner is BareNode { IsNull: true } ? null : inner;
    }

    private static int? Place(ListNode list, string step) =>
        int.TryParse(step, CultureInfo.InvariantCulture, out int place) && place >= 0 && place < list.Items.Length ? place : null;

    private sealed class KeysInOrder : ValueFormSorter<IReadOnlyList<string>>
    {
        public static KeysInOrder Only { get; } = new();

        public override IReadOnlyList<string> Part(IReadOnlyList<Field> fields) => [.. fields.SelectMany(field => field.Keys)];
    }
}
