using Gylebook.Pictures;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Leaves;

/// <summary>Measured numbers as a page tells them.</summary>
internal static class MeasuredText
{
    private static readonly Shown Shown = new(ReaderUnits.Metric);

    /// <summary>One value of it, with its unit.</summary>
    public static string Of(MeasuredNumber number, double value) => Shown.InUnit(number.Unit, value)
        ?? $"{Shown.Number(value, number.Decimals)}{(number.Unit.Length > 0 && !number.Unit.StartsWith("pH", StringComparison.Ordinal) ? Pictures.Shown.Space + number.Unit : "")}";
}
