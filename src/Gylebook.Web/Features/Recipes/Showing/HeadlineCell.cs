using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Pictures;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>A headline number as the page shows it: in words, and as a point or a band on a plain scale.</summary>
/// <param name="Name">Stable name.</param>
/// <param name="Label">For people.</param>
/// <param name="Value">The likely value.</param>
public sealed record HeadlineCell(string Name, string Label, string Value)
{
    /// <summary>What the scale shows; null for none.</summary>
    public Band? Band { get; init; }

    /// <summary>Left end of the scale.</summary>
    public double From { get; init; }

    /// <summary>Right end of the scale.</summary>
    public double To { get; init; }

    /// <summary>Left end in words.</summary>
    public string FromText { get; init; } = "";

    /// <summary>Right end in words.</summary>
    public string ToText { get; init; } = "";

    /// <summary>What else to say of it.</summary>
    public string Note { get; init; } = "";

    /// <summary>All cells of an outlook. The scales end where most beers do; they judge nothing.</summary>
    public static IReadOnlyList<HeadlineCell> Of(RecipeOutlook outlook, Shown shown)
    {
        PackageOutlook? package = outlook.Forecast.Package;
        List<HeadlineCell?> cells =
        [
            Cell(outlook, "originalGravity", "Original gravity, all in", shown.Gravity, 1, 1.12),
            Cell(outlook, "finalGravity", "Final gravity", shown.Gravity, 1, 1.04),
            Cell(outlook, "alcoholByVolume", "Alcohol", shown.Percent, 0, 14),
            Cell(outlook, "bitterness", "Bitterness", shown.Ibu, 0, 100),
            Cell(outlook, "colourSrm", "Colour", shown.Srm, 0, 50),
            Cell(outlook, "packagedLitres", package is null ? "Packaged" : $"In {Plural(package.In)}", shown.Litres, 0, null) is { } litres
                ? litres with { Note = PackageWords(package, shown) }
                : null,
            Allergens(outlook.Forecast.Allergens),
            Cell(outlook, "energyKcalPer100ml", "Energy", kcal => $"{shown.Number(kcal, 0)}{Pictures.Shown.Space}kcal", 0, 120) is { } energy
                ? energy with { Note = "in 100 mL" }
                : null,
            Cell(outlook, "sludgeLitres", "Sludge", shown.Litres, 0, null),
            Cell(outlook, "mashPh", "pH of the mash, at 20 °C", ph => shown.Number(ph, 2), 4.8, 6.2),
            Cell(outlook, "beerPh", "pH of the beer, at 20 °C", ph => shown.Number(ph, 1), 3, 5),
        ];
        return [.. cells.OfType<HeadlineCell>()];
    }

    /// <summary>By the EU list, with what may only be there; the US statement stands below it, since the lists differ.</summary>
    private static HeadlineCell Allergens(AllergenOutlook allergens)
    {
        string contains = allergens.Eu.Count == 0 ? "nothing on the lists" : string.Join(", ", allergens.Eu);
        string may = allergens.MayContainEu.Count == 0 ? "" : $"; may contain {string.Join(", ", allergens.MayContainEu)}";
        return new HeadlineCell("allergens", "Contains", contains + may)
        {
            Note = $"by the EU's list; by that of the US: {allergens.StatementUs} As the tables and sheets say; the pack decides",
        };
    }

    private static HeadlineCell? Cell(RecipeOutlook outlook, string name, string label, Func<double, string> words, double from, double? to)
    {
        if (outlook[name] is not { } band)
        {
            return null;
        }

        var cell = new HeadlineCell(name, label, words(band.Likely))
        {
            Note = band.Kind == BandKind.Point ? "" : $"{words(band.Low)} to {words(band.High)}",
        };
        return to is double end ? cell with { Band = band, From = from, To = end, FromText = Plain(words(from)), ToText = Plain(words(end)) } : cell;
    }

    /// <summary>An end of a scale: no decimals that say nothing.</summary>
    private static string Plain(string end) => end.Replace($".0{Pictures.Shown.Space}", Pictures.Shown.Space, StringComparison.Ordinal)
        .Replace($",0{Pictures.Shown.Space}", Pictures.Shown.Space, StringComparison.Ordinal);

    private static string PackageWords(PackageOutlook? package, Shown shown) => package is null ? "" : string.Join(" · ", new[]
    {
        package.Count is int count && count > 1 ? Invariant($"{count} {Plural(package.In)}") : null,
        shown.Volumes(package.Co2Volumes),
        package.PrimingSugarGrams > 0 ? $"{shown.Kilograms(package.PrimingSugarGrams / 1000)} of white sugar to prime" : null,
    }.Where(text => text is not null));

    private static string Plural(string kind) => kind.EndsWith('s') ? kind : kind + "s";
}
