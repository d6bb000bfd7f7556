using Gylebook.Science.Quantities;

namespace Gylebook.Science.Mashing;

/// <summary>What a meter reads in the hot mash beside the cooled sample.</summary>
/// <remarks>
/// <para>Symbols: pH at t = pH at 20 °C − 0.35/45 (t − 20).</para>
/// <para>Source: Briggs, Boulton, Brookes and Stevens (2004) Brewing: Science and Practice, ch. 4: about 0.35 lower at 65 °C,
/// 0.45 at 78 °C.</para>
/// <para>Valid for: 15 to 80 °C. Accuracy: two printed points; one straight line meets both within 0.002.</para>
/// <para>Notes: this is a real change of the acids, not the meter's own correction. Cool the sample: hot mash scalds, and
/// wears out the electrode.</para>
/// </remarks>
public static class MashPhTemperature
{
    private const double FallPerKelvin = 0.35 / 45;
    private static readonly QuantityLimits Mash = new("Sample temperature", "°C", 0, 100);

    /// <summary>pH of the sample at 20 °C from that at a temperature.</summary>
    public static double ToRoom(double ph, Temperature at) =>
        ph + (FallPerKelvin * (Mash.Check(at.Celsius) - 20));
}
