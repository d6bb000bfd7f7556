namespace Gylebook.Science.Numerics.Distributions;

/// <summary>The normal distribution of mean 0 and standard deviation 1.</summary>
/// <remarks>
/// <para>Source: share: Hart (1968) as given by West, Wilmott magazine, May 2005. Quantile: Wichura, algorithm AS 241
/// (PPND16), Applied Statistics 37:477 (1988).</para>
/// <para>Valid for: any number; a share above 0 and below 1.</para>
/// <para>Accuracy: share 1e-14 absolute; quantile about 1e-15 relative.</para>
/// </remarks>
public static class StandardNormal
{
    private static readonly double[] NearTop =
    [
        3.3871328727963666080, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
        45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
    ];

    private static readonly double[] NearBottom =
    [
        1, 42.313330701600911252, 687.18700749205790830, 5394.1960214247511077,
        21213.794301586595867, 39307.895800092710610, 28729.085735721942674, 5226.4952788528545610,
    ];

    private static readonly double[] MiddleTop =
    [
        1.42343711074968357734, 4.63033784615654529590, 5.76949722146069140550, 3.64784832476320460504,
        1.27045825245236838258, 0.241780725177450611770, 0.0227238449892691845833, 7.74545014278341407640e-4,
    ];

    private static readonly double[] MiddleBottom =
    [
        1, 2.05319162663775882187, 1.67638483018380384940, 0.689767334985100004550,
        0.148103976427480074590, 0.0151986665636164571966, 5.47593808499534494600e-4, 1.05075007164441684324e-9,
    ];

    private static readonly double[] FarTop =
    [
        6.65790464350110377720, 5.46378491116411436990, 1.78482653991729133580, 0.296560571828504891230,
        0.0265321895265761230930, 0.00124266094738807843860, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
    ];

    private static readonly double[] FarBottom =
    [
        1, 0.599832206555887937690, 0.136929880922735805310, 0.0148753612908506148525,
        7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15,
    ];

    private static readonly double[] ShareTop =
    [
        220.206867912376, 221.213596169931, 112.079291497871, 33.912866078383,
        6.37396220353165, 0.700383064443688, 3.52624965998911e-2,
    ];

    private static readonly double[] ShareBottom =
    [
        440.413735824752, 793.826512519948, 637.333633378831, 296.564248779674,
        86.7807322029461, 16.064177579207, 1.75566716318264, 8.83883476483184e-2,
    ];

    /// <summary>The share of draws below z, from 0 to 1.</summary>
    public static double ShareBelow(double z)
    {
        double x = Math.Abs(z);
        double tail = x > 37 ? 0
            : x < 7.07106781186547 ? Math.Exp(-x * x / 2) * Sum(ShareTop, x) / Sum(ShareBottom, x)
            : Math.Exp(-x * x / 2) / (x + (1 / (x + (2 / (x + (3 / (x + (4 / (x + 0.65))))))))) / 2.506628274631;
        return z > 0 ? 1 - tail : tail;
    }

    /// <summary>The z below which that share of draws lies; exactly 0 at a half.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and below 1.</exception>
    public static double Quantile(double share)
    {
        if (!(share > 0 && share < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "share must be above 0 and below 1.");
        }

        double q = share - 0.5;
        if (Math.Abs(q) <= 0.425)
        {
            double r = 0.180625 - (q * q);
            return q * Sum(NearTop, r) / Sum(NearBottom, r);
        }

        double root = Math.Sqrt(-Math.Log(q < 0 ? share : 1 - share));
        double z = root <= 5
            ? Sum(MiddleTop, root - 1.6) / Sum(MiddleBottom, root - 1.6)
            : Sum(FarTop, root - 5) / Sum(FarBottom, root - 5);
        return q < 0 ? -z : z;
    }

    private static double Sum(double[] coefficients, double x)
    {
        double sum = 0;
        for (int i = coefficients.Length - 1; i >= 0; i--)
        {
            sum = (sum * x) + coefficients[i];
        }

        return sum;
    }
}
