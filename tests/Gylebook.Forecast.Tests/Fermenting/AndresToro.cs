namespace Gylebook.Forecast.Tests.Fermenting;

/// <summary>The fermentation model of de Andrés-Toro and others (IFAC 1997 and 1998), to be forecast by another: lag, active and dead yeast, sugar, ethanol, g/L.</summary>
/// <remarks>
/// As most public transcriptions have it; the paper itself was read as an abstract. It is a fit: its mass does not close and its uptake falls
/// with temperature. From 130 g/L of sugar and 4 of yeast; Runge and Kutta's fourth order in steps of 0.1 h.
/// </remarks>
internal sealed class AndresToro
{
    private const double Offered = 130, Step = 0.1, Longest = 1000;

    private readonly double[] _sugar = new double[(int)(Longest / Step) + 1];

    public AndresToro(double celsius)
    {
        double kelvins = celsius + 273.15;
        double growth = Math.Exp(108.31 - (31934.09 / kelvins)), uptake = Math.Exp(-41.92 + (11654.64 / kelvins));
        double wake = Math.Exp(30.72 - (9501.54 / kelvins)), death = Math.Exp(130.16 - (38313 / kelvins));
        double ethanol = Math.Exp(3.27 - (1267.24 / kelvins)), half = Math.Exp(-119.63 + (34203.95 / kelvins));
        double[] Change(double[] y)
        {
            (double lag, double active, double s, double e) = (y[0], y[1], Math.Max(0, y[2]), y[3]);
            return
            [
                -wake * lag,
                (growth * s / ((0.5 * Offered) + e) * active) - (death * active) + (wake * lag),
                -uptake * s / (half + s) * active,
                (1 - (e / (0.5 * Offered))) * ethanol * s / (half + s) * active,
            ];
        }

        double[] now = [1.92, 0.08, Offered, 0];
        for (int i = 0; i < _sugar.Length; i++)
        {
            _sugar[i] = Math.Max(0, now[2]);
            double[] k1 = Change(now), k2 = Change(Add(now, k1, Step / 2)), k3 = Change(Add(now, k2, Step / 2)), k4 = Change(Add(now, k3, Step));
            now = [.. now.Select((y, k) => y + (Step / 6 * (k1[k] + (2 * k2[k]) + (2 * k3[k]) + k4[k])))];
        }
    }

    /// <summary>Sugar at an hour, g/L.</summary>
    public double SugarAt(double hours)
    {
        double place = Math.Clamp(hours / Step, 0, _sugar.Length - 1.001);
        int whole = (int)place;
        return _sugar[whole] + ((place - whole) * (_sugar[whole + 1] - _sugar[whole]));
    }

    /// <summary>Share of the sugar left at an hour.</summary>
    public double SugarLeft(double hours) => SugarAt(hours) / Offered;

    private static double[] Add(double[] to, double[] what, double times) => [.. to.Select((y, k) => y + (times * what[k]))];
}
