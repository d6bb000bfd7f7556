using System.Globalization;

namespace Gylebook.Science;

/// <summary>A table of <c>data/</c>, carried inside this library as text.</summary>
/// <remarks>Lines that begin with <c>#</c> say where the figures come from; the first other line names the columns.</remarks>
internal sealed class PublishedTable
{
    private readonly string[] _columns;
    private readonly string[][] _rows;

    private PublishedTable(string[] columns, string[][] rows) => (_columns, _rows) = (columns, rows);

    /// <summary>How many rows of figures there are.</summary>
    public int RowCount => _rows.Length;

    /// <summary>The table in that file, such as <c>limit-of-attenuation.csv</c>.</summary>
    public static PublishedTable Read(string fileName)
    {
        using var stream = typeof(PublishedTable).Assembly.GetManifestResourceStream(fileName)
            ?? throw new InvalidOperationException($"The table {fileName} is not part of this library.");
        using var reader = new StreamReader(stream);
        var rows = new List<string[]>();
        while (reader.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
            {
                rows.Add(line.Split(','));
            }
        }

        return new PublishedTable(rows[0], [.. rows.Skip(1)]);
    }

    /// <summary>A column as it is written.</summary>
    public string[] Words(string column)
    {
        int at = Array.IndexOf(_columns, column);
        return at >= 0
            ? [.. _rows.Select(row => row[at])]
            : throw new InvalidOperationException($"The table has no column {column}.");
    }

    /// <summary>A column as numbers.</summary>
    public double[] Numbers(string column) =>
        [.. Words(column).Select(word => double.Parse(word, NumberStyles.Float, CultureInfo.InvariantCulture))];
}
