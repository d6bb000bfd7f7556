using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Foods;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Forecast.Tests.Foods;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>What a brewer may type by mistake: a finding with value and limit each time, and never an exception or a figure that is no number.</summary>
public sealed class CannotBeMeantTests
{
    private static readonly Recipe Plain = new()
    {
        Name = "plain",
        Package = new PackageWish(Typed.Litres(20), "bottle", Typed.Volumes(2.4)),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients = [Typed.Malt("pale ale malt", 4), Typed.Yeast("American ale")],
    };

    /// <summary>A part mash with this strike; the kettle is filled up for the rest.</summary>
    private static Recipe Struck(double litres) => Plain with
    {
        Mash = Plain.Mash! with { Method = MashMethod.Part },
        Liquor = new LiquorPlan(Typed.Litres(litres), null),
    };

    [Fact]
    public void A_strike_of_half_a_litre_in_a_part_mash_is_told_and_not_thrown()
    {
        BrewForecast told = Tell(Struck(0.5));
        Assert.Null(told.Failure);
        Assert.Contains(told.Findings, f => f is { Code: "mash.tooThick", Severity: Severity.Error, Limit: "0.5 L/kg" });
        Assert.Contains(told.Findings, f => f is { Code: "strike.tooHot", Severity: Severity.Error });
        Assert.Null(told.MashSchedule!.StrikeHeatMinutes);
    }

    /// <summary>Heat balance by hand: 4 kg of malt of 1.67 kJ/kg/K from 20 °C to 66 °C with 2 L of water ask for 103 °C, with 4 L for 84 °C.</summary>
    [Theory]
    [InlineData(2, true)]
    [InlineData(4, false)]
    public void Strike_liquor_hotter_than_the_boil_is_an_error_with_the_boil_as_its_limit(double litres, bool tooHot)
    {
        BrewForecast told = Tell(Struck(litres));
        Finding? finding = told.Findings.SingleOrDefault(f => f.Code == "strike.tooHot");
        Assert.Equal(tooHot, finding is not null);
        Assert.Equal(tooHot, told.MashSchedule!.StrikeCelsius > told.MashSchedule.BoilCelsius);
        Assert.Equal(tooHot, !told.CanBeBrewed);
    }

    [Theory]
    [InlineData(1.9, "mash.tooThick", Severity.Error)]
    [InlineData(2.1, "mash.thick", Severity.Warning)]
    [InlineData(5.9, "mash.thick", Severity.Warning)]
    [InlineData(6.1, null, null)]
    public void A_mash_too_thick_to_stir_is_an_error_and_a_thick_one_a_warning(double litres, string? code, Severity? severity)
    {
        Finding? finding = Tell(Struck(litres)).Findings.SingleOrDefault(f => f.Code.StartsWith("mash.t", StringComparison.Ordinal));
        Assert.Equal((code, severity), (finding?.Code, finding?.Severity));
    }

    [Fact]
    public void A_heater_of_next_to_no_power_is_refused_and_gives_no_endless_minutes()
    {
        Kit weak = Kits.Whole with { Kettle = Kits.Whole.Kettle with { Power = new(Power.FromKilowatts(1e-300), "1e-300 kW") } };
        Assert.Contains(KitCheck.Findings(weak), f => f is { Code: "kettle.noPower", Severity: Severity.Error, Limit: "0.05 kW" });
        Assert.Null(Forecaster.Forecast(Plain, weak, Larder.Empty, "test").Failure);
    }

    [Fact]
    public void A_portion_that_leaves_nothing_to_package_is_told_and_its_gas_is_a_number()
    {
        BrewForecast told = Tell(Plain with
        {
            Portions = [new PortionShare("most", Typed.Share(0.99999)), new PortionShare("drop", Typed.Share(0.00001))],
        });
        Assert.Contains(told.Findings, f => f is { Code: "portion.nothing", Severity: Severity.Error, Where: "portions[1].share" });
        Assert.True(double.IsFinite(told.Package!.RefermentableVolumes));
        Assert.True(double.IsFinite(told.Package.Co2Volumes));
    }

    [Theory]
    [InlineData(0.001, null, null)]
    [InlineData(0.028, "beer.sour", Severity.Warning)]
    [InlineData(0.4, "beer.sour", Severity.Error)]
    public void Beer_too_sour_to_be_one_is_told(double kilograms, string? code, Severity? severity)
    {
        BrewForecast told = Tell(Plus(Typed.Line(IngredientKind.Acid, "phosphoric 85 %", kilograms, AdditionPoint.Boil, 10)));
        Assert.Null(told.Failure);
        Finding? finding = told.Findings.SingleOrDefault(f => f.Code == "beer.sour");
        Assert.Equal((code, severity), (finding?.Code, finding?.Severity));
    }

    /// <summary>Sodium is 39.3 % of salt: in 20 L or so of beer 40 g bring 0.7 g/L, 80 g 1.4 and 350 g 6.</summary>
    [Theory]
    [InlineData(0.040, null, null)]
    [InlineData(0.080, "beer.salt", Severity.Warning)]
    [InlineData(0.350, "beer.salt", Severity.Error)]
    public void Beer_too_salty_to_be_one_is_told(double kilograms, string? code, Severity? severity)
    {
        Finding? finding = Tell(Plus(Typed.Line(IngredientKind.Salt, "table salt", kilograms, AdditionPoint.Boil, 10))).Findings.SingleOrDefault(f => f.Code == "beer.salt");
        Assert.Equal((code, severity), (finding?.Code, finding?.Severity));
    }

    [Fact]
    public void Salt_is_neither_carbohydrate_nor_energy()
    {
        BrewForecast without = Tell(Plain), with = Tell(Plus(Typed.Line(IngredientKind.Salt, "table salt", 0.35, AdditionPoint.Package)));

        // What the salt weighs thins the beer by a fiftieth, and the litres planned move with it; 350 g counted as sugar were 3 g in 100 mL.
        Near.Equal(Of(without, "carbohydrateGPer100ml"), Of(with, "carbohydrateGPer100ml"), 0.1);
        Near.Equal(Of(without, "energyKcalPer100ml"), Of(with, "energyKcalPer100ml"), 1);
    }

    [Fact]
    public void Acid_beyond_the_scale_leaves_a_pH_unknown_and_throws_nothing()
    {
        Recipe drowned = Plain with
        {
            Souring = Typed.Souring("lactobacillus", 40, 3.4),
            Ingredients = [.. Plain.Ingredients, Typed.Line(IngredientKind.Acid, "hydrochloric 37 %", 2, AdditionPoint.Mash)],
        };
        BrewForecast told = Tell(drowned);
        Assert.Null(told.Failure);
        Assert.All(told.Headline.Select(h => h.Band).OfType<Band>(), band => Assert.True(double.IsFinite(band.Low + band.Likely + band.High)));
    }

    [Theory]
    [InlineData(600, 5000)]
    [InlineData(0.01, 0.05)]
    [InlineData(30, 20)]
    public void A_dose_into_any_litres_is_tried(double kilograms, double litres)
    {
        FoodLabelReport report = Report(kilograms, litres);
        Assert.NotEmpty(report.Places);
        Assert.DoesNotContain(report.Findings, f => f.Severity == Severity.Error);
    }

    /// <summary>The plain brew has no size of its own: a hundred times the dose in a hundred times the beer is a hundred times the litres and grams, and the same shares.</summary>
    [Fact]
    public void A_dose_scales_with_its_litres()
    {
        FoodEffect small = SampleFoods.Effect("raisins-seedless", 0.5, "ferment day 3", 20), large = SampleFoods.Effect("raisins-seedless", 50, "ferment day 3", 2000);
        Near.Equal(small.GravityPoints!.Likely, large.GravityPoints!.Likely, 1e-9);
        Near.Equal(100 * small.SludgeLitres!.Likely, large.SludgeLitres!.Likely, 1e-6);
        Near.Equal(100 * small.InsolubleGrams!.Likely, large.InsolubleGrams!.Likely, 1e-6);
    }

    [Fact]
    public void Fifty_kilograms_into_twenty_litres_are_refused_with_the_limit()
    {
        FoodLabelReport report = Report(50, 20);
        Assert.Empty(report.Places);
        Assert.Contains(report.Findings, f => f is { Code: "dose.absurd", Severity: Severity.Error, Value: "50 kg", Limit: "40 kg" });
    }

    [Fact]
    public void An_acid_that_is_mostly_water_is_refused_with_the_limit()
    {
        Reading<WaterPlan> read = WaterFile.Read("""
            { "format": "gylebook-water/1", "name": "weak", "sources": [ { "name": "tap", "report": { "calcium": "90 mg/L", "bicarbonate": "260 mg/L", "ph": 7.6 } } ],
              "strike": "20 L", "sparge": "5 L", "spargePh": 5.8, "acids": [ { "acid": "phosphoric 0.0005 % w/v" } ] }
            """);
        Assert.Contains(read.Findings, f => f.Code == "acid.unknown" && f.Message.Contains("at least 1 %", StringComparison.Ordinal));
        Assert.Null(ShelfWords.Sold("phosphoric 0.0005 % w/v"));
        Assert.NotNull(ShelfWords.Sold("phosphoric 1 % w/v"));
    }

    /// <summary>Whatever a food sheet's author does, the forecast's door tells it: here a sheet that throws when it is asked.</summary>
    [Fact]
    public void What_cannot_be_reckoned_is_a_finding_that_names_what_failed()
    {
        Recipe fed = Plus(Typed.Line(IngredientKind.Food, "moon cheese", 0.5, AdditionPoint.Boil, 10) with { Lot = "one" });
        FoodSheet cheese = new() { Id = "moon-cheese", Name = "moon cheese", Family = "other", Lots = new FailingLots(() => true, "the moon is far.") };
        BrewForecast told = Forecaster.Forecast(fed, Kits.Whole, new Larder([cheese]), "test");
        Finding finding = Assert.Single(told.Findings, f => f.Code == "forecast.notReckoned");
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Contains("this cannot be reckoned: the moon is far.", finding.Message, StringComparison.Ordinal);
        Assert.IsType<InvalidOperationException>(told.Failure);
        Assert.False(told.CanBeBrewed);
        Assert.NotEmpty(ForecastJson.Write(told));
    }

    [Theory]
    [InlineData(0, "ferment.short", Severity.Error)]
    [InlineData(12.0 / 60 / 24, "ferment.short", Severity.Error)]
    [InlineData(0.6, "ferment.short", Severity.Warning)]
    [InlineData(3, null, null)]
    public void Minutes_of_fermentation_are_an_error_and_two_days_a_warning(double days, string? code, Severity? severity)
    {
        Finding? finding = RecipeCheck.Findings(Plain with { Ferment = [Typed.Days(19, days)] }).SingleOrDefault();
        Assert.Equal((code, severity), (finding?.Code, finding?.Severity));
    }

    private static FoodLabelReport Report(double kilograms, double litres) => FoodLabelReport.Of(
        "raisins-seedless", "raisins", SampleFoods.OfTable("raisins-seedless"), Typed.Kilograms(kilograms), Typed.Litres(litres), [new(AdditionPoint.KnockOut)], null);

    private static Recipe Plus(IngredientLine line) => Plain with { Ingredients = [.. Plain.Ingredients, line] };

    private static BrewForecast Tell(Recipe recipe) => Forecaster.Forecast(recipe, Kits.Whole, RandomBrews.Foods, "test");

    private static double Of(BrewForecast told, string headline) => told.Headline.Single(h => h.Name == headline).Band!.Likely;
}
