using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Forecast.Tests.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>Findings turn up at their limits and not beside them, with the weight they have; each test was seen to fail on a mutant of its line.</summary>
public sealed class ThresholdTests
{
    private static readonly Recipe Plain = new()
    {
        Name = "plain",
        Package = new PackageWish(Typed.Litres(20), "bottle", null),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients = [Typed.Malt("pale ale malt", 4), Typed.Yeast("American ale"), Typed.Line(IngredientKind.Sugar, "white sugar", 0.13, AdditionPoint.Package)],
    };

    /// <summary>Glass bursts: more gas than a bottle is made for is never less than an error.</summary>
    [Fact]
    public void A_bottle_that_may_burst_is_an_error_that_forbids_the_brew()
    {
        double volumes = Tell(Plain, Kits.Whole).Package!.Co2Volumes;
        BrewForecast bursts = Tell(Plain, MadeFor(volumes - 0.05)), holds = Tell(Plain, MadeFor(volumes + 0.05));
        Finding finding = Assert.Single(bursts.Findings, f => f.Code == "package.overpressure");
        Assert.Equal((Severity.Error, "kit.packages"), (finding.Severity, finding.Where));
        Assert.False(bursts.CanBeBrewed);
        Assert.DoesNotContain(holds.Findings, f => f.Code == "package.overpressure");
        Assert.True(holds.CanBeBrewed);
    }

    [Theory]
    [InlineData(-0.21, true)]
    [InlineData(-0.19, false)]
    [InlineData(0.19, false)]
    [InlineData(0.21, true)]
    public void Gas_differs_from_the_wish_from_a_fifth_of_a_volume_on(double off, bool differs)
    {
        double volumes = Tell(Plain, Kits.Whole).Package!.Co2Volumes;
        BrewForecast told = Tell(Plain with { Package = Plain.Package with { Carbonation = Typed.Volumes(volumes + off) } }, Kits.Whole);
        Assert.Equal(differs ? Severity.Warning : null, told.Findings.SingleOrDefault(f => f.Code == "carbonation.differs")?.Severity);
    }

    /// <summary>Beyond the usable litres a warning; beyond the brim it runs over, an error.</summary>
    [Theory]
    [InlineData(1, 2, null)]
    [InlineData(-1, 1, Severity.Warning)]
    [InlineData(-2, -1, Severity.Error)]
    public void A_fermenter_fuller_than_usable_is_a_warning_and_fuller_than_its_brim_an_error(double usable, double brim, Severity? severity)
    {
        double litres = OneRun.Of(Plain.PlanOn(Kits.Whole)).Beer[BeerReadouts.FermenterLitresWithSolids];
        Kit kit = Kits.Whole with { Fermenter = Kits.Whole.Fermenter with { Usable = Typed.Litres(litres + usable), Brim = Typed.Litres(litres + brim) } };
        Assert.Equal(severity, Tell(Plain, kit).Findings.SingleOrDefault(f => f.Code == "fermenter.tooSmall")?.Severity);
    }

    /// <summary>
    /// Pale malt with flakes that bring starch and no enzyme, mixed to a little less and a little more than 30 °Lintner over a pale malt's worth of
    /// their starch.
    /// </summary>
    [Theory]
    [InlineData(29.9, true)]
    [InlineData(30.1, false)]
    public void Enzyme_is_short_below_thirty_degrees_Lintner(double power, bool isShort)
    {
        Malt pale = Malts.Find("pale ale malt").Match!, flakes = Malts.Find("barley flakes").Match!;
        Assert.Equal(0, flakes.DiastaticPower);
        Recipe Mixed(double share) => Plain with { Ingredients = [Typed.Malt(pale.Name, 4 * share), Typed.Malt(flakes.Name, 4 * (1 - share)), Plain.Ingredients[1]] };
        double[] starch = [.. Mixed(0.5).PlanOn(Kits.Whole).Lines.Take(2).Select(line => line.Makeup[Component.Starch] / line.Kilograms)];

        // share · 55 = power · (share · pale's starch + (1 − share) · flakes' starch)/pale's starch.
        double share = power * starch[1] / ((pale.DiastaticPower * starch[0]) - (power * (starch[0] - starch[1])));
        Recipe mixed = Mixed(share);
        Assert.Equal(isShort ? Severity.Warning : null, Tell(mixed, Kits.Whole).Findings.SingleOrDefault(f => f.Code == "mash.enzyme")?.Severity);
    }

    /// <summary>Two yeasts in one wort: the one that wants more sets the rate, and the cells of both count.</summary>
    [Fact]
    public void Two_yeasts_pitch_at_the_higher_rate_and_their_cells_add_up()
    {
        IngredientLine ale = Typed.Yeast("American ale"), lager = Typed.Yeast("lager");
        PitchAdvice Pitched(params IngredientLine[] yeasts) => Tell(Plain with { Ingredients = [Plain.Ingredients[0], .. yeasts] }, Kits.Whole).Pitch!;
        PitchAdvice ofAle = Pitched(ale), ofLager = Pitched(lager), both = Pitched(ale, lager), reversed = Pitched(lager, ale);
        Assert.True(ofLager.Rate > ofAle.Rate);
        Assert.Equal((ofLager.Rate, ofLager.Rate), (both.Rate, reversed.Rate));
        Near.Equal(ofAle.CellsLowBillions!.Value + ofLager.CellsLowBillions!.Value, both.CellsLowBillions!.Value, 1e-9);
        Near.Equal(both.CellsLowBillions.Value, reversed.CellsLowBillions!.Value, 1e-9);
        Assert.Equal(["American ale", "lager"], both.Yeasts.Select(name => name));
    }

    /// <summary>A quarter of a food's solids passes the bag, and so does what those would have held; all the grain stays in it.</summary>
    [Fact]
    public void Fines_pass_the_bag_with_what_they_hold()
    {
        double[] draw = Draws.Of();
        draw[(int)Known.FinesThroughBag] = 0.25;
        draw[(int)Known.WortHeld] = 1;
        Wort mash = default, bed = default;
        (mash[Component.Water], mash[Component.Grain], mash[Component.FoodSolids], mash[Component.BagHold]) = (20, 2, 1, 4);
        Lift.Part(ref mash, ref bed, draw);
        Near.Equal(0.25, mash[Component.FoodSolids], 1e-12);
        Near.Equal(0.75, bed[Component.FoodSolids], 1e-12);
        Near.Equal(0, mash[Component.Grain], 1e-12);

        // Two kilograms of grain hold two of wort, the food's hold is four, of which three quarters stay.
        Near.Equal(2 + 3, bed[Component.Water], 1e-12);
    }

    /// <summary>The three packs of the model, by hand: the rate of loss as it is in the open, three quarters of it, half.</summary>
    [Theory]
    [InlineData(HopPack.Open, 1)]
    [InlineData(HopPack.SomeAir, 0.75)]
    [InlineData(HopPack.Airless, 0.5)]
    public void A_hop_ages_by_its_pack(HopPack pack, double factor)
    {
        IngredientLine hop = Typed.Line(IngredientKind.Hop, "Saaz", 0.04, AdditionPoint.Boil, 30) with
        {
            Alpha = Typed.Share(0.1),
            Age = new(Duration.FromDays(180), "180 d"),
            Storage = new HopStorage(new(Temperature.FromCelsius(20), "20 °C"), pack, Typed.Share(0.36)),
        };
        BrewForecast told = Tell(Plain with { Ingredients = [.. Plain.Ingredients, hop] }, Kits.Whole);

        // 36 % lost in six months at 20 °C in the open leave 0.64 to the power of the factor.
        Near.Equal(10 * Math.Pow(0.64, factor), Assert.Single(told.BitternessBy).AlphaPercent, 1e-9);
    }

    private static Kit MadeFor(double volumes) => Kits.Whole with
    {
        Packages = [.. Kits.Whole.Packages.Select(p => p.Kind == "bottle" ? p with { MaxVolumes = Typed.Volumes(volumes) } : p)],
    };

    private static BrewForecast Tell(Recipe recipe, Kit kit) => Forecaster.Forecast(recipe, kit, RandomBrews.Foods, "test");
}
