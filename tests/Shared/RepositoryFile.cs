using System.Globalization;

namespace Gylebook.Tests.Shared;

/// <summary>Finds and reads the tables in the repository's own <c>data</c> folder.</summary>
internal static class RepositoryFile
{
    /// <summary>The full path of a file named from the repository's root.</summary>
    public static string PathOf(string relativePath)
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Gylebook.slnx")))
        {
            folder = folder.Parent;
        }

        return folder is null
            ? throw new DirectoryNotFoundException("No Gylebook.slnx above the tests.")
            : Path.Combine(folder.FullName, relativePath);
    }

    /// <summary>The named columns of a CSV table as theory rows; an empty cell is not a number.</summary>
    public static IEnumerable<object[]> Numbers(string relativePath, params string[] columns)
    {
        string[] lines = [.. File.ReadLines(PathOf(relativePath)).Where(line => line.Length > 0 && line[0] != '#')];
        string[] header = lines[0].Split(',');
        int[] places = [.. columns.Select(column => Array.IndexOf(header, column))];
        if (places.Contains(-1))
        {
            throw new InvalidDataException($"{relativePath} has columns {lines[0]}; asked for {string.Join(',', columns)}.");
        }

        return lines.Skip(1).Select(line => line.Split(','))
            .Select(cells => places.Select(place => (object)Number(cells[place])).ToArray());
    }

    /// <summary>Whether no cell of the row is empty.</summary>
    public static bool IsComplete(object[] row) => !row.Contains(double.NaN);

    private static double Number(string cell) =>
        cell.Length == 0 ? double.NaN : double.Parse(cell, CultureInfo.InvariantCulture);
}
