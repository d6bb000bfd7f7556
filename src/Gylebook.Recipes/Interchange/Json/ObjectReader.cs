using System.Text.Json;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.Json;

/// <summary>Reads an object key by key; a key nobody asked for is a finding.</summary>
/// <remarks>
/// A key that cannot be read has told the list why, and gives back a placeholder so that the rest is read as well.
/// No placeholder leaves the file's reader: with an error in the list it returns no value.
/// </remarks>
internal sealed class ObjectReader
{
    private const int LongestName = 200;
    private const int LongestProse = 100_000;
    private readonly Dictionary<string, JsonElement> _values = new(StringComparer.Ordinal);
    private readonly List<string> _asked = [];
    private readonly bool _isThere;

    internal ObjectReader(JsonCursor at)
    {
        Path = at.Path;
        Findings = at.Findings;
        _isThere = at.Is(JsonValueKind.Object, "an object");
        if (!_isThere)
        {
            return;
        }

        foreach (var property in at.Element.EnumerateObject())
        {
            if (!_values.TryAdd(property.Name, property.Value))
            {
                Findings.Error("key.duplicate", PathOf(property.Name), "this key is written twice; keep one");
            }
        }
    }

    private ObjectReader(string path, FindingList findings) => (Path, Findings) = (path, findings);

    internal string Path { get; }

    internal FindingList Findings { get; }

    /// <summary>The value behind a key, or null when it is absent or null.</summary>
    internal JsonCursor? Take(string key)
    {
        _asked.Add(key);
        return _values.TryGetValue(key, out var value) && value.ValueKind != JsonValueKind.Null
            ? new JsonCursor(value, PathOf(key), Findings)
            : null;
    }

    /// <summary>The value behind a key that must be there.</summary>
    internal JsonCursor? Need(string key)
    {
        var at = Take(key);
        if (at is null && _isThere)
        {
            Findings.Error("key.missing", PathOf(key), "this key is missing");
        }

        return at;
    }

    internal string Name(string key) => NameOf(Need(key)) ?? "";

    internal string? OptionalName(string key) => NameOf(Take(key));

    internal string? Prose(string key) => Take(key)?.Text(LongestProse);

    internal Entered<T> Quantity<T>(string key)
        where T : struct, IQuantity<T> => Need(key)?.Quantity<T>() ?? default;

    internal Entered<T>? OptionalQuantity<T>(string key)
        where T : struct, IQuantity<T> => Take(key)?.Quantity<T>();

    /// <summary>A quantity, or the stated starting value with a note that it was taken.</summary>
    internal Entered<T> QuantityOr<T>(string key, Entered<T> otherwise)
        where T : struct, IQuantity<T>
    {
        if (Take(key) is { } at)
        {
            return at.Quantity<T>() ?? default;
        }

        Findings.Note("default.taken", PathOf(key), $"not given; taken as {otherwise.Text}", otherwise.Text);
        return otherwise;
    }

    internal TEnum Word<TEnum>(string key, WordTable<TEnum> table)
        where TEnum : struct, Enum => Need(key)?.Word(table) ?? default;

    internal T Object<T>(string key, Func<ObjectReader, T> read) => Read(Need(key), key, read);

    internal T? OptionalObject<T>(string key, Func<ObjectReader, T> read)
        where T : class => Take(key) is { } at ? Read(at, key, read) : null;

    internal IReadOnlyList<T> List<T>(string key, Func<JsonCursor, T> read) => Need(key)?.List(read) ?? [];

    internal IReadOnlyList<T> ListOfObjects<T>(string key, Func<ObjectReader, T> read) =>
        List(key, at => Read(at, key, read));

    internal IReadOnlyList<T> OptionalListOfObjects<T>(string key, Func<ObjectReader, T> read) =>
        Take(key)?.List(at => Read(at, key, read)) ?? [];

    /// <summary>The one key of these that is there; a finding when there is none, or more than one.</summary>
    internal string? ExactlyOne(IReadOnlyCollection<string> keys)
    {
        var there = keys.Where(key => Take(key) is not null).ToList();
        if (there.Count != 1 && _isThere)
        {
            var choice = string.Join(", ", keys);
            Findings.Error(
                there.Count == 0 ? "key.missing" : "key.several", Path,
                $"needs exactly one of {choice}; it has {(there.Count == 0 ? "none" : string.Join(" and ", there))}",
                string.Join(", ", there), "1");
        }

        return there.Count == 1 ? there[0] : null;
    }

    internal string PathOf(string key) => Path.Length == 0 ? FindingList.Shorten(key) : $"{Path}.{FindingList.Shorten(key)}";

    /// <summary>Tells of every key that nobody asked for.</summary>
    internal void Finish()
    {
        foreach (var key in _values.Keys.Except(_asked, StringComparer.Ordinal).TakeWhile(_ => !Findings.IsFull))
        {
            var typed = FindingList.Shorten(key);
            Findings.Error("key.unknown", PathOf(key), $"this key is not known here; the nearest known one is \"{NearestWord.To(typed, _asked)}\"", typed);
        }
    }

    private T Read<T>(JsonCursor? at, string key, Func<ObjectReader, T> read)
    {
        var reader = at is { } there ? new ObjectReader(there) : new ObjectReader(PathOf(key), Findings);
        var value = read(reader);
        reader.Finish();
        return value;
    }

    private static string? NameOf(JsonCursor? at)
    {
        if (at?.Text(LongestName) is not { } name)
        {
            return null;
        }

        if (string.IsNullOrWhiteSpace(name) || name.Any(char.IsControl))
        {
            at.Value.Findings.Error("text.empty", at.Value.Path, "must have at least one visible character, all on one line", name);
        }

        return name;
    }
}
