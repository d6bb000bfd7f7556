using Gylebook.Science.Quantities;

namespace Gylebook.Science.Water;

/// <summary>How an acid is measured out.</summary>
public enum DoseUnit
{
    /// <summary>A liquid, by mL.</summary>
    Millilitre,

    /// <summary>A powder, by gram.</summary>
    Gram,
}

/// <summary>An acid as it stands on the shelf: how much of it one mL or gram holds.</summary>
/// <remarks>
/// <para>Symbols: c = 1000 d w / M, mol/L (= mmol/mL); d, g/mL; w, share by mass; strength = c z(pH), mEq/mL.</para>
/// <para>Source: definition; densities beside each row of <see cref="Shelf"/>.</para>
/// <para>Valid for: 20 °C. Accuracy: that of the label; food grade 80 % lactic may be 76 to 84 % (Directive 2008/84/EC).</para>
/// <para>Notes: "10 %" by mass and "10 %" by volume differ by 5 % for phosphoric acid: read the label.</para>
/// </remarks>
/// <param name="Id">Stable name.</param>
/// <param name="Acid">The acid.</param>
/// <param name="MillimolesPerUnit">mmol in each mL or gram.</param>
/// <param name="Unit">mL or gram.</param>
public sealed record AcidAsSold(string Id, Acid Acid, double MillimolesPerUnit, DoseUnit Unit)
{
    private static readonly QuantityLimits Density = new("Density", "g/mL", 0.5, 2.5);

    /// <summary>A liquid stated by mass (w/w), with its density in g/mL.</summary>
    public static AcidAsSold ByMass(string id, Acid acid, Fraction share, double density) =>
        new(id, acid, 1000 * Density.Check(density) * share.Ratio / acid.MolarMass, DoseUnit.Millilitre);

    /// <summary>A liquid stated by mass in volume (w/v), in grams for 100 mL.</summary>
    public static AcidAsSold ByVolume(string id, Acid acid, double gramsIn100Millilitres) =>
        new(id, acid, 10 * Argument.MustBeWithin(gramsIn100Millilitres, 0, 250) / acid.MolarMass,
            DoseUnit.Millilitre);

    /// <summary>A powder of a purity, with so many waters of crystallisation.</summary>
    public static AcidAsSold Powder(string id, Acid acid, Fraction purity, int waters = 0)
    {
        Argument.MustNotBeNegative(waters);
        return new(id, acid, 1000 * purity.Ratio / (acid.MolarMass + (waters * AtomicMass.Water)), DoseUnit.Gram);
    }

    /// <summary>As people write it: <c>lactic acid 88 %</c>, <c>citric acid monohydrate</c>.</summary>
    public string Name => Id.Length <= Acid.Id.Length ? Acid.Name
        : Unit == DoseUnit.Gram ? $"{Acid.Name} {Id[(Acid.Id.Length + 1)..].Replace('-', ' ')}"
        : Id.EndsWith("-wv", StringComparison.Ordinal) ? $"{Acid.Name} {Id[(Acid.Id.Length + 1)..^3]} % w/v"
        : $"{Acid.Name} {Id[(Acid.Id.Length + 1)..]} %";

    /// <summary>What it is measured out in: <c>mL</c>, or <c>g</c> of a powder.</summary>
    public string UnitSymbol => Unit == DoseUnit.Gram ? "g" : "mL";

    /// <summary>mEq of protons given up by each mL (or gram) at a pH.</summary>
    public double MilliequivalentsPerUnit(double ph) => MillimolesPerUnit * Acid.ProtonsGivenUp(ph);

    /// <summary>mL (or grams) that give up so many mEq at a pH.</summary>
    public double UnitsFor(double milliequivalents, double ph) => milliequivalents / MilliequivalentsPerUnit(ph);

    /// <summary>What one mL (or gram) in a litre does to the ions when it is all used at that pH.</summary>
    internal double MilligramsPerUnit(Ion ion, double ph) =>
        ion == Ion.Bicarbonate ? -MilliequivalentsPerUnit(ph) * AtomicMass.Bicarbonate
        : ion == Acid.Anion ? MillimolesPerUnit * ion.MolarMass()
        : 0;

    /// <summary>What is commonly sold, with its source of density.</summary>
    public static IReadOnlyList<AcidAsSold> Shelf { get; } =
    [
        ByMass("lactic-88", Acids.Lactic, Fraction.FromPercent(88), 1.206), // from memory; BP/USP window 1.20 to 1.21
        ByMass("lactic-80", Acids.Lactic, Fraction.FromPercent(80), 1.187), // from memory
        ByMass("phosphoric-10", Acids.Phosphoric, Fraction.FromPercent(10), 1.0532), // from memory; tables round to 1.053
        ByMass("phosphoric-75", Acids.Phosphoric, Fraction.FromPercent(75), 1.573), // from memory
        ByMass("phosphoric-85", Acids.Phosphoric, Fraction.FromPercent(85), 1.685), // laboratory table, 14.6 mol/L
        ByMass("hydrochloric-10", Acids.Hydrochloric, Fraction.FromPercent(10), 1.0474), // from memory
        ByMass("hydrochloric-37", Acids.Hydrochloric, Fraction.FromPercent(37), 1.184), // laboratory table, 12.0 mol/L
        ByMass("sulphuric-10", Acids.Sulphuric, Fraction.FromPercent(10), 1.0661), // from memory
        ByMass("sulphuric-96", Acids.Sulphuric, Fraction.FromPercent(96), 1.836), // laboratory table, 17.8 to 18.0 mol/L
        Powder("citric", Acids.Citric, Fraction.FromRatio(1)),
        Powder("citric-monohydrate", Acids.Citric, Fraction.FromRatio(1), waters: 1),
        Powder("malic", Acids.Malic, Fraction.FromRatio(1)),
        Powder("tartaric", Acids.Tartaric, Fraction.FromRatio(1)),
    ];

    /// <summary>The shelf acid of that id.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is none.</exception>
    public static AcidAsSold Find(string id) => Shelf.FirstOrDefault(acid => acid.Id == id)
        ?? throw new ArgumentOutOfRangeException(nameof(id), id, "No acid of that name on the shelf.");
}
