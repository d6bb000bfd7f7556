using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Report;

/// <summary>A recipe held against the version that was kept last: another size of package with the same weights is another beer.</summary>
/// <remarks>A recipe names no gravity that it wishes for; the version that was kept is the nearest thing to a wish.</remarks>
public static class KeptCheck
{
    /// <summary>The finding, where the package alone was changed and the gravity moved with it; none otherwise.</summary>
    /// <param name="now">The recipe as it stands.</param>
    /// <param name="forecast">What comes of it.</param>
    /// <param name="kept">The version it is held against.</param>
    /// <param name="name">What to call that version: "version 3".</param>
    /// <param name="kit">The kit both are brewed on.</param>
    /// <param name="larder">The brewer's own sheets; asked before the tables.</param>
    public static IEnumerable<Finding> Findings(
        Recipe now, BrewForecast forecast, Recipe kept, string name, Kit kit, Larder larder)
    {
        double wished = now.Package.Volume.Value.Litres, was = kept.Package.Volume.Value.Litres;
        if (Differs(wished, was) && WeightsOf(now).SequenceEqual(WeightsOf(kept))
            && forecast.Headline.FirstOrDefault(headline => headline.Name == BeerReadouts.OriginalGravity.Id)?.Band?.Likely is { } gravity
            && BrewPlanner.Plan(kept, kit, larder).Plan is { } plan
            && RunOutcome.Likely(plan)[BeerReadouts.OriginalGravity] is var before && Differs(gravity - 1, before - 1))
        {
            string has = Invariant($"{gravity:0.000}"), had = Invariant($"{before:0.000}");
            yield return new(
                "gravity.moved", Severity.Warning, "package.volume",
                Invariant($"{now.Package.Volume.Text} at {has}; {name} was {kept.Package.Volume.Text} at {had}, and no weight was changed with the package. Multiplied by {wished / was:0.00} they make it as strong as that was"),
                has, had);
        }
    }

    private static bool Differs(double value, double wish) => Math.Abs(value - wish) > WishCheck.Met * Math.Abs(wish);

    private static IEnumerable<(IngredientKind Kind, string Of, Amount Amount)> WeightsOf(Recipe recipe) => recipe.Ingredients
        .Where(line => line.Kind is IngredientKind.Malt or IngredientKind.Sugar or IngredientKind.Extract or IngredientKind.Food)
        .Select(line => (line.Kind, line.Of, line.Amount));
}
