namespace Gylebook.Science.Mashing;

/// <summary>One way the grist may be: its buffer times a factor, its distilled-water pH shifted.</summary>
/// <param name="BufferFactor">On every malt's curve.</param>
/// <param name="Offset">On every malt's distilled-water pH.</param>
public readonly record struct MashPhGuess(double BufferFactor, double Offset);

/// <summary>Mash pH between the ends that the literature leaves open.</summary>
/// <remarks>
/// <para>Symbols: the answer with the grist's mean buffer at 21 and at 64 mEq/(kg·pH), and as stated. Its kind is bounds,
/// not a probability.</para>
/// <para>Source: 21, titration of a heritage pale malt; 64, the German rule for acid in the mash (37 % hydrochloric acid,
/// 53 mL for 100 kg and 0.1 pH); hobby and trade literature between.</para>
/// <para>Valid for: the buffer only. The malts' distilled-water pH and calcium's effect are taken as stated, so a mash in
/// distilled water has a narrow band and may still be off: only a reading tells.</para>
/// </remarks>
/// <param name="Low">Lowest of the three, cooled sample.</param>
/// <param name="Likely">As stated.</param>
/// <param name="High">Highest of the three.</param>
public readonly record struct MashPhBand(double Low, double Likely, double High)
{
    /// <summary>Smallest buffer capacity of a grist in print, mEq/(kg·pH).</summary>
    public const double SmallestBuffer = 21;

    /// <summary>Largest buffer capacity of a grist in print, mEq/(kg·pH).</summary>
    public const double LargestBuffer = 64;

    /// <summary>The band of a mash no meter has seen.</summary>
    public static MashPhBand Of(MashPhMix mix)
    {
        double buffer = MashPh.Checked(mix).GristBuffer;
        return Over(mix, [new(1, 0), new(SmallestBuffer / buffer, 0), new(LargestBuffer / buffer, 0)]);
    }

    /// <summary>The band of a mash of the same grist as one that was measured.</summary>
    public static MashPhBand Of(MashPhMix mix, MashPhReading reading) =>
        Over(mix, [reading.Likely, reading.SoftestGrist, reading.StiffestGrist]);

    private static MashPhBand Over(MashPhMix mix, ReadOnlySpan<MashPhGuess> guesses)
    {
        double likely = MashPh.Predict(mix, guesses[0].BufferFactor, guesses[0].Offset);
        (double low, double high) = (likely, likely);
        foreach (MashPhGuess guess in guesses[1..])
        {
            double ph = MashPh.Predict(mix, guess.BufferFactor, guess.Offset);
            (low, high) = (Math.Min(low, ph), Math.Max(high, ph));
        }

        return new MashPhBand(low, likely, high);
    }
}
