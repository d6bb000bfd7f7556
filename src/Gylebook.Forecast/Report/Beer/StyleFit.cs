using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Beer;

/// <summary>How the beer compares with the numbers of a published style, in a sentence and a small table.</summary>
/// <param name="Style">The style's name.</param>
/// <param name="Edition">The guideline and its year.</param>
/// <param name="Source">How its numbers came here, and how far to trust that.</param>
/// <param name="Sentence">In words.</param>
/// <param name="Rows">Number by number.</param>
public sealed record StyleFit(string Style, string Edition, Provenance Source, string Sentence, IReadOnlyList<StyleRow> Rows)
{
    /// <summary>Compares a run with a style.</summary>
    internal static StyleFit Of(StyleStatistics style, RunOutcome figures)
    {
        IReadOnlyList<StyleRow> rows =
        [
            Row("originalGravity", "original gravity", figures[BeerReadouts.OriginalGravity], style.OriginalGravity, "SG", 3),
            Row("finalGravity", "final gravity", figures[BeerReadouts.FinalGravity], style.FinalGravity, "SG", 3),
            Row("bitterness", "bitterness", figures[BeerReadouts.Bitterness], style.Bitterness, "IBU", 0),
            Row("colourSrm", "colour", figures[BeerReadouts.Colour], style.Colour, "SRM", 1),
            Row("alcoholByVolume", "alcohol", figures[BeerReadouts.AlcoholByVolume], style.Alcohol, "%", 1),
        ];
        return new StyleFit(style.Name, style.Edition, style.Provenance, InWords(style, rows), rows);
    }

    /// <summary>Compared as the guideline prints: a number that rounds onto an end lies within.</summary>
    private static StyleRow Row(string name, string spoken, double value, UsualRange range, string unit, int decimals)
    {
        double rounded = Math.Round(value, decimals);
        StylePlace place = rounded < range.Low ? StylePlace.Below : rounded > range.High ? StylePlace.Above : StylePlace.Within;
        return new StyleRow(name, spoken, rounded, range.Low, range.High, unit, decimals, place);
    }

    private static string InWords(StyleStatistics style, IReadOnlyList<StyleRow> rows)
    {
        List<string> outside = [.. rows.Where(r => r.Place != StylePlace.Within).Select(Off)];
        string against = $"{style.Name} ({style.Edition})";
        return outside.Count switch
        {
            0 => $"All five numbers lie within those of {against}.",
            5 => $"None of the five numbers lies within those of {against}: {string.Join(", ", outside)}.",
            _ => $"Against {against}: {string.Join(", ", outside)}; the {(outside.Count == 4 ? "other lies" : "others lie")} within.",
        };
    }

    private static string Off(StyleRow row)
    {
        double by = row.Place == StylePlace.Below ? row.Low - row.Value : row.Value - row.High;
        string unit = row.Unit == "SG" ? "" : " " + row.Unit;
        string amount = by.ToString("F" + row.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return $"{row.Spoken} {amount}{unit} {(row.Place == StylePlace.Below ? "below" : "above")}";
    }
}

/// <summary>One number against a style's.</summary>
/// <param name="Name">Stable name, as in the headline.</param>
/// <param name="Spoken">In plain words.</param>
/// <param name="Value">This beer's, rounded as the guideline prints.</param>
/// <param name="Low">The style's low end.</param>
/// <param name="High">The style's high end.</param>
/// <param name="Unit">Unit of all three.</param>
/// <param name="Decimals">Digits after the point that the guideline prints.</param>
/// <param name="Place">Where it lies.</param>
public sealed record StyleRow(
    string Name, string Spoken, double Value, double Low, double High, string Unit, int Decimals, StylePlace Place);

/// <summary>Where a number lies against a range.</summary>
public enum StylePlace
{
    /// <summary>Below its low end.</summary>
    Below,

    /// <summary>Within it, ends included.</summary>
    Within,

    /// <summary>Above its high end.</summary>
    Above,
}
