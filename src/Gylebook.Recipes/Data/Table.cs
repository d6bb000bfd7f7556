using System.Collections.Frozen;
using Gylebook.Science.Data;

namespace Gylebook.Recipes.Data;

/// <summary>What a look-up gave: the row, or the names that come nearest to what was asked.</summary>
/// <param name="Match">The row; null when there is none, or more than one.</param>
/// <param name="Nearest">Names that may have been meant, the nearest first; empty when there is a match.</param>
/// <typeparam name="T">What a row is.</typeparam>
public sealed record Found<T>(T? Match, IReadOnlyList<string> Nearest)
    where T : class;

/// <summary>Rows with an id and a name each, found by either.</summary>
/// <remarks>
/// A look-up passes over letter case, accents, punctuation, a plural's <c>s</c> and a last word that only says what sort of thing
/// it is: <c>Munich</c>, <c>munich malts</c> and <c>munich-malt</c> are one. An exact name goes before a likeness; a likeness that
/// fits two rows fits none. The table never changes once read, so any number of threads may ask it.
/// </remarks>
/// <typeparam name="T">What a row is.</typeparam>
public sealed class Table<T>
    where T : class
{
    private const int Suggestions = 3;

    private readonly FrozenDictionary<string, T> _byId;
    private readonly FrozenDictionary<string, T> _asWritten;
    private readonly FrozenDictionary<string, T[]> _exact;
    private readonly FrozenDictionary<string, T[]> _loose;
    private readonly List<string> _names;
    private readonly string _file;

    /// <summary>The table made of those rows.</summary>
    /// <param name="csv">The text, with columns <c>id</c>, perhaps <c>name</c>, perhaps <c>also</c> for other names.</param>
    /// <param name="make">Makes a row.</param>
    /// <exception cref="InvalidDataException">A row does not read, or an id is there twice.</exception>
    public Table(CsvTable csv, Func<CsvRow, T> make)
    {
        _file = csv.File;
        var rows = new List<T>(csv.Rows.Count);
        var keys = new List<(string Key, T Row)>();
        var byId = new Dictionary<string, T>(StringComparer.Ordinal);
        var names = new List<string>();
        foreach (var line in csv.Rows)
        {
            var row = make(line);
            var id = line.Required("id");
            if (!byId.TryAdd(id, row))
            {
                throw line.Wrong("id", $"is there twice: {id}");
            }
            rows.Add(row);
            var name = csv.Columns.Contains("name") ? line.Required("name") : id;
            names.Add(name);
            IReadOnlyList<string> others = csv.Columns.Contains("also") ? line.Words("also") : [];
            keys.AddRange([(id, row), (name, row), .. others.Select(other => (other, row))]);
        }
        All = rows.AsReadOnly();
        _names = names;
        _byId = byId.ToFrozenDictionary(StringComparer.Ordinal);
        _asWritten = keys
            .GroupBy(entry => entry.Key, entry => entry.Row, StringComparer.OrdinalIgnoreCase)
            .Where(same => same.Distinct().Count() == 1)
            .ToFrozenDictionary(same => same.Key, same => same.First(), StringComparer.OrdinalIgnoreCase);
        _exact = Index(keys, Spelling.Plain);
        _loose = Index(keys, Spelling.Loose);
    }

    /// <summary>All rows, in the order of the file.</summary>
    public IReadOnlyList<T> All { get; }

    /// <summary>The row of that id.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is none.</exception>
    public T Of(string id) => _byId.TryGetValue(id, out var row)
        ? row
        : throw new ArgumentOutOfRangeException(nameof(id), id, $"{_file} has no such id. Nearest: {string.Join(", ", Nearest(id))}.");

    /// <summary>The row of that id or name, or the names that come nearest.</summary>
    public Found<T> Find(string idOrName)
    {
        if (_byId.TryGetValue(idOrName, out var asWritten) || _asWritten.TryGetValue(idOrName, out asWritten))
        {
            return new Found<T>(asWritten, []);
        }
        foreach (var (index, key) in new[] { (_exact, Spelling.Plain(idOrName)), (_loose, Spelling.Loose(idOrName)) })
        {
            if (index.TryGetValue(key, out var rows))
            {
                return rows.Length == 1
                    ? new Found<T>(rows[0], [])
                    : new Found<T>(null, [.. rows.Select(NameOf)]);
            }
        }
        return new Found<T>(null, Nearest(idOrName));
    }

    private static FrozenDictionary<string, T[]> Index(IEnumerable<(string Key, T Row)> keys, Func<string, string> spell) => keys
        .GroupBy(entry => spell(entry.Key), StringComparer.Ordinal)
        .Where(group => group.Key.Length > 0)
        .ToFrozenDictionary(
            group => group.Key,
            group => group.Select(entry => entry.Row).Distinct(ReferenceEqualityComparer.Instance).Cast<T>().ToArray(),
            StringComparer.Ordinal);

    private string NameOf(T row)
    {
        for (var i = 0; i < All.Count; i++)
        {
            if (ReferenceEquals(All[i], row))
            {
                return _names[i];
            }
        }
        throw new InvalidOperationException("A row of another table.");
    }

    private IReadOnlyList<string> Nearest(string asked)
    {
        var wanted = Spelling.Loose(asked);
        return [.. _names
            .Select(name => (Name: name, Away: Spelling.Away(wanted, Spelling.Loose(name))))
            .OrderBy(entry => entry.Away)
            .ThenBy(entry => entry.Name, StringComparer.Ordinal)
            .Take(Suggestions)
            .Select(entry => entry.Name)];
    }
}
