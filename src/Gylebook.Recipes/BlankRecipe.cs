using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes;

/// <summary>The empty sheet a new recipe starts from: stages that fit the kit, and nothing in it yet.</summary>
public static class BlankRecipe
{
    /// <summary>The recipe. Times and temperatures are a usual place to start from (common practice, no source).</summary>
    public static Recipe For(Kit kit, string name)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return new Recipe
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
        };
    }

    private static Entered<T> Typed<T>(string text)
        where T : struct, IQuantity<T> =>
        UnitTable.TryParse(text, out Entered<T> entered, out string problem) ? entered : throw new InvalidOperationException(problem);
}
