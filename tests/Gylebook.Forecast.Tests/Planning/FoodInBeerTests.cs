using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Tests.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>Foods against estimates worked out from published compositions (USDA SR26), in numbers a brewer reads.</summary>
public sealed class FoodInBeerTests
{
    // NDB 09302: sugars 4.42 g and water 85.75 g in 100 g. Sugar alone: 21.8 L of 47.5 points. We also count what else dissolves
    // in 100 g by the shares of its family: fibre 6.5·0.25, acids and pectin 1.02·0.9, protein 1.2·0.5 and ash 0.46·0.7,
    // 3.46 g, in 2 kg 69 g: 69·0.386/21.8 = 1.2 points more. Each of the two is printed to 0.1.
    [Fact]
    public void Raspberries_lower_the_gravity()
    {
        BrewPlan brew = Extract(20, [Typed.Line(IngredientKind.Food, "raspberries-raw", 2, AdditionPoint.Ferment, 3)]).PlanOn(Kits.Lossless);
        Wort wort = default;
        double plato = Draws.Plato(1.050);
        double kilograms = 20 * 1.050 * Wort.WaterKilogramsPerLitre;
        wort[Component.Sucrose] = kilograms * plato / 100;
        wort[Component.Water] = kilograms * (1 - (plato / 100));
        wort.Add(brew.Lines.Single(l => l.Food is not null).Makeup.Part(Shares.ClearLiquid));
        Near.Equal(21.8, wort.Litres, 0.1);
        Near.Equal(47.5 + 1.2, 1000 * (wort.Gravity - 1), 0.1);
        Assert.True(wort.Gravity < 1.050);
    }

    // 0.454·0.950 kg of lactose at 0.389 L·kg/kg over 20 L: 8.4 points, printed to 0.1. Lactose's specific volume, 0.61, is
    // from memory, to ± 0.003 by its last digit and the spread of the other sugars: 0.431·0.003·1000/20 = 0.065 points.
    [Fact]
    public void Lactose_adds_to_the_original_gravity()
    {
        Wort wort = default;
        wort[Component.Lactose] = 0.454 * 342.297 / 360.312;
        wort[Component.Water] = (20 * 1.0084 * Wort.WaterKilogramsPerLitre) - wort[Component.Lactose];
        Near.Equal(20, wort.Litres, 0.01);
        Near.Equal(8.4, 1000 * (wort.Gravity - 1), 0.05 + 0.065);
    }

    // And to the final gravity alike: beer weighs some 4 % less than its wort did, so 8.4 points may become 8.75.
    [Fact]
    public void And_to_the_final_gravity_alike()
    {
        OneRun plain = OneRun.Of(Extract(20, []).PlanOn(Kits.Lossless));
        OneRun sweet = OneRun.Of(Extract(20, [Typed.Line(IngredientKind.Sugar, "lactose monohydrate", 0.454, AdditionPoint.Boil, 10)]).PlanOn(Kits.Lossless));
        double original = 1000 * (sweet[BeerReadouts.OriginalGravity] - plain[BeerReadouts.OriginalGravity]);
        double final = 1000 * (sweet[BeerReadouts.FinalGravity] - plain[BeerReadouts.FinalGravity]);
        Assert.True(original > 6);
        Near.Equal(original, final, 0.35);
    }

    // NDB 09298. The estimate takes 0.75 volumes in 20 L; it counts the sugar as disaccharide, 0.514 of gas, but most of it is
    // glucose and fructose, 0.4886: 5 % less, 0.04; and half a unit of the last digit.
    [Fact]
    public void Raisins_in_the_package_make_gas()
    {
        OneRun plain = OneRun.Of(Extract(20, []).PlanOn(Kits.Lossless));
        OneRun raisins = OneRun.Of(Extract(20, [Typed.Line(IngredientKind.Food, "raisins-seedless", 0.1, AdditionPoint.Package)]).PlanOn(Kits.Lossless));
        Near.Equal(0.75, raisins[BeerReadouts.RefermentableVolumes] - plain[BeerReadouts.RefermentableVolumes], 0.045);
    }

    private static Recipe Extract(double litres, IngredientLine[] more) => new()
    {
        Name = "extract",
        Package = new PackageWish(Typed.Litres(litres), "bottle", null),
        Boil = new BoilPlan(Typed.Minutes(30)),
        Ferment = [Typed.Days(20, 14)],
        Ingredients = [Typed.Line(IngredientKind.Extract, "dry malt extract light", 2.4, AdditionPoint.CopperUp), Typed.Yeast("American ale"), .. more],
    };
}
