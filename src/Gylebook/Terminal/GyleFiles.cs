using Gylebook.Forecast.Learning;
using Gylebook.Recipes;

namespace Gylebook.Terminal;

/// <summary>The two files of a finished gyle, as they were typed: RECIPE=READINGS.</summary>
/// <param name="Recipe">The recipe's file.</param>
/// <param name="Readings">That of its readings.</param>
internal sealed record GyleFiles(string Recipe, string Readings)
{
    /// <summary>The gyle; null where one of its files cannot be read, or before they are opened.</summary>
    public FinishedGyle? Gyle { get; private init; }

    /// <summary>What was found in them.</summary>
    public IReadOnlyList<Finding> Findings { get; private init; } = [];

    /// <summary>The files that a text names; null where it names no two.</summary>
    public static GyleFiles? Of(string typed) =>
        typed.Split('=') is [{ Length: > 0 } recipe, { Length: > 0 } readings] ? new(recipe, readings) : null;

    /// <summary>The same, read.</summary>
    public GyleFiles Open()
    {
        OpenedFiles files = OpenedFiles.Open(Recipe, null);
        return files.Readings(Readings) is { } read && files.Recipe is { } recipe
            ? this with { Gyle = new(recipe, read, files.Larder), Findings = files.Findings }
            : this with { Findings = files.Findings };
    }
}
