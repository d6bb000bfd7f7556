namespace Gylebook.Science.Numerics;

/// <summary>How far a curve lies from what was read, as a value: each difference over its standard deviation.</summary>
public interface IMisfit
{
    /// <summary>How many differences there are.</summary>
    int Count { get; }

    /// <summary>Writes them.</summary>
    /// <param name="figures">The curve's figures.</param>
    /// <param name="off">Written over, <see cref="Count"/> numbers.</param>
    void Off(ReadOnlySpan<double> figures, Span<double> off);
}
