using System.Globalization;

namespace Gylebook.Science.Data;

/// <summary>A row of a <see cref="CsvTable"/>; a field that does not read says its file, line and column.</summary>
public sealed class CsvRow
{
    private readonly CsvTable _table;
    private readonly IReadOnlyList<string> _fields;

    internal CsvRow(CsvTable table, int line, IReadOnlyList<string> fields)
    {
        _table = table;
        Line = line;
        _fields = fields;
    }

    /// <summary>Its line in the file, from 1.</summary>
    public int Line { get; }

    /// <summary>The text of a field, which may be empty.</summary>
    /// <exception cref="InvalidDataException">There is no such column.</exception>
    public string Text(string column) => _fields[_table.IndexOf(column)];

    /// <summary>The text of a field that must not be empty.</summary>
    /// <exception cref="InvalidDataException">It is, or there is no such column.</exception>
    public string Required(string column)
    {
        var text = Text(column);
        return text.Length > 0 ? text : throw Wrong(column, "is empty");
    }

    /// <summary>The number in a field.</summary>
    /// <exception cref="InvalidDataException">It is not a finite number.</exception>
    public double Number(string column) => NumberOrNull(column) ?? throw Wrong(column, "is empty, a number was expected");

    /// <summary>The number in a field, or null when it is empty.</summary>
    /// <exception cref="InvalidDataException">It is neither empty nor a finite number.</exception>
    public double? NumberOrNull(string column)
    {
        var text = Text(column);
        if (text.Length == 0)
        {
            return null;
        }
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : throw Wrong(column, $"is not a number: {text}");
    }

    /// <summary>Whether a field says <c>yes</c>; it may only say that or <c>no</c>.</summary>
    /// <exception cref="InvalidDataException">It says something else.</exception>
    public bool Yes(string column) => Text(column) switch
    {
        "yes" => true,
        "no" => false,
        var text => throw Wrong(column, $"is neither yes nor no: {text}"),
    };

    /// <summary>The words in a field, parted by semicolons.</summary>
    public IReadOnlyList<string> Words(string column) =>
        Text(column).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>An error that names the place.</summary>
    public InvalidDataException Wrong(string column, string what) =>
        new(Invariant($"{_table.File}, line {Line}, column {column}: {what}."));
}
