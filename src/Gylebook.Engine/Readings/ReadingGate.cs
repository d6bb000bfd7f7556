using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Readings;

/// <summary>What is done with a reading, by how far it lies from its forecast.</summary>
public enum ReadingTrust
{
    /// <summary>Within two standard deviations: as it is.</summary>
    AsItIs,

    /// <summary>Up to three and a half: it moves less, as if its error had heavy tails.</summary>
    Halfway,

    /// <summary>Beyond: nothing moves until the brewer says.</summary>
    SetAside,
}

/// <summary>A reading held against its forecast.</summary>
/// <param name="Forecast">Mean of what the instrument was forecast to show.</param>
/// <param name="Deviation">Standard deviation of that, the reading's own scatter included.</param>
/// <param name="Off">How many of them the reading lies above it.</param>
/// <param name="Trust">What is done with it.</param>
/// <param name="ErrorVariance">The variance it is taken with; that of its scatter unless it is halfway.</param>
public readonly record struct GatedReading(double Forecast, double Deviation, double Off, ReadingTrust Trust, double ErrorVariance)
{
    /// <summary>Standard deviations up to which a reading is taken as it is, and up to which it is taken at all.</summary>
    public const double AsItIsUpTo = 2, AtAllUpTo = 3.5;

    /// <summary>Holds a reading against forecasts of it.</summary>
    /// <param name="read">What was read.</param>
    /// <param name="scatterVariance">Of one reading.</param>
    /// <param name="forecasts">What the instrument was forecast to show, draw by draw; what is no number is passed over.</param>
    public static GatedReading Of(double read, double scatterVariance, ReadOnlySpan<double> forecasts)
    {
        double count = 0, mean = 0, squares = 0;
        foreach (double forecast in forecasts)
        {
            if (double.IsFinite(forecast))
            {
                double from = forecast - mean;
                mean += from / ++count;
                squares += from * (forecast - mean);
            }
        }

        double variance = count > 1 ? squares / (count - 1) : 0, deviation = Math.Sqrt(variance + scatterVariance);
        double off = (read - mean) / deviation;
        ReadingTrust trust = Math.Abs(off) <= AsItIsUpTo ? ReadingTrust.AsItIs : Math.Abs(off) <= AtAllUpTo ? ReadingTrust.Halfway : ReadingTrust.SetAside;
        bool isHalfway = trust == ReadingTrust.Halfway && variance > 0 && scatterVariance > 0;
        return new(mean, deviation, off, trust, isHalfway ? HeavyTail.SameAsNormal(variance, scatterVariance, read - mean) : scatterVariance);
    }
}
