using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Science.Conditioning;

/// <summary>How fast beer at rest takes up gas from a head of it that stands above.</summary>
/// <remarks>
/// <para>C(t) = C* − (C* − C₀)·e^(−t/τ), τ = V/(k_L·A).</para>
/// <para>Symbols: C volumes in the beer; C₀ at the start; C* what it would come to, of <see cref="KegPressure"/>; τ days; V/A litres over surface, that is the depth
/// of the beer, which τ goes with.</para>
/// <para>Source: the two-film law of gas transfer; τ = 2.5 d, 1.5 to 5 d, for 19 L in a keg whose depth is 1/1.86 m, inferred from what brewers report of 1 to 3 days at
/// 20 to 30 psi and 7 to 14 at serving pressure (common practice). No controlled measurement was found.</para>
/// <para>Valid for: a keg at rest, upright, cold.</para>
/// <para>Accuracy: a factor of two either way in τ. Mere diffusion would take up 7.6 % in a fortnight: carbonated beer is heavier and sinks.</para>
/// <para>Notes: shaking cuts days to minutes, and how many nobody has published: between the law at rest and C* anything may be. Counting "psi hours" has
/// the wrong form, for the beer fills up. A burst that is forgotten goes on to C*: stop early, and taste.</para>
/// </remarks>
public static class BurstCarbonation
{
    /// <summary>Depth of the beer that the times are told for, m: 19 L in the usual keg.</summary>
    public const double UsualDepthMetres = 1 / 1.86;

    /// <summary>Litres that stand so deep in the usual keg.</summary>
    public const double UsualLitres = 19;

    /// <summary>Share of the planned time after which one stops and tastes.</summary>
    public const double TasteAfter = 0.6;

    /// <summary>τ at the usual depth, days: slow, likely and fast are 5, 2.5 and 1.5.</summary>
    private const double SlowDays = 5, LikelyDays = 2.5, FastDays = 1.5;

    /// <summary>τ for beer of some depth, days: low, likely, high.</summary>
    /// <param name="depthMetres">Volume over surface, m; above 0.</param>
    public static Quantiles TimeDays(double depthMetres)
    {
        double scale = Argument.MustBePositive(depthMetres) / UsualDepthMetres;
        return new(FastDays * scale, LikelyDays * scale, SlowDays * scale);
    }

    /// <summary>τ for that much beer in the usual keg, days: a half-full one is half as deep.</summary>
    /// <param name="litres">Beer, L; above 0.</param>
    public static Quantiles TimeDaysOf(double litres) => TimeDays(Argument.MustBePositive(litres) / UsualLitres * UsualDepthMetres);

    /// <summary>Volumes in the beer after a time.</summary>
    /// <param name="start">C₀, volumes.</param>
    /// <param name="end">C*, volumes.</param>
    /// <param name="days">Time under gas, from 0 up.</param>
    /// <param name="timeDays">τ, days; above 0.</param>
    public static double VolumesAfter(double start, double end, double days, double timeDays)
    {
        Argument.MustNotBeNegative(start);
        Argument.MustNotBeNegative(end);
        Argument.MustNotBeNegative(days);
        return end - ((end - start) * Math.Exp(-days / Argument.MustBePositive(timeDays)));
    }

    /// <summary>Days until the beer holds so much; infinity where it never will.</summary>
    /// <param name="start">C₀, volumes.</param>
    /// <param name="end">C*, volumes.</param>
    /// <param name="wanted">Volumes wanted.</param>
    /// <param name="timeDays">τ, days; above 0.</param>
    public static double DaysUntil(double start, double end, double wanted, double timeDays)
    {
        Argument.MustNotBeNegative(start);
        Argument.MustNotBeNegative(end);
        Argument.MustNotBeNegative(wanted);
        Argument.MustBePositive(timeDays);
        double left = (end - wanted) / (end - start);
        return wanted == start ? 0 : left is > 0 and < 1 ? -Math.Log(left) * timeDays : double.PositiveInfinity;
    }

    /// <summary>Volumes after a burst: low, likely and high.</summary>
    /// <param name="start">C₀, volumes.</param>
    /// <param name="end">C*, volumes.</param>
    /// <param name="hours">Under gas.</param>
    /// <param name="litres">Beer in the usual keg, L.</param>
    /// <param name="isShaken">Whether it is shaken or rolled: then the other end of the band is C* itself, and the middle halfway, for want of a law.</param>
    public static Quantiles After(double start, double end, double hours, double litres, bool isShaken)
    {
        Quantiles time = TimeDaysOf(litres);
        double slow = VolumesAfter(start, end, hours / 24, time.High), fast = isShaken ? end : VolumesAfter(start, end, hours / 24, time.Low);
        double likely = isShaken ? (slow + fast) / 2 : VolumesAfter(start, end, hours / 24, time.Middle);
        return new(Math.Min(slow, fast), likely, Math.Max(slow, fast));
    }
}
