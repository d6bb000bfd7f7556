using Gylebook.Recipes.Data;
using Gylebook.Science.Data;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Recipes.Ingredients;

/// <summary>Which of the spreads of a figure a prior tells.</summary>
public enum PriorLevel
{
    /// <summary>From brewer to brewer, lot to lot, strain to strain: nothing is known of this one.</summary>
    Between,

    /// <summary>From gyle to gyle of the same brewer: what learning never goes below.</summary>
    Within,

    /// <summary>With a certificate or an assay of one's own.</summary>
    Known,
}

/// <summary>A row of the priors: how far a parameter may lie from its median.</summary>
/// <param name="Id">A parameter's id, or a pattern: <c>hop.*.alpha</c>.</param>
/// <param name="Kind">Which of its sort; empty for any.</param>
/// <param name="Level">Which spread it is.</param>
/// <param name="Width">How wide.</param>
/// <param name="Unit">The parameter's unit.</param>
/// <param name="Tie">What it is drawn together with.</param>
/// <param name="Provenance">Where the width comes from.</param>
public sealed record PriorWidth(string Id, string Kind, PriorLevel Level, Width Width, string Unit, Tie Tie, Provenance Provenance)
{
    /// <summary>The distribution around that median.</summary>
    public Distribution About(double median) => Width.About(median);
}

/// <summary>How uncertain the engine's figures are: <c>data/priors.csv</c>.</summary>
public static class Priors
{
    private static readonly Lazy<IReadOnlyList<PriorWidth>> Rows = new(() => [.. ReferenceData.Table("priors.csv").Rows.Select(Make)]);

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<PriorWidth> All => Rows.Value;

    /// <summary>The prior of a parameter; null when there is none. An exact id goes before a pattern, its kind before any kind.</summary>
    public static PriorWidth? Find(string id, PriorLevel level = PriorLevel.Between, string kind = "") => All
        .Where(row => row.Level == level && (row.Kind.Length == 0 || row.Kind == kind) && IdPattern.Fits(row.Id, id))
        .OrderBy(row => row.Id == id ? 0 : 1)
        .ThenBy(row => row.Kind == kind ? 0 : 1)
        .FirstOrDefault();

    private static PriorWidth Make(CsvRow row) => new(
        row.Required("id"), row.Text("kind"), Word<PriorLevel>(row, "level"),
        new Width(
            Word<Family>(row, "family"), row.NumberOrNull("spread") ?? 0, row.NumberOrNull("low"), row.NumberOrNull("high"),
            Word<WidthEnds>(row, "ends")),
        row.Required("unit"), TieOf(row), Provenance.Of(row));

    private static Tie TieOf(CsvRow row)
    {
        try
        {
            return Tie.Of(row.Text("group"));
        }
        catch (FormatException wrong)
        {
            throw row.Wrong("group", wrong.Message);
        }
    }

    private static T Word<T>(CsvRow row, string column)
        where T : struct, Enum =>
        Enum.TryParse(row.Required(column), ignoreCase: true, out T word) && Enum.IsDefined(word)
            ? word
            : throw row.Wrong(column, $"is not one of {string.Join(", ", Enum.GetNames<T>())}: {row.Text(column)}");
}
