using Gylebook.Science.Data;

namespace Gylebook.Science.Conditioning;

/// <summary>A tube beer is drawn through.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Name">Its name.</param>
/// <param name="BoreMillimetres">Inner width, mm.</param>
/// <param name="BarPerMetre">Pressure lost in a metre as the trade reckons it.</param>
public sealed record BeerTube(string Id, string Name, double BoreMillimetres, double BarPerMetre);

/// <summary>How long a tube takes up what pressure the gas leaves over, so that the beer arrives calm.</summary>
/// <remarks>
/// <para>L = (p − p_lift − p_parts)/R; lift 0.5 psi a foot of height by the trade. By the flow: R = f·ρv²/(2D), f = 0.3164/Re^0.25 above Re 2300, 64/Re below.</para>
/// <para>Symbols: p gauge pressure; R loss a metre; D bore; v speed; ρ 1010 kg/m³ and viscosity 2.42 mPa s of a lager at 6 °C (ACS Omega 2021).</para>
/// <para>Source: R of the trade, <c>data/conditioning/beer-lines.csv</c>; Blasius 1913 and Hagen and Poiseuille, from memory.</para>
/// <para>Valid for: R of the trade at about 59 mL/s; the flow law for smooth round tubes.</para>
/// <para>Accuracy: the two part by a third at 59 mL/s, and by three to five times at the gentle pour of a home tap: start longer, and cut.</para>
/// <para>Notes: height by weight alone would be 0.438 psi a foot.</para>
/// </remarks>
public static class BeerLine
{
    /// <summary>Flow that the trade's figures are told for, mL/s.</summary>
    public const double TradeFlow = 59;

    /// <summary>Pressure that a metre of height takes by the trade: 0.5 psi a foot, in bar.</summary>
    public const double LiftBarPerMetre = 0.5 * KegPressure.BarPerPsi / MetresPerFoot;

    private const double MetresPerFoot = 0.3048;
    private const double Density = 1010, Viscosity = 2.42e-3, Laminar = 2300;

    /// <summary>The trade's tubes.</summary>
    public static IReadOnlyList<BeerTube> Tubes { get; } =
    [
        .. CsvTable.Published("beer-lines.csv").Rows.Select(row => new BeerTube(
            row.Required("id"), row.Required("name"), row.Number("bore"), row.Number("psi_per_foot") * KegPressure.BarPerPsi / MetresPerFoot)),
    ];

    /// <summary>Length, m. Not above nought where height and parts take all the pressure.</summary>
    /// <param name="gaugeBar">Pressure of the gas, bar.</param>
    /// <param name="liftMetres">Tap above the middle of the keg, m; below nought when it is lower.</param>
    /// <param name="partsBar">What taps and fittings take, and what is to be left at the tap, bar.</param>
    /// <param name="barPerMetre">Loss in the tube; above 0.</param>
    public static double Metres(double gaugeBar, double liftMetres, double partsBar, double barPerMetre)
    {
        Argument.MustBeWithin(gaugeBar, 0, 100);
        Argument.MustBeWithin(liftMetres, -100, 100);
        Argument.MustNotBeNegative(partsBar);
        return (gaugeBar - (liftMetres * LiftBarPerMetre) - partsBar) / Argument.MustBePositive(barPerMetre);
    }

    /// <summary>Loss by the flow, bar a metre.</summary>
    /// <param name="boreMillimetres">Inner width, mm; above 0.</param>
    /// <param name="millilitresPerSecond">Flow; above 0.</param>
    public static double BarPerMetre(double boreMillimetres, double millilitresPerSecond)
    {
        double bore = Argument.MustBePositive(boreMillimetres) / 1000;
        double speed = Argument.MustBePositive(millilitresPerSecond) * 1e-6 / (Math.PI * bore * bore / 4), reynolds = Reynolds(bore, speed);
        double friction = reynolds > Laminar ? 0.3164 / Math.Pow(reynolds, 0.25) : 64 / reynolds;
        return friction * Density * speed * speed / (2 * bore) / 1e5;
    }

    /// <summary>Reynolds' number of a flow: smooth below 2300.</summary>
    /// <param name="boreMillimetres">Inner width, mm; above 0.</param>
    /// <param name="millilitresPerSecond">Flow; above 0.</param>
    public static double ReynoldsOf(double boreMillimetres, double millilitresPerSecond)
    {
        double bore = Argument.MustBePositive(boreMillimetres) / 1000;
        return Reynolds(bore, Argument.MustBePositive(millilitresPerSecond) * 1e-6 / (Math.PI * bore * bore / 4));
    }

    private static double Reynolds(double bore, double speed) => Density * speed * bore / Viscosity;
}
