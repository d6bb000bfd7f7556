using Gylebook.Recipes.Data;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A row of the table of finings.</summary>
/// <param name="Id">Stable id: <c>carrageenan</c>.</param>
/// <param name="Name">Generic name.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Fining(string Id, string Name, Provenance Provenance);

/// <summary>What helps beer to clear: <c>data/finings.csv</c>.</summary>
public static class Finings
{
    private static readonly Lazy<Table<Fining>> Rows = new(() => new Table<Fining>(
        ReferenceData.Table("finings.csv"),
        row => new Fining(row.Required("id"), row.Required("name"), Provenance.Of(row))));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<Fining> All => Rows.Value.All;

    /// <summary>Other names it answers to.</summary>
    public static IReadOnlyList<string> OtherNames(Fining fining) => Rows.Value.OtherNames(fining);

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<Fining> Find(string idOrName) => Rows.Value.Find(idOrName);
}
