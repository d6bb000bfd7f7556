using Gylebook.Recipes.Data;
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

/// <summary>What the low and high of a prior are.</summary>
public enum PriorEnds
{
    /// <summary>Values of the parameter.</summary>
    Value,

    /// <summary>Added to the median.</summary>
    Added,

    /// <summary>Times the median.</summary>
    Times,
}

/// <summary>A row of the priors: how far a parameter may lie from its median.</summary>
/// <param name="Id">A parameter's id, or a pattern: <c>hop.*.alpha</c>.</param>
/// <param name="Kind">Which of its sort; empty for any.</param>
/// <param name="Level">Which spread it is.</param>
/// <param name="Family">Its shape.</param>
/// <param name="Unit">The parameter's unit.</param>
/// <param name="Group">Parameters of one group are drawn together; empty for none.</param>
/// <param name="Provenance">Where the width comes from.</param>
public sealed record PriorWidth(string Id, string Kind, PriorLevel Level, Family Family, string Unit, string Group, Provenance Provenance)
{
    /// <summary>Standard deviation on the family's own scale; 0 for a family that has only ends.</summary>
    public double Spread { get; init; }

    /// <summary>Low end, as <see cref="Ends"/> says; null for none.</summary>
    public double? Low { get; init; }

    /// <summary>High end, as <see cref="Ends"/> says; null for none.</summary>
    public double? High { get; init; }

    /// <summary>What the ends are.</summary>
    public PriorEnds Ends { get; init; }

    /// <summary>The distribution around that median, which is never moved: an end that it lies beyond gives way to it.</summary>
    public Distribution About(double median) => Family == Family.Point
        ? new Distribution(Family.Point, median, 0, median, median)
        : new Distribution(
            Family, median, Spread,
            Math.Min(median, End(Low, median, double.NegativeInfinity)),
            Math.Max(median, End(High, median, double.PositiveInfinity)));

    private double End(double? end, double median, double none) => (end, Ends) switch
    {
        (null, _) => none,
        ({ } added, PriorEnds.Added) => median + added,
        ({ } times, PriorEnds.Times) => median * times,
        ({ } value, _) => value,
    };
}

/// <summary>How uncertain the engine's figures are: <c>data/priors.csv</c>.</summary>
public static class Priors
{
    private static readonly Lazy<IReadOnlyList<PriorWidth>> Rows = new(() => [.. CsvTable.Embedded("priors.csv").Rows.Select(Make)]);

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<PriorWidth> All => Rows.Value;

    /// <summary>The prior of a parameter; null when there is none. An exact id goes before a pattern, its kind before any kind.</summary>
    public static PriorWidth? Find(string id, PriorLevel level = PriorLevel.Between, string kind = "") => All
        .Where(row => row.Level == level && (row.Kind.Length == 0 || row.Kind == kind) && Fits(row.Id, id))
        .OrderBy(row => row.Id == id ? 0 : 1)
        .ThenBy(row => row.Kind == kind ? 0 : 1)
        .FirstOrDefault();

    private static bool Fits(string pattern, string id)
    {
        string[] parts = pattern.Split('.'), asked = id.Split('.');
        return parts.Length == asked.Length && parts.Zip(asked).All(pair => pair.First == "*" || pair.First == pair.Second);
    }

    private static PriorWidth Make(CsvRow row) => new(
        row.Required("id"), row.Text("kind"), Word<PriorLevel>(row, "level"), Word<Family>(row, "family"),
        row.Required("unit"), row.Text("group"), row.Provenance)
    {
        Spread = row.NumberOrNull("spread") ?? 0,
        Low = row.NumberOrNull("low"),
        High = row.NumberOrNull("high"),
        Ends = Word<PriorEnds>(row, "ends"),
    };

    private static T Word<T>(CsvRow row, string column)
        where T : struct, Enum =>
        Enum.TryParse(row.Required(column), ignoreCase: true, out T word) && Enum.IsDefined(word)
            ? word
            : throw row.Wrong(column, $"is not one of {string.Join(", ", Enum.GetNames<T>())}: {row.Text(column)}");
}
