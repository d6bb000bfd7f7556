using System.Collections.Immutable;
using Gylebook.Recipes.Documents;

namespace Gylebook.Recipes.Interchange.OpenFormats.Tables;

/// <summary>A field of somebody else's format, and where it goes here.</summary>
/// <param name="Key">Its name there.</param>
/// <param name="Home">What it is here; empty when it has no home.</param>
/// <param name="Why">Why it has none, or what to know.</param>
internal sealed record OpenField(string Key, string Home, string Why);

/// <summary>
/// A part of somebody else's file as a table of its fields, for reading and writing. Nothing stops it: what cannot be read
/// is told and stays behind, and so is every key that the table has not.
/// </summary>
/// <param name="blank">The part before any field is read.</param>
/// <typeparam name="T">What the part is here.</typeparam>
internal sealed class OpenForm<T>(T blank) : OpenValue<T>
    where T : class
{
    private readonly List<OpenField> _fields = [];
    private readonly Dictionary<string, (Func<T, Node, OpenCursor, T> Read, Func<T, OpenCursor, Node?> Write)> _rows = new(StringComparer.Ordinal);
    private readonly HashSet<string> _quiet = new(StringComparer.Ordinal);
    private Func<T, string, T>? _placed;

    /// <summary>Its fields, in the order they are written.</summary>
    public IReadOnlyList<OpenField> Fields => _fields;

    /// <summary>Whether keys are compared whatever their case.</summary>
    public bool AnyCase { get; init; }

    /// <summary>A field of a class.</summary>
    public OpenForm<T> Row<TValue>(string key, string home, OpenValue<TValue> value, Func<T, TValue?> of, Func<T, TValue, T> with, string why = "")
        where TValue : class =>
        Add(new OpenField(key, home, why), (part, node, at) => Taken(value, node, at, out TValue read, home, why) ? with(part, read) : part, (part, at) => of(part) is { } there ? value.Write(there, at) : null);

    /// <summary>A field of a plain value.</summary>
    public OpenForm<T> Row<TValue>(string key, string home, OpenValue<TValue> value, Func<T, TValue?> of, Func<T, TValue, T> with, string why = "")
        where TValue : struct =>
        Add(new OpenField(key, home, why), (part, node, at) => Taken(value, node, at, out TValue read, home, why) ? with(part, read) : part, (part, at) => of(part) is { } there ? value.Write(there, at) : null);

    /// <summary>A list, left out when nothing is in it.</summary>
    public OpenForm<T> Rows<TItem>(string key, string home, OpenValue<IReadOnlyList<TItem>> list, Func<T, IReadOnlyList<TItem>> of, Func<T, IReadOnlyList<TItem>, T> with, bool isAlwaysThere = false) =>
        Add(new OpenField(key, home, ""), (part, node, at) => list.TryRead(node, at, out IReadOnlyList<TItem> read) ? with(part, read) : part, (part, at) => isAlwaysThere || of(part).Count > 0 ? list.Write(of(part), at) : null);

    /// <summary>Fields that their format keeps in an object of its own, and we beside the others.</summary>
    public OpenForm<T> Inside(string key, OpenForm<T> inner, Func<T, bool> isWritten) => Add(
        new OpenField(key, "", "an object of its own"),
        (part, node, at) => node is ObjectNode pairs ? inner.ReadOnto(part, pairs, at) : Refused(part, node, at),
        (part, at) => isWritten(part) ? inner.Write(part, at) : null);

    /// <summary>A field that means the same as another, and is read where that one is missing.</summary>
    public OpenForm<T> Also(string key, string instead)
    {
        _fields.Add(new OpenField(key, _fields.First(field => field.Key == instead).Home, $"read as `{instead}`"));
        _rows[key] = (_rows[instead].Read, (_, _) => null);
        return this;
    }

    /// <summary>Fields that have no home here; each is told when it says something.</summary>
    public OpenForm<T> Left(string why, params IEnumerable<string> keys)
    {
        foreach (string key in keys)
        {
            Add(new OpenField(key, "", why), (part, node, at) => Leave(part, node, at, why), (_, _) => null);
        }

        return this;
    }

    /// <summary>Fields that say nothing about the beer.</summary>
    public OpenForm<T> Quiet(params IEnumerable<string> keys)
    {
        _quiet.UnionWith(keys);
        return this;
    }

    /// <summary>A field that is only written, with the same text each time.</summary>
    public OpenForm<T> Always(string key, Node value)
    {
        _quiet.Add(key);
        _rows[key] = ((part, _, _) => part, (_, _) => value);
        _fields.Add(new OpenField(key, "", "always the same"));
        return this;
    }

    /// <summary>Keeps where a part stood.</summary>
    public OpenForm<T> Placed(Func<T, string, T> placed)
    {
        _placed = placed;
        return this;
    }

    public override bool TryRead(Node node, OpenCursor at, out T value)
    {
        value = _placed?.Invoke(blank, at.Path) ?? blank;
        if (node is not ObjectNode pairs)
        {
            return IsNot(node, at, "an object");
        }

        value = ReadOnto(value, pairs, at);
        return true;
    }

    private T ReadOnto(T value, ObjectNode pairs, OpenCursor at)
    {
        foreach ((string typed, Node inner) in pairs.Pairs)
        {
            string key = AnyCase ? typed.ToUpperInvariant() : typed;
            if (_rows.TryGetValue(key, out var row) && !_quiet.Contains(key))
            {
                value = OpenWords.IsNothing(inner) ? value : row.Read(value, inner, at.At(key));
            }
            else if (!_quiet.Contains(key))
            {
                Leave(value, inner, at.At(typed), "no key of the standard");
            }
        }

        return value;
    }

    /// <summary>Reads a value; one that is only looked at, and has no home, is told to stay behind.</summary>
    private static bool Taken<TValue>(OpenValue<TValue> value, Node node, OpenCursor at, out TValue read, string home, string why)
    {
        bool isRead = value.TryRead(node, at, out read);
        if (isRead && home.Length == 0)
        {
            at.Leave($"{OpenWords.Quoted(node)}; {why}");
        }

        return isRead;
    }

    private static T Refused(T part, Node node, OpenCursor at)
    {
        IsNot(node, at, "an object");
        return part;
    }

    public override Node Write(T value, OpenCursor at)
    {
        var pairs = ImmutableArray.CreateBuilder<KeyValuePair<string, Node>>();
        foreach (OpenField field in _fields)
        {
            if (_rows[field.Key].Write(value, at.At(field.Key)) is { } node)
            {
                pairs.Add(new(field.Key, node));
            }
        }

        return new ObjectNode(pairs.ToImmutable());
    }

    private OpenForm<T> Add(OpenField field, Func<T, Node, OpenCursor, T> read, Func<T, OpenCursor, Node?> write)
    {
        _fields.Add(field);
        _rows[field.Key] = (read, write);
        return this;
    }

    private static T Leave(T part, Node node, OpenCursor at, string why)
    {
        if (!OpenWords.IsNothing(node))
        {
            at.Leave($"{OpenWords.Quoted(node)}; {why}");
        }

        return part;
    }
}
