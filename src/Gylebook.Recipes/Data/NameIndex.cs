using System.Collections.Frozen;

namespace Gylebook.Recipes.Data;

/// <summary>A thing with what it is called.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Also">Other names it answers to.</param>
/// <param name="Row">The thing.</param>
/// <typeparam name="T">What it is.</typeparam>
internal readonly record struct Named<T>(string Id, string Name, IReadOnlyList<string> Also, T Row);

/// <summary>Things found by id or name, as <see cref="Table{T}"/> describes; the ids are there once.</summary>
/// <typeparam name="T">What is found.</typeparam>
internal sealed class NameIndex<T>
    where T : class
{
    private const int Suggestions = 3;

    private readonly FrozenDictionary<string, T> _byId;
    private readonly FrozenDictionary<string, T> _asWritten;
    private readonly FrozenDictionary<string, T[]> _exact;
    private readonly FrozenDictionary<string, T[]> _loose;
    private readonly IReadOnlyList<Named<T>> _rows;

    /// <summary>An index of those.</summary>
    public NameIndex(IReadOnlyList<Named<T>> rows)
    {
        _rows = rows;
        List<(string Key, T Row)> keys = [];
        foreach (Named<T> named in rows)
        {
            keys.AddRange([(named.Id, named.Row), (named.Name, named.Row), .. named.Also.Select(other => (other, named.Row))]);
        }

        _byId = rows.ToFrozenDictionary(named => named.Id, named => named.Row, StringComparer.Ordinal);
        _asWritten = keys
            .GroupBy(entry => entry.Key, entry => entry.Row, StringComparer.OrdinalIgnoreCase)
            .Where(same => same.Distinct().Count() == 1)
            .ToFrozenDictionary(same => same.Key, same => same.First(), StringComparer.OrdinalIgnoreCase);
        _exact = Index(keys, Spelling.Plain);
        _loose = Index(keys, Spelling.Loose);
    }

    /// <summary>The one of that id; null when there is none.</summary>
    public T? Of(string id) => _byId.GetValueOrDefault(id);

    /// <summary>The one of that id or name; null when there is none, or more than one.</summary>
    public T? Match(string idOrName) => Named(idOrName) is [var only] ? only : null;

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public Found<T> Find(string idOrName) => Named(idOrName) switch
    {
        [var only] => new Found<T>(only, []),
        [] => new Found<T>(null, Nearest(idOrName)),
        var several => new Found<T>(null, [.. several.Select(row => _rows.First(named => ReferenceEquals(named.Row, row)).Name)]),
    };

    /// <summary>The names that come nearest to what was asked.</summary>
    public IReadOnlyList<string> Nearest(string asked)
    {
        var wanted = Spelling.Loose(asked);
        return [.. _rows
            .Select(named => (named.Name, Away: Spelling.Away(wanted, Spelling.Loose(named.Name))))
            .OrderBy(entry => entry.Away)
            .ThenBy(entry => entry.Name, StringComparer.Ordinal)
            .Take(Suggestions)
            .Select(entry => entry.Name)];
    }

    private T[] Named(string idOrName)
    {
        if (_rows.Count == 0)
        {
            return [];
        }

        if (_byId.TryGetValue(idOrName, out var asWritten) || _asWritten.TryGetValue(idOrName, out asWritten))
        {
            return [asWritten];
        }

        return _exact.TryGetValue(Spelling.Plain(idOrName), out var rows) || _loose.TryGetValue(Spelling.Loose(idOrName), out rows) ? rows : [];
    }

    private static FrozenDictionary<string, T[]> Index(IEnumerable<(string Key, T Row)> keys, Func<string, string> spell) => keys
        .GroupBy(entry => spell(entry.Key), StringComparer.Ordinal)
        .Where(group => group.Key.Length > 0)
        .ToFrozenDictionary(
            group => group.Key,
            group => group.Select(entry => entry.Row).Distinct(ReferenceEqualityComparer.Instance).Cast<T>().ToArray(),
            StringComparer.Ordinal);
}
