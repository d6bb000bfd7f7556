using Gylebook.Recipes.Data;
using Gylebook.Science.Data;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A row of the yeast table: a style-type, no brand.</summary>
/// <param name="Id">Stable id: <c>english-ale</c>.</param>
/// <param name="Name">Trade name: <c>English ale</c>.</param>
/// <param name="MaltoseShare">Share of maltose it takes: 1 for all but low-alcohol strains.</param>
/// <param name="MaltotrioseShare">Share of maltotriose it takes.</param>
/// <param name="DextrinShare">Share of dextrins it takes: 0 for all but diastatic strains.</param>
/// <param name="Low">Coolest it is usually fermented at.</param>
/// <param name="High">Warmest it is usually fermented at.</param>
/// <param name="PitchRate">Million cells per millilitre and degree Plato.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record YeastStyle(
    string Id, string Name, Fraction MaltoseShare, Fraction MaltotrioseShare, Fraction DextrinShare,
    Temperature Low, Temperature High, double PitchRate, Provenance Provenance)
{
    /// <summary>Whether it ferments what other yeast leaves: standing still is not its end.</summary>
    public bool FermentsWhatOthersLeave => Id == "brettanomyces" || DextrinShare.Ratio > 0;

    /// <summary>Low end of its usual apparent attenuation; null when unknown. To compare with, not to reckon from.</summary>
    public Fraction? AttenuationLow { get; init; }

    /// <summary>High end of its usual apparent attenuation; null when unknown.</summary>
    public Fraction? AttenuationHigh { get; init; }

    /// <summary>Whether it is a bottom-fermenting yeast; the others are top-fermenting, and count as that where they are neither.</summary>
    public required bool IsBottomFermenting { get; init; }

    /// <summary>How readily it settles.</summary>
    public required Flocculation Flocculation { get; init; }

    /// <summary>Alcohol, % by volume, at which it usually begins to tire and at which it stops.</summary>
    public required UsualRange AlcoholTolerance { get; init; }
}

/// <summary>How readily yeast settles.</summary>
public enum Flocculation
{
    /// <summary>It stays in the beer for long.</summary>
    Low,

    /// <summary>Between the two.</summary>
    Medium,

    /// <summary>It drops early and fast.</summary>
    High,
}

/// <summary>Yeast by style-type: <c>data/yeasts.csv</c>.</summary>
public static class YeastStyles
{
    private static readonly Lazy<Table<YeastStyle>> Rows =
        new(() => new Table<YeastStyle>(ReferenceData.Table("yeasts.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<YeastStyle> All => Rows.Value.All;

    /// <summary>Other names it answers to.</summary>
    public static IReadOnlyList<string> OtherNames(YeastStyle yeast) => Rows.Value.OtherNames(yeast);

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<YeastStyle> Find(string idOrName) => Rows.Value.Find(idOrName);

    private static YeastStyle Make(CsvRow row) => new(
        row.Required("id"),
        row.Required("name"),
        Fraction.FromRatio(row.Number("maltose")),
        Fraction.FromRatio(row.Number("maltotriose")),
        Fraction.FromRatio(row.Number("dextrin")),
        Temperature.FromCelsius(row.Number("low")),
        Temperature.FromCelsius(row.Number("high")),
        row.Number("pitch"),
        Provenance.Of(row))
    {
        AttenuationLow = Percent(row.NumberOrNull("attenuationLow")),
        AttenuationHigh = Percent(row.NumberOrNull("attenuationHigh")),
        IsBottomFermenting = row.Text("works") switch
        {
            "bottom" => true,
            "top" => false,
            var other => throw row.Wrong("works", $"is not top or bottom: {other}"),
        },
        Flocculation = row.Text("flocculation") switch
        {
            "low" => Flocculation.Low,
            "medium" => Flocculation.Medium,
            "high" => Flocculation.High,
            var other => throw row.Wrong("flocculation", $"is not low, medium or high: {other}"),
        },
        AlcoholTolerance = new UsualRange(row.Number("toleranceLow"), row.Number("toleranceHigh")),
    };

    private static Fraction? Percent(double? percent) => percent is { } known ? Fraction.FromPercent(known) : null;
}
