namespace Gylebook.Science.Foods.Labels.Rounding;

/// <summary>Reads a number on an EU or UK panel back into the true values that print as it, and prints a true value.</summary>
/// <remarks>
/// <para>What: the inverse and the forward direction of the rounding guidance, per 100 g.</para>
/// <para>Symbols: v, the printed number, in the unit of its line (kcal, kJ, g).</para>
/// <para>Source: Regulation (EU) 1169/2011 and the European Commission's guidance on tolerances and rounding, December
/// 2012, section 6; the figures are read from a national summary of that guidance.</para>
/// <para>Valid for: declarations per 100 g or 100 mL. A half rounds up.</para>
/// <para>Accuracy: exact for a maker who follows the guidance, which is not binding. A number off its grid (12.3 g) was
/// rounded more finely; it is read as wide as the guidance at that size.</para>
/// <para>Notes: amounts up to 0.5 g (saturates 0.1 g, salt 0.0125 g) may read 0, "&lt;0.5 g" or, when rounded all the
/// same, 0.5: the readings of 0 and of 0.5 overlap. Where two steps meet (10 g, 1 g of salt) the lower half is the finer
/// one: 10 g is [9.95, 10.5).</para>
/// </remarks>
public static class EuLabelRounding
{
    /// <summary>Grams of salt declared for a gram of sodium. Source: Regulation (EU) 1169/2011, Annex I, point 11.</summary>
    public const double SaltPerSodium = 2.5;

    /// <summary>Whether the rules print that line.</summary>
    public static bool Prints(LabelLine line) =>
        line is not (LabelLine.Serving or LabelLine.Cholesterol or LabelLine.Sodium or LabelLine.AddedSugars or LabelLine.Potassium);

    /// <summary>True values that a maker prints so; not negative and otherwise unknown if not printed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not an EU line, or a negative number.</exception>
    public static Interval TrueInterval(LabelLine line, PrintedValue printed)
    {
        Check(line, printed.Number);
        if (!printed.IsPrinted)
        {
            return Interval.NotNegative;
        }

        EuSteps steps = EuSteps.Of(line);
        double v = printed.Number;
        if (printed.Form == PrintedForm.LessThan)
        {
            // "Less than 0.5 g" is printed for 0.5 g too, and "less than 0.01 g" of salt up to 0.0125 g.
            return new(0, v == steps.LessThanForm ? Math.Max(v, steps.Negligible) : v);
        }

        if (v == 0)
        {
            return steps.Negligible == 0 ? Interval.HalfOpen(0, steps.CoarseStep / 2) : new(0, steps.Negligible);
        }

        double below = v > steps.CoarseFrom ? steps.CoarseStep : steps.FineStep;
        double above = v >= steps.CoarseFrom ? steps.CoarseStep : steps.FineStep;
        return Interval.HalfOpen(Math.Max(0, OffByHalf(v, below, -0.5)), OffByHalf(v, above, 0.5));
    }

    /// <summary>What a maker prints for a true amount.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not an EU line, or a negative amount.</exception>
    public static PrintedValue Print(LabelLine line, double amount)
    {
        Check(line, amount);
        EuSteps steps = EuSteps.Of(line);
        if (amount <= steps.Negligible)
        {
            return PrintedValue.Of(0);
        }

        double perUnit = Math.Round(1 / (amount >= steps.CoarseFrom ? steps.CoarseStep : steps.FineStep));
        return PrintedValue.Of(Math.Floor((amount * perUnit) + 0.5) / perUnit);
    }

    // Counted in steps and divided once, so that 0.3 g less half a step is the double nearest to 0.25.
    private static double OffByHalf(double v, double step, double half)
    {
        double perUnit = Math.Round(1 / step);
        double steps = v * perUnit;
        double whole = Math.Round(steps);
        return ((Math.Abs(steps - whole) < 1e-9 ? whole : steps) + half) / perUnit;
    }

    private static void Check(LabelLine line, double amount)
    {
        if (!Prints(line))
        {
            throw new ArgumentOutOfRangeException(nameof(line), line, "An EU panel has no such line.");
        }

        Argument.MustNotBeNegative(amount);
    }

    /// <summary>The guidance for one line: what counts as nothing, and the steps below and above a change.</summary>
    private readonly record struct EuSteps(
        double Negligible, double LessThanForm, double FineStep, double CoarseFrom, double CoarseStep)
    {
        public static EuSteps Of(LabelLine line) => line switch
        {
            LabelLine.EnergyKilocalories or LabelLine.EnergyKilojoules => new(0, 0, 1, 0, 1),
            LabelLine.SaturatedFat => new(0.1, 0.1, 0.1, 10, 1),
            LabelLine.Salt => new(0.0125, 0.01, 0.01, 1, 0.1),
            _ => new(0.5, 0.5, 0.1, 10, 1),
        };
    }
}
