using System.Collections.Concurrent;
using Gylebook.Recipes.Data;
using Gylebook.Science.Data;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A row of the starting values: a figure that a lab or a brewer could measure again.</summary>
/// <param name="Id">Stable id: <c>break.share</c>.</param>
/// <param name="Value">What the engine starts from.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="What">What it means.</param>
/// <param name="Provenance">Where it comes from.</param>
public sealed record StartingValue(string Id, double Value, string Unit, string What, Provenance Provenance)
{
    /// <summary>Low end of a stated range; null when none is stated, which does not mean certain.</summary>
    public double? Low { get; init; }

    /// <summary>High end of a stated range; null when none is stated.</summary>
    public double? High { get; init; }
}

/// <summary>What the engine starts from until someone measures: <c>data/starting-values.csv</c>.</summary>
public static class StartingValues
{
    private static readonly Lazy<Table<StartingValue>> Rows =
        new(() => new Table<StartingValue>(ReferenceData.Table("starting-values.csv"), Make));

    private static readonly ConcurrentDictionary<string, bool> AskedFor = new(StringComparer.Ordinal);

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<StartingValue> All => Rows.Value.All;

    /// <summary>Ids asked for since the program started. A row that is never among them is a second copy, waiting to differ: a test looks.</summary>
    public static IReadOnlyCollection<string> Asked => [.. AskedFor.Keys];

    /// <summary>The starting value of that id: <c>StartingValues.Of("break.share")</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is none of that id.</exception>
    public static StartingValue Of(string id)
    {
        AskedFor.TryAdd(id, true);
        return Rows.Value.Of(id);
    }

    private static StartingValue Make(CsvRow row) => new(
        row.Required("id"), row.Number("value"), row.Required("unit"), row.Required("what"), Provenance.Of(row))
    {
        Low = row.NumberOrNull("low"),
        High = row.NumberOrNull("high"),
    };
}
