using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>Whole brews against what the trade expects of them: common practice, no source.</summary>
public sealed class BrewHouseTests
{
    // 5.5 kg of grist, 22.7 L of strike liquor, 3.8 L of rinse, half an hour of boil: about 19 L in the fermenter. The kit is
    // not part of the example; assumed: a drained bag keeping 0.8 L/kg, 4 L/h of steam, 1 L left in the kettle.
    // "About" is read as a twentieth.
    [Fact]
    public void A_bag_with_a_small_rinse_casts_about_nineteen_litres()
    {
        Kit kit = Kits.Lossless.Evaporating(4) with
        {
            Bag = new Bag(Typed.LitresPerKilogram(0.8), Typed.Share(0.6), true),
            Kettle = Kits.Lossless.Evaporating(4).Kettle with { LeftBehind = Typed.Litres(1) },
        };
        Recipe recipe = new()
        {
            Name = "nineteen",
            Package = new PackageWish(Typed.Litres(18), "bottle", null),
            Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(67.8, 60)], new SpargePlan(SpargeMethod.Pour, Typed.Litres(3.8), null)),
            Liquor = new LiquorPlan(Typed.Litres(22.7), null),
            Boil = new BoilPlan(Typed.Minutes(30)),
            Ferment = [Typed.Days(20, 14)],
            Ingredients = [Typed.Malt("pale ale malt", 5.5), Typed.Yeast("American ale")],
        };
        Near.Equal(19, OneRun.Of(recipe.PlanOn(kit))[BeerReadouts.CastLitres], 0.95);
    }

    // 28 g of 11 to 14 % alpha, boiled 30 minutes, with 19 L at knock-out: about 30 IBU, give or take 5. The gravity is not part
    // of the example; assumed: 1.055.
    [Fact]
    public void An_ounce_of_a_strong_hop_for_half_an_hour_gives_about_thirty()
    {
        Recipe recipe = new()
        {
            Name = "thirty",
            Package = new PackageWish(Typed.Litres(19), "keg", null),
            Liquor = new LiquorPlan(Typed.Litres(19), null),
            Boil = new BoilPlan(Typed.Minutes(30)),
            Ferment = [Typed.Days(20, 14)],
            Ingredients =
            [
                Typed.Line(IngredientKind.Extract, "dry malt extract light", 2.9, AdditionPoint.CopperUp),
                Typed.Line(IngredientKind.Hop, "strong", 0.028, AdditionPoint.Boil, 30) with { Alpha = Typed.Share(0.125) },
                Typed.Yeast("American ale"),
            ],
        };
        OneRun run = OneRun.Of(recipe.PlanOn(Kits.Lossless.Evaporating(4)));
        Near.Equal(19, run[BeerReadouts.KnockOutLitres], 0.5);
        Near.Equal(1.055, run[BeerReadouts.KnockOutGravity], 0.003);
        Near.Equal(30, run.At(Stage.KnockOut)[Component.Bitterness] / run[BeerReadouts.KnockOutLitres], 5);
        Near.Equal(30, run[BeerReadouts.Bitterness], 5);
    }
}
