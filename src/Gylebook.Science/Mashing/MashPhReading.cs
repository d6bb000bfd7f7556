using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Science.Mashing;

/// <summary>What one meter reading says about a grist.</summary>
/// <remarks>
/// <para>Symbols: for each buffer the literature allows, the one shift of distilled-water pH that makes the model
/// read what the meter read.</para>
/// <para>Source: our choice. One number cannot tell buffer from distilled-water pH, so both ends of the buffer are
/// kept, each with its shift: the mash measured has no width left, and a correction of it has only the width of the
/// step from there.</para>
/// <para>Accuracy: that of the meter comes on top; a hand-held meter is good for 0.05 (common practice, no source).</para>
/// </remarks>
/// <param name="Likely">The buffer as stated, with its shift.</param>
/// <param name="SoftestGrist">The smallest buffer in print, with its shift.</param>
/// <param name="StiffestGrist">The largest, with its shift.</param>
public readonly record struct MashPhReading(MashPhGuess Likely, MashPhGuess SoftestGrist, MashPhGuess StiffestGrist)
{
    /// <summary>A shift beyond this is no malt's spread: look at the meter, the liquor and the weights.</summary>
    public const double LargestLikelyOffset = 0.3;

    /// <summary>pH; no malt lies so far from another. Where even that is not enough, the end of it is the answer, and far off.</summary>
    private static readonly Bracket Shifts = new(-6, 6);

    private static readonly QuantityLimits Meter = new("Measured mash pH", "", 3.5, 8);

    /// <summary>What a reading of this mash says.</summary>
    /// <param name="mix">The mash as it was made.</param>
    /// <param name="ph">What the meter read.</param>
    /// <param name="sample">Temperature of the sample when it was read.</param>
    /// <exception cref="ArgumentOutOfRangeException">No mash has that pH.</exception>
    public static MashPhReading Of(MashPhMix mix, double ph, Temperature sample)
    {
        double room = Meter.Check(MashPhTemperature.ToRoom(ph, sample));
        double buffer = MashPh.Checked(mix).GristBuffer;
        return new MashPhReading(
            Guess(mix, room, 1),
            Guess(mix, room, MashPhBand.SmallestBuffer / buffer),
            Guess(mix, room, MashPhBand.LargestBuffer / buffer));
    }

    /// <summary>The three of them.</summary>
    public IReadOnlyList<MashPhGuess> Guesses => [Likely, SoftestGrist, StiffestGrist];

    /// <summary>What is doubtful about it, or an empty list.</summary>
    public IReadOnlyList<WaterDiagnosis> Diagnose() => Math.Abs(Likely.Offset) <= LargestLikelyOffset
        ? []
        : [new("mashPh.readingFarOff",
            "The reading lies further from the forecast than malts differ: check meter, liquor and weights.",
            Likely.Offset, LargestLikelyOffset, "pH")];

    /// <summary>The shift at which no acid is lacking at the reading: what lacks rises with the shift, so by halving.</summary>
    internal static double ShiftWhereNoneLacks(Func<double, double> lacking) => Shifts.Halved(shift => -lacking(shift), times: 60).Middle;

    private static MashPhGuess Guess(MashPhMix mix, double ph, double factor) =>
        new(factor, ShiftWhereNoneLacks(shift => MashPh.Lacking(mix, ph, factor, shift)));
}
