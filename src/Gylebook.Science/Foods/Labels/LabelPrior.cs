namespace Gylebook.Science.Foods.Labels;

/// <summary>A likely value inside guaranteed bounds: what the food's family usually has, clipped to what the label allows.</summary>
/// <remarks>
/// <para>What: nearest value in the bounds to the family's figure. For "0 g" and "less than 1 g" that beats the middle.</para>
/// <para>Source: common practice, no source; the family's figure brings its own.</para>
/// <para>Valid for: bounds that are not empty.</para>
/// <para>Accuracy: none is claimed; only the bounds are guaranteed.</para>
/// </remarks>
public static class LabelPrior
{
    /// <summary>The family's figure clipped to the bounds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure is not a number.</exception>
    /// <exception cref="InvalidOperationException">The bounds are empty.</exception>
    public static double PointEstimate(Interval bounds, double familyFigure) => double.IsNaN(familyFigure)
        ? throw new ArgumentOutOfRangeException(nameof(familyFigure), familyFigure, "The family's figure is not a number.")
        : bounds.Clip(familyFigure);
}
