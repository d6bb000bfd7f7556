using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>A brew at the sea and the same brew at 1500 m: 84.556 kPa (ISO 2533), 95.02 °C.</summary>
public sealed class HeightTests
{
    private static readonly Recipe Bitter = Bitters.With(Bitters.Hop(40, AdditionPoint.Boil, 60));
    private static readonly Kit High = Bitters.AtTheSea with { Altitude = Bitters.Metres(1500) };

    [Fact]
    public void Wort_boils_cooler()
    {
        BrewForecast told = Bitter.Forecast(kit: High);
        Near.Equal(95.02, told.Stages.Single(s => s.Stage == Stage.KnockOut).TemperatureC!.Value, 0.005);
        Near.Equal(95.02, told.MashSchedule!.BoilCelsius, 0.005);
    }

    // The gauge counts from the air outside: it reads by so much more as the air is thinner. Same beer, same temperature.
    [Fact]
    public void A_keg_needs_as_much_more_on_the_gauge_as_the_air_weighs_less()
    {
        KegGauge sea = Bitter.Forecast().Package!.Keg!;
        KegGauge high = Bitter.Forecast(kit: High).Package!.Keg!;
        Assert.Equal(4, sea.Celsius);
        Near.Equal((101.325 - 84.556) / 100, high.GaugeBar - sea.GaugeBar, 0.000005);

        // 2 volumes at 4 °C: the chart (BrewingTechniques 2(1), Table I) has 2.00 at 38 °F and 6 psi, 1.94 at 42 °F and 7; 39.2 °F lies between.
        Assert.InRange(sea.GaugeBar / 0.0689475729, 6, 7.7);
    }

    [Fact]
    public void A_cold_last_rest_sets_the_temperature_of_the_gauge()
    {
        Recipe crashed = Bitter with { Ferment = [Typed.Days(19, 12), Typed.Days(2, 2)] };
        Assert.Equal(2, crashed.Forecast().Package!.Keg!.Celsius);
        Assert.Null((Bitter with { Package = Bitter.Package with { In = "bottle" } }).Forecast().Package!.Keg);
    }

    [Fact]
    public void A_keg_rated_for_less_is_refused()
    {
        Kit weak = Bitters.AtTheSea with
        {
            Packages = [.. Bitters.AtTheSea.Packages.Select(p => p.MaxPressure is null ? p : p with { MaxPressure = Typed.Bar(0.3) })],
        };
        Finding found = Assert.Single(Forecaster.Forecast(Bitter, weak, RandomBrews.Foods, "x").Findings, f => f.Code == "package.pressure");
        Assert.Equal((Severity.Error, "0.3 bar"), (found.Severity, found.Limit));
    }

    // Flat beer holds gas in proportion to the air (0.88 volumes at 20 °C in the table, sea level): less there, so more sugar.
    [Fact]
    public void Bottles_are_primed_for_the_gas_that_thin_air_left()
    {
        Recipe bottled = Bitter with { Package = new PackageWish(Typed.Litres(20), "bottle", Typed.Volumes(2.3)), Ferment = [Typed.Days(20, 14)], Liquor = null };
        BrewForecast sea = bottled.Forecast();
        BrewForecast high = bottled.Forecast(kit: High);
        Near.Equal(sea.Package!.Co2Volumes, high.Package!.Co2Volumes, 1e-6);
        Near.Equal(0.88 * (1 - (84.556 / 101.325)), high.Package.RefermentableVolumes - sea.Package.RefermentableVolumes, 0.001);
    }

    // The table of time and gravity does not know height, and says so; kinetics do: 0.762 of an hour's yield.
    [Fact]
    public void The_table_says_that_it_knows_no_height()
    {
        Caution told = Assert.Single(Bitter.Forecast(kit: High).Cautions, c => c.Code == "bitterness.height");
        Assert.Contains("76 %", told.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Bitter.Forecast().Cautions, c => c.Code == "bitterness.height");
        ForecastRequest kinetics = new() { Bitterness = BitternessModel.Isomerisation };
        Assert.DoesNotContain(Bitter.Forecast(kinetics, High).Cautions, c => c.Code == "bitterness.height");
        Assert.InRange(Bitter.Forecast(kinetics, High).Number("bitterness") / Bitter.Forecast(kinetics).Number("bitterness"), 0.762 * 0.98, 0.762 * 1.02);
    }
}
