using System.Text.RegularExpressions;

namespace Gylebook.Recipes.Editing;

/// <summary>What people call a recipe's fields.</summary>
public static partial class FieldWords
{
    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["name"] = "name",
        ["notes"] = "notes",
        ["package"] = "package",
        ["package.volume"] = "package, volume",
        ["package.in"] = "packaged in",
        ["package.carbonation"] = "carbonation",
        ["mash"] = "mash",
        ["mash.method"] = "mash, method",
        ["mash.rests"] = "mash rests",
        ["mash.rests[].temperature"] = "mash, temperature",
        ["mash.rests[].time"] = "mash, time",
        ["mash.sparge"] = "sparge",
        ["mash.sparge.method"] = "sparge, method",
        ["mash.sparge.volume"] = "sparge, volume",
        ["mash.sparge.temperature"] = "sparge, temperature",
        ["liquor"] = "liquor",
        ["liquor.strike"] = "strike liquor",
        ["liquor.topUp"] = "top-up liquor",
        ["souring"] = "souring",
        ["souring.culture"] = "souring, culture",
        ["souring.temperature"] = "souring, temperature",
        ["souring.ph"] = "souring, pH",
        ["souring.time"] = "souring, time",
        ["boil"] = "boil",
        ["boil.time"] = "boil, time",
        ["stand"] = "stand",
        ["stand.temperature"] = "stand, temperature",
        ["stand.time"] = "stand, time",
        ["ferment"] = "fermentation",
        ["ferment[].temperature"] = "fermentation, temperature",
        ["ferment[].time"] = "fermentation, time",
        ["portions"] = "portions",
        ["portions[].name"] = "portion, name",
        ["portions[].share"] = "portion, share",
    };

    private static readonly Dictionary<string, string> OfLine = new(StringComparer.Ordinal)
    {
        ["amount"] = "", ["at"] = "when", ["as"] = "name", ["topUp"] = "top-up",
        ["storage.temperature"] = "kept at", ["storage.pack"] = "pack", ["storage.lost"] = "lost in six months",
    };

    /// <summary>A field outside the ingredients: <c>mash, temperature</c>.</summary>
    public static string Of(string path) => Words.GetValueOrDefault(Places().Replace(path, "[]"), path);

    /// <summary>A field of a line, the amount being what one means anyway: <c>Fuggle, alpha</c>.</summary>
    public static string OfField(DraftLine line, string key) =>
        OfLine.GetValueOrDefault(key, key) is { Length: > 0 } word ? $"{line.Name}, {word}" : line.Name;

    /// <summary>A line in one breath: <c>3.6 kg, mash</c>.</summary>
    public static string OfLineAsWhole(DraftLine line) =>
        string.Join(", ", new[] { line.Amount, line.Alpha, line.Colour, line.Form, line.Age, line.Cells, line.Attenuation, line.At, line.Portion }.Where(text => !string.IsNullOrEmpty(text)));

    /// <summary>What stands for a field that says nothing.</summary>
    public static string Nothing(string path) => path.StartsWith("liquor.", StringComparison.Ordinal) ? "planned" : "nothing";

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Places();
}
