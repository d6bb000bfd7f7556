using Gylebook.Science.Data;

namespace Gylebook.Recipes.Ingredients;

/// <summary>Where a figure comes from, and how far to trust it.</summary>
/// <param name="Source">Publication, data set or measurement.</param>
/// <param name="Status"><c>seen</c>, <c>memory</c>, <c>common practice</c>, <c>computed</c>, <c>entered</c> or <c>invented</c>.</param>
public sealed record Provenance(string Source, string Status)
{
    /// <summary>Where a row comes from: its columns <c>source</c> and <c>status</c>.</summary>
    /// <exception cref="InvalidDataException">One of them is empty or not there.</exception>
    internal static Provenance Of(CsvRow row) => new(row.Required("source"), row.Required("status"));

    /// <summary>What the brewer typed.</summary>
    public static Provenance Entered { get; } = new("the brewer's own figure", "entered");
}
