using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Features.Today;

/// <summary>The empty sheet a new recipe starts from: stages that fit the kit, and nothing in it yet.</summary>
public static class NewRecipe
{
    /// <summary>Its document. Times and temperatures are a usual place to start from (common practice, no source).</summary>
    public static string DocumentFor(Kit kit, string name = "New recipe") => RecipeFile.Write(new Recipe
    {
        Name = name,
        Package = new PackageWish(Typed<VolumeAt20C>("20 L"), kit.Packages.FirstOrDefault()?.Kind ?? "bottle", Typed<Carbonation>("2.3 volumes")),
        Mash = new MashPlan(
            kit.Tun is null ? MashMethod.Bag : MashMethod.Tun,
            [new Rest(Typed<Temperature>("66 °C"), Typed<Duration>("60 min"))],
            SpargePlan.None),
        Boil = new BoilPlan(Typed<Duration>("60 min")),
        Ferment = [new Rest(Typed<Temperature>("19 °C"), Typed<Duration>("14 d"))],
        Ingredients = [],
    });

    private static Entered<T> Typed<T>(string text)
        where T : struct, IQuantity<T> =>
        UnitTable.TryParse(text, out Entered<T> entered, out string problem) ? entered : throw new InvalidOperationException(problem);
}
