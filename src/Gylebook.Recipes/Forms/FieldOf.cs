using System.Collections.Immutable;
using Gylebook.Recipes.Documents;

namespace Gylebook.Recipes.Forms;

/// <summary>A field of a part, as its reader and its writer need to know it.</summary>
/// <typeparam name="T">The part.</typeparam>
public abstract class Field<T> : Field
    where T : class
{
    private protected Field(string key, string words, FieldNotes notes)
        : base(key, words, notes)
    {
    }

    /// <summary>The part with what the file says in this field; with a stand-in where that cannot be read.</summary>
    internal abstract T Read(PartReader reader, T part);

    /// <summary>Puts the field's pair behind the others, if there is anything to say.</summary>
    internal abstract void Write(T part, ImmutableArray<KeyValuePair<string, Node>>.Builder pairs);

    /// <summary>What a schema says of each key of it.</summary>
    internal abstract IEnumerable<(string Key, Node Value)> Schema(SchemaParts parts);
}

/// <summary>A field with the value it holds.</summary>
/// <typeparam name="T">The part.</typeparam>
/// <typeparam name="TValue">The value.</typeparam>
internal sealed class Field<T, TValue> : Field<T>
    where T : class
{
    private readonly ValueForm<TValue> _value;
    private readonly Func<T, (bool Is, TValue Value)> _of;
    private readonly Func<T, TValue, T> _with;

    public Field(string key, string words, ValueForm<TValue> value, Func<T, (bool Is, TValue Value)> of, Func<T, TValue, T> with, FieldNotes? notes = null)
        : base(key, words, notes ?? FieldNotes.None) => (_value, _of, _with) = (value, of, with);

    public override ValueForm Value => _value;

    public override bool IsOptional => !IsNeeded;

    /// <summary>Whether every part must have it.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>Whether a part must have it by what its fields before this say; null when that does not matter.</summary>
    public Func<T, bool>? NeededBy { get; init; }

    /// <summary>The value it is taken for when it is left out, and that value in words.</summary>
    public (TValue Value, string Told)? Otherwise { get; init; }

    /// <summary>Which parts have such a field; null when all have.</summary>
    public Belonging<T>? BelongsTo { get; init; }

    /// <summary>The form of the value where it depends on the part, null for a part whose value cannot be told; null for the one that all have.</summary>
    public Func<T, ValueForm<TValue>?>? FormIn { get; init; }

    internal override T Read(PartReader reader, T part)
    {
        if (BelongsTo is { } belongs && !belongs.Has(part))
        {
            if (reader.Take(Key) is { } stray && belongs.Is(part) is { } what)
            {
                stray.Error("key.misplaced", $"only {belongs.Who} have \"{Key}\"; {what}", Key);
            }

            return part;
        }

        NodeCursor? there = IsNeeded || NeededBy?.Invoke(part) == true ? reader.Need(Key) : reader.Take(Key);
        if (there is { } at)
        {
            return FormOf(part) is { } form && form.TryRead(at, out TValue value) ? _with(part, value) : part;
        }

        if (Otherwise is not { } otherwise)
        {
            return part;
        }

        reader.Findings.Note("default.taken", PartReader.PathOf(Key), $"not given; taken as {otherwise.Told}", otherwise.Told);
        return _with(part, otherwise.Value);
    }

    internal override void Write(T part, ImmutableArray<KeyValuePair<string, Node>>.Builder pairs)
    {
        if (_of(part) is (true, var value))
        {
            pairs.Add(new(Key, (FormOf(part) ?? _value).Write(value)));
        }
        else if (Notes.IsAlwaysWritten)
        {
            pairs.Add(new(Key, BareNode.Null));
        }
    }

    private ValueForm<TValue>? FormOf(T part) => FormIn is null ? _value : FormIn(part);

    internal override IEnumerable<(string Key, Node Value)> Schema(SchemaParts parts)
    {
        ObjectNode schema = _value.Schema(parts);
        schema = IsOptional ? SchemaParts.OrNull(schema) : schema;
        yield return (Key, Notes.Help.Length > 0 ? SchemaParts.Described(schema, Notes.Help) : schema);
    }
}

/// <summary>Which parts have a field.</summary>
/// <param name="Has">Whether that part has it.</param>
/// <param name="Is">What a part is instead, in words; null for one that cannot tell.</param>
/// <param name="Who">Who has it, in words: "hops".</param>
/// <typeparam name="T">The part.</typeparam>
internal sealed record Belonging<T>(Func<T, bool> Has, Func<T, string?> Is, string Who);
