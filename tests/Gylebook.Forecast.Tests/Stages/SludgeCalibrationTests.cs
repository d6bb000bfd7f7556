using Gylebook.Engine.Readouts;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Stages;

/// <summary>
/// Calibration, not validation: what sludge holds was set so that these come out, so they prove nothing but that it still does.
/// Made with no solids left in the kettle.
/// </summary>
public sealed class SludgeCalibrationTests
{
    // Common practice, no source: an ordinary ale of 20 L leaves 1.0 to 1.5 L.
    [Fact]
    public void An_ordinary_ale_leaves_a_litre_or_a_litre_and_a_half() => Assert.InRange(Brew()[BeerReadouts.SludgeLitres], 1.0, 1.5);

    // Common practice, no source: about 0.9 kg of defatted nut powder at knock-out costs a little over 3.8 L in the fermenter all
    // told: the ordinary sludge, and 0.3 L of clear beer that racking leaves (samples/kits). A gallon by word of mouth is good
    // to half a quart, 0.5 L.
    [Fact]
    public void Nut_powder_at_knock_out_costs_about_three_point_eight_litres() => Near.Equal(
        3.8, Brew(Typed.Line(IngredientKind.Food, "peanut-flour-defatted", 0.9, AdditionPoint.KnockOut))[BeerReadouts.SludgeLitres] + 0.3, 0.5);

    private static OneRun Brew(params IngredientLine[] more) => OneRun.Of(new Recipe
    {
        Name = "ordinary",
        Package = new PackageWish(Typed.Litres(19), "keg", null),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Liquor = new LiquorPlan(Typed.Litres(28), null),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients =
        [
            Typed.Malt("pale ale malt", 4.5),
            Typed.Line(IngredientKind.Hop, "Golding", 0.04, AdditionPoint.Boil, 60),
            Typed.Yeast("American ale"),
            .. more,
        ],
    }.PlanOn(Kits.Lossless));
}
