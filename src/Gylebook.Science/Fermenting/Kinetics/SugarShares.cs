namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>What the sugar that ferments is made of, as shares of its mass.</summary>
/// <param name="Glucose">Glucose, and what goes as fast: fructose and sucrose.</param>
/// <param name="Maltose">Maltose.</param>
/// <param name="Maltotriose">Maltotriose.</param>
public readonly record struct SugarShares(double Glucose, double Maltose, double Maltotriose)
{
    private const double GlucoseGramsPerMole = 180.156, MaltoseGramsPerMole = 342.297, MaltotrioseGramsPerMole = 504.438;

    /// <summary>Four worts of malt: 0.19 ± 0.06, 0.63 ± 0.05 and 0.18 ± 0.02 (<c>food-biochemistry-33</c>).</summary>
    public static SugarShares OfMaltWort { get; } = new(0.19, 0.63, 0.18);

    /// <summary>The sugars of so many grams a litre, mol/m³, with that yeast.</summary>
    internal SugarsAndYeast Of(double gramsPerLitre, double yeast)
    {
        double each = 1000 * gramsPerLitre / (Glucose + Maltose + Maltotriose);
        return new(
            each * Glucose / GlucoseGramsPerMole, each * Maltose / MaltoseGramsPerMole, each * Maltotriose / MaltotrioseGramsPerMole, yeast, 0);
    }

    /// <summary>Glucose of so many grams a litre, mol/m³.</summary>
    internal static double MolesOfGlucose(double gramsPerLitre) => 1000 * gramsPerLitre / GlucoseGramsPerMole;

    /// <summary>Grams a litre of sugars, given in mol/m³.</summary>
    internal static double Grams(double glucose, double maltose, double maltotriose) =>
        ((glucose * GlucoseGramsPerMole) + (maltose * MaltoseGramsPerMole) + (maltotriose * MaltotrioseGramsPerMole)) / 1000;
}
