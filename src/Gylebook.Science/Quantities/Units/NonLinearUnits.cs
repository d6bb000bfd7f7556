namespace Gylebook.Science.Quantities;

/// <summary>The two pairs of scales that no factor joins: gravity with extract, alcohol by mass with alcohol by volume.</summary>
/// <remarks>
/// <para>Symbols: S specific gravity 20/20 °C in air; P extract, g sucrose per 100 g; p ethanol, kg per kg;
/// ρ density at 20 °C, kg/m³.</para>
/// <para>Source: extract, cubic fit to ASBC Methods of Analysis, Table 1 (Extract determination), and above 20 °P
/// the cubic fit to the NBS Circular 440 sucrose table; alcohol, OIML R 22 (1975) density formula, its 20 °C terms
/// A1…A12, as in Council Directive 76/766/EEC, Annex.</para>
/// <para>Valid for: 0.95 to 1.18 SG (40 °P); below 1.000 the same curve carried on, which is what an apparent extract
/// below zero means. Alcohol from 0 to 100 %.</para>
/// <para>Accuracy: 0.001 °P up to 20 °P and to 40 °P, 0.003 °P at water; alcohol 0.01 % against printed tables.</para>
/// <para>Notes: the two cubics cross at 1.0793 (19.2 °P), where we pass from one to the other, so the curve has no step.
/// The ASBC cubic gives −0.003 °P for water; water is set to zero.</para>
/// </remarks>
internal static class NonLinearUnits
{
    private const double LeastGravity = 0.95;
    private const double LargestGravity = 1.18;

    /// <summary>Within this distance from 1 a liquid is water: the cubic is 0.003 °P wide of zero there.</summary>
    private const double WaterWidth = 1e-5;

    // P = c[0] + c[1] S + c[2] S² + c[3] S³
    private static readonly double[] Asbc = [-616.868, 1111.14, -630.272, 135.997];
    private static readonly double[] Nbs = [-669.56218, 1262.7794, -775.68212, 182.46007];

    // Where the cubics cross: the root of their difference near 20 °P.
    private static readonly double Crossing = Root(
        [Nbs[0] - Asbc[0], Nbs[1] - Asbc[1], Nbs[2] - Asbc[2], Nbs[3] - Asbc[3]], 0, start: 1.0793);

    // OIML R 22, A1 … A12, kg/m³.
    private static readonly double[] EthanolWater =
    [
        998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042,
        -613838.1234, 747017.2998, -547846.1354, 223446.0334, -39032.85426,
    ];

    // Pure ethanol, 789.239 kg/m³: the sum of the terms, so that 100 % is 100 %.
    private static readonly double PureEthanol = Polynomial(EthanolWater, 1);

    /// <summary>SG on a base of °P.</summary>
    public static CurvedScale GravityOverPlato { get; } = new(TryPlato, TryGravity, "0.95 to 1.18 SG (-13.5 to 40.2 °P)");

    /// <summary>% ABW on a base of % ABV.</summary>
    public static CurvedScale MassOverVolumeAlcohol { get; } = new(TryAlcoholByVolume, TryAlcoholByMass, "0 to 100 %");

    private static bool TryPlato(double gravity, out double plato)
    {
        plato = Plato(gravity);
        return gravity is >= LeastGravity and <= LargestGravity;
    }

    private static double Plato(double gravity) =>
        Math.Abs(gravity - 1) < WaterWidth ? 0 : Polynomial(gravity < Crossing ? Asbc : Nbs, gravity);

    private static bool TryGravity(double plato, out double gravity)
    {
        double[] cubic = plato < Polynomial(Asbc, Crossing) ? Asbc : Nbs;
        double start = 1 + (plato / 260);
        gravity = plato == 0 ? 1 : Root(cubic, plato, start);
        return gravity is >= LeastGravity - 1e-9 and <= LargestGravity + 1e-9;
    }

    private static bool TryAlcoholByVolume(double byMass, out double byVolume)
    {
        double p = byMass / 100;
        byVolume = byMass * Polynomial(EthanolWater, p) / PureEthanol;
        return p is >= 0 and <= 1;
    }

    private static bool TryAlcoholByMass(double byVolume, out double byMass)
    {
        // p ρ(p) is a polynomial too, one power up.
        double p = byVolume is >= 0 and <= 100
            ? Root([0, .. EthanolWater], byVolume / 100 * PureEthanol, start: byVolume / 110)
            : double.NaN;
        // Rounding may leave pure ethanol or pure water a hair outside.
        byMass = 100 * Math.Clamp(p, 0, 1);
        return double.IsFinite(p);
    }

    private static double Polynomial(ReadOnlySpan<double> coefficients, double x)
    {
        double sum = 0;
        for (int power = coefficients.Length - 1; power >= 0; power--)
        {
            sum = (sum * x) + coefficients[power];
        }

        return sum;
    }

    /// <summary>Where the polynomial takes that value, by Newton's method; not a number when it does not settle.</summary>
    private static double Root(ReadOnlySpan<double> coefficients, double value, double start)
    {
        Span<double> slope = stackalloc double[coefficients.Length - 1];
        for (int power = 1; power < coefficients.Length; power++)
        {
            slope[power - 1] = power * coefficients[power];
        }

        double x = start;
        for (int round = 0; round < 50; round++)
        {
            double step = (Polynomial(coefficients, x) - value) / Polynomial(slope, x);
            x -= step;
            if (Math.Abs(step) < 1e-11)
            {
                return x;
            }
        }

        return double.NaN;
    }
}
