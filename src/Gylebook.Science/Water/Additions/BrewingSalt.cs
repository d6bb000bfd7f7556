using Gylebook.Science.Quantities;

namespace Gylebook.Science.Water;

/// <summary>A salt by its formula, and what a gram of it brings to a litre.</summary>
/// <remarks>
/// <para>Symbols: mg/L of an ion for 1 g/L = 1000 n M_ion / M_salt; alkalinity in eq, carbonate in mol for each mole.</para>
/// <para>Source: formulas with IUPAC atomic masses.</para>
/// <para>Valid for: what dissolves. Chalk hardly does: <see cref="CalciteEquilibrium"/>.</para>
/// <para>Accuracy: that of the purity. Calcium chloride takes up water from the air: see <see cref="BrewingSalts.CalciumChlorideOfAssay"/>.</para>
/// </remarks>
/// <param name="Id">Stable name.</param>
/// <param name="Name">As a brewer says it.</param>
/// <param name="Formula">As a chemist writes it.</param>
/// <param name="MolarMass">g/mol of what is weighed.</param>
/// <param name="IonsPerMole">Moles of each reported ion in a mole; not bicarbonate.</param>
/// <param name="AlkalinityPerMole">Equivalents of alkalinity in a mole.</param>
/// <param name="CarbonatePerMole">Moles of carbonate (bicarbonate, carbonate) in a mole.</param>
/// <param name="Purity">Share of the weight that is the formula.</param>
/// <param name="Caution">What can hurt, or empty.</param>
/// <param name="Waters">Waters of crystallisation in a mole.</param>
public sealed record BrewingSalt(
    string Id,
    string Name,
    string Formula,
    double MolarMass,
    IReadOnlyList<(Ion Ion, int Count)> IonsPerMole,
    int AlkalinityPerMole = 0,
    int CarbonatePerMole = 0,
    Fraction? Purity = null,
    string Caution = "",
    int Waters = 0)
{
    /// <summary>Water of crystallisation, as a share of the weight.</summary>
    public double WaterShare => Waters * AtomicMass.Water / MolarMass;

    private double MillimolesPerGram => 1000 * (Purity?.Ratio ?? 1) / MolarMass;

    /// <summary>Alkalinity of a gram, mEq.</summary>
    public double AlkalinityPerGram => MillimolesPerGram * AlkalinityPerMole;

    /// <summary>Carbonate of a gram, mmol.</summary>
    public double CarbonatePerGram => MillimolesPerGram * CarbonatePerMole;

    /// <summary>What one gram in a litre adds, mg/L by ion.</summary>
    public IonProfile PerGramInALitre => IonProfile.FromFunction(MilligramsPerGram);

    /// <summary>What so many grams in so many litres add.</summary>
    public IonProfile Added(Mass amount, VolumeAt20C liquor) =>
        PerGramInALitre * (amount.Grams / Argument.MustBeWithin(liquor.Litres, 1e-12, 1e6));

    internal double MilligramsPerGram(Ion ion)
    {
        if (ion == Ion.Bicarbonate)
        {
            return AlkalinityPerGram * AtomicMass.Bicarbonate;
        }

        foreach ((Ion each, int count) in IonsPerMole)
        {
            if (each == ion)
            {
                return MillimolesPerGram * count * ion.MolarMass();
            }
        }

        return 0;
    }
}
