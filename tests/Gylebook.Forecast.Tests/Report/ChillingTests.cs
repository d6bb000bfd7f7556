using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Cooling;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;
using Gylebook.Science.Cooling;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>Down to the pitch, by each kind of chiller, and what that does to bitterness.</summary>
public sealed class ChillingTests
{
    private static readonly Kit Hose = Kits.Sample("long-hose") with { Altitude = Bitters.Metres(0), Packages = Bitters.AtTheSea.Packages };
    private static readonly Kit Overnight = Kits.Sample("overnight") with { Packages = Bitters.AtTheSea.Packages };
    private static readonly Kit Coil = Kits.Sample("coil-and-element") with { Altitude = Bitters.Metres(0), Packages = Bitters.AtTheSea.Packages };
    private static readonly Recipe Late = Bitters.With(Bitters.Hop(30, AdditionPoint.KnockOut));

    // What is told must be what the exchanger does: the wort comes out at the pitch, and the run-off takes its litres over its flow.
    [Fact]
    public void Counterflow_runs_as_fast_as_still_reaches_the_pitch()
    {
        BrewForecast told = Late.Forecast(kit: Hose);
        Chilling chilling = told.Chilling!;
        Near.Equal(19, chilling.WortOutCelsius!.Value, 1e-6);
        Near.Equal(told.Stages.First(s => s.Stage == Stage.Cast).LitresAt20C / chilling.WortLitresPerMinute!.Value, chilling.Minutes!.Value, 1e-6);
        Near.Equal(8 * chilling.Minutes.Value, chilling.CoolantLitres!.Value, 1e-6);
        Assert.InRange(chilling.CoolantOutCelsius!.Value, 12, 100);
        Assert.Equal(("counterflow", 12.0), (chilling.Kind, chilling.CoolerCelsius!.Value));
        Assert.Empty(chilling.Needs);
    }

    [Fact]
    public void Counterflow_at_the_brewers_own_flow_tells_how_warm_it_comes_out()
    {
        Kit quick = Hose with { Chiller = Hose.Chiller! with { WortLitresPerMinute = 6 } };
        BrewForecast told = Late.Forecast(kit: quick);
        Assert.Equal(6, told.Chilling!.WortLitresPerMinute);
        Assert.True(told.Chilling.WortOutCelsius > 20);
        Caution warm = Assert.Single(told.Cautions, c => c.Code == "chill.warm");
        Assert.Contains(Late.Forecast(kit: Hose).Chilling!.WortLitresPerMinute!.Value.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture), warm.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Late.Forecast(kit: Hose).Cautions, c => c.Code == "chill.warm");
    }

    [Fact]
    public void Plates_are_reckoned_like_counterflow() => Assert.Equal(
        Late.Forecast(kit: Hose).Chilling! with { Kind = "plate", Needs = [] },
        Late.Forecast(kit: Hose with { Chiller = Hose.Chiller! with { Kind = "plate" } }).Chilling! with { Needs = [] });

    // Newton by hand: from 100.0 °C to 19 in a room of 12 with 9 h: 9 ln(88/7) = 22.8 h.
    [Fact]
    public void Overnight_takes_the_time_the_vessel_takes()
    {
        Chilling chilling = Late.Forecast(kit: Overnight).Chilling!;
        Near.Equal(60 * 9 * Math.Log((chilling.FromCelsius - 12) / 7), chilling.Minutes!.Value, 1e-9);
        Near.Equal(22.8 * 60, chilling.Minutes.Value, 3);
        Assert.Null(chilling.CoolantLitres);
    }

    [Fact]
    public void What_nobody_has_measured_is_not_made_up()
    {
        Chilling alone = Late.Forecast(kit: Overnight with { WortCooling = null }).Chilling!;
        Assert.Null(alone.Minutes);
        Assert.Equal(["wortCooling"], alone.Needs);
        Chilling hose = Late.Forecast(kit: Hose with { Chiller = new Chiller("plate", null) }).Chilling!;
        Assert.Equal((null, null, null), (hose.Minutes, hose.WortOutCelsius, hose.CoolantOutCelsius));
        Assert.Equal(["chiller.coolant", "chiller.litresPerMinute", "chiller.kilowattsPerKelvin"], hose.Needs);
        Assert.Equal(["chiller.kind"], Late.Forecast(kit: Hose with { Chiller = Hose.Chiller! with { Kind = "snow" } }).Chilling!.Needs);
    }

    [Fact]
    public void A_room_or_water_too_warm_never_gets_there()
    {
        Entered<Temperature> warm = new(Temperature.FromCelsius(20), "20 °C");
        Chilling room = Late.Forecast(kit: Overnight with { GrainTemperature = warm }).Chilling!;
        Chilling water = Late.Forecast(kit: Hose with { Chiller = Hose.Chiller! with { Coolant = warm } }).Chilling!;
        Assert.All([room, water], c => Assert.Equal((null, 0), (c.Minutes, c.Needs.Count)));
    }

    [Fact]
    public void Each_way_has_its_own_hazards()
    {
        Assert.Equal(["chill.scald"], Codes(Coil));
        Assert.Equal(["chill.hoses", "chill.scald"], Codes(Hose));
        Assert.Equal(["chill.hotVessel", "chill.slow"], Codes(Overnight));
        Assert.Equal(["chill.hotVessel", "chill.slow"], Codes(Coil with { Chiller = null }));
        Assert.All(Late.Forecast(kit: Hose).Cautions.Where(c => c.Code.StartsWith("chill.", StringComparison.Ordinal)), c => Assert.Equal("chill", c.Where));

        static string[] Codes(Kit kit) =>
            [.. Late.Forecast(kit: kit).Cautions.Select(c => c.Code).Where(c => c.StartsWith("chill.", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
    }

    // Hops at knock-out turn only while it is hot. In the kettle of a counterflow brew they stay between: at most what the whole
    // run-off at 100 °C makes, at least nought. Trub leaves 92.5 %, the cellar 66.3 %.
    [Fact]
    public void Hops_go_on_turning_in_a_kettle_that_runs_off()
    {
        BrewForecast told = Late.Forecast(new ForecastRequest { Bitterness = BitternessModel.Isomerisation }, Hose);
        double minutes = told.Chilling!.Minutes!.Value;
        double perShare = 30 * 0.08 * 1000 / told.Stages.First(s => s.Stage == Stage.KnockOut).LitresAt20C * 0.925 * 0.663;
        double most = perShare * IsomerisationStep.RunningOff(minutes, _ => 100).IsoFromAlpha;
        double least = perShare * IsomerisationStep.RunningOff(minutes, t => WortCooling.AloneCelsius(100, 0.0203, t)).IsoFromAlpha;

        // 0.0203 a minute is a kettle quite open: our lidded one cools slower, the whole of it at the boil not at all. The volumes of
        // the kettle and the glass differ by less than a twentieth, and hops hold wort.
        Assert.InRange(told.Number("bitterness"), least * 0.95, most * 1.05);
    }

    [Fact]
    public void Slower_cooling_is_more_bitter_in_order()
    {
        double coil = Kinetics(Coil);
        double hose = Kinetics(Hose);
        double night = Kinetics(Overnight);
        Assert.True(coil < hose && hose < night, $"{coil} {hose} {night}");

        // A closed vessel that takes twice as long is hot for twice as long.
        Assert.True(Kinetics(Overnight with { WortCooling = new(Duration.FromHours(18), "18 h") }) > night);

        static double Kinetics(Kit kit) =>
            Late.Forecast(new ForecastRequest { Bitterness = BitternessModel.Isomerisation }, kit).Number("bitterness");
    }

    // The coil's own cooling time where its figures are known: Newton's law to 60 °C with it, against the rule of 0.15 a minute.
    [Fact]
    public void A_coil_of_known_figures_cools_the_hops_as_it_cools_the_wort()
    {
        ForecastRequest kinetics = new() { Bitterness = BitternessModel.Isomerisation };
        Kit slow = Coil with { Chiller = Coil.Chiller! with { KilowattsPerKelvin = 0.05 } };
        double ratio = Late.Forecast(kinetics, slow).Number("bitterness") / Late.Forecast(kinetics, Coil).Number("bitterness");
        double times = new ImmersionChiller(0.4, 8, 15).Effectiveness / new ImmersionChiller(0.05, 8, 15).Effectiveness;

        // So long as little alpha acid is used up, iso-alpha acid grows with the time; a little less, as it is used up.
        Assert.InRange(ratio, times * 0.8, times);
    }
}
