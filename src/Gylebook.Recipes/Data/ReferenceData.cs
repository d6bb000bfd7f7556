using Gylebook.Science.Data;

namespace Gylebook.Recipes.Data;

/// <summary>What travels inside this assembly: the tables of <c>data/</c> and the kit to start from.</summary>
public static class ReferenceData
{
    /// <summary>A table, by its file name in <c>data/</c>.</summary>
    /// <exception cref="InvalidDataException">There is none, or it does not read.</exception>
    public static CsvTable Table(string file) => CsvTable.Parse(file, Text("data/" + file));

    /// <summary>A text, by its name: <c>kits/lantern-shed.json</c>.</summary>
    /// <exception cref="InvalidDataException">There is none.</exception>
    internal static string Text(string name) => EmbeddedText.Of(typeof(ReferenceData).Assembly, name);
}
