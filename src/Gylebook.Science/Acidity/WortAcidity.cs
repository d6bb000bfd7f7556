using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Science.Acidity;

/// <summary>pH of wort or beer from a pH that is known and the acids it carries; and lactic acid to a wanted pH.</summary>
/// <remarks>
/// <para>Symbols: a, pH known (the anchor), without the load; B, buffering, mEq/pH: what malt brings by the kilogram times
/// kilograms; G(pH), mEq the load gives; F(pH), free protons, mEq; R, other protons set free or held back, mEq. Balance:
/// G(pH) + R = B·(a − pH) + F(pH) − F(a). The left rises with pH and with acid, the right falls: one root, and more acid never
/// raises it. Lactic acid to a target t, in closed form: n = (B·(a − t) + F(t) − F(a) − G(t) − R) / z(t), none if below zero.</para>
/// <para>Source: electroneutrality; z by <see cref="Acid"/>. B from two trade rules for wort: millilitres of three acids for
/// 100 kg of malt and 0.1 pH (31 to 33 mEq/(kg·pH)), and a maltster's sour wort of 52 to 58 g/L lactic acid, 6 L for 1000 kg of malt
/// and 0.1 pH (34 to 38; 36 at 55 g/L).</para>
/// <para>Valid for: those rules speak of 0.1 pH between about 5.2 and 5.7. One B carried down to pH 3 is our step; no titration
/// of wort that far was found.</para>
/// <para>Accuracy: that of a and B. No check at pH 3 to 4 was to be had.</para>
/// <para>Notes: constants at 25 °C and ionic strength 0; a cooled sample.</para>
/// </remarks>
public static class WortAcidity
{
    private static readonly QuantityLimits Buffering = new("Buffering", "mEq/pH", 1e-9, 1e9);

    /// <summary>The pH at which the balance closes.</summary>
    /// <param name="load">What is carried.</param>
    /// <param name="buffering">B, mEq/pH.</param>
    /// <param name="anchor">a.</param>
    /// <param name="released">R, mEq: protons set free besides; below zero what the anchor has counted already.</param>
    /// <exception cref="ArgumentOutOfRangeException">A pH outside 0 to 14, or no buffering.</exception>
    /// <exception cref="DidNotConvergeException">A load that no pH balances.</exception>
    public static double PhOf(in AcidLoad load, double buffering, double anchor, double released = 0)
    {
        Lacking lacking = new(load, buffering, anchor, released);
        return Allowed.PhScale.TryRoot(lacking, anchor, out double ph)
            ? ph
            : throw new DidNotConvergeException("pH of a wort", Allowed.PhScale, (lacking.At(Allowed.PhScale.Low, out _), lacking.At(Allowed.PhScale.High, out _)));
    }

    /// <summary>The pH at which the balance closes; false when that is below 0 or above 14.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A pH outside 0 to 14, or no buffering.</exception>
    public static bool TryPhOf(in AcidLoad load, double buffering, double anchor, double released, out double ph) =>
        Allowed.PhScale.TryRoot(new Lacking(load, buffering, anchor, released), anchor, out ph);

    /// <summary>Acid still lacking at a pH, mEq: falls as pH rises.</summary>
    private readonly struct Lacking(in AcidLoad carried, double buffering, double anchor, double released) : ISlope
    {
        private readonly AcidLoad _carried = carried;
        private readonly double _buffering = Buffering.Check(buffering);
        private readonly double _anchor = Allowed.Ph.Check(anchor);
        private readonly double _counted = carried.Free(anchor) + released;

        public double At(double ph, out double slope)
        {
            double protons = Math.Pow(10, -ph);
            double given = _carried.GivenAt(protons, out double givenPerPh);
            double free = _carried.FreeAt(protons, out double freePerPh);
            slope = freePerPh - _buffering - givenPerPh;
            return (_buffering * (_anchor - ph)) + free - given - _counted;
        }
    }

    /// <summary>mmol of lactic acid to bring it from the anchor to a target pH; none when the load has brought it there already.</summary>
    /// <param name="load">What is carried besides.</param>
    /// <param name="buffering">B, mEq/pH.</param>
    /// <param name="anchor">a.</param>
    /// <param name="target">t.</param>
    /// <exception cref="ArgumentOutOfRangeException">A pH outside 0 to 14.</exception>
    public static double LacticTo(in AcidLoad load, double buffering, double anchor, double target) =>
        MilliequivalentsTo(load, buffering, anchor, target) / Acids.Lactic.ProtonsGivenUp(target);

    /// <summary>mEq of any acid to bring it from the anchor to a target pH; none when the load has brought it there already.</summary>
    /// <param name="load">What is carried besides.</param>
    /// <param name="buffering">B, mEq/pH.</param>
    /// <param name="anchor">a.</param>
    /// <param name="target">t.</param>
    /// <exception cref="ArgumentOutOfRangeException">A pH outside 0 to 14.</exception>
    public static double MilliequivalentsTo(in AcidLoad load, double buffering, double anchor, double target)
    {
        double taken = (buffering * (Allowed.Ph.Check(anchor) - Allowed.Ph.Check(target))) + load.Free(target) - load.Free(anchor);
        return Math.Max(0, taken - load.Given(target));
    }
}
