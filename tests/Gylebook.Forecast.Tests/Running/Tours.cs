using Gylebook.Engine.Running;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>A plan and a draw that belong together.</summary>
internal sealed record Tour(string Name, RunPlan Plan, double[] Draw, BrewPlan BrewPlan);

/// <summary>
/// Recipes that between them reach every reaction, every place of addition and every loss. Nobody would drink them: each
/// sugar is there in such amounts, and in the package too, that a millionth of it is seen in the balance.
/// </summary>
internal static class Tours
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Tour> All { get; } = [TunTour(), BagTour(), PartTour(), SourTour("lactobacillus"), SourTour("Lactobacillus brevis")];

    private static Tour TunTour() => Of(
        new Recipe
        {
            Name = "tun, batch rinse, everything everywhere, bottle",
            Package = new PackageWish(Typed.Litres(20), "bottle", null),
            Mash = new MashPlan(MashMethod.Tun, [Typed.Rest(66, 60)], new SpargePlan(SpargeMethod.Batch, Typed.Litres(10), null)),
            Boil = new BoilPlan(Typed.Minutes(60)),
            Stand = Typed.Rest(80, 20),
            Ferment = [Typed.Days(24, 14), Typed.Days(2, 3)],
            Ingredients =
            [
                Typed.Malt("pale ale malt", 4), Typed.Malt("caramel malt", 0.4),
                Typed.Line(IngredientKind.Food, "rolled-oats-dry", 0.3, AdditionPoint.Mash),
                Typed.Line(IngredientKind.Hop, "Golding", 0.03, AdditionPoint.CopperUp) with { Form = IngredientForm.Whole },
                Typed.Line(IngredientKind.Hop, "Fuggle", 0.02, AdditionPoint.Boil, 30),
                Typed.Line(IngredientKind.Food, "peanut-flour-defatted", 0.2, AdditionPoint.KnockOut),
                Typed.Line(IngredientKind.Sugar, "lactose monohydrate", 0.2, AdditionPoint.Stand, 10),
                Typed.Yeast("saison"),
                Typed.Line(IngredientKind.Food, "raspberries-raw", 1, AdditionPoint.Ferment, 5),
                Typed.Line(IngredientKind.Sugar, "white sugar", 0.2, AdditionPoint.Ferment, 6),
                Typed.Line(IngredientKind.Food, "coffee-brewed-from-grounds", 0.3, AdditionPoint.Rack),
                Typed.Line(IngredientKind.Sugar, "white sugar", 0.05, AdditionPoint.Package),
                Typed.Line(IngredientKind.Sugar, "invert syrup", 0.1, AdditionPoint.Package),
                Typed.Line(IngredientKind.Extract, "dry malt extract light", 0.1, AdditionPoint.Package),
            ],
        },
        // A draw, not the median: this yeast leaves some of every sugar that a yeast may leave.
        ("yeast.saison.maltose", 0.9), ("yeast.saison.maltotriose", 0.8), ("yeast.saison.dextrin", 0.3),
        // It tires on the second day of fruit and sugar, so that something of all it takes is left.
        ("yeast.saison.tires", 3));

    private static Tour BagTour() => Of(new Recipe
    {
        Name = "bag, poured rinse, split, keg",
        Package = new PackageWish(Typed.Litres(18), "keg", Typed.Volumes(2.4)),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], new SpargePlan(SpargeMethod.Pour, Typed.Litres(4), null)),
        Boil = new BoilPlan(Typed.Minutes(45)),
        Ferment = [Typed.Days(19, 14)],
        Portions = [new PortionShare("first", Typed.Share(0.4)), new PortionShare("second", Typed.Share(0.6))],
        Ingredients =
        [
            Typed.Malt("pilsner malt", 4),
            Typed.Line(IngredientKind.Hop, "Saaz", 0.05, AdditionPoint.Boil, 45),
            Typed.Yeast("American ale"),
            Typed.Line(IngredientKind.Food, "apricots-raw", 2, AdditionPoint.Ferment, 4) with { Portion = "second" },
        ],
    });

    private static Tour PartTour() => Of(new Recipe
    {
        Name = "part mash, filled up, primed",
        Package = new PackageWish(Typed.Litres(20), "bottle", Typed.Volumes(2.4)),
        Mash = new MashPlan(MashMethod.Part, [Typed.Rest(66, 60)], SpargePlan.None),
        Boil = new BoilPlan(Typed.Minutes(30)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients =
        [
            Typed.Malt("pale ale malt", 1),
            Typed.Line(IngredientKind.Extract, "dry malt extract light", 2, AdditionPoint.CopperUp),
            Typed.Line(IngredientKind.Hop, "Cascade", 0.03, AdditionPoint.Boil, 30),
            Typed.Yeast("English ale"),
        ],
    });

    private static Tour SourTour(string culture) => Of(
        new Recipe
        {
            Name = $"soured by {culture}",
            Package = new PackageWish(Typed.Litres(20), "bottle", Typed.Volumes(2.4)),
            Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
            Souring = Typed.Souring(culture, 38, 3.2),
            Boil = new BoilPlan(Typed.Minutes(30)),
            Ferment = [Typed.Days(19, 14)],
            Ingredients =
            [
                Typed.Malt("pilsner malt", 4),
                Typed.Line(IngredientKind.Sugar, "invert syrup", 0.1, AdditionPoint.CopperUp),
                Typed.Yeast("American ale"),
            ],
        },
        // A draw: wort so stiff that acid is made of every sugar that lactic bacteria are counted as taking.
        ("ph.buffer.wort", 400));

    private static Tour Of(Recipe recipe, params (string Id, double Value)[] drawn)
    {
        BrewPlan brew = recipe.PlanOn(Kits.Whole);
        Assert.True(brew.Plan is not null, string.Join('\n', brew.Findings.Select(f => f.Message)));
        double[] draw = [.. brew.Plan.Medians];
        foreach ((string id, double value) in drawn)
        {
            int place = brew.Plan.Parameters.ToList().FindIndex(p => p.Id == id);
            Assert.True(place >= 0, id);
            draw[place] = value;
        }

        return new Tour(recipe.Name, brew.Plan, draw, brew);
    }
}
