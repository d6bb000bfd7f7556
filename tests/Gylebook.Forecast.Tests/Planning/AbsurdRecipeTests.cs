using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>What cannot be brewed never reaches a run: there is no plan, and a finding of severity error says why.</summary>
public sealed class AbsurdRecipeTests
{
    private static readonly Recipe Sane = new()
    {
        Name = "sane",
        Package = new PackageWish(Typed.Litres(20), "bottle", Typed.Volumes(2.4)),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients = [Typed.Malt("pale ale malt", 4), Typed.Yeast("American ale")],
    };

    public static TheoryData<string> Absurd => [.. Recipes.Keys];

    public static TheoryData<string> BadSamples =>
        [.. Directory.EnumerateFiles(RepositoryFile.PathOf("samples/bad"), "*.json").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    private static Dictionary<string, Recipe> Recipes { get; } = new()
    {
        ["a package of 0 L"] = Sane with { Package = Sane.Package with { Volume = Typed.Litres(0) } },
        ["a package of 1e7 L"] = Sane with { Package = Sane.Package with { Volume = Typed.Litres(1e7) } },
        ["1e6 kg of malt"] = Plus(Typed.Malt("pale ale malt", 1e6)),
        ["1e6 kg of sugar"] = Plus(Typed.Line(IngredientKind.Sugar, "white sugar", 1e6, AdditionPoint.Boil, 10)),
        ["no such malt"] = Plus(Typed.Malt("moon malt", 1)),
        ["no such food"] = Plus(Typed.Line(IngredientKind.Food, "moon cheese", 1, AdditionPoint.Boil, 10)),
        ["hops of 99 % alpha"] = Plus(Typed.Line(IngredientKind.Hop, "Saaz", 0.01, AdditionPoint.Boil, 10) with { Alpha = Typed.Share(0.99) }),
        ["a boil of 100 h"] = Sane with { Boil = new BoilPlan(Typed.Minutes(6000)), Liquor = new LiquorPlan(Typed.Litres(30), null) },
        ["no fermentation"] = Sane with { Ferment = [] },
        ["a strike of 0 L"] = Sane with { Liquor = new LiquorPlan(Typed.Litres(0), null) },
        ["an unknown package"] = Sane with { Package = Sane.Package with { In = "bucket" } },
        ["9 volumes"] = Sane with { Package = Sane.Package with { Carbonation = Typed.Volumes(9) } },
        ["portions beyond the whole"] = Sane with { Portions = [new PortionShare("a", Typed.Share(0.9)), new PortionShare("b", Typed.Share(0.9))] },
        ["a hundred thousand portions"] = Sane with { Portions = [.. Enumerable.Range(0, 100_000).Select(i => new PortionShare($"{i}", Typed.Share(1e-5)))] },
        ["a hundred thousand lines"] = Sane with { Ingredients = [.. Sane.Ingredients, .. Enumerable.Repeat(Typed.Line(IngredientKind.Hop, "Saaz", 1e-9, AdditionPoint.Boil, 1), 100_000)] },
        ["hops after the end of the boil"] = Plus(Typed.Line(IngredientKind.Hop, "Saaz", 0.01, AdditionPoint.Boil, 90)),
    };

    [Fact]
    public void The_sane_one_has_a_plan() => Assert.NotNull(Sane.PlanOn(Kits.Whole).Plan);

    [Theory]
    [MemberData(nameof(Absurd))]
    public void An_absurd_recipe_has_no_plan_and_says_why(string what)
    {
        BrewPlan brew = Recipes[what].PlanOn(Kits.Whole);
        Assert.Null(brew.Plan);
        Assert.Contains(brew.Findings, f => f.Severity == Severity.Error);
    }

    [Theory]
    [MemberData(nameof(BadSamples))]
    public void A_bad_sample_is_refused_by_the_reader_or_by_the_lay_out(string file)
    {
        if (RecipeFile.Read(File.ReadAllBytes(RepositoryFile.PathOf("samples/bad/" + file))).Value is { } recipe)
        {
            Assert.Null(recipe.PlanOn(Kits.Whole).Plan);
        }
    }

    private static Recipe Plus(IngredientLine line) => Sane with { Ingredients = [.. Sane.Ingredients, line] };
}
