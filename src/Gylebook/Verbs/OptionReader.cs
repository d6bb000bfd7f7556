using System.Globalization;
using Gylebook.Recipes;
using Gylebook.Science.Quantities;
using Gylebook.Terminal;

namespace Gylebook.Verbs;

/// <summary>Reads options of the command line; every one that is wrong becomes a finding that names it, its value and its limit.</summary>
internal sealed class OptionReader
{
    private readonly List<Finding> _findings = [];

    /// <summary>What was wrong.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>A number without a unit; null and a finding where it is none.</summary>
    public double? Number(string option, string text, string meant)
    {
        const NumberStyles Plain = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;
        string typed = text.Trim().Replace(',', '.').Replace('\u2212', '-');
        if (double.TryParse(typed, Plain, CultureInfo.InvariantCulture, out double number))
        {
            return number;
        }

        Wrong("number.wrong", option, $"{CommandLine.OneLine(text)}; {meant}", text);
        return null;
    }

    /// <summary>A number with its unit; null and a finding where it is none.</summary>
    public T? Quantity<T>(string option, string text)
        where T : struct, IQuantity<T>
    {
        if (UnitTable.TryParse<T>(text == CommandLine.MissingValue ? "" : text, out Entered<T> entered, out string problem))
        {
            return entered.Value;
        }

        Wrong("quantity.wrong", option, problem.TrimEnd('.'), text);
        return null;
    }

    /// <summary>A finding where the value does not lie between two limits.</summary>
    public void Within(string option, double value, double low, double high, string unit)
    {
        if (!(value >= low && value <= high))
        {
            Wrong("number.range", option, Invariant($"{value:0.###} {unit}; must be from {low} to {high} {unit}").TrimEnd(), null);
        }
    }

    /// <summary>A finding.</summary>
    public void Wrong(string code, string option, string message, string? value) =>
        _findings.Add(new(code, Severity.Error, option, message, value));
}
