using Gylebook.Recipes.Data;
using Gylebook.Science.Data;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A row of the table of finings.</summary>
/// <param name="Id">Stable id: <c>carrageenan</c>.</param>
/// <param name="Name">Generic name.</param>
/// <param name="Low">Low end of a usual dose, in a hectolitre, in <paramref name="Unit"/>.</param>
/// <param name="High">High end of it.</param>
/// <param name="Unit"><c>g</c> or <c>mL</c> of the thing as it is sold.</param>
/// <param name="IsForTheKettle">Whether it goes into the boiling wort; into cold beer otherwise.</param>
/// <param name="How">How it is made ready and given, in sentences.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Fining(string Id, string Name, double Low, double High, string Unit, bool IsForTheKettle, string How, Provenance Provenance)
{
    private const double LitresInAHectolitre = 100;

    /// <summary>A usual dose for some litres, in <see cref="Unit"/>.</summary>
    /// <param name="litres">Litres of beer or wort, from 0 up.</param>
    public (double Low, double High) DoseFor(double litres) => (Low * litres / LitresInAHectolitre, High * litres / LitresInAHectolitre);
}

/// <summary>What helps beer to clear: <c>data/finings.csv</c>.</summary>
public static class Finings
{
    private static readonly Lazy<Table<Fining>> Rows = new(() => new Table<Fining>(ReferenceData.Table("finings.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<Fining> All => Rows.Value.All;

    /// <summary>Those that are given to cold beer, in the order of the file.</summary>
    public static IReadOnlyList<Fining> OfBeer => [.. All.Where(fining => !fining.IsForTheKettle)];

    /// <summary>Other names it answers to.</summary>
    public static IReadOnlyList<string> OtherNames(Fining fining) => Rows.Value.OtherNames(fining);

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<Fining> Find(string idOrName) => Rows.Value.Find(idOrName);

    private static Fining Make(CsvRow row) => new(
        row.Required("id"), row.Required("name"), row.Number("low"), row.Number("high"),
        row.Text("unit") is "g" or "mL" ? row.Text("unit") : throw row.Wrong("unit", $"is not g or mL: {row.Text("unit")}"),
        row.Text("goes") switch
        {
            "kettle" => true,
            "beer" => false,
            var other => throw row.Wrong("goes", $"is not kettle or beer: {other}"),
        },
        row.Required("how"), Provenance.Of(row));
}
