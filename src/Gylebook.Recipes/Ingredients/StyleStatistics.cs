using Gylebook.Recipes.Data;
using Gylebook.Science.Data;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A row of the style table: the numbers of a published guideline.</summary>
/// <param name="Id">Stable id: <c>best-bitter</c>.</param>
/// <param name="Name">The style's name.</param>
/// <param name="Edition">The guideline and its year.</param>
/// <param name="Provenance">How the numbers came here.</param>
public sealed record StyleStatistics(string Id, string Name, string Edition, Provenance Provenance)
{
    /// <summary>Original gravity.</summary>
    public required UsualRange OriginalGravity { get; init; }

    /// <summary>Final gravity.</summary>
    public required UsualRange FinalGravity { get; init; }

    /// <summary>Bitterness, IBU.</summary>
    public required UsualRange Bitterness { get; init; }

    /// <summary>Colour, SRM.</summary>
    public required UsualRange Colour { get; init; }

    /// <summary>Alcohol, % by volume.</summary>
    public required UsualRange Alcohol { get; init; }
}

/// <summary>Vital statistics of beer styles: <c>data/style-statistics.csv</c>.</summary>
public static class StyleTable
{
    private static readonly Lazy<Table<StyleStatistics>> Rows =
        new(() => new Table<StyleStatistics>(ReferenceData.Table("style-statistics.csv"), Make));

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<StyleStatistics> All => Rows.Value.All;

    /// <summary>The one of that id or name, or the names that come nearest.</summary>
    public static Found<StyleStatistics> Find(string idOrName) => Rows.Value.Find(idOrName);

    private static StyleStatistics Make(CsvRow row) => new(
        row.Required("id"), row.Required("name"), row.Required("edition"), Provenance.Of(row))
    {
        OriginalGravity = Range(row, "og"),
        FinalGravity = Range(row, "fg"),
        Bitterness = Range(row, "ibu"),
        Colour = Range(row, "srm"),
        Alcohol = Range(row, "abv"),
    };

    private static UsualRange Range(CsvRow row, string of)
    {
        UsualRange range = new(row.Number(of + "Low"), row.Number(of + "High"));
        return range.Low < range.High ? range : throw row.Wrong(of + "High", "is not above the low end");
    }
}
