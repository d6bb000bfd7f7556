using Gylebook.Science.Quantities;

namespace Gylebook.Science.Mashing;

/// <summary>A malt, grain or food in the mash as an acid and buffer: its titration curve.</summary>
/// <remarks>
/// <para>Symbols: d = pH − pH in distilled water; acid to bring it to pH, mEq/kg = −(a1 d + a2 d² + a3 d³); a1 above
/// zero.</para>
/// <para>Source: titration of the malt's own mash; form after published titrations of wheat malt (a1 44.8, a2 6.0,
/// distilled-water pH 6.07).</para>
/// <para>Valid for: d from −2 to 2, where the curve rises with pH.</para>
/// <para>Accuracy: printed buffer capacities of pale malt run from 21 to 64 mEq/(kg·pH), a factor of three.</para>
/// </remarks>
/// <param name="Name">As the recipe has it.</param>
/// <param name="Amount">How much.</param>
/// <param name="DistilledPh">pH of its mash in distilled water, sample at room temperature.</param>
/// <param name="A1">mEq/(kg·pH).</param>
/// <param name="A2">mEq/(kg·pH²).</param>
/// <param name="A3">mEq/(kg·pH³).</param>
public sealed record MashPhMalt(
    string Name, Mass Amount, double DistilledPh, double A1, double A2 = 0, double A3 = 0)
{
    /// <summary>Acid that takes one kg from its distilled-water pH to another, mEq/kg; below zero it is acid given.</summary>
    public double AcidPerKilogram(double ph) => AcidPerKilogram(ph, bufferFactor: 1, offset: 0);

    internal double AcidPerKilogram(double ph, double bufferFactor, double offset)
    {
        double d = ph - DistilledPh - offset;
        return -bufferFactor * d * (A1 + (d * (A2 + (d * A3))));
    }

    /// <summary>Refuses what is no buffer.</summary>
    internal MashPhMalt Checked()
    {
        _ = Limits.Ph.Check(DistilledPh);
        _ = Limits.Buffer.Check(A1);
        _ = Limits.Curvature.Check(A2);
        _ = Limits.Curvature.Check(A3);
        return this;
    }

    private static class Limits
    {
        internal static readonly QuantityLimits Ph = new("Distilled-water pH", "", 1, 13);
        internal static readonly QuantityLimits Buffer = new("Buffer capacity", "mEq/(kg·pH)", 0.1, 5000);
        internal static readonly QuantityLimits Curvature = new("Curvature", "mEq/(kg·pH²)", -1000, 1000);
    }
}
