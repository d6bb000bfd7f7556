using Gylebook.Recipes.Data;
using Gylebook.Science.Data;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A row of the table of lactic cultures: a kind, no brand.</summary>
/// <param name="Id">Stable id: <c>lactobacillus</c>.</param>
/// <param name="Name">What people call it.</param>
/// <param name="IsMixed">Whether it makes ethanol and carbon dioxide beside lactic acid (heterofermentative).</param>
/// <param name="Low">Coolest it is usually kept at to sour.</param>
/// <param name="High">Warmest it is usually kept at.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record LacticCulture(string Id, string Name, bool IsMixed, Temperature Low, Temperature High, Provenance Provenance);

/// <summary>Cultures that sour wort: <c>data/lactic-cultures.csv</c>.</summary>
public static class LacticCultures
{
    private static readonly Lazy<Table<LacticCulture>> Rows =
        new(() => new Table<LacticCulture>(ReferenceData.Table("lactic-cultures.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<LacticCulture> All => Rows.Value.All;

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<LacticCulture> Find(string idOrName) => Rows.Value.Find(idOrName);

    private static LacticCulture Make(CsvRow row) => new(
        row.Required("id"),
        row.Required("name"),
        row.Text("makes") switch
        {
            "lactic" => false,
            "mixed" => true,
            var other => throw row.Wrong("makes", $"is not lactic or mixed: {other}"),
        },
        Temperature.FromCelsius(row.Number("low")),
        Temperature.FromCelsius(row.Number("high")),
        Provenance.Of(row));
}
