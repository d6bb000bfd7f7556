using System.Text.Json.Nodes;
using Gylebook.Science.Senses;

namespace Gylebook.Gyles.Tasting;

/// <summary>A mark on a scale that the brewer named.</summary>
/// <param name="Scale">What is tasted for: "toasted seed".</param>
/// <param name="Low">What its low end is called.</param>
/// <param name="High">What its high end is called.</param>
/// <param name="Value">From 0, the low end, to 10.</param>
public sealed record TasteMark(string Scale, string Low, string High, double Value)
{
    /// <summary>The high end of every scale.</summary>
    public const double Most = 10;
}

/// <summary>What one taster said of a beer.</summary>
/// <param name="Taster">Who.</param>
/// <param name="Marks">On the scales.</param>
/// <param name="Notes">In words; empty for none.</param>
public sealed record Tasted(string Taster, IReadOnlyList<TasteMark> Marks, string Notes)
{
    /// <summary>As the log keeps it.</summary>
    public string Write() => new JsonObject
    {
        ["taster"] = Taster,
        ["marks"] = new JsonArray([.. Marks.Select(mark => new JsonObject { ["scale"] = mark.Scale, ["low"] = mark.Low, ["high"] = mark.High, ["value"] = mark.Value })]),
        ["notes"] = Notes,
    }.ToJsonString(DetailText.Plain);

    /// <summary>Of an entry of the log; null where it cannot be read.</summary>
    public static Tasted? Read(string? detail) => DetailText.Parsed(detail) is { } node && node["marks"] is JsonArray marks
        ? new((string?)node["taster"] ?? "", [.. marks.OfType<JsonObject>().Select(mark => new TasteMark((string?)mark["scale"] ?? "", (string?)mark["low"] ?? "", (string?)mark["high"] ?? "", (double?)mark["value"] ?? 0))], (string?)node["notes"] ?? "")
        : null;

    /// <summary>All marks on each scale, in the order in which scales came up.</summary>
    public static IEnumerable<(TasteMark Scale, IReadOnlyList<(string Taster, double Value)> Marks)> ByScale(IEnumerable<Tasted> all) => all
        .SelectMany(one => one.Marks.Select(mark => (one.Taster, Mark: mark))).GroupBy(one => one.Mark.Scale, StringComparer.OrdinalIgnoreCase)
        .Select(own => (own.First().Mark, (IReadOnlyList<(string, double)>)[.. own.Select(one => (one.Taster, one.Mark.Value))]));
}

/// <summary>What tasters answered who were asked whether two beers differ.</summary>
/// <param name="Test">How they were asked.</param>
/// <param name="Tasters">How many.</param>
/// <param name="Right">How many answered right.</param>
/// <param name="About">What the two beers were.</param>
public sealed record Compared(TasteTest Test, int Tasters, int Right, string About)
{
    /// <summary>Names of the tests, as files and the terminal have them.</summary>
    public static IReadOnlyDictionary<string, TasteTest> Names { get; } = new Dictionary<string, TasteTest>(StringComparer.OrdinalIgnoreCase)
    {
        ["triangle"] = TasteTest.Triangle, ["duo-trio"] = TasteTest.DuoTrio, ["paired"] = TasteTest.Paired, ["paired-either-way"] = TasteTest.PairedEitherWay, ["three-alternatives"] = TasteTest.ThreeAlternatives,
    };

    /// <summary>Its name.</summary>
    public string Name => Names.First(pair => pair.Value == Test).Key;

    /// <summary>What is wrong with it; null when nothing.</summary>
    public string? Wrong => Tasters is < 1 or > 500 ? Invariant($"tasters: {Tasters}; must be from 1 to 500") : Right < 0 || Right > Tasters ? Invariant($"right: {Right}; must be from 0 to {Tasters}, the number of tasters") : null;

    /// <summary>As the log keeps it.</summary>
    public string Write() => new JsonObject { ["test"] = Name, ["tasters"] = Tasters, ["right"] = Right, ["about"] = About }.ToJsonString(DetailText.Plain);

    /// <summary>Of an entry of the log; null where it cannot be read.</summary>
    public static Compared? Read(string? detail) => DetailText.Parsed(detail) is { } node && Names.TryGetValue((string?)node["test"] ?? "", out TasteTest test)
        ? new(test, (int?)node["tasters"] ?? 0, (int?)node["right"] ?? 0, (string?)node["about"] ?? "") : null;
}
