using Gylebook.Science.Data;
using Gylebook.Science.Numerics;

namespace Gylebook.Science.Mashing;

/// <summary>How far any yeast could ferment a pale malt's wort, by the temperature it was mashed at.</summary>
/// <remarks>
/// <para>Symbols: apparent limit of attenuation (%) against the temperature of the rest (°C). Two series, straight lines between
/// their rows. Un-mixed: 62 °C 88.6, 65 °C 85.3, 70 °C 72, 75 °C 50, 80 °C 27.5. Plateau: 86.5 up to 67 °C, then 4 % a degree.</para>
/// <para>Source: <c>data/mashing/limit-of-attenuation.csv</c>, one study for 65 to 80 °C, its dextrin malt taken out; 62 °C from
/// memory. <c>data/mashing/limit-of-attenuation-plateau.csv</c>, from memory.</para>
/// <para>Valid for: 65 to 80 °C, one rest of an hour, modern lager malt, 3 L/kg.</para>
/// <para>Accuracy: the two part by up to 6.4 %, at 67 °C. That distance is a parameter of every run.</para>
/// <para>Notes: the starting value lies half-way (<c>mash.limit.towardsPlateau</c>), decision 0020. Below its first row a series stays
/// there; above its last the last line goes on down to 0. <see cref="IsWithinPublishedRange"/> flags both.</para>
/// </remarks>
public static class AttenuationLimit
{
    private static readonly double[] StudyCelsius = CsvTable.Published("limit-of-attenuation.csv").Numbers("celsius");
    private static readonly double[] StudyPercent = CsvTable.Published("limit-of-attenuation.csv").Numbers("paleMaltPercent");
    private static readonly double[] PlateauCelsius = CsvTable.Published("limit-of-attenuation-plateau.csv").Numbers("celsius");
    private static readonly double[] PlateauPercent = CsvTable.Published("limit-of-attenuation-plateau.csv").Numbers("apparentPercent");

    /// <summary>Apparent limit of attenuation, %, at a place between the two series.</summary>
    /// <param name="celsius">Temperature of the rest, -20 to 200 °C.</param>
    /// <param name="towardsPlateau">0 for the un-mixed study, 1 for the plateau.</param>
    public static double ApparentPercentAt(double celsius, double towardsPlateau)
    {
        Argument.MustBeWithin(celsius, -20, 200);
        Argument.MustBeWithin(towardsPlateau, 0, 1);
        double study = Series(celsius, StudyCelsius, StudyPercent), plateau = Series(celsius, PlateauCelsius, PlateauPercent);
        return study + (towardsPlateau * (plateau - study));
    }

    /// <summary>Whether the study reaches this temperature.</summary>
    public static bool IsWithinPublishedRange(double celsius) => celsius is >= 65 and <= 80;

    private static double Series(double celsius, double[] at, double[] percent) =>
        celsius <= at[0] ? percent[0] : Math.Max(0, LinearInterpolation.At(celsius, at, percent));
}
