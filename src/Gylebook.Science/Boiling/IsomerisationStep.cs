using Gylebook.Science.Numerics;

namespace Gylebook.Science.Boiling;

/// <summary>What some minutes at a temperature do to alpha and iso-alpha acid, as three shares that can be reckoned beforehand.</summary>
/// <remarks>
/// <para>Symbols: A' = a·A; I' = c·A + b·I, with a = e^(−k1 t), b = e^(−k2 t), c = k1/(k2−k1)·(a − b). One step after
/// another is again such a step.</para>
/// <para>Source: the closed form of <see cref="IsomerisationKinetics"/>, Malowicki and Shellhammer 2005.</para>
/// <para>Valid for: 90 to 130 °C as measured; cooler is carried on by the same law.</para>
/// <para>Accuracy: exact at one temperature. Cooling is cut into slices held at their middle temperature, 60 at
/// most: the yield of 20 minutes under a quick chiller is right to 0.00002.</para>
/// <para>Notes: first order in both acids, so hops that go in at different times do not disturb each other.</para>
/// </remarks>
/// <param name="AlphaLeft">Share of the alpha acid that is still alpha acid.</param>
/// <param name="IsoFromAlpha">Iso-alpha acid there is of each alpha acid that was there before.</param>
/// <param name="IsoLeft">Share of the earlier iso-alpha acid that is still there.</param>
public readonly record struct IsomerisationStep(double AlphaLeft, double IsoFromAlpha, double IsoLeft)
{
    private const double SliceMinutes = 0.25;
    private const int MostSlices = 60;
    private const double MostMinutes = 7 * 24 * 60;

    /// <summary>No time at all.</summary>
    public static IsomerisationStep None { get; } = new(1, 0, 1);

    /// <summary>Minutes at one temperature.</summary>
    public static IsomerisationStep At(double minutes, double celsius)
    {
        Argument.MustNotBeNegative(minutes);
        double k1 = IsomerisationKinetics.IsomerisationPerMinute(celsius);
        double k2 = IsomerisationKinetics.LossPerMinute(celsius);
        double alpha = Math.Exp(-k1 * minutes), iso = Math.Exp(-k2 * minutes);
        return new IsomerisationStep(alpha, k1 / (k2 - k1) * (alpha - iso), iso);
    }

    /// <summary>Minutes along a falling temperature, in isothermal slices.</summary>
    /// <param name="minutes">How long; up to a week.</param>
    /// <param name="celsiusAfter">Temperature after so many minutes, °C.</param>
    public static IsomerisationStep Along(double minutes, Func<double, double> celsiusAfter)
    {
        ArgumentNullException.ThrowIfNull(celsiusAfter);
        Argument.MustBeWithin(minutes, 0, MostMinutes);
        int slices = Math.Clamp((int)Math.Ceiling(minutes / SliceMinutes), 1, MostSlices);
        double each = minutes / slices;
        IsomerisationStep all = None;
        for (int i = 0; i < slices; i++)
        {
            all = all.Then(At(each, celsiusAfter((i + 0.5) * each)));
        }

        return all;
    }

    /// <summary>
    /// Wort that runs out of a kettle evenly over some minutes, and is cold as soon as it is out: the mean over all that left early
    /// and late. The closed form's own mean in each isothermal slice: an hour's run-off is right to 0.00007.
    /// </summary>
    /// <param name="minutes">How long the run-off takes; up to a week.</param>
    /// <param name="celsiusAfter">Temperature of what is still in the kettle after so many minutes, °C.</param>
    public static IsomerisationStep RunningOff(double minutes, Func<double, double> celsiusAfter)
    {
        ArgumentNullException.ThrowIfNull(celsiusAfter);
        Argument.MustBeWithin(minutes, 0, MostMinutes);
        int slices = Math.Clamp((int)Math.Ceiling(minutes / SliceMinutes), 1, MostSlices);
        double each = minutes / slices;
        IsomerisationStep before = None;
        (double alpha, double made, double iso) = (0, 0, 0);
        for (int i = 0; i < slices; i++)
        {
            double celsius = celsiusAfter((i + 0.5) * each);
            IsomerisationStep left = before.Then(MeanAt(each, celsius));
            (alpha, made, iso) = (alpha + left.AlphaLeft, made + left.IsoFromAlpha, iso + left.IsoLeft);
            before = before.Then(At(each, celsius));
        }

        return new IsomerisationStep(alpha / slices, made / slices, iso / slices);
    }

    /// <summary>This step, and then another.</summary>
    public IsomerisationStep Then(in IsomerisationStep next) => new(
        AlphaLeft * next.AlphaLeft,
        (AlphaLeft * next.IsoFromAlpha) + (IsoFromAlpha * next.IsoLeft),
        IsoLeft * next.IsoLeft);

    /// <summary>The mean of <see cref="At"/> over all times from 0 to so many minutes.</summary>
    private static IsomerisationStep MeanAt(double minutes, double celsius)
    {
        double k1 = IsomerisationKinetics.IsomerisationPerMinute(celsius);
        double k2 = IsomerisationKinetics.LossPerMinute(celsius);
        double alpha = Decay.MeanLeft(k1 * minutes);
        double iso = Decay.MeanLeft(k2 * minutes);
        return new IsomerisationStep(alpha, k1 / (k2 - k1) * (alpha - iso), iso);
    }
}
