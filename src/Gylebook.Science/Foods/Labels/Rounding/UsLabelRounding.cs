namespace Gylebook.Science.Foods.Labels.Rounding;

/// <summary>Reads a number on a US panel back into the true values that print as it, and prints a true value.</summary>
/// <remarks>
/// <para>What: the inverse and the forward direction of the rounding rules, per serving.</para>
/// <para>Symbols: v, the printed number, in the unit of its line (kcal, g, mg).</para>
/// <para>Source: 21 CFR 101.9(c)(1) energy, (c)(2) fats, (c)(3) cholesterol, (c)(4) sodium, (c)(6) carbohydrate, fibre,
/// sugars and sugar alcohols, (c)(7) protein; (c)(8) potassium, printed since 2020 (from memory: to the nearest 10 mg, and less than
/// 2 % of 4700 mg may be printed as 0; panels before it went by the sodium rule).</para>
/// <para>Valid for: amounts per serving as declared. A half rounds up.</para>
/// <para>Accuracy: exact for a maker who follows the rule. A number off the rule's grid (47 kcal, 3.2 g) was rounded
/// more finely; it is read as wide as the rule at that size, which is safe and not the tightest.</para>
/// <para>Notes: below 5 kcal a maker may print 0 or 5, so 0 and 5 kcal overlap. "Less than 1 g" is due from 0.5 g
/// to 1 g, yet some print it for anything under 1 g: read as [0, 1). "Less than 5 mg" of cholesterol is [2, 5].
/// Daily-value percentages may come from rounded or unrounded amounts and are not used.</para>
/// </remarks>
public static class UsLabelRounding
{
    /// <summary>mg of potassium below which 0 may stand: 2 % of the daily value of 4700 mg (from memory).</summary>
    private const double PotassiumThatIsNone = 94;

    /// <summary>Whether the rules print that line.</summary>
    public static bool Prints(LabelLine line) =>
        line is not (LabelLine.Serving or LabelLine.EnergyKilojoules or LabelLine.Salt or LabelLine.Starch);

    /// <summary>True values, per serving, that a maker prints so; not negative and otherwise unknown if not printed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a US line, or a negative number.</exception>
    public static Interval TrueInterval(LabelLine line, PrintedValue printed)
    {
        Check(line, printed.Number);
        double v = printed.Number;
        return printed.Form switch
        {
            PrintedForm.Absent => Interval.NotNegative,
            PrintedForm.LessThan when line == LabelLine.Cholesterol && v == 5 => new(2, 5),
            PrintedForm.LessThan => Interval.HalfOpen(0, v),
            _ => line switch
            {
                LabelLine.EnergyKilocalories => Energy(v),
                LabelLine.Fat or LabelLine.SaturatedFat => Fat(v),
                LabelLine.Cholesterol => v == 0 ? Interval.HalfOpen(0, 2) : Around(v, 2.5),
                LabelLine.Sodium => Sodium(v),
                LabelLine.Potassium => v == 0 ? Interval.HalfOpen(0, PotassiumThatIsNone) : Around(v, 5),
                _ => v == 0 ? Interval.HalfOpen(0, 0.5) : Around(v, 0.5),
            },
        };
    }

    /// <summary>What a maker prints for a true amount per serving.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a US line, or a negative amount.</exception>
    public static PrintedValue Print(LabelLine line, double amount)
    {
        Check(line, amount);
        if (line == LabelLine.Cholesterol && amount is >= 2 and <= 5)
        {
            // Nearest 5 would print 2.2 mg as 0, which the rule keeps for less than 2 mg.
            return PrintedValue.LessThan(5);
        }

        return PrintedValue.Of(line switch
        {
            LabelLine.EnergyKilocalories => amount < 5 ? 0 : ToNearest(amount <= 50 ? 5 : 10, amount),
            LabelLine.Fat or LabelLine.SaturatedFat => amount < 0.5 ? 0 : ToNearest(amount < 5 ? 0.5 : 1, amount),
            LabelLine.Cholesterol => amount < 2 ? 0 : ToNearest(5, amount),
            LabelLine.Sodium => amount < 5 ? 0 : ToNearest(amount <= 140 ? 5 : 10, amount),
            LabelLine.Potassium => amount < 5 ? 0 : ToNearest(10, amount),
            _ => amount < 0.5 ? 0 : ToNearest(1, amount),
        });
    }

    private static Interval Energy(double v) => v switch
    {
        0 => Interval.HalfOpen(0, 5),
        50 => Interval.HalfOpen(47.5, 55),
        < 50 => Around(v, 2.5),
        _ => Around(v, 5),
    };

    private static Interval Fat(double v) => v switch
    {
        0 => Interval.HalfOpen(0, 0.5),
        0.5 => Interval.HalfOpen(0.5, 0.75),
        5 => Interval.HalfOpen(4.75, 5.5),
        < 5 => Around(v, 0.25),
        _ => Around(v, 0.5),
    };

    private static Interval Sodium(double v) => v switch
    {
        0 => Interval.HalfOpen(0, 5),
        5 => Interval.HalfOpen(5, 7.5),
        140 => Interval.HalfOpen(137.5, 145),
        < 140 => Around(v, 2.5),
        _ => Around(v, 5),
    };

    private static Interval Around(double v, double half) => Interval.HalfOpen(Math.Max(0, v - half), v + half);

    private static double ToNearest(double step, double amount) => Math.Floor((amount / step) + 0.5) * step;

    private static void Check(LabelLine line, double amount)
    {
        if (!Prints(line))
        {
            throw new ArgumentOutOfRangeException(nameof(line), line, "A US panel has no such line.");
        }

        Argument.MustNotBeNegative(amount);
    }
}
