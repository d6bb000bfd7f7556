using Gylebook.Recipes.Data;
using Gylebook.Science.Data;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A row of the malt table.</summary>
/// <param name="Id">Stable id: <c>pale-ale-malt</c>.</param>
/// <param name="Name">Trade name: <c>pale ale malt</c>.</param>
/// <param name="Family">What its extract is made of.</param>
/// <param name="ExtractFineDry">Laboratory extract, fine grind, on dry matter.</param>
/// <param name="Moisture">Water, as is.</param>
/// <param name="Colour">Certificate colour.</param>
/// <param name="DiastaticPower">Degrees Lintner; 0 when it brings no enzyme.</param>
/// <param name="Cereal">The cereal, for allergens: barley, wheat, rye, oats, maize, rice.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Malt(
    string Id, string Name, MaltFamily Family, Fraction ExtractFineDry, Fraction Moisture, MaltColour Colour,
    double DiastaticPower, string Cereal, Provenance Provenance)
{
    /// <summary>For raw grain, the temperatures at which its starch opens, °C; null for malt, and for flakes, which heat has opened.</summary>
    public (double Low, double High)? OpensAt { get; init; }

    /// <summary>What is known of this very malt, beyond its type; null for a row of the table.</summary>
    public OwnMalt? Own { get; init; }

    /// <summary>What draws call it by.</summary>
    public string Key => Own?.Key ?? Id;

    /// <summary>Acid and buffer in the mash at that colour: as measured, or as the table has them; null when nobody has measured.</summary>
    public MaltTitration? TitrationAt(MaltColour colour) => Own?.Figures.Acidity ?? MaltTitrations.Of(this, colour);

    /// <summary>A malt like this row of which more is known.</summary>
    public Malt As(OwnMalt own, string name) => this with
    {
        Name = name,
        Own = own,
        ExtractFineDry = own.Figures.ExtractDry ?? ExtractFineDry,
        Moisture = own.Figures.Moisture?.Value ?? Moisture,
        Colour = own.Figures.Colour?.Value ?? Colour,
        DiastaticPower = own.Figures.DiastaticPower?.Lintner ?? DiastaticPower,
    };
}

/// <summary>Malts and mashed grains, by generic type: <c>data/malts.csv</c>.</summary>
public static class Malts
{
    private static readonly Lazy<Table<Malt>> Rows =
        new(() => new Table<Malt>(ReferenceData.Table("malts.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<Malt> All => Rows.Value.All;

    /// <summary>Other names it answers to.</summary>
    public static IReadOnlyList<string> OtherNames(Malt malt) => Rows.Value.OtherNames(malt);

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<Malt> Find(string idOrName) => Rows.Value.Find(idOrName);

    private static Malt Make(CsvRow row) => new(
        row.Required("id"),
        row.Required("name"),
        Family(row),
        Fraction.FromPercent(row.Number("extract")),
        Fraction.FromPercent(row.Number("moisture")),
        MaltColour.FromEbc(row.Number("colour")),
        row.Number("power"),
        row.Required("cereal"),
        Provenance.Of(row))
    {
        OpensAt = row.Yes("closed") ? Gelatinisation.SpanCelsius(CerealOf(row)) : null,
    };

    private static Cereal CerealOf(CsvRow row) => Enum.TryParse(row.Required("cereal"), ignoreCase: true, out Cereal cereal)
        ? cereal
        : throw row.Wrong("cereal", $"has no temperature of gelatinisation: {row.Required("cereal")}");

    private static MaltFamily Family(CsvRow row) => row.Required("family") switch
    {
        "base" => MaltFamily.Base,
        "raw" => MaltFamily.Raw,
        "caramel" => MaltFamily.Caramel,
        "dextrin" => MaltFamily.Dextrin,
        "roast" => MaltFamily.Roast,
        var other => throw row.Wrong("family", $"is not base, raw, caramel, dextrin or roast: {other}"),
    };
}
