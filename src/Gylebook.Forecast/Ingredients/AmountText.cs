using System.Globalization;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Ingredients;

/// <summary>Writes a new weight the way the old one was written, rounded to what a scale for such things shows.</summary>
/// <remarks>The steps are common practice, no source: malt by 10 g, by 1 g below a kilogram; hops and all that goes in by the gram by 0.1 g.</remarks>
public static class AmountText
{
    private const int JugDigits = 3;
    private const double Ounce = 0.028349523125;

    /// <summary>The weight in the unit of the line it is for, text and value alike: <c>3.85 kg</c> for <c>3.6 kg</c>, <c>31.5 g</c> for <c>28 g</c>.</summary>
    public static Entered<Mass> Of(IngredientLine line, double kilograms)
    {
        string unit = UnitTable.KindOf<Mass>().Find(UnitOf(line.Amount.Mass?.Text ?? ""))?.Symbol ?? (IsFine(line.Kind) ? "g" : "kg");
        double step = Step(unit, kilograms, IsFine(line.Kind));
        double rounded = Math.Round(kilograms / step, MidpointRounding.AwayFromZero) * step;
        if (!UnitTable.TryIn(Mass.FromKilograms(rounded), unit, out double number)
            || !UnitTable.TryParse($"{number.ToString("0.####", CultureInfo.InvariantCulture)} {unit}", out Entered<Mass> amount, out _))
        {
            throw new InvalidOperationException($"The unit table has no way to {unit}.");
        }

        return amount;
    }

    /// <summary>The volume in the unit it was written in, to three digits: a jug shows no more.</summary>
    public static Entered<VolumeAt20C> Of(Entered<VolumeAt20C> before, double litres)
    {
        string text = UnitTable.Format(VolumeAt20C.FromLitres(litres), UnitTable.KindOf<VolumeAt20C>().Find(UnitOf(before.Text))?.Symbol ?? "L", JugDigits);
        return UnitTable.TryParse(text, out Entered<VolumeAt20C> amount, out _) ? amount : throw new InvalidOperationException($"The unit table cannot read {text}.");
    }

    /// <summary>An amount of a line as a scale or a jug shows it.</summary>
    public static Amount Of(IngredientLine line, Amount amount) =>
        amount.Mass is { } mass ? new(Of(line, mass.Value.Kilograms), null)
        : amount.Volume is { } volume ? new(null, Of(line.Amount.Volume!.Value, volume.Value.Litres))
        : amount;

    /// <summary>What stands behind the number.</summary>
    private static string UnitOf(string text) => text.TrimStart("+0123456789., \t\u00A0".ToCharArray()).Trim();

    /// <summary>What the scale shows next, kg; a scale for ounces shows hundredths of them, or tenths.</summary>
    private static double Step(string unit, double kilograms, bool isFine) => unit switch
    {
        "lb" => isFine ? 0.016 * Ounce : 0.16 * Ounce,
        "oz" => isFine ? 0.01 * Ounce : 0.1 * Ounce,
        _ => isFine || kilograms < 0.01 ? 0.0001 : kilograms < 1 ? 0.001 : 0.01,
    };

    private static bool IsFine(IngredientKind kind) =>
        kind is not (IngredientKind.Malt or IngredientKind.Extract or IngredientKind.Sugar or IngredientKind.Food or IngredientKind.Water);
}
