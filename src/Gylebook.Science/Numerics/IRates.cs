namespace Gylebook.Science.Numerics;

/// <summary>How fast each figure of a state changes: the right-hand side of ordinary differential equations, as a value.</summary>
public interface IRates
{
    /// <summary>Writes the changes in a unit of time.</summary>
    /// <param name="at">The time.</param>
    /// <param name="state">The figures then.</param>
    /// <param name="change">Written over, a number a figure.</param>
    void Change(double at, ReadOnlySpan<double> state, Span<double> change);
}
