using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Science.Mashing;

/// <summary>An acid put into the mash.</summary>
/// <param name="Acid">As sold.</param>
/// <param name="Units">mL, or grams of a powder.</param>
public sealed record MashPhAcid(AcidAsSold Acid, double Units);

/// <summary>All that sets the pH of a mash.</summary>
/// <param name="Liquor">Strike liquor with its salts.</param>
/// <param name="Malts">Malts, grain and foods; at least one.</param>
/// <param name="Acids">Acids.</param>
public sealed record MashPhMix(
    MashPhLiquor Liquor, IReadOnlyList<MashPhMalt> Malts, IReadOnlyList<MashPhAcid> Acids)
{
    /// <summary>Buffer capacity of the grist, mean of a1 by mass, mEq/(kg·pH).</summary>
    public double GristBuffer =>
        Malts.Sum(malt => malt.Amount.Kilograms * malt.A1) / Malts.Sum(malt => malt.Amount.Kilograms);
}

/// <summary>pH of a mash from the balance of its protons.</summary>
/// <remarks>
/// <para>Symbols: the pH at which malts' acid need + liquor's alkalinity down to that pH − protons of Ca and Mg −
/// acids' protons is zero; each term in mEq.</para>
/// <para>Source: electroneutrality; malts by <see cref="MashPhMalt"/>, liquor by <see cref="MashPhLiquor"/>, calcium by
/// <see cref="MashPhCalcium"/>, acids by <see cref="Acid"/>.</para>
/// <para>Valid for: pH 4.5 to 6.5. Constants at 20 °C and ionic strength 0.005 mol/L; the pH is that of a cooled sample.</para>
/// <para>Accuracy: ± 0.15 at best without a reading, because buffer capacities in print differ by a factor of three;
/// <see cref="MashPhBand"/> shows it.</para>
/// <para>Notes: a mash wants one reading on a calibrated meter more than it wants decimals here.</para>
/// </remarks>
public static class MashPh
{
    internal static readonly CarbonateConstants Constants = CarbonateConstants.At(20, 0.005);
    private static readonly QuantityLimits Litres = new("Mash liquor", "L", 1e-6, 1e7);
    private static readonly QuantityLimits Grist = new("Grist", "kg", 1e-6, 1e6);
    private static readonly QuantityLimits Units = new("Acid", "mL or g", 0, 1e6);

    /// <summary>pH of the cooled sample.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No malt, no liquor, or a negative acid.</exception>
    /// <exception cref="Numerics.DidNotConvergeException">No pH from 0 to 14 balances it: nothing a mash can be.</exception>
    public static double Predict(MashPhMix mix) => Predict(mix, bufferFactor: 1, offset: 0);

    /// <summary>pH of the cooled sample if the grist is as that guess has it.</summary>
    public static double Predict(MashPhMix mix, MashPhGuess guess) => Predict(mix, guess.BufferFactor, guess.Offset);

    /// <summary>Acid in mEq that would bring the mash to a pH if the grist is as that guess has it; below zero, alkali.</summary>
    public static double AcidToReach(MashPhMix mix, double ph, MashPhGuess guess) =>
        Lacking(Checked(mix), Allowed.Ph.Check(ph), guess.BufferFactor, guess.Offset);

    /// <summary>Acid in mEq that would bring the mash to a pH (of the cooled sample); below zero, alkali.</summary>
    public static double AcidToReach(MashPhMix mix, double ph) =>
        Lacking(Checked(mix), Allowed.Ph.Check(ph), bufferFactor: 1, offset: 0);

    /// <summary>mL (or grams) of an acid that would bring the mash to a pH; none if it is there or below.</summary>
    /// <remarks>Add two thirds, stir, wait ten minutes and measure (common practice, no source).</remarks>
    public static double UnitsToReach(MashPhMix mix, double ph, AcidAsSold acid) =>
        Math.Max(0, acid.UnitsFor(AcidToReach(mix, ph), ph));

    internal static double Predict(MashPhMix mix, double bufferFactor, double offset)
    {
        MashPhMix whole = Checked(mix);
        return Allowed.PhScale.Root(ph => Lacking(whole, ph, bufferFactor, offset), "pH of a mash");
    }

    /// <summary>Acid still lacking at a pH, mEq: falls as pH rises.</summary>
    internal static double Lacking(MashPhMix mix, double ph, double bufferFactor, double offset)
    {
        double lacking = mix.Liquor.AcidTo(ph);
        foreach (MashPhMalt malt in mix.Malts)
        {
            lacking += malt.Amount.Kilograms * malt.AcidPerKilogram(ph, bufferFactor, offset);
        }

        foreach (MashPhAcid dose in mix.Acids)
        {
            lacking -= dose.Units * dose.Acid.MilliequivalentsPerUnit(ph);
        }

        return lacking;
    }

    internal static MashPhMix Checked(MashPhMix mix)
    {
        _ = Litres.Check(mix.Liquor.Litres);
        _ = Grist.Check(mix.Malts.Sum(malt => malt.Checked().Amount.Kilograms));
        foreach (MashPhAcid dose in mix.Acids)
        {
            _ = Units.Check(dose.Units);
        }

        return mix;
    }
}
