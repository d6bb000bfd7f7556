using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Treating;

/// <summary>What a plan puts in after the liquor, as lines of the recipe, so that the run carries it as any other.</summary>
public static class LinesOfTheRecipe
{
    /// <summary>Salts and acid for the kettle, salts for the package.</summary>
    public static IEnumerable<IngredientLine> Of(WaterOutcome outcome) =>
    [
        .. outcome.Kettle.Salts.Select(dose => Salt(dose, AdditionPoint.CopperUp)),
        .. outcome.Kettle.Acids.Select(Acid),
        .. outcome.Package.Salts.Select(dose => Salt(dose, AdditionPoint.Package)),
    ];

    private static IngredientLine Salt(SaltDose dose, AdditionPoint at)
    {
        // A salt of known assay is told to the run as the pure one in it.
        bool assayed = dose.Salt.Purity is not null;
        double grams = dose.Grams * (dose.Salt.Purity?.Ratio ?? 1);
        return Line(IngredientKind.Salt, assayed ? BrewingSalts.AnhydrousCalciumChloride.Id : dose.Salt.Id, dose.Salt.Name, grams, at);
    }

    /// <summary>An acid of any strength is told to the run as the pure acid in it.</summary>
    private static IngredientLine Acid(AcidDose dose)
    {
        AcidAsSold sold = dose.Acid.Acid;
        double grams = dose.Units * sold.MillimolesPerUnit * sold.Acid.MolarMass / 1000;
        return Line(IngredientKind.Acid, sold.Acid.Id, dose.Acid.Name, grams, AdditionPoint.CopperUp);
    }

    private static IngredientLine Line(IngredientKind kind, string of, string name, double grams, AdditionPoint at) => new()
    {
        Kind = kind,
        Of = of,
        As = name,
        Amount = new Amount(new(Mass.FromGrams(grams), Invariant($"{grams} g")), null),
        At = new AdditionTime(at),
    };
}
