using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>The engine against <c>docs/science/one-malt-by-hand.md</c>, worked with pen and paper's rounding and without the engine.</summary>
/// <remarks>
/// Tolerances are the rounding of the working: kilograms to 0.001 and shares to 0.0001 carry about 0.003 kg through to the
/// wort, which is 0.02 L, and 0.02 °P, which is 0.0001 of gravity; twice that after the boil, which concentrates it.
/// </remarks>
public sealed class OneMaltByHandTests
{
    private readonly OneRun _run = OneRun.Of(new Recipe
    {
        Name = "one malt",
        Package = new PackageWish(Typed.Litres(19), "keg", null),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Liquor = new LiquorPlan(Typed.Litres(27), null),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(20, 14)],
        Ingredients = [Typed.Malt("pale ale malt", 5), Typed.Yeast("American ale")],
    }.PlanOn(Kits.Lossless.Evaporating(4).Converting(0.94) with { Bag = new Bag(Typed.LitresPerKilogram(0.6), Typed.Share(0.6), true) }));

    [Fact]
    public void The_mash()
    {
        Wort mash = _run.At(Stage.Mash);
        Near.Equal(30.690, mash.LiquidMass, 0.003);
        Near.Equal(3.6975, mash.ExtractMass, 0.003);
        Near.Equal(12.048, mash.RealExtractPlato, 0.01);
        Near.Equal(29.32, mash.Litres, 0.02);
    }

    [Fact]
    public void The_grain_keeps_its_wort()
    {
        Near.Equal(1.0364, _run.At(Stage.Mash)[Component.Grain], 0.002);
        Near.Equal(5.615, _run.At(Stage.Mash).LiquidMass - _run.At(Stage.Lift).LiquidMass, 0.015);
        Near.Equal(23.96, _run[BeerReadouts.CopperUpLitres], 0.03);
        Near.Equal(1.0485, _run[BeerReadouts.CopperUpGravity], 0.0001);
    }

    [Fact]
    public void The_boil()
    {
        Near.Equal(0.0258, _run.At(Stage.KnockOut)[Component.Break], 0.0001);
        Near.Equal(19.94, _run[BeerReadouts.KnockOutLitres], 0.03);
        Near.Equal(1.0579, _run[BeerReadouts.KnockOutGravity], 0.0002);
        Near.Equal(1.0579, _run[BeerReadouts.OriginalGravity], 0.0002);
    }

    [Fact]
    public void The_beer()
    {
        Wort beer = _run.At(Stage.Ferment);
        Near.Equal(0.9663, beer[Component.Ethanol], 0.002);
        Near.Equal(0.1178, beer[Component.Yeast], 0.0003);
        Near.Equal(5.06, beer.RealExtractPlato, 0.02);
        Near.Equal(4.825, beer.AlcoholByMassPercent, 0.015);
        Near.Equal(1.0113, _run[BeerReadouts.FinalGravity], 0.0002);
        Near.Equal(6.17, _run[BeerReadouts.AlcoholAtRacking], 0.03);
        Near.Equal(18.93, _run[BeerReadouts.PackagedLitres], 0.04);
    }
}
