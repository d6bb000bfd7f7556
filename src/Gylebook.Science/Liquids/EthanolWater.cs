namespace Gylebook.Science.Liquids;

/// <summary>Density of alcohol in water, and the two ways of counting it.</summary>
/// <remarks>
/// <para>ρ(p, t) = Σ Aₖ p^(k−1) + Σ Bₖ (t − 20)^k + Σᵢ Σₖ Cᵢₖ p^k (t − 20)^i</para>
/// <para>Symbols: ρ density in a vacuum, kg/m³; p ethanol by mass, 0 to 1; t temperature, °C.
/// Alcohol by volume at 20 °C is 100·p·ρ(p, 20)/ρ(1, 20).</para>
/// <para>Source: <c>oiml-r22</c>, the general formula; also <c>eec-76-766</c>, Annex, section 4.</para>
/// <para>Valid for: the whole range of strength, −20 to 40 °C.</para>
/// <para>Accuracy: the last printed digit of every independent table it was tried on (<c>usp29-alcoholometric</c>:
/// four decimals of gravity, two of per cent).</para>
/// <para>Notes: part of the coefficients were entered from memory; the whole set stands because a printed example
/// at 15.5 °C is met to 1e-5 kg/m³. Pure ethanol is 789.2391 kg/m³ here and 789.24 where printed.</para>
/// </remarks>
public static class EthanolWater
{
    /// <summary>Density of pure water in this formula at 20 °C, kg/m³.</summary>
    public const double WaterKilogramsPerCubicMetre = 998.20123;

    /// <summary>Density of pure ethanol at 20 °C, kg/m³: the sum of A, so that 100 % by mass is 100 % by volume and the way back ends there too.</summary>
    public const double EthanolKilogramsPerCubicMetre = 789.2391233;

    private const double WaterInAir = WaterKilogramsPerCubicMetre - SucroseSolution.AirKilogramsPerCubicMetre;

    private const int NewtonSteps = 5;

    // Arrays, made once: a span over constants allocates where the code is not optimised.
    private static readonly double[] A =
    [
        998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388,
        306287.4042, -613838.1234, 747017.2998, -547846.1354, 223446.0334, -39032.85426,
    ];

    private static readonly double[] B =
        [0, -0.20618513, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.169354e-9, -9.9739231e-11];

    private static readonly double[] C1 =
    [
        0, 0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792, 3924.090430035045,
        -12101.64659068747, 22486.46550400788, -26055.62982188164, 18523.73922069467, -7420.201433430137,
        1285.617841998974,
    ];

    private static readonly double[] C2 =
    [
        0, -0.01193013005057010, 0.2517399633803461, -2.170575700536993, 13.53034988843029, -50.29988758547014,
        109.6355666577570, -142.2753946421155, 108.0435942856230, -44.14153236817392, 7.442971530188783,
    ];

    private static readonly double[] C3 =
    [
        0, -6.802995733503803e-4, 0.01876837790289664, -0.2002561813734156, 1.022992966719220, -2.895696483903638,
        4.810060584300675, -4.672147440794683, 2.458043105903461, -0.5411227621436812,
    ];

    private static readonly double[] C4 =
        [0, 4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6];

    private static readonly double[] C5 = [0, -2.788074354782409e-8, 1.345612883493354e-8];

    /// <summary>Density in kg/L of that many per cent ethanol by mass at a temperature in °C.</summary>
    public static double KilogramsPerLitreAt(double percentByMass, double celsius)
    {
        double p = percentByMass / 100;
        double t = celsius - 20;
        double mixed = t * (Sum(C1, p) + (t * (Sum(C2, p) + (t * (Sum(C3, p) + (t * (Sum(C4, p) + (t * Sum(C5, p)))))))));
        return (Sum(A, p) + Sum(B, t) + mixed) / 1000;
    }

    /// <summary>Density in kg/L of that many per cent ethanol by mass at 20 °C.</summary>
    public static double KilogramsPerLitreAt20C(double percentByMass) => Sum(A, percentByMass / 100) / 1000;

    /// <summary>Gravity 20/20 °C in air of that many per cent ethanol by mass; exactly 1 for water.</summary>
    public static double GravityAt20C(double percentByMass)
    {
        double p = percentByMass / 100;
        return 1 + (p * Sum(A.AsSpan(1), p) / WaterInAir);
    }

    /// <summary>Per cent by volume at 20 °C from per cent by mass.</summary>
    public static double PercentByVolumeOf(double percentByMass) =>
        percentByMass * Sum(A, percentByMass / 100) / EthanolKilogramsPerCubicMetre;

    /// <summary>Per cent by mass from per cent by volume at 20 °C; the way back from <see cref="PercentByVolumeOf(double)"/>.</summary>
    /// <remarks>Newton's method with a fixed number of steps, for 0 to 100 %.</remarks>
    public static double PercentByMassOf(double percentByVolume)
    {
        double v = percentByVolume / 100;
        double target = v * EthanolKilogramsPerCubicMetre;
        double p = v * (0.7907 + (0.2093 * v * v));
        for (int step = 0; step < NewtonSteps; step++)
        {
            double density = Sum(A, p);
            p -= ((p * density) - target) / (density + (p * Slope(A, p)));
        }

        return 100 * p;
    }

    private static double Sum(ReadOnlySpan<double> coefficients, double x)
    {
        double sum = 0;
        for (int k = coefficients.Length - 1; k >= 0; k--)
        {
            sum = (sum * x) + coefficients[k];
        }

        return sum;
    }

    private static double Slope(ReadOnlySpan<double> coefficients, double x)
    {
        double sum = 0;
        for (int k = coefficients.Length - 1; k >= 1; k--)
        {
            sum = (sum * x) + (k * coefficients[k]);
        }

        return sum;
    }
}
