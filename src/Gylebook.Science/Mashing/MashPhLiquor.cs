using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Science.Mashing;

/// <summary>The liquor of a mash with the salts dissolved in it.</summary>
/// <remarks>
/// <para>Symbols: Alk, alkalinity mEq/L; CT, total carbonate mmol/L; both add up when salts dissolve. Lime adds Alk without
/// CT, baking soda both.</para>
/// <para>Source: <see cref="CarbonateSystem"/>. CO2 is kept in, as the published check values have it.</para>
/// <para>Notes: chalk is counted as if all dissolved. Measurements find it weak at raising a mash, above 400 to 500 mg/L
/// most of all: prefer baking soda or lime.</para>
/// </remarks>
public sealed record MashPhLiquor
{
    private MashPhLiquor(double litres, IonProfile ions, double totalCarbonate, double chalk) =>
        (Litres, Ions, TotalCarbonate, ChalkGramsPerLitre) = (litres, ions, totalCarbonate, chalk);

    /// <summary>Litres at 20 °C.</summary>
    public double Litres { get; }

    /// <summary>Ions, salts included.</summary>
    public IonProfile Ions { get; }

    /// <summary>Total carbonate, mmol/L.</summary>
    public double TotalCarbonate { get; }

    /// <summary>Chalk stirred in, g/L.</summary>
    public double ChalkGramsPerLitre { get; }

    /// <summary>Liquor of known ions and pH.</summary>
    /// <param name="volume">How much.</param>
    /// <param name="ions">Its ions.</param>
    /// <param name="ph">Its pH, from which its CO2 follows.</param>
    public static MashPhLiquor Of(VolumeAt20C volume, IonProfile ions, double ph) => new(
        volume.Litres, ions,
        CarbonateSystem.TotalCarbonate(MashPh.Constants, ions.AlkalinityMilliequivalents, ph), chalk: 0);

    /// <summary>The same liquor with a salt stirred in.</summary>
    public MashPhLiquor With(BrewingSalt salt, Mass amount)
    {
        VolumeAt20C volume = VolumeAt20C.FromLitres(Litres);
        return new MashPhLiquor(Litres, Ions + salt.Added(amount, volume),
            TotalCarbonate + (salt.CarbonatePerGram * amount.Grams / Litres),
            ChalkGramsPerLitre + (salt.Id == BrewingSalts.Chalk.Id ? amount.Grams / Litres : 0));
    }

    /// <summary>Acid the liquor takes to come to a pH in the mash, mEq in all; minerals' protons counted.</summary>
    internal double AcidTo(double ph)
    {
        double carbonate = Ions.AlkalinityMilliequivalents - CarbonateSystem.Charge(MashPh.Constants, TotalCarbonate, ph);
        double minerals = MashPhCalcium.ProtonsFromCalcium(Ions.Calcium)
            + MashPhCalcium.ProtonsFromMagnesium(Ions.Magnesium);
        return Litres * (carbonate - minerals);
    }
}
