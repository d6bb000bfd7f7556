using Gylebook.Recipes.Data;
using Gylebook.Science.Data;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A row of the sugar table: sugars, syrups and malt extracts, as shares of the mass as is.</summary>
public sealed record Sugar
{
    /// <summary>Stable id: <c>white-sugar</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Trade name: <c>white sugar</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it is a malt extract, and so brings malt's buffering and not only sugar.</summary>
    public bool IsMaltExtract => Id.Contains("malt-extract", StringComparison.Ordinal);

    /// <summary>What sort of line it makes: an extract or a sugar.</summary>
    public IngredientKind Kind => Name.Contains("extract", StringComparison.OrdinalIgnoreCase) ? IngredientKind.Extract : IngredientKind.Sugar;

    /// <summary>Water.</summary>
    public required double Water { get; init; }

    /// <summary>Sucrose.</summary>
    public double Sucrose { get; init; }

    /// <summary>Glucose, anhydrous.</summary>
    public double Glucose { get; init; }

    /// <summary>Fructose.</summary>
    public double Fructose { get; init; }

    /// <summary>Maltose, anhydrous.</summary>
    public double Maltose { get; init; }

    /// <summary>Maltotriose.</summary>
    public double Maltotriose { get; init; }

    /// <summary>Dextrins and other higher sugars.</summary>
    public double Dextrin { get; init; }

    /// <summary>Lactose, anhydrous.</summary>
    public double Lactose { get; init; }

    /// <summary>Protein, dissolved.</summary>
    public double Protein { get; init; }

    /// <summary>Minerals.</summary>
    public double Minerals { get; init; }

    /// <summary>Its colour as a malt's; null when unknown.</summary>
    public MaltColour? Colour { get; init; }

    /// <summary>Allergen words, parted by semicolons, or empty: <c>barley</c>, <c>milk</c>.</summary>
    public string Allergen { get; init; } = "";

    /// <summary>Where the row comes from.</summary>
    public required Provenance Provenance { get; init; }
}

/// <summary>Sugars, syrups and malt extracts: <c>data/sugars.csv</c>.</summary>
public static class Sugars
{
    private static readonly Lazy<Table<Sugar>> Rows =
        new(() => new Table<Sugar>(ReferenceData.Table("sugars.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<Sugar> All => Rows.Value.All;

    /// <summary>Other names it answers to.</summary>
    public static IReadOnlyList<string> OtherNames(Sugar sugar) => Rows.Value.OtherNames(sugar);

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<Sugar> Find(string idOrName) => Rows.Value.Find(idOrName);

    private static Sugar Make(CsvRow row) => new()
    {
        Id = row.Required("id"),
        Name = row.Required("name"),
        Water = row.Number("water"),
        Sucrose = row.Number("sucrose"),
        Glucose = row.Number("glucose"),
        Fructose = row.Number("fructose"),
        Maltose = row.Number("maltose"),
        Maltotriose = row.Number("maltotriose"),
        Dextrin = row.Number("dextrin"),
        Lactose = row.Number("lactose"),
        Protein = row.Number("protein"),
        Minerals = row.Number("minerals"),
        Colour = row.NumberOrNull("colour") is { } ebc ? MaltColour.FromEbc(ebc) : null,
        Allergen = row.Text("allergen"),
        Provenance = Provenance.Of(row),
    };
}
