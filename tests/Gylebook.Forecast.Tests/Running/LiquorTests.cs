using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Water;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>Ions from the liquor to the glass.</summary>
public sealed class LiquorTests
{
    private static readonly WaterPlan Hard = Sample("hard-well");

    public static TheoryData<string, MashMethod, SpargeMethod> Mashes() => new()
    {
        { "bag, poured", MashMethod.Bag, SpargeMethod.Pour },
        { "bag, unrinsed", MashMethod.Bag, SpargeMethod.None },
        { "tun, batch", MashMethod.Tun, SpargeMethod.Batch },
        { "tun, continuous", MashMethod.Tun, SpargeMethod.Continuous },
        { "part, filled up", MashMethod.Part, SpargeMethod.None },
    };

    [Theory]
    [MemberData(nameof(Mashes))]
    public void Ions_are_conserved_whatever_the_mash(string name, MashMethod method, SpargeMethod sparge)
    {
        BrewForecast told = Forecast(Brew(method, sparge), Hard);
        Assert.True(told.Balance!.Closes, $"{name}: {told.Balance.Worst} {told.Balance.RelativeError}");
    }

    [Theory]
    [MemberData(nameof(Mashes))]
    public void What_enters_is_litres_times_milligrams_of_each_liquor(string _, MashMethod method, SpargeMethod sparge)
    {
        (BrewPlan brew, WaterOutcome outcome) = Treated(Brew(method, sparge), Hard);
        OneRun run = OneRun.Of(brew);
        double Entered(Component component) => run.Record.Additions.Sum(addition => addition.What[component]);
        double strike = brew.Plan!.Liquors[0] / Wort.WaterKilogramsPerLitre, rinse = brew.Plan.Rinse.Kilograms / Wort.WaterKilogramsPerLitre;
        double topUp = brew.Plan.Liquors.Length > 1 ? brew.Plan.Liquors[1] / Wort.WaterKilogramsPerLitre : 0;
        foreach (Ion ion in (Ion[])[Ion.Calcium, Ion.Magnesium, Ion.Sulphate, Ion.Chloride])
        {
            double byHand = (strike * outcome.Mash.Ions[ion]) + (rinse * outcome.Sparge.Ions[ion]) + (topUp * outcome.Source.Ions[ion]);
            Near.Equal(byHand, Entered(IonTracers.Of(ion)), byHand * 1e-9);
        }
    }

    [Fact]
    public void The_mash_of_the_run_is_the_liquor_thinned_by_what_the_grain_dissolves()
    {
        (BrewPlan brew, WaterOutcome outcome) = Treated(Brew(MashMethod.Bag, SpargeMethod.Pour), Hard);
        OneRun run = OneRun.Of(brew);
        double strike = brew.Plan!.Liquors[0] / Wort.WaterKilogramsPerLitre;
        IonTable ions = IonTable.Of(run.Beer);
        Near.Equal(outcome.Mash.Ions.Calcium * strike / run.At(Stage.Mash).Litres, ions.Mash[Ion.Calcium], 1e-6);
        Assert.True(ions.Kettle[Ion.Calcium] > ions.Mash[Ion.Calcium], "steam leaves its ions");
        Assert.DoesNotContain(Ion.Bicarbonate, ions.Glass.Keys);
    }

    [Fact]
    public void Liquor_and_salts_are_no_yield_of_the_grist()
    {
        Recipe recipe = Brew(MashMethod.Bag, SpargeMethod.Pour);
        double Yield(WaterPlan? water) => Forecast(recipe, water).Headline.Single(h => h.Name == "mashYield").Band!.Likely;

        // The planner settles the liquor within a millionth of a litre; a better or worse rinse of that size is below 1e-4.
        Near.Equal(Yield(null), Yield(Hard), 0.01);
    }

    /// <summary>Dissolved minerals weigh: 0.5 g/L of salts lift a hydrometer by about 0.0004, as the apparent volume of salts (0.35 L/kg) has it.</summary>
    [Fact]
    public void Liquor_is_as_heavy_as_what_is_dissolved_in_it()
    {
        (BrewPlan brew, WaterOutcome outcome) = Treated(Brew(MashMethod.Bag, SpargeMethod.None), Hard);
        OneRun run = OneRun.Of(brew);
        double grams = Ions.All.Where(ion => ion != Ion.Bicarbonate).Sum(ion => outcome.Mash.Unsoured[ion]) / 1000;
        double acid = outcome.Mash.Acids.Sum(dose => dose.Units * dose.Acid.Acid.MillimolesPerUnit * 90.078 / 1000) / outcome.Mash.Litres;
        double byHand = 1 + ((grams * (1 - 0.35)) + (acid * (1 - 0.76)) - 0) / 1000;
        Near.Equal(byHand, run.At(Stage.Strike).Gravity, 0.00002);
    }

    [Fact]
    public void Mash_pH_and_sodium_are_told_with_a_water_plan_and_the_pH_has_bounds()
    {
        Recipe recipe = Brew(MashMethod.Bag, SpargeMethod.Pour);
        Assert.Null(Forecast(recipe, null).Headline.Single(h => h.Name == "mashPh").Band);
        Assert.Null(Forecast(recipe, null).Ions);
        BrewForecast told = Forecast(recipe, Hard);
        Band ph = told.Headline.Single(h => h.Name == "mashPh").Band!;
        Assert.Equal((BandKind.Bounds, "pH at 20 °C"), (ph.Kind, ph.Unit));
        Near.Equal(Hard.MashPh!.Value, ph.Likely, 0.01);
        Assert.Contains(told.Cautions, caution => caution.Code == "ions.malt");
    }

    [Fact]
    public void A_salt_for_the_kettle_meets_the_wort_there()
    {
        WaterPlan plan = Hard with { Salts = [new OfferedSalt(BrewingSalts.TableSalt, LiquorPlace.Kettle, null, new(Gylebook.Science.Quantities.Concentration.FromMilligramsPerLitre(100), "0.1 g/L"))] };
        (BrewPlan brew, WaterOutcome outcome) = Treated(Brew(MashMethod.Bag, SpargeMethod.None), plan);
        OneRun run = OneRun.Of(brew);
        double grams = Assert.Single(outcome.Kettle.Salts).Grams;
        double salt = run.Record.Additions.Where(addition => addition.Stage == Stage.CopperUp).Sum(addition => addition.What[Component.Sodium]);
        Near.Equal(grams * 393.39, salt, grams * 0.01);
        Assert.True(run.Ledger.Closes);
    }

    [Fact]
    public void Salts_and_acids_of_the_recipe_itself_count_for_its_mash()
    {
        Recipe plain = Brew(MashMethod.Bag, SpargeMethod.None);
        WaterPlan bare = Hard with { MashPh = null, Salts = [], Targets = [], Acids = [] };
        double Ph(params IngredientLine[] more) =>
            Treated(plain with { Ingredients = [.. plain.Ingredients, .. more] }, bare).Outcome.MashPh!.Likely;
        Assert.True(Ph(Typed.Line(IngredientKind.Salt, "gypsum", 0.006, AdditionPoint.Mash)) < Ph());
        Assert.True(Ph(Typed.Line(IngredientKind.Acid, "lactic acid 88 %", 0.004, AdditionPoint.Mash)) < Ph());
        Assert.True(Ph(Typed.Line(IngredientKind.Salt, "baking soda", 0.004, AdditionPoint.Mash)) > Ph());
    }

    private static WaterPlan Sample(string name) =>
        WaterFile.Read(File.ReadAllText(RepositoryFile.PathOf($"samples/water/{name}.json"))).Value!;

    private static BrewForecast Forecast(Recipe recipe, WaterPlan? water) =>
        Forecaster.Forecast(recipe, Kits.Whole, RandomBrews.Foods, "liquor", water);

    private static (BrewPlan BrewPlan, WaterOutcome Outcome) Treated(Recipe recipe, WaterPlan water)
    {
        WaterOutcome outcome = WaterTreatment.Of(water, LiquorNeed.Of(recipe.PlanOn(Kits.Whole))!);
        Recipe salted = recipe with { Ingredients = [.. recipe.Ingredients, .. WaterTreatment.RecipeLinesOf(outcome)] };
        return (BrewPlanner.Plan(salted, Kits.Whole, RandomBrews.Foods, WaterTreatment.LiquorsOf(outcome)), outcome);
    }

    private static Recipe Brew(MashMethod method, SpargeMethod sparge) => new()
    {
        Name = "ions",
        Package = new PackageWish(Typed.Litres(20), "bottle", Typed.Volumes(2.2)),
        Mash = new MashPlan(method, [Typed.Rest(66, 60)], new SpargePlan(sparge, sparge == SpargeMethod.None ? null : Typed.Litres(6), null)),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Portions = [new PortionShare("first", Typed.Share(0.5)), new PortionShare("second", Typed.Share(0.5))],
        Ingredients =
        [
            Typed.Malt("pale ale malt", method == MashMethod.Part ? 1 : 4), Typed.Malt("caramel malt", 0.3),
            .. method == MashMethod.Part ? [Typed.Line(IngredientKind.Extract, "dry malt extract light", 2, AdditionPoint.CopperUp)] : Array.Empty<IngredientLine>(),
            Typed.Line(IngredientKind.Hop, "Fuggle", 0.03, AdditionPoint.Boil, 60),
            Typed.Yeast("English ale"),
        ],
    };
}
