namespace Gylebook.Engine.Ensembles;

/// <summary>What a reading would be worth: how much narrower another number's band would get.</summary>
/// <remarks>
/// <para>Source: linear-Gaussian conditioning: the share of variance that goes is ρ² = cov(q, y)²/(var q · (var y + R)), R the variance of
/// the reading's own error; √(1 − ρ²) of the width is left.</para>
/// <para>Valid for: numbers whose joint draws are nearly normal. On a bent model the straight line through the draws explains less than a curve
/// would, so a reading is worth at least this.</para>
/// </remarks>
public static class ReadingWorth
{
    /// <summary>Share of the width of a number that is left after another is read.</summary>
    /// <param name="number">Draws of the number.</param>
    /// <param name="read">The same draws of what is read; draws that lack either are passed over.</param>
    /// <param name="errorVariance">Variance of the reading's error: the instrument's offset and the scatter of one reading.</param>
    public static double WidthLeft(ReadOnlySpan<double> number, ReadOnlySpan<double> read, double errorVariance)
    {
        double count = 0, meanNumber = 0, meanRead = 0, varianceNumber = 0, varianceRead = 0, covariance = 0;
        for (int i = 0; i < number.Length; i++)
        {
            double fromNumber = number[i] - meanNumber, fromRead = read[i] - meanRead;
            if (!double.IsFinite(fromNumber + fromRead))
            {
                continue;
            }

            // Welford: one pass, without the loss of digits that squares of large numbers bring.
            count++;
            meanNumber += fromNumber / count;
            meanRead += fromRead / count;
            varianceNumber += fromNumber * (number[i] - meanNumber);
            varianceRead += fromRead * (read[i] - meanRead);
            covariance += fromNumber * (read[i] - meanRead);
        }

        return count == 0 ? 1 : WidthLeft(covariance / count, varianceNumber / count, varianceRead / count, errorVariance);
    }

    /// <summary>The same from the variances.</summary>
    public static double WidthLeft(double covariance, double varianceNumber, double varianceRead, double errorVariance)
    {
        double most = varianceNumber * (varianceRead + errorVariance);
        return most > 0 ? Math.Sqrt(Math.Max(0, 1 - (covariance * covariance / most))) : 1;
    }
}
