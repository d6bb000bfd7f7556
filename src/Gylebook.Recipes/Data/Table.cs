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
    private readonly NameIndex<T> _names;
    private readonly Dictionary<T, IReadOnlyList<string>> _others = new(ReferenceEqualityComparer.Instance);
    private readonly string _file;

    /// <summary>The table made of those rows.</summary>
    /// <param name="csv">The text, with columns <c>id</c>, perhaps <c>name</c>, perhaps <c>also</c> for other names.</param>
    /// <param name="make">Makes a row.</param>
    /// <exception cref="InvalidDataException">A row does not read, or an id is there twice.</exception>
    public Table(CsvTable csv, Func<CsvRow, T> make)
    {
        _file = csv.File;
        List<Named<T>> rows = new(csv.Rows.Count);
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (var line in csv.Rows)
        {
            var row = make(line);
            var id = line.Required("id");
            if (!ids.Add(id))
            {
                throw line.Wrong("id", $"is there twice: {id}");
            }
            _others[row] = csv.Columns.Contains("also") ? line.Words("also") : [];
            rows.Add(new Named<T>(id, csv.Columns.Contains("name") ? line.Required("name") : id, _others[row], row));
        }
        All = [.. rows.Select(named => named.Row)];
        _names = new NameIndex<T>(rows);
    }

    /// <summary>All rows, in the order of the file.</summary>
    public IReadOnlyList<T> All { get; }

    /// <summary>Other names a row of this table answers to.</summary>
    public IReadOnlyList<string> OtherNames(T row) => _others.GetValueOrDefault(row, []);

    /// <summary>The row of that id.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is none.</exception>
    public T Of(string id) => _names.Of(id)
        ?? throw new ArgumentOutOfRangeException(nameof(id), id, $"{_file} has no such id. Nearest: {string.Join(", ", _names.Nearest(id))}.");

    /// <summary>The row of that id or name, or the names that come nearest.</summary>
    public Found<T> Find(string idOrName) => _names.Find(idOrName);
}
