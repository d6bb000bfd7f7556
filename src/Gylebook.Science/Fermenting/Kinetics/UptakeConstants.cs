using Gylebook.Science.Data;

namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>How fast yeast takes up each sugar at one temperature.</summary>
/// <remarks>
/// <para>constant = e^(ln A − Ea/(R·T)), R = 1.987·10⁻³ kcal/mol/K, T in K.</para>
/// <para>Symbols: V the fastest uptake, a mole of yeast and hour (1/h); K the concentration of half of that (mol/m³); K′ the concentration
/// of one sugar that halves the uptake of the next (mol/m³). G glucose, M maltose, N maltotriose.</para>
/// <para>Source: <c>growth-model</c>; the figures are <c>data/fermenting/growth-model.csv</c>.</para>
/// <para>Valid for: lager yeast, 8 to 16 °C (range from memory).</para>
/// <para>Notes: transcriptions part on one figure, ln K_M: −19.5 or −19.15. The first, that of 2007, is taken; with the other the papers'
/// wort at 12 °C has 13 % less ethanol after five days.</para>
/// </remarks>
/// <param name="Glucose">V_G, 1/h.</param>
/// <param name="Maltose">V_M, 1/h.</param>
/// <param name="Maltotriose">V_N, 1/h.</param>
/// <param name="HalfGlucose">K_G, mol/m³.</param>
/// <param name="HalfMaltose">K_M, mol/m³.</param>
/// <param name="HalfMaltotriose">K_N, mol/m³.</param>
/// <param name="GlucoseRepresses">K′_G, mol/m³.</param>
/// <param name="MaltoseRepresses">K′_M, mol/m³.</param>
public readonly record struct UptakeConstants(
    double Glucose, double Maltose, double Maltotriose,
    double HalfGlucose, double HalfMaltose, double HalfMaltotriose,
    double GlucoseRepresses, double MaltoseRepresses)
{
    private const double GasConstant = 1.987e-3;
    private const int Diacetyl = 8;

    private static readonly CsvTable Printed = CsvTable.Published("growth-model.csv");
    private static readonly double[] LogFactor = Printed.Numbers("log_factor");
    private static readonly double[] Kelvins = [.. Printed.Numbers("activation").Select(kilocalories => kilocalories / GasConstant)];

    /// <summary>The set fitted at 10.5 °C alone.</summary>
    public static UptakeConstants FittedAt10Point5 { get; } =
        Of([.. Printed.Rows.Take(Diacetyl).Select(row => row.Number("at_10_5"))]);

    /// <summary>The constants at a temperature.</summary>
    /// <param name="celsius">From <see cref="TemperatureCourse.LeastCelsius"/> to <see cref="TemperatureCourse.MostCelsius"/>.</param>
    public static UptakeConstants At(double celsius)
    {
        double kelvins = KelvinsOf(celsius);
        return new(
            Value(0, kelvins), Value(1, kelvins), Value(2, kelvins), Value(3, kelvins),
            Value(4, kelvins), Value(5, kelvins), Value(6, kelvins), Value(7, kelvins));
    }

    /// <summary>Whether the papers' fit reaches this temperature: 8 to 16 °C.</summary>
    public static bool IsWithinPublishedRange(double celsius) => celsius is >= 8 and <= 16;

    /// <summary>How fast yeast takes diacetyl back, m³/(mol h).</summary>
    internal static double DiacetylUptakeAt(double celsius) => Value(Diacetyl, KelvinsOf(celsius));

    private static UptakeConstants Of(double[] values) =>
        new(values[0], values[1], values[2], values[3], values[4], values[5], values[6], values[7]);

    private static double KelvinsOf(double celsius) =>
        Argument.MustBeWithin(celsius, TemperatureCourse.LeastCelsius, TemperatureCourse.MostCelsius) + 273.15;

    private static double Value(int constant, double kelvins) => Math.Exp(LogFactor[constant] - (Kelvins[constant] / kelvins));
}
