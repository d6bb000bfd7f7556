namespace Gylebook.Science.Numerics.Distributions;

/// <summary>What a reading says when its error has heavier tails than a normal one: Student's t with four degrees of freedom.</summary>
/// <remarks>
/// <para>p(x | y) ∝ exp(−x²/2s²) · [1 + (y − x)²/(νR)]^(−(ν + 1)/2), ν = 4; x and y counted from the forecast.</para>
/// <para>Symbols: s² variance of the forecast; R variance of the reading about it; y how far the reading lies from the forecast.</para>
/// <para>Source: Bayes' theorem, by the trapezoid rule. The weight (ν + 1)/(ν + z²) of one residual z leads to the peak of that density, which two
/// standard deviations off lies nearly where the normal error has it; its mean is what is wanted.</para>
/// <para>Accuracy: 1e-6 of s.</para>
/// </remarks>
public static class HeavyTail
{
    private const double Freedom = 4, Reach = 9, StepsToASpread = 40;

    /// <summary>Mean and standard deviation of what is true, once it is read.</summary>
    /// <param name="forecastVariance">Above 0.</param>
    /// <param name="errorVariance">Above 0.</param>
    /// <param name="off">The reading less the forecast.</param>
    public static (double Mean, double Deviation) After(double forecastVariance, double errorVariance, double off)
    {
        double spread = Math.Sqrt(forecastVariance), step = Math.Min(spread, Math.Sqrt(errorVariance)) / StepsToASpread;
        double weight = 0, first = 0, second = 0;
        int steps = (int)Math.Ceiling(Reach * spread / step);
        for (int i = -steps; i <= steps; i++)
        {
            double x = i * step, residual = off - x;
            double density = Math.Exp(-x * x / (2 * forecastVariance)) * Math.Pow(1 + (residual * residual / (Freedom * errorVariance)), -(Freedom + 1) / 2);
            weight += density;
            first += density * x;
            second += density * x * x;
        }

        double mean = first / weight;
        return (mean, Math.Sqrt((second / weight) - (mean * mean)));
    }

    /// <summary>The variance of a normal error that moves the forecast exactly as far.</summary>
    /// <param name="forecastVariance">Above 0.</param>
    /// <param name="errorVariance">Above 0.</param>
    /// <param name="off">The reading less the forecast; not 0.</param>
    public static double SameAsNormal(double forecastVariance, double errorVariance, double off) =>
        forecastVariance * ((off / After(forecastVariance, errorVariance, off).Mean) - 1);
}
