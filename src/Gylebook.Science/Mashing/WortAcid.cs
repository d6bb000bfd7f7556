using Gylebook.Science.Quantities;

namespace Gylebook.Science.Mashing;

/// <summary>Acid that brings the wort in the kettle from one pH to another.</summary>
/// <remarks>
/// <para>Symbols: acid, mEq = b m (pH − pH wanted); b, buffer of the wort for each kilogram of malt it came from,
/// mEq/(kg·pH); m, malt, kg.</para>
/// <para>Source: German brewing rule for biological souring, wort, 100 kg of malt and 0.1 pH: 27 mL of 37 % hydrochloric, 30 mL
/// of 80 % lactic or 9 mL of 98 % sulphuric acid, 31 to 33; maltster's data sheet for sour wort of 52 to 58 g/L lactic acid,
/// 6 L for 1000 kg and 0.1 pH, 36. Both in trade literature.</para>
/// <para>Valid for: all-malt wort, half a pH or so. Food in the grist is counted as if it were malt.</para>
/// <para>Accuracy: the ends of print, 31 and 36, as bounds; 33 between them is our choice. The boil itself lowers the pH
/// by an amount that nothing here tells: measure.</para>
/// </remarks>
public static class WortAcid
{
    /// <summary>Smallest buffer of wort in print, mEq/(kg malt·pH).</summary>
    public const double SmallestBuffer = 31;

    /// <summary>What is taken.</summary>
    public const double LikelyBuffer = 33;

    /// <summary>Largest buffer of wort in print, mEq/(kg malt·pH).</summary>
    public const double LargestBuffer = 36;

    private static readonly QuantityLimits Ph = new("pH of wort", "", 2, 10);
    private static readonly QuantityLimits Buffer = new("Buffer of wort", "mEq/(kg·pH)", 1, 500);

    /// <summary>mEq of acid; none when the wort is there or below.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A pH or a buffer that no wort has.</exception>
    public static double Milliequivalents(Mass malt, double from, double to, double buffer = LikelyBuffer) =>
        Math.Max(0, Buffer.Check(buffer) * malt.Kilograms * (Ph.Check(from) - Ph.Check(to)));

    /// <summary>pH of the wort with so many mEq of acid in it.</summary>
    public static double PhWith(Mass malt, double from, double milliequivalents, double buffer = LikelyBuffer) =>
        Ph.Check(from) - (milliequivalents / (Buffer.Check(buffer) * malt.Kilograms));
}
