using System.Globalization;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.Json;

namespace Gylebook.Recipes.Interchange;

/// <summary>A number of yeast cells as text: <c>100 billion</c>.</summary>
internal static class CellCountText
{
    private const string Word = " billion";
    private const double Most = 100_000;

    internal static CellCount? Read(JsonCursor at)
    {
        if (at.Text(64) is not { } text)
        {
            return null;
        }

        var number = text.Trim();
        if (number.EndsWith(Word, StringComparison.Ordinal)
            && double.TryParse(number[..^Word.Length], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var billions)
            && billions <= Most)
        {
            return new CellCount(billions, text);
        }

        at.Findings.Error(
            "cells.wrong", at.Path, Invariant($"\"{FindingList.Shorten(text)}\"; write cells as \"100 billion\", from 0 to {Most} billion"),
            text, Invariant($"0 to {Most} billion"));
        return null;
    }
}
