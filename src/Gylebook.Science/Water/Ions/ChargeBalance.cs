namespace Gylebook.Science.Water;

/// <summary>Whether the positive and negative ions of an analysis cancel, as they must in any real water.</summary>
/// <remarks>
/// <para>Symbols: sums in mEq/L; error = 100 (cations − anions)/(cations + anions), %.</para>
/// <para>Source: Standard Methods for the Examination of Water and Wastewater, 1030 E (limits from memory): anions to
/// 3 mEq/L, difference within 0.2 mEq/L; to 10, within 2 %; above, within 5 %.</para>
/// <para>Valid for: one sample analysed whole. A utility's yearly means come from different days; 5 to 10 % is usual
/// there (common practice, no source).</para>
/// <para>Notes: as printed the limit would fall from 0.2 to 0.12 mEq/L on passing 3 mEq/L; we never let it be below
/// 0.2 mEq/L.</para>
/// </remarks>
/// <param name="Cations">Sum of cations, mEq/L.</param>
/// <param name="Anions">Sum of anions, mEq/L.</param>
public readonly record struct ChargeBalance(double Cations, double Anions)
{
    private const double SmallestAccepted = 0.2;

    /// <summary>The balance of a profile.</summary>
    public static ChargeBalance Of(IonProfile water)
    {
        double cations = 0, anions = 0;
        foreach (Ion ion in Ions.All)
        {
            double charge = water.Milliequivalents(ion);
            if (ion.Charge() > 0)
            {
                cations += charge;
            }
            else
            {
                anions += charge;
            }
        }

        return new ChargeBalance(cations, anions);
    }

    /// <summary>Cations less anions, mEq/L.</summary>
    public double Difference => Cations - Anions;

    /// <summary>The error in percent; zero for distilled water.</summary>
    public double ErrorPercent => Cations + Anions == 0 ? 0 : 100 * Difference / (Cations + Anions);

    /// <summary>The largest difference accepted at this strength, mEq/L.</summary>
    public double AcceptedDifference => Anions switch
    {
        <= 3 => SmallestAccepted,
        <= 10 => Math.Max(SmallestAccepted, 0.02 * (Cations + Anions)),
        _ => 0.05 * (Cations + Anions),
    };

    /// <summary>Whether Standard Methods 1030 E accepts the analysis.</summary>
    public bool IsAccepted => Math.Abs(Difference) <= AcceptedDifference;
}
