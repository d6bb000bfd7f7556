using Gylebook.Recipes.Data;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Data;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Liquors;

/// <summary>A balance of liquor, by what it is for.</summary>
/// <param name="Id">Stable id: <c>dry</c>.</param>
/// <param name="Name">What it is for: <c>for hop-forward ales</c>.</param>
/// <param name="Ions">mg/L; bicarbonate is what the charges leave, told for comparison.</param>
/// <param name="Provenance">Where it comes from.</param>
public sealed record WaterBalance(string Id, string Name, IonProfile Ions, Provenance Provenance)
{
    /// <summary>The ions as wishes: all but bicarbonate, which the mash's pH settles.</summary>
    public IReadOnlyList<IonTarget> Targets =>
        [.. Wanted.Select(ion => new IonTarget(ion, Ions[ion]))];

    private static readonly Ion[] Wanted = [Ion.Calcium, Ion.Magnesium, Ion.Sodium, Ion.Sulphate, Ion.Chloride];
}

/// <summary>Named balances: <c>data/water-balances.csv</c>.</summary>
public static class WaterBalances
{
    private static readonly Lazy<Table<WaterBalance>> Rows =
        new(() => new Table<WaterBalance>(ReferenceData.Table("water-balances.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<WaterBalance> All => Rows.Value.All;

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<WaterBalance> Find(string idOrName) => Rows.Value.Find(idOrName);

    private static WaterBalance Make(CsvRow row) => new(
        row.Required("id"),
        row.Required("name"),
        new IonProfile(
            row.Number("calcium"), row.Number("magnesium"), row.Number("sodium"), 0,
            row.Number("bicarbonate"), row.Number("sulphate"), row.Number("chloride")),
        Provenance.Of(row));
}
