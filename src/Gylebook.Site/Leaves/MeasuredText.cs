using Gylebook.Pictures;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Leaves;

/// <summary>Measured numbers as a page tells them.</summary>
internal static class MeasuredText
{
    private static readonly Shown Shown = new(ReaderUnits.Metric);

    /// <summary>One value of it, with its unit.</summary>
    public static string Of(MeasuredNumber number, double value) => number.Unit switch
    {
        "SG" => Shown.Gravity(value),
        ['L', ..] => Shown.Litres(value),
        "°C" => Shown.Celsius(value),
        _ => $"{Shown.Number(value, number.Decimals)}{(number.Unit.Length > 0 && !number.Unit.StartsWith("pH", StringComparison.Ordinal) ? Shown.Space + number.Unit : "")}",
    };
}
