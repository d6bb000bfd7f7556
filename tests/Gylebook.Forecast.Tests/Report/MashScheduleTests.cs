using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>The mash day as it is told.</summary>
public sealed class MashScheduleTests
{
    /// <summary>Coil, element of 3.5 kW, 120 m up, grain of 18 °C, a mash that cools with 20 h.</summary>
    private static readonly Kit Coil = Kits.Sample("coil-and-element");

    [Fact]
    public void Infusions_and_their_strike_are_the_planned_liquor()
    {
        BrewForecast told = Forecast(Coil);
        MashSchedule schedule = told.MashSchedule!;
        double planned = told.Stages.First(stage => stage.Stage == Stage.Strike).LitresAt20C;
        Near.Equal(planned, schedule.InfusionStrike!.Litres + schedule.Rests.Sum(rest => rest.InfusionLitres ?? 0), 1e-6);
        Assert.Null(schedule.Rests[0].InfusionLitres);
        Assert.All(schedule.Rests.Skip(1), rest => Assert.InRange(rest.InfusionLitres!.Value, 0.1, planned));
    }

    /// <summary>Newton with 20 h: from 52 °C in a room of 18 °C to 51.16 °C in half an hour, by hand 18 + 34 e^(−0.025).</summary>
    [Fact]
    public void A_rest_falls_as_the_kit_cools_and_not_at_all_when_nobody_knows()
    {
        Near.Equal(18 + (34 * Math.Exp(-0.025)), Forecast(Coil).MashSchedule!.Rests[0].EndCelsius!.Value, 1e-9);
        Assert.All(Forecast(Coil with { MashCooling = null }).MashSchedule!.Rests, rest => Assert.Null(rest.EndCelsius));
    }

    [Fact]
    public void Each_way_up_reaches_the_rest()
    {
        MashSchedule schedule = Forecast(Coil).MashSchedule!;
        for (int i = 1; i < schedule.Rests.Count; i++)
        {
            MashRest rest = schedule.Rests[i];
            double from = schedule.Rests[i - 1].EndCelsius!.Value;
            Near.Equal(rest.Celsius, Decoction.RestCelsius(rest.DecoctionShare!.Value, from, rest.InfusionCelsius!.Value), 1e-9);
        }
    }

    /// <summary>
    /// Minutes by hand: (m_g c_g + m_w 4.18) ΔT / (3.5 kW × 0.9) / 60, with 4 kg of pale malt of 3.2 % moisture (c 1.673) and the planned
    /// liquor as kilograms.
    /// </summary>
    [Fact]
    public void Heating_takes_the_heat_of_grain_and_liquor()
    {
        BrewForecast told = Forecast(Coil);
        double liquor = told.Stages.First(stage => stage.Stage == Stage.Strike).LitresAt20C * 0.998234;
        MashRest second = told.MashSchedule!.Rests[1];
        double heat = (4 * 1.67288) + (liquor * 4.18);
        Near.Equal(heat * (66 - told.MashSchedule.Rests[0].EndCelsius!.Value) / (3.5 * 0.9) / 60, second.HeatMinutes!.Value, 0.001);
    }

    [Fact]
    public void Strike_rinse_and_boil_are_told_as_the_run_has_them()
    {
        BrewForecast told = Forecast(Coil);
        StageRow strike = told.Stages.First(stage => stage.Stage == Stage.Strike);
        Near.Equal(strike.LitresAt20C, told.MashSchedule!.StrikeLitres, 1e-6);
        Near.Equal(strike.TemperatureC!.Value, told.MashSchedule.StrikeCelsius, 1e-9);
        Near.Equal(told.Stages.First(stage => stage.Stage == Stage.CopperUp).LitresAt20C, told.MashSchedule.CopperUpLitres, 1e-6);
        Assert.Null(told.MashSchedule.Rinse);
        Recipe rinsed = Stepped with { Mash = Stepped.Mash! with { Sparge = new SpargePlan(SpargeMethod.Pour, Typed.Litres(5), null) } };
        Assert.Equal(new MashRinse(SpargeMethod.Pour, 5, null), Forecaster.Forecast(rinsed, Coil, RandomBrews.Foods, "x").MashSchedule!.Rinse);
    }

    [Fact]
    public void A_tun_is_not_heated_and_one_rest_needs_no_step()
    {
        Recipe recipe = Stepped with { Mash = Stepped.Mash! with { Method = MashMethod.Tun } };
        MashSchedule tun = Forecaster.Forecast(recipe, Kits.Whole, RandomBrews.Foods, "x").MashSchedule!;
        Assert.All(tun.Rests, rest => Assert.Null(rest.HeatMinutes));
        Assert.NotNull(tun.InfusionStrike);
        Recipe single = Stepped with { Mash = Stepped.Mash! with { Rests = [Typed.Rest(66, 60)] } };
        Assert.Null(Forecaster.Forecast(single, Coil, RandomBrews.Foods, "x").MashSchedule!.InfusionStrike);
    }

    [Fact]
    public void A_rest_cooler_than_the_one_before_has_no_way_up()
    {
        Recipe falling = Stepped with { Mash = Stepped.Mash! with { Rests = [Typed.Rest(66, 30), Typed.Rest(60, 30)] } };
        MashSchedule schedule = Forecaster.Forecast(falling, Coil, RandomBrews.Foods, "x").MashSchedule!;
        Assert.Null(schedule.InfusionStrike);
        Assert.Equal((null, null, null), (schedule.Rests[1].InfusionLitres, schedule.Rests[1].HeatMinutes, schedule.Rests[1].DecoctionShare));
    }

    [Fact]
    public void Chilling_takes_longer_with_warmer_water_and_never_ends_with_water_too_warm()
    {
        Kit With(double celsius) => Coil with { Chiller = Coil.Chiller! with { Coolant = new(Temperature.FromCelsius(celsius), "") } };
        Assert.True(Forecast(With(16)).Chilling!.Minutes > Forecast(With(10)).Chilling!.Minutes);
        Assert.Null(Forecast(With(20)).Chilling!.Minutes);
    }

    private static BrewForecast Forecast(Kit kit) => Forecaster.Forecast(Stepped, kit, RandomBrews.Foods, "steps");

    private static Recipe Stepped { get; } = new()
    {
        Name = "stepped",
        Package = new PackageWish(Typed.Litres(18), "bottle", Typed.Volumes(2.2)),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(52, 30), Typed.Rest(66, 45), Typed.Rest(76, 10)], SpargePlan.None),
        Boil = new BoilPlan(Typed.Minutes(60)),
        Ferment = [Typed.Days(19, 14)],
        Ingredients =
        [
            Typed.Malt("pale ale malt", 4),
            Typed.Line(IngredientKind.Hop, "Fuggle", 0.03, AdditionPoint.Boil, 60),
            Typed.Yeast("English ale"),
        ],
    };
}
