using System.Globalization;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>Writes a new weight the way the old one was written, in steps that a brewer's scale can weigh.</summary>
public static class AmountText
{
    /// <summary>The weight in the unit of the text it replaces: <c>3.85 kg</c> for <c>3.6 kg</c>, <c>31 g</c> for <c>28 g</c>.</summary>
    public static string Of(Entered<Mass> before, double kilograms)
    {
        string written = before.Text.TrimStart("+0123456789., \t".ToCharArray()).Trim();
        string unit = UnitTable.KindOf<Mass>().Find(written)?.Symbol ?? "kg";
        if (!UnitTable.TryIn(Mass.FromKilograms(kilograms), unit, out double number))
        {
            throw new InvalidOperationException($"The unit table has no way to {unit}.");
        }

        // Grains and hops to about a part in a thousand of themselves, never finer than a tenth of a gram.
        int digits = unit == "g" ? (number >= 100 ? 0 : 1) : unit == "oz" ? 2 : 3;
        double rounded = Math.Round(number, digits, MidpointRounding.AwayFromZero);
        return $"{rounded.ToString("0.###", CultureInfo.InvariantCulture)} {unit}";
    }
}
