namespace Gylebook.Science.Fermenting;

/// <summary>How much of liquid yeast is still alive after some days in the cold: two rules that disagree.</summary>
/// <remarks>
/// <para>Symbols: d days; straight 1 − 0.007·d, not below 0; compounding 0.8^(d/30).</para>
/// <para>Source: common practice, no source, both; publicly disputed.</para>
/// <para>Valid for: liquid yeast at 2 to 5 °C. The straight rule ends at 143 days.</para>
/// <para>Accuracy: unknown, hence both, as a band. Against them: seven refrigerated slurries counted for a month lost
/// 0.20 % a day on average, from a gain of 0.09 to a loss of 0.77 (hobby literature, 2012), and suppliers state 75 to 85 %
/// after 30 days.</para>
/// <para>Notes: the careful brewer reckons with the low end. Dry yeast keeps for years and follows neither.</para>
/// </remarks>
public static class YeastViability
{
    /// <summary>By the straight rule, 0 to 1.</summary>
    public static double Straight(double days)
    {
        Argument.MustNotBeNegative(days);
        return Math.Max(0, 1 - (0.007 * days));
    }

    /// <summary>By the compounding rule, 0 to 1.</summary>
    public static double Compounding(double days)
    {
        Argument.MustNotBeNegative(days);
        return Math.Pow(0.8, days / 30);
    }

    /// <summary>The lower and the higher of the two.</summary>
    public static (double Low, double High) Band(double days)
    {
        double straight = Straight(days);
        double compounding = Compounding(days);
        return (Math.Min(straight, compounding), Math.Max(straight, compounding));
    }

    /// <summary>Whether both rules still say something.</summary>
    public static bool IsWithinPublishedRange(double days) => days is >= 0 and <= 142;
}
