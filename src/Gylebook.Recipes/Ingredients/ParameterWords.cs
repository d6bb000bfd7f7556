using Gylebook.Recipes.Data;

namespace Gylebook.Recipes.Ingredients;

/// <summary>The engine's parameters in a brewer's words: <c>data/parameter-words.csv</c>.</summary>
public static class ParameterWords
{
    /// <summary>How parameters of an instrument's own error begin: <c>instrument.hydrometer.offset</c>.</summary>
    internal const string InstrumentPart = "instrument";

    private static readonly Lazy<IReadOnlyList<(string Pattern, string Words)>> Rows =
        new(() => [.. ReferenceData.Table("parameter-words.csv").Rows.Select(row => (row.Required("id"), row.Required("words")))]);

    /// <summary>What is uncertain about a parameter: "how much of the malt your mash converts"; null when nobody has written it down.</summary>
    public static string? Of(string id)
    {
        if (id.Split('.') is [InstrumentPart, var kind, .. var called, _])
        {
            string which = called.Length == 0 ? "" : $" ({string.Join(' ', called)})";
            return Instruments.Find(kind) is { } instrument ? $"what your {instrument.Name}{which} shows too much" : null;
        }

        string asked = IdPattern.WithoutLot(id);
        (string? pattern, string? words) = Rows.Value
            .Where(row => IdPattern.Fits(row.Pattern, asked))
            .OrderBy(row => row.Pattern.Count(letter => letter == '*'))
            .FirstOrDefault();
        return words?.Replace("{}", IdPattern.OpenPart(pattern!, asked), StringComparison.Ordinal);
    }
}
