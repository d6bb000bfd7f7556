namespace Gylebook.Science.Boiling;

/// <summary>Colour of the wort by three straight lines: the older law, which the power law smooths.</summary>
/// <remarks>
/// <para>Symbols: MCU malt colour units as in <see cref="WortColour"/>; SRM = MCU up to 10.5, 0.2·MCU + 8.4 from 10.5 to
/// 37, 0.3·MCU + 4.7 above.</para>
/// <para>Source: Morey, letter "Beer's Law", BrewingTechniques, which names the pieces and their limits; slopes and
/// intercepts from memory.</para>
/// <para>Valid for: SRM to 50. The last two lines are home-brewing literature's, fitted to amber and dark beers.</para>
/// <para>Accuracy: none stated. Against the power law it runs from 0.5 SRM lower at 1 MCU to 3.0 higher at 10.5.</para>
/// <para>Notes: the letter prints "below 37" for two pieces; the second can only mean above. The recalled constants make
/// the pieces meet exactly at 10.5 and at 37, which speaks for them.</para>
/// </remarks>
public static class StraightLineColour
{
    private const double FirstBend = 10.5;
    private const double SecondBend = 37;

    /// <summary>Colour of the wort, SRM.</summary>
    /// <param name="mcu">Malt colour units.</param>
    public static double SrmOfMaltColourUnits(double mcu)
    {
        Argument.MustNotBeNegative(mcu);
        return mcu <= FirstBend ? mcu : mcu <= SecondBend ? (0.2 * mcu) + 8.4 : (0.3 * mcu) + 4.7;
    }

    /// <summary>Whether the lines were made for colours like this.</summary>
    public static bool IsWithinPublishedRange(double srm) => srm is >= 0 and <= 50;
}
