namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>What ferments, by what, and what has come of it, mol/m³.</summary>
/// <param name="Glucose">Glucose and what ferments like it.</param>
/// <param name="Maltose">Maltose.</param>
/// <param name="Maltotriose">Maltotriose.</param>
/// <param name="Yeast">Yeast, in the model's own moles.</param>
/// <param name="Ethanol">Ethanol.</param>
public readonly record struct SugarsAndYeast(double Glucose, double Maltose, double Maltotriose, double Yeast, double Ethanol)
{
    private const double EthanolGramsPerMole = 46.07, EthanolGramsPerCubicMetre = 789_000;

    /// <summary>The wort of the papers' examples: 70, 220 and 40 mol/m³ of sugars and 125 of yeast.</summary>
    public static SugarsAndYeast OfThePapers { get; } = new(70, 220, 40, 125, 0);

    /// <summary>Alcohol, per cent by volume.</summary>
    public double AlcoholByVolume => 100 * Ethanol * EthanolGramsPerMole / EthanolGramsPerCubicMetre;
}
