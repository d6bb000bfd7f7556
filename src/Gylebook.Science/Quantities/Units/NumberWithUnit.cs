using System.Globalization;
using System.Text.RegularExpressions;

namespace Gylebook.Science.Quantities;

/// <summary>A typed text cut into its number and its unit, before anybody asks what they mean.</summary>
/// <param name="Number">The number, its comma read as a decimal comma.</param>
/// <param name="CommaMightGroup">Whether the comma could just as well group thousands, as in "1,068".</param>
/// <param name="NumberText">The number as typed.</param>
/// <param name="UnitText">The unit as typed, spaces and degree signs made alike; empty when there is none.</param>
internal readonly partial record struct NumberWithUnit(
    double Number, bool CommaMightGroup, string NumberText, string UnitText)
{
    /// <summary>Longer than any quantity that somebody means.</summary>
    private const int LongestText = 100;

    /// <summary>Cuts a text in two.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="parts">Number and unit.</param>
    /// <param name="problem">What is wrong with the number, without the text itself; empty when nothing.</param>
    public static bool TryCut(string text, out NumberWithUnit parts, out string problem)
    {
        parts = default;
        if (text.Length > LongestText)
        {
            problem = $"that is more than {LongestText} characters; write a number and a unit";
            return false;
        }

        // U+2212 is the minus sign of good typography, U+202F and U+00A0 its spaces; \s knows the spaces.
        Match match = Pattern().Match(text.Replace('\u2212', '-'));
        if (!match.Success)
        {
            problem = "this does not start with a number; write a number and a unit";
            return false;
        }

        string digits = match.Groups["number"].Value;
        string unit = Tidy(match.Groups["unit"].Value);
        if (unit.Length > 0 && (char.IsDigit(unit[0]) || unit[0] is '.' or ',' or '\'' or '’'))
        {
            problem = "write the number without grouping its thousands, with one decimal point or comma";
            return false;
        }

        // Adding zero turns -0 into 0.
        double number = double.Parse(digits.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture) + 0.0;
        if (!double.IsFinite(number))
        {
            problem = "that number is too large to work with";
            return false;
        }

        parts = new NumberWithUnit(number, Grouped().IsMatch(digits), digits, unit);
        problem = "";
        return true;
    }

    private static string Tidy(string unit) => Spaces().Replace(unit, " ").Trim()
        .Replace('º', '°').Replace('˚', '°').Replace("° ", "°", StringComparison.Ordinal)
        .Replace('₃', '3').Replace('³', '3');

    [GeneratedRegex(@"^\s*(?<number>[+-]?([0-9]+([.,][0-9]+)?|[.,][0-9]+)([eE][+-]?[0-9]+)?)\s*(?<unit>.*)$", RegexOptions.Singleline)]
    private static partial Regex Pattern();

    // One comma before exactly three digits, and something to group: "0,125" can only be a decimal comma.
    [GeneratedRegex("^[+-]?[1-9][0-9]{0,2},[0-9]{3}$")]
    private static partial Regex Grouped();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
