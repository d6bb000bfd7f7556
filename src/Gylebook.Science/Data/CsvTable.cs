using System.Text;

namespace Gylebook.Science.Data;

/// <summary>A table read from text: a head of <c>#</c> lines, a line of column names, rows.</summary>
/// <remarks>
/// Commas part the fields; a field with a comma or a quote in it stands in double quotes, a quote inside them is doubled.
/// A quoted field ends on its own line. Empty lines are skipped.
/// </remarks>
public sealed class CsvTable
{
    private CsvTable(string file, IReadOnlyList<string> head, IReadOnlyList<string> columns)
    {
        File = file;
        Head = head;
        Columns = columns;
    }

    /// <summary>The file's name, for messages.</summary>
    public string File { get; }

    /// <summary>The lines of the head, without their <c>#</c>.</summary>
    public IReadOnlyList<string> Head { get; }

    /// <summary>The columns' names, in order.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>The rows, in order.</summary>
    public IReadOnlyList<CsvRow> Rows { get; private set; } = [];

    /// <summary>The table in that text.</summary>
    /// <exception cref="InvalidDataException">A row has more or fewer fields than there are columns, or a quote is not closed.</exception>
    public static CsvTable Parse(string file, string text)
    {
        var head = new List<string>();
        var rows = new List<CsvRow>();
        CsvTable? table = null;
        var number = 0;
        foreach (var raw in text.Split('\n'))
        {
            number++;
            var line = raw.TrimEnd('\r');
            if (line.Length == 0)
            {
                continue;
            }
            if (table is null && line[0] == '#')
            {
                head.Add(line[1..].TrimStart());
                continue;
            }
            var fields = Fields(file, number, line);
            if (table is null)
            {
                table = new CsvTable(file, head, fields);
                continue;
            }
            if (fields.Count != table.Columns.Count)
            {
                throw new InvalidDataException(
                    Invariant($"{file}, line {number}: {fields.Count} fields, but there are {table.Columns.Count} columns."));
            }
            rows.Add(new CsvRow(table, number, fields));
        }
        if (table is null)
        {
            throw new InvalidDataException($"{file}: no line of column names.");
        }
        table.Rows = rows;
        return table;
    }

    /// <summary>A published table that travels inside this library, by its file name.</summary>
    internal static CsvTable Published(string file) => Parse(file, EmbeddedText.Of(typeof(CsvTable).Assembly, file));

    /// <summary>A column as it is written.</summary>
    /// <exception cref="InvalidDataException">There is none of that name.</exception>
    public IReadOnlyList<string> Texts(string column) => [.. Rows.Select(row => row.Text(column))];

    /// <summary>A column as numbers.</summary>
    /// <exception cref="InvalidDataException">There is none of that name, or a field is no finite number.</exception>
    public double[] Numbers(string column) => [.. Rows.Select(row => row.Number(column))];

    /// <summary>The place of a column.</summary>
    /// <exception cref="InvalidDataException">There is none of that name.</exception>
    internal int IndexOf(string column)
    {
        for (var i = 0; i < Columns.Count; i++)
        {
            if (Columns[i] == column)
            {
                return i;
            }
        }
        throw new InvalidDataException($"{File}: no column {column}.");
    }

    private static List<string> Fields(string file, int number, string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            switch (line[i])
            {
                case '"' when quoted && i + 1 < line.Length && line[i + 1] == '"':
                    field.Append('"');
                    i++;
                    break;
                case '"':
                    quoted = !quoted;
                    break;
                case ',' when !quoted:
                    fields.Add(field.ToString());
                    field.Clear();
                    break;
                default:
                    field.Append(line[i]);
                    break;
            }
        }
        if (quoted)
        {
            throw new InvalidDataException(Invariant($"{file}, line {number}, field {fields.Count + 1}: a quote is not closed."));
        }
        fields.Add(field.ToString());
        return fields;
    }
}
