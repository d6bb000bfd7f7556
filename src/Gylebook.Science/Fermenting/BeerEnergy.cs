using Gylebook.Science.Liquids;

namespace Gylebook.Science.Fermenting;

/// <summary>Energy and carbohydrate in beer, by the brewer's method and by the food label's.</summary>
/// <remarks>
/// <para>Brewer's: kcal/100 g = 6.9·A + 4·(RE − ash), times gravity for 100 mL. Label: ethanol 29 kJ or 7 kcal/g,
/// carbohydrate and protein 17 kJ or 4 kcal/g.</para>
/// <para>Symbols: A alcohol by mass, per cent; RE real extract, °P; ash, g/100 g; 1 kcal = 4.184 kJ.</para>
/// <para>Source: <c>asbc-beer-33</c>; the label's factors are <c>eu-1169-2011</c>, Annex XIV.</para>
/// <para>Valid for: beer without fat, sweeteners or polyols; those have factors of their own on a label.</para>
/// <para>Accuracy: <c>usda-14003</c>, regular beer: 42.7 against 43 kcal/100 g. As printed, the brewer's method takes
/// gravity for density: 0.2 % high for 100 mL. The two methods differ by about 1 %.</para>
/// <para>Notes: ash of 0.1 g/100 g is the usual figure where none was measured; it stands for protein and ash
/// together where carbohydrate is asked for, so carbohydrate is an upper figure: an ordinary beer holds 0.4 to 0.5 g
/// of protein. Less extract than that leaves none, not less than none. Sugar or lactose added later must be in RE. Not a substitute for the analysis a label needs by law.</para>
/// </remarks>
public static class BeerEnergy
{
    /// <summary>Kilojoules in a kilocalorie.</summary>
    public const double KilojoulesPerKilocalorie = 4.184;

    /// <summary>Ash taken where none was measured, g/100 g.</summary>
    public const double UsualAshGramsPer100Grams = 0.1;

    /// <summary>Energy by the brewer's method, kcal/100 g.</summary>
    public static double KilocaloriesPer100Grams(
        double alcoholPercentByMass, double realPlato, double ash = UsualAshGramsPer100Grams) =>
        (6.9 * alcoholPercentByMass) + (4 * Math.Max(0, realPlato - ash));

    /// <summary>Energy by the brewer's method, kcal/100 mL.</summary>
    public static double KilocaloriesPer100Millilitres(
        double alcoholPercentByMass, double realPlato, double gravity, double ash = UsualAshGramsPer100Grams) =>
        KilocaloriesPer100Grams(alcoholPercentByMass, realPlato, ash) * gravity;

    /// <summary>Energy by the brewer's method, kJ/100 mL.</summary>
    public static double KilojoulesPer100Millilitres(
        double alcoholPercentByMass, double realPlato, double gravity, double ash = UsualAshGramsPer100Grams) =>
        KilojoulesPerKilocalorie * KilocaloriesPer100Millilitres(alcoholPercentByMass, realPlato, gravity, ash);

    /// <summary>Energy by the label's factors, in kcal, of so many grams of ethanol and of carbohydrate with protein.</summary>
    public static double LabelKilocalories(double ethanolGrams, double carbohydrateAndProteinGrams) =>
        (7 * ethanolGrams) + (4 * carbohydrateAndProteinGrams);

    /// <summary>Energy by the label's factors, in kJ, of so many grams of ethanol and of carbohydrate with protein.</summary>
    public static double LabelKilojoules(double ethanolGrams, double carbohydrateAndProteinGrams) =>
        (29 * ethanolGrams) + (17 * carbohydrateAndProteinGrams);

    /// <summary>Alcohol in g/100 mL, from alcohol by mass and the beer's gravity.</summary>
    public static double AlcoholGramsPer100Millilitres(double alcoholPercentByMass, double gravity) =>
        alcoholPercentByMass * SucroseSolution.KilogramsPerLitreOfGravity(gravity);

    /// <summary>Carbohydrate in g/100 mL: real extract less protein and ash, by difference.</summary>
    public static double CarbohydrateGramsPer100Millilitres(
        double realPlato, double gravity, double proteinAndAsh = UsualAshGramsPer100Grams) =>
        Math.Max(0, realPlato - proteinAndAsh) * SucroseSolution.KilogramsPerLitreOfGravity(gravity);
}
