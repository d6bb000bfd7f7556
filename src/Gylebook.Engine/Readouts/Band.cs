namespace Gylebook.Engine.Readouts;

/// <summary>How a band's ends are meant.</summary>
public enum BandKind
{
    /// <summary>No width known yet.</summary>
    Point,

    /// <summary>Guaranteed ends, as from a label.</summary>
    Bounds,

    /// <summary>5 %, 50 % and 95 % of the draws.</summary>
    Quantiles,
}

/// <summary>A number and how sure we are.</summary>
/// <param name="Low">Low end.</param>
/// <param name="Likely">From the one coherent run at the medians.</param>
/// <param name="High">High end.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Kind">How the ends are meant.</param>
public sealed record Band(double Low, double Likely, double High, string Unit, BandKind Kind)
{
    /// <summary>Half of the draws lie below it; null where nothing was drawn.</summary>
    public double? Middle { get; init; }

    /// <summary>A number whose width nobody knows yet.</summary>
    public static Band Point(double value, string unit) => new(value, value, value, unit, BandKind.Point);
}
