using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Foods;

/// <summary>A figure of a nutrition panel as printed: an amount, or "less than" one.</summary>
/// <param name="Amount">The amount, or what it is less than.</param>
/// <param name="IsLessThan">Whether it is printed as "less than 1 g" or "&lt; 1 g".</param>
/// <param name="Text">The very text that was typed.</param>
public readonly record struct PrintedMass(Mass Amount, bool IsLessThan, string Text)
{
    /// <summary>Digits that a panel may print are far fewer; those beyond are the rounding of doubles.</summary>
    private const int DigitsKept = 9;

    /// <summary>A plain amount.</summary>
    public static PrintedMass Of(Entered<Mass> amount) => new(amount.Value, false, amount.Text);

    /// <summary>Less than an amount.</summary>
    public static PrintedMass LessThan(Mass bound, string text) => new(bound, true, text);

    /// <inheritdoc/>
    public override string ToString() => Text;

    /// <summary>The figure for the science of panels, in grams times <paramref name="perGram"/>.</summary>
    internal PrintedValue Value(double perGram = 1)
    {
        double number = Math.Round(Amount.Grams * perGram, DigitsKept);
        return IsLessThan ? PrintedValue.LessThan(number) : PrintedValue.Of(number);
    }
}
