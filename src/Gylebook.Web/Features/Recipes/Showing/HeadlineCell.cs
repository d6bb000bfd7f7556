using Gylebook.Forecast.Report.Beer;
using Gylebook.Pictures;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>A headline number as the page shows it: in words.</summary>
/// <param name="Name">Stable name.</param>
/// <param name="Label">For people.</param>
/// <param name="Value">The likely value.</param>
public sealed record HeadlineCell(string Name, string Label, string Value)
{
    /// <summary>What else to say of it.</summary>
    public string Note { get; init; } = "";

    /// <summary>The six that stand first: what there will be to drink, and what it is like.</summary>
    public static IReadOnlyList<HeadlineCell> First(RecipeOutlook outlook, Shown shown)
    {
        PackageOutlook? package = outlook.Forecast.Package;
        return Known(
            Cell(outlook, "packagedLitres", package is null ? "Beer" : $"Beer in {Plural(package.In)}", shown.Litres) is { } litres
                ? litres with { Note = Joined(litres.Note, PackageWords(package, shown)) }
                : null,
            Cell(outlook, "alcoholByVolume", "Alcohol", shown.Percent),
            Cell(outlook, "originalGravity", "Original gravity, all in", shown.Gravity),
            Cell(outlook, "finalGravity", "Final gravity", shown.Gravity),
            Cell(outlook, "bitterness", "Bitterness", shown.Ibu),
            Cell(outlook, "colourSrm", "Colour", shown.Srm));
    }

    /// <summary>What else there is to tell, in a line.</summary>
    public static IReadOnlyList<HeadlineCell> Then(RecipeOutlook outlook, Shown shown) => Known(
        Cell(outlook, "energyKcalPer100ml", "Energy", kcal => $"{shown.Number(kcal, 0)}{Pictures.Shown.Space}kcal in 100{Pictures.Shown.Space}mL"),
        Cell(outlook, "sludgeLitres", "Sludge bed", shown.Litres),
        Cell(outlook, "mashPh", "pH of the mash at 20 °C", ph => shown.Number(ph, 2)),
        Cell(outlook, "beerPh", "pH of the beer at 20 °C", ph => shown.Number(ph, 1)),
        Cost(outlook, shown));

    private static IReadOnlyList<HeadlineCell> Known(params IEnumerable<HeadlineCell?> cells) => [.. cells.OfType<HeadlineCell>()];

    private static string Joined(params IEnumerable<string> words) => string.Join(" · ", words.Where(text => text.Length > 0));

    private static HeadlineCell? Cost(RecipeOutlook outlook, Shown shown) => outlook["costPerLitre"] is { } band
        ? Cell(outlook, "costPerLitre", "Cost", cost => shown.PerLitre(cost, band.Unit[..band.Unit.IndexOf('/')]))
        : null;

    private static HeadlineCell? Cell(RecipeOutlook outlook, string name, string label, Func<double, string> words) =>
        outlook[name] is not { } band ? null : new HeadlineCell(name, label, words(band.Likely))
        {
            Note = outlook.BandOf(name) is { } ends ? Between(words(ends.Low), words(ends.High)) : "",
        };

    /// <summary>The unit is said once: <c>16.7 to 22.1 L</c>.</summary>
    private static string Between(string low, string high)
    {
        char[] spaces = [' ', Pictures.Shown.Space[0]];
        (int lowEnds, int highEnds) = (low.IndexOfAny(spaces), high.IndexOfAny(spaces));
        return lowEnds > 0 && highEnds > 0 && low[lowEnds..] == high[highEnds..] ? $"{low[..lowEnds]} to {high}" : $"{low} to {high}";
    }

    private static string PackageWords(PackageOutlook? package, Shown shown) => package is null ? "" : string.Join(" · ", new[]
    {
        package.Count is int count && count > 1 ? Invariant($"{count} {Plural(package.In)}") : null,
        shown.Volumes(package.Co2Volumes),
        package.PrimingSugarGrams > 0 ? $"{shown.Kilograms(package.PrimingSugarGrams / 1000)} of white sugar to prime" : null,
    }.Where(text => text is not null));

    private static string Plural(string kind) => kind.EndsWith('s') ? kind : kind + "s";
}
