using Gylebook.Recipes.Data;

namespace Gylebook.Recipes.Ingredients;

/// <summary>The engine's parameters in a brewer's words: <c>data/parameter-words.csv</c>.</summary>
public static class ParameterWords
{
    /// <summary>How parameters of an instrument's own error begin: <c>instrument.hydrometer.offset</c>.</summary>
    internal const string InstrumentPart = "instrument";

    private static readonly Lazy<IReadOnlyList<Row>> Rows =
        new(() => [.. ReferenceData.Table("parameter-words.csv").Rows.Select(row => new Row(row.Required("id"), row.Required("words"), row.Text("told") == "share"))]);

    /// <summary>What is uncertain about a parameter: "how much of the malt your mash converts"; null when nobody has written it down.</summary>
    public static string? Of(string id)
    {
        if (id.Split('.') is [InstrumentPart, var kind, .. var called, _])
        {
            string which = called.Length == 0 ? "" : $" ({string.Join(' ', called)})";
            return Instruments.Find(kind) is { } instrument ? $"what your {instrument.Name}{which} shows too much" : null;
        }

        string asked = IdPattern.WithoutLot(id);
        return RowOf(asked) is { } row ? row.Words.Replace("{}", IdPattern.OpenPart(row.Pattern, asked), StringComparison.Ordinal) : null;
    }

    /// <summary>Whether a parameter is a part of a whole, told in per cent, rather than a factor or a ratio.</summary>
    public static bool IsShare(string id) => RowOf(IdPattern.WithoutLot(id))?.IsShare == true;

    private static Row? RowOf(string asked) => Rows.Value
        .Where(row => IdPattern.Fits(row.Pattern, asked))
        .OrderBy(row => row.Pattern.Count(letter => letter == '*'))
        .FirstOrDefault();

    private sealed record Row(string Pattern, string Words, bool IsShare);
}
