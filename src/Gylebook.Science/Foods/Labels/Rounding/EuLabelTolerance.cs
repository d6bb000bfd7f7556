namespace Gylebook.Science.Foods.Labels.Rounding;

/// <summary>How far an EU packet may lie from its panel before an inspector objects.</summary>
/// <remarks>
/// <para>What: adds the control tolerance to both ends of the values that print as a number.</para>
/// <para>Symbols: v, the printed number, g per 100 g.</para>
/// <para>Source: European Commission, guidance on the setting of tolerances for nutrient values declared on a label,
/// December 2012; the numbers are from memory, and so marked in the science page.</para>
/// <para>Valid for: foods, not supplements.</para>
/// <para>Accuracy: carbohydrate, sugars, protein, fibre: ±2 g below 10 g, ±20 % to 40 g, ±8 g above; fat the same with
/// ±1.5 g below 10 g; saturates ±0.8 g below 4 g, else ±20 %; salt ±0.375 g below 1.25 g, else ±20 %.</para>
/// <para>Notes: the tolerance is added to the rounding interval, not to the number, which is the wider reading. Energy,
/// polyols and starch have no number there: unknown.</para>
/// </remarks>
public static class EuLabelTolerance
{
    /// <summary>Values a lawful packet may have, given the number and the values that print as it.</summary>
    public static Interval Widen(LabelLine line, PrintedValue printed, Interval rounding)
    {
        if (!printed.IsPrinted || Grams(line, printed.Number) is not { } tolerance)
        {
            return Interval.NotNegative;
        }

        return (rounding + new Interval(-tolerance, tolerance)).Intersect(Interval.NotNegative);
    }

    private static double? Grams(LabelLine line, double v) => line switch
    {
        LabelLine.Carbohydrate or LabelLine.Sugars or LabelLine.Protein or LabelLine.Fibre => InThreeSteps(v, 2),
        LabelLine.Fat => InThreeSteps(v, 1.5),
        LabelLine.SaturatedFat => v < 4 ? 0.8 : 0.2 * v,
        LabelLine.Salt => v < 1.25 ? 0.375 : 0.2 * v,
        _ => null,
    };

    private static double InThreeSteps(double v, double gramsBelowTen) => v switch
    {
        < 10 => gramsBelowTen,
        <= 40 => 0.2 * v,
        _ => 8,
    };
}
