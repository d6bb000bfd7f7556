using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Editing;

/// <summary>One thing you changed, and what they made of the same.</summary>
/// <param name="Yours">Your change.</param>
/// <param name="Theirs">What they say there; null when they left it alone, so that both can be had.</param>
public sealed record MergeChoice(DraftChange Yours, string? Theirs)
{
    /// <summary>Whether somebody has to choose.</summary>
    public required bool IsConflict { get; init; }
}

/// <summary>Puts two edits of one draft together.</summary>
public static class DraftMerge
{
    /// <summary>Compares both with what both had seen.</summary>
    /// <param name="basis">What both had seen.</param>
    /// <param name="theirs">What they made of it.</param>
    /// <param name="yours">What you made of it.</param>
    /// <typeparam name="TDraft">Which sort of draft.</typeparam>
    public static DraftMerge<TDraft> Of<TDraft>(TDraft basis, TDraft theirs, TDraft yours)
        where TDraft : FileDraft
    {
        IReadOnlyList<DraftChange> they = DraftComparison.Between(basis, theirs);
        List<MergeChoice> choices = [];
        foreach (DraftChange change in DraftComparison.Between(basis, yours).Select(c => AsWide(c, they, basis, yours)).Where(c => !they.Any(c.IsSameAs)))
        {
            DraftChange? against = they.FirstOrDefault(change.Touches);
            // Two items alike are two items: only a list that was widened twice is one change.
            if (!change.IsNewItem && choices.Any(c => c.Yours.IsSameAs(change)))
            {
                continue;
            }

            choices.Add(new MergeChoice(change, against is null ? null : against.After ?? "taken out") { IsConflict = against is not null });
        }

        return new DraftMerge<TDraft>(basis, theirs, choices);
    }

    /// <summary>A change within a list that they replaced is a change of the whole list: its items may be gone.</summary>
    private static DraftChange AsWide(DraftChange change, IReadOnlyList<DraftChange> they, FileDraft basis, FileDraft yours)
    {
        DraftChange? wider = change.List is null
            ? they.FirstOrDefault(t => t.List is null && t.Path.Length < change.Path.Length && change.Touches(t))
            : null;
        return wider is null ? change : DraftComparison.OfField(wider.Path, basis, yours);
    }
}

/// <summary>Two edits of the same draft, made apart: what each changed, and one text out of both.</summary>
/// <typeparam name="TDraft">Which sort of draft.</typeparam>
public sealed class DraftMerge<TDraft>
    where TDraft : FileDraft
{
    private readonly TDraft _basis;
    private readonly TDraft _theirs;

    internal DraftMerge(TDraft basis, TDraft theirs, IReadOnlyList<MergeChoice> choices)
    {
        _basis = basis;
        _theirs = theirs;
        Choices = choices;
    }

    /// <summary>All that you changed and they did not change alike.</summary>
    public IReadOnlyList<MergeChoice> Choices { get; }

    /// <summary>Whether both changed the same field, or one took out an item the other changed.</summary>
    public bool HasConflicts => Choices.Any(c => c.IsConflict);

    /// <summary>Their text with the chosen of your changes made on it.</summary>
    /// <param name="isYours">Whether your side is taken, for each of <see cref="Choices"/>.</param>
    public TDraft With(Func<int, bool> isYours)
    {
        ObjectNode file = _theirs.File;
        Dictionary<string, MergedList> lists = new(StringComparer.Ordinal);
        for (int i = 0; i < Choices.Count; i++)
        {
            if (!isYours(i))
            {
                continue;
            }

            DraftChange change = Choices[i].Yours;
            if (change.List is not { } key)
            {
                file = Field(file, change);
                continue;
            }

            if (!lists.TryGetValue(key, out MergedList? list))
            {
                lists[key] = list = new MergedList(_basis, _theirs, key);
            }

            list.Make(change);
        }

        foreach ((string key, MergedList list) in lists)
        {
            bool goes = list.IsEmpty && _theirs.Form.At(key)?.IsOptional == true;
            file = goes ? file.Without(key) : NodePath.Set(file, _theirs.Form.Whole, key, list.Merged);
        }

        return (TDraft)_theirs.Of(file);
    }

    private ObjectNode Field(ObjectNode file, DraftChange change) => change.Node is null
        ? NodePath.Remove(file, _theirs.Form.Whole, change.Path)
        : NodePath.Set(file, _theirs.Form.Whole, change.Path, change.Node);
}

/// <summary>A list of theirs while items of yours are worked into it. Items, not numbers: one that comes or goes does not move the others.</summary>
internal sealed class MergedList
{
    private readonly ListNode _originals;
    private readonly ValueForm? _item;
    private readonly List<Item> _items;
    private readonly Item?[] _ofBasis;
    private readonly Dictionary<int, Item> _newest = [];

    /// <summary>Their list.</summary>
    public MergedList(FileDraft basis, FileDraft theirs, string key)
    {
        var form = (IListForm)theirs.Form.PartAt(key)!;
        ListNode there = theirs.File[key] as ListNode ?? ListNode.Empty;
        _originals = basis.File[key] as ListNode ?? ListNode.Empty;
        _item = theirs.Form.PartAt($"{key}[0]");
        _items = [.. there.Items.Select(node => new Item(node))];
        _ofBasis = [.. ItemPairs.Of(form, _originals, there).Select(place => place < 0 ? null : _items[place])];
    }

    /// <summary>Whether nothing is left in it.</summary>
    public bool IsEmpty => _items.Count == 0;

    /// <summary>What has come of it.</summary>
    public ListNode Merged => new([.. _items.Select(item => item.Node)]);

    /// <summary>Makes one change of yours.</summary>
    public void Make(DraftChange change)
    {
        int number = change.Item;
        if (change.IsNewItem)
        {
            Item added = new(change.Node!);
            _items.Insert(_newest.TryGetValue(number, out Item? last) ? _items.IndexOf(last) + 1 : PlaceBehind(number), added);
            _newest[number] = added;
        }
        else if (change.Path.Length == 0)
        {
            if (_ofBasis[number] is { } gone)
            {
                _items.Remove(gone);
                _ofBasis[number] = null;
            }
        }
        else
        {
            if (_ofBasis[number] is not { } item)
            {
                // They took it out and you still work on it: it comes back.
                item = new Item(_originals.Items[number]);
                _items.Insert(PlaceBehind(number - 1), item);
                _ofBasis[number] = item;
            }

            var pairs = (ObjectNode)item.Node;
            item.Node = change.Node is null ? pairs.Without(change.Path) : NodePath.Put(pairs, _item, change.Path, change.Node);
        }
    }

    private int PlaceBehind(int number)
    {
        for (; number >= 0; number--)
        {
            if (_ofBasis[number] is { } above)
            {
                return _items.IndexOf(above) + 1;
            }
        }

        return 0;
    }

    private sealed class Item(Node node)
    {
        public Node Node { get; set; } = node;
    }
}
