using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Checks;

/// <summary>Whether an amount could be meant for that much beer: 56 kg of hops where 56 g were.</summary>
/// <remarks>Each bound is several times what the strongest beers take; a litre counts as a kilogram here.</remarks>
internal static class AmountCheck
{
    private const int MostLines = 500;

    internal static void Check(Recipe recipe, FindingList findings)
    {
        if (recipe.Ingredients.Count > MostLines)
        {
            findings.Error(
                "ingredients.many", "ingredients", $"{recipe.Ingredients.Count} lines; must be at most {MostLines}: nobody weighs out more",
                $"{recipe.Ingredients.Count}", $"{MostLines}");
        }

        var litres = recipe.Package.Volume.Value.Litres;
        for (var i = 0; i < recipe.Ingredients.Count; i++)
        {
            var line = recipe.Ingredients[i];
            var limit = MostPerLitre(line.Kind);
            if (Kilograms(line) > limit * litres)
            {
                var most = Most(line, limit * litres);
                findings.Error(
                    "amount.absurd", Invariant($"ingredients[{i}].amount"),
                    $"{line.Amount.Text}; must be at most {most} for {recipe.Package.Volume} of beer: no beer takes more {line.Kind.ToString().ToLowerInvariant()}",
                    line.Amount.Text, most);
            }
        }

        var together = recipe.Ingredients.Where(line => GivesExtract(line.Kind)).ToList();
        if (together.Sum(Kilograms) > RecipeCheck.MostKilogramsPerLitre * litres && together.All(line => Kilograms(line) <= RecipeCheck.MostKilogramsPerLitre * litres))
        {
            var sum = Format(together.Sum(Kilograms), "kg");
            var most = Format(RecipeCheck.MostKilogramsPerLitre * litres, "kg");
            findings.Error(
                "amount.together", "ingredients",
                $"{sum} of malt, extract, sugar and food together; must be at most {most} for {recipe.Package.Volume} of beer: it would be more solid than liquid",
                sum, most);
        }
    }

    private static bool GivesExtract(IngredientKind kind) =>
        kind is IngredientKind.Malt or IngredientKind.Extract or IngredientKind.Sugar or IngredientKind.Food;

    /// <summary>Kilograms a litre of packaged beer.</summary>
    private static double MostPerLitre(IngredientKind kind) => kind switch
    {
        IngredientKind.Hop or IngredientKind.Spice or IngredientKind.Yeast or IngredientKind.Acid => 0.1,
        IngredientKind.Fining or IngredientKind.Salt => 0.02,
        IngredientKind.Water => 20,
        _ => RecipeCheck.MostKilogramsPerLitre,
    };

    private static double Kilograms(IngredientLine line) =>
        line.Amount.Mass?.Value.Kilograms ?? line.Amount.Volume?.Value.Litres ?? 0;

    private static string Most(IngredientLine line, double kilograms) => Format(kilograms, line.Amount.Mass is null ? "L" : "kg");

    private static string Format(double number, string unit) => Invariant($"{number:0.####} {unit}");
}
