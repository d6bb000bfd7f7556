namespace Gylebook.Science.Numerics.Distributions;

/// <summary>What the low and high of a width are.</summary>
public enum WidthEnds
{
    /// <summary>Values of the figure.</summary>
    Value,

    /// <summary>Added to the median.</summary>
    Added,

    /// <summary>Times the median.</summary>
    Times,
}

/// <summary>How far a figure may lie from a median that is yet to be named.</summary>
/// <param name="Family">Its shape.</param>
/// <param name="Spread">Standard deviation on the family's own scale; 0 for a family that has only ends.</param>
/// <param name="Low">Low end, as <paramref name="Ends"/> says; null for none.</param>
/// <param name="High">High end, as <paramref name="Ends"/> says; null for none.</param>
/// <param name="Ends">What the ends are.</param>
public readonly record struct Width(Family Family, double Spread, double? Low, double? High, WidthEnds Ends)
{
    /// <summary>The distribution around that median, which is never moved: an end that it lies beyond gives way to it.</summary>
    public Distribution About(double median) => Family == Family.Point
        ? new Distribution(Family.Point, median, 0, median, median)
        : new Distribution(
            Family, median, Spread,
            Math.Min(median, End(Low, median, double.NegativeInfinity)),
            Math.Max(median, End(High, median, double.PositiveInfinity)));

    /// <summary>Moves each of many medians to the figure about it that stands at its share.</summary>
    /// <param name="figures">The medians; written over.</param>
    /// <param name="shares">Above 0 and below 1; not looked at again.</param>
    /// <param name="normals">What of a standard normal distribution lies below each.</param>
    /// <param name="places">Which of the shares is whose.</param>
    public void Scatter(Span<double> figures, ReadOnlySpan<double> shares, ReadOnlySpan<double> normals, ReadOnlySpan<int> places)
    {
        if (HasNoEndsFor(figures))
        {
            for (int i = 0; i < figures.Length; i++)
            {
                figures[i] *= Math.Exp(Spread * normals[places[i]]);
            }

            return;
        }

        for (int i = 0; i < figures.Length; i++)
        {
            figures[i] = About(figures[i]).Quantile(shares[places[i]], normals[places[i]]);
        }
    }

    /// <summary>Whether they are amounts that no end is near to: then a draw is a product.</summary>
    private bool HasNoEndsFor(ReadOnlySpan<double> figures)
    {
        if (Family != Family.LogNormal || Ends != WidthEnds.Value)
        {
            return false;
        }

        double far = Math.Exp(Spread * Distribution.Far), low = Low ?? 0, high = High ?? double.PositiveInfinity;
        foreach (double figure in figures)
        {
            if (!(figure >= low * far && figure * far <= high))
            {
                return false;
            }
        }

        return true;
    }

    private double End(double? end, double median, double none) => (end, Ends) switch
    {
        (null, _) => none,
        ({ } added, WidthEnds.Added) => median + added,
        ({ } times, WidthEnds.Times) => median * times,
        ({ } value, _) => value,
    };
}
