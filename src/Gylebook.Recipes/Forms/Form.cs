using System.Collections.Immutable;
using Gylebook.Recipes.Documents;

namespace Gylebook.Recipes.Forms;

/// <summary>
/// A part of a file as a table of its fields, in the order of the file. Reader, writer, schema, words and widgets are made from
/// it: a new field is a new row.
/// </summary>
/// <param name="blank">The part before any of its fields is read; never leaves the reader when one that is needed is missing.</param>
/// <typeparam name="T">What the part is read as.</typeparam>
public sealed class Form<T>(T blank) : ValueForm<T>
    where T : class
{
    private readonly List<Field<T>> _fields = [];
    private Action<T, PartCursor>? _agree;

    /// <summary>Its fields, in the order of the file.</summary>
    public IReadOnlyList<Field> Fields => _fields;

    /// <summary>The part before any of its fields is read.</summary>
    internal T Blank => blank;

    /// <summary>What the schema says of it in a sentence.</summary>
    internal string? About { get; init; }

    /// <summary>The name under which schemas refer to it; null to write it out where it stands.</summary>
    internal string? SchemaName { get; init; }

    /// <summary>Whether it stays in its file when its last field goes.</summary>
    internal bool Stays { get; init; }

    internal override bool StaysEmpty => Stays;

    /// <summary>What a schema says of it beyond its fields: which of them go together.</summary>
    internal IReadOnlyList<(string Key, Node Value)> SchemaRules { get; init; } = [];

    /// <inheritdoc/>
    public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Part(_fields);

    /// <summary>A field that must be there.</summary>
    internal Form<T> Need<TValue>(string key, string words, ValueForm<TValue> value, Func<T, TValue> of, Func<T, TValue, T> with, FieldNotes? notes = null) =>
        Add(new Field<T, TValue>(key, words, value, part => (true, of(part)), with, notes) { IsNeeded = true });

    /// <summary>A field of a class that may be left out.</summary>
    internal Form<T> May<TValue>(string key, string words, ValueForm<TValue> value, Func<T, TValue?> of, Func<T, TValue?, T> with, FieldNotes? notes = null)
        where TValue : class =>
        Add(new Field<T, TValue>(key, words, value, part => of(part) is { } there ? (true, there) : (false, null!), with, notes));

    /// <summary>A field of a plain value that may be left out.</summary>
    internal Form<T> May<TValue>(string key, string words, ValueForm<TValue> value, Func<T, TValue?> of, Func<T, TValue?, T> with, FieldNotes? notes = null)
        where TValue : struct =>
        Add(new Field<T, TValue>(key, words, value, part => of(part) is { } there ? (true, there) : (false, default), (part, there) => with(part, there), notes));

    /// <summary>A list that may be left out, and is when nothing is in it.</summary>
    internal Form<T> MayList<TItem>(string key, string words, ListForm<TItem> list, Func<T, IReadOnlyList<TItem>> of, Func<T, IReadOnlyList<TItem>, T> with, FieldNotes? notes = null) =>
        Add(new Field<T, IReadOnlyList<TItem>>(key, words, list, part => (of(part).Count > 0, of(part)), with, notes));

    /// <summary>A field that is taken for a usual value, with a note that it was, when it is left out.</summary>
    internal Form<T> Else<TValue>(string key, string words, ValueForm<TValue> value, Func<T, TValue> of, Func<T, TValue, T> with, TValue otherwise, string told, FieldNotes? notes = null) =>
        Add(new Field<T, TValue>(key, words, value, part => (true, of(part)), with, notes) { Otherwise = (otherwise, told) });

    /// <summary>A field of any other kind.</summary>
    internal Form<T> Add(Field<T> field)
    {
        _fields.Add(field);
        return this;
    }

    /// <summary>Puts a field before the others.</summary>
    internal void First(Field<T> field) => _fields.Insert(0, field);

    /// <summary>Holds the fields of a part against each other once they are read.</summary>
    internal Form<T> Agree(Action<T, PartCursor> agree)
    {
        _agree += agree;
        return this;
    }

    internal override bool TryRead(NodeCursor at, out T value)
    {
        if (at.Node is not ObjectNode node)
        {
            at.IsNot("an object");
            value = blank;
            return false;
        }

        // The path of a finding is told from its part, so that what an unchanged part means can be had again.
        if (node.Meaning is not Meaning known || known.Form != this)
        {
            FindingList findings = new();
            node.Meaning = known = new Meaning(this, Read(node, findings), findings);
        }

        at.Findings.TakeOver(known.Findings, at.Path);
        value = known.Value;
        return true;
    }

    internal override Node Write(T value)
    {
        var pairs = ImmutableArray.CreateBuilder<KeyValuePair<string, Node>>();
        foreach (Field<T> field in _fields)
        {
            field.Write(value, pairs);
        }

        return new ObjectNode(pairs.ToImmutable());
    }

    internal override ValueForm? Inside(string step) => FieldAt(step)?.Value;

    internal override Field? FieldAt(string step) => _fields.Find(field => field.Keys.Contains(step));

    internal override ObjectNode Schema(SchemaParts parts) => SchemaName is null ? SchemaOf(parts) : parts.Named(SchemaName, () => SchemaOf(parts));

    /// <summary>Its schema, written out.</summary>
    internal ObjectNode SchemaOf(SchemaParts parts)
    {
        List<(string, Node)> rows = [];
        if (About is not null)
        {
            rows.Add(("description", new TextNode(About)));
        }

        rows.Add(("type", new TextNode("object")));
        rows.Add(("properties", Node.Object(_fields.SelectMany(field => field.Schema(parts)))));
        rows.Add(("required", new ListNode([.. _fields.Where(field => !field.IsOptional && field.Keys.Count == 1).Select(field => new TextNode(field.Key))])));
        rows.Add(("additionalProperties", BareNode.False));
        return Node.Object([.. rows, .. SchemaRules]);
    }

    private T Read(ObjectNode node, FindingList findings)
    {
        PartReader reader = new(node, findings);
        T part = blank;
        foreach (Field<T> field in _fields)
        {
            part = field.Read(reader, part);
        }

        _agree?.Invoke(part, new PartCursor("", findings));
        reader.Finish();
        return part;
    }

    private sealed record Meaning(Form<T> Form, T Value, FindingList Findings);
}

/// <summary>What a list says of its items, whatever they are.</summary>
internal interface IListForm
{
    /// <summary>The keys of an item by which two lists are matched; empty to match them by place.</summary>
    IReadOnlyList<string> MatchedBy { get; }

    /// <summary>What an item is called in a log: <c>mash</c>; null for the list's own words.</summary>
    string? ItemSaid { get; }
}

/// <summary>A list of values of one kind.</summary>
/// <param name="item">What is in it.</param>
/// <typeparam name="T">What each is read as.</typeparam>
public sealed class ListForm<T>(ValueForm<T> item) : ValueForm<IReadOnlyList<T>>, IListForm
{
    private const int Longest = 1000;

    /// <inheritdoc/>
    public IReadOnlyList<string> MatchedBy { get; init; } = [];

    /// <inheritdoc/>
    public string? ItemSaid { get; init; }

    /// <summary>Whether the last one may not go.</summary>
    internal bool NeedsOne { get; init; }

    /// <inheritdoc/>
    public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.List(item);

    internal override bool TryRead(NodeCursor at, out IReadOnlyList<T> value)
    {
        value = [];
        if (at.Node is not ListNode list)
        {
            at.IsNot("a list");
            return false;
        }

        if (list.Items.Length > Longest)
        {
            at.Error("list.long", Invariant($"the list is too long; at most {Longest} items"), Invariant($"{list.Items.Length}"), Invariant($"{Longest} items"));
            return false;
        }

        var items = new T[list.Items.Length];
        for (int i = 0; i < items.Length; i++)
        {
            item.TryRead(at with { Node = list.Items[i], Path = Invariant($"{at.Path}[{i}]") }, out items[i]);
        }

        value = items;
        return true;
    }

    internal override Node Write(IReadOnlyList<T> value) => new ListNode([.. value.Select(item.Write)]);

    internal override ValueForm? Inside(string step) => item;

    internal override ObjectNode Schema(SchemaParts parts)
    {
        ObjectNode schema = Node.Object(("type", new TextNode("array")), ("items", item.Schema(parts)), ("maxItems", SchemaParts.Number(Longest)));
        return NeedsOne ? schema.Inserted(1, "minItems", new BareNode("1")) : schema;
    }
}
