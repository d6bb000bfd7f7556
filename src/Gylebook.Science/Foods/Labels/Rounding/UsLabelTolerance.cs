namespace Gylebook.Science.Foods.Labels.Rounding;

/// <summary>How far a US packet may lawfully lie from its panel.</summary>
/// <remarks>
/// <para>What: widens the values that print as a number to those an inspector's composite may show.</para>
/// <para>Symbols: low and high, the ends of the interval from <see cref="UsLabelRounding"/>.</para>
/// <para>Source: 21 CFR 101.9(g)(3) to (6); the classes are from memory, and so marked in the science page.</para>
/// <para>Valid for: nutrients that occur naturally (class II) and the third group. An added nutrient (class I, at
/// least 100 % of the label) is treated as class II, which is wider.</para>
/// <para>Accuracy: class II, protein, carbohydrate, fibre and minerals: [0.8 low, ∞); third group, energy, fats, cholesterol,
/// sodium, sugars: [0, 1.2 high].</para>
/// <para>Notes: the rule allows a reasonable excess or shortage on the other side without a number, so that side is
/// left to the mass balance. Sugar alcohols are in neither list: unknown.</para>
/// </remarks>
public static class UsLabelTolerance
{
    /// <summary>Values a lawful packet may have, given those that print as the number.</summary>
    public static Interval Widen(LabelLine line, Interval rounding) => line switch
    {
        LabelLine.Protein or LabelLine.Carbohydrate or LabelLine.Fibre or LabelLine.Potassium =>
            new(rounding.Scale(0.8).Low, double.PositiveInfinity),
        LabelLine.Polyols => Interval.NotNegative,
        _ => new(0, rounding.Scale(1.2).High, highIsOpen: rounding.HighIsOpen),
    };
}
