namespace Gylebook.Science.Mashing;

/// <summary>What one meter reading says of the malts it is laid to.</summary>
/// <remarks>
/// <para>Symbols: s, the one shift of distilled-water pH, alike for every malt chosen, at which the model reads what the meter
/// read; the other malts stay as stated. Low and high are its ends with the grist's mean buffer at 21 and 64 mEq/(kg·pH).</para>
/// <para>Source: our choice. One reading cannot tell malts apart; laid to those that weigh most, its error is smallest.</para>
/// <para>Valid for: malts that are a good part of the grist. Laid to a few per cent of it, a shift grows out of all measure.</para>
/// <para>Accuracy: that of the meter, times grist over malts chosen.</para>
/// </remarks>
public static class MashPhLearning
{
    /// <summary>The shift of those malts.</summary>
    /// <param name="mix">The mash as it was measured.</param>
    /// <param name="chosen">Places in its malts that the reading is laid to.</param>
    /// <param name="reading">What the reading says of the grist.</param>
    /// <param name="phAt20C">What the meter read, of a sample at 20 °C.</param>
    public static (double Low, double Likely, double High) ShiftOf(
        MashPhMix mix, IReadOnlySet<int> chosen, MashPhReading reading, double phAt20C)
    {
        double Shift(MashPhGuess guess) => MashPhReading.ShiftWhereNoneLacks(shift =>
            MashPh.Lacking(Shifted(mix, chosen, shift), phAt20C, guess.BufferFactor, offset: 0));
        double likely = Shift(reading.Likely), soft = Shift(reading.SoftestGrist), stiff = Shift(reading.StiffestGrist);
        return (Math.Min(likely, Math.Min(soft, stiff)), likely, Math.Max(likely, Math.Max(soft, stiff)));
    }

    private static MashPhMix Shifted(MashPhMix mix, IReadOnlySet<int> chosen, double shift) => mix with
    {
        Malts = [.. mix.Malts.Select((malt, at) => chosen.Contains(at) ? malt with { DistilledPh = malt.DistilledPh + shift } : malt)],
    };
}
