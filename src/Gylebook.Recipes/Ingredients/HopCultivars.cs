using Gylebook.Recipes.Data;
using Gylebook.Science.Data;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A row of the hop table: a public cultivar.</summary>
/// <param name="Id">Stable id: <c>fuggle</c>.</param>
/// <param name="Name">Cultivar name.</param>
/// <param name="Alpha">Typical alpha acids by mass.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record HopCultivar(string Id, string Name, Fraction Alpha, Provenance Provenance)
{
    /// <summary>Range of its alpha acids, % by mass.</summary>
    public required UsualRange AlphaRange { get; init; }

    /// <summary>Range of its beta acids, % by mass.</summary>
    public required UsualRange BetaRange { get; init; }

    /// <summary>Range of its oil, millilitres per 100 g.</summary>
    public required UsualRange OilRange { get; init; }
}

/// <summary>What is usual, from a low end to a high one.</summary>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
public readonly record struct UsualRange(double Low, double High);

/// <summary>Hop cultivars: <c>data/hops.csv</c>.</summary>
public static class HopCultivars
{
    private static readonly Lazy<Table<HopCultivar>> Rows =
        new(() => new Table<HopCultivar>(ReferenceData.Table("hops.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<HopCultivar> All => Rows.Value.All;

    /// <summary>Other names it answers to.</summary>
    public static IReadOnlyList<string> OtherNames(HopCultivar hop) => Rows.Value.OtherNames(hop);

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<HopCultivar> Find(string idOrName) => Rows.Value.Find(idOrName);

    private static HopCultivar Make(CsvRow row) => new(
        row.Required("id"), row.Required("name"), Fraction.FromPercent(row.Number("alpha")), Provenance.Of(row))
    {
        AlphaRange = new UsualRange(row.Number("alphaLow"), row.Number("alphaHigh")),
        BetaRange = new UsualRange(row.Number("betaLow"), row.Number("betaHigh")),
        OilRange = new UsualRange(row.Number("oilLow"), row.Number("oilHigh")),
    };
}
