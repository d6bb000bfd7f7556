using Gylebook.Forecast.Report;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Tests.Cellar;

/// <summary>A gyle's fermentation told from its plan and its log.</summary>
public sealed class FermentationTests
{
    private static readonly DateTimeOffset Pitched = new(2026, 11, 20, 18, 0, 0, TimeSpan.Zero);

    [Fact]
    public void A_still_beer_at_its_end_is_finished_and_its_band_is_narrower_than_the_plans()
    {
        Fermentation of = Told("plain-bitter", 12, (1, 1.034), (3, 1.016), (6, 1.0125), (9, 1.012), (11.5, 1.012));
        Assert.Equal(FinishedVerdict.Finished, of.Finished.Verdict);
        Assert.True(of.Fan.End.Width < of.Planned.End.Width);
        Assert.Contains(of.ToDo, task => task.What.StartsWith("Package it", StringComparison.Ordinal));
    }

    [Fact]
    public void A_falling_beer_has_a_day_and_a_stuck_one_has_things_to_try()
    {
        Fermentation falling = Told("plain-bitter", 2.2, (1, 1.036), (2, 1.024));
        Assert.Equal(FinishedVerdict.NotYet, falling.Finished.Verdict);
        Assert.True(falling.Done is var (low, likely, high) && low <= likely && likely <= high && likely > falling.Now);
        Fermentation stuck = Told("plain-bitter", 9, (1, 1.036), (3, 1.026), (6, 1.026), (8.8, 1.026));
        Assert.Equal(FinishedVerdict.Stuck, stuck.Finished.Verdict);
        Assert.Contains(stuck.ToDo, task => task.What.Contains("forced ferment", StringComparison.Ordinal));
    }

    /// <summary>The course is told as a hydrometer would show it: it falls, jumps by the honey on its day, and falls again to the end of all of it.</summary>
    [Fact]
    public void Sugar_that_goes_in_on_the_way_is_told_from_its_day_on()
    {
        Fermentation of = Told("hedgerow-brown", 4, (1, 1.044));
        Assert.InRange(of.Added, 0.005, 0.009);
        int before = of.Planned.Hours.ToList().FindLastIndex(hours => hours <= of.AddedHours), day = of.Planned.Hours.ToList().FindIndex(hours => hours > of.AddedHours + 24);
        double[] planned = [.. of.Planned.Gravities.Select(band => band.Middle)];
        Assert.True(planned[..(before + 1)].Zip(planned[1..(before + 1)]).All(pair => pair.Second <= pair.First + 1e-9));

        // Two hours of the grid lie between: some of the honey is gone by then, and the wort goes on falling.
        Assert.InRange(planned[before + 1] - planned[before], 0.2 * of.Added, of.Added);
        Assert.True(planned[day] < planned[before + 1]);
        Assert.True(planned[..(before + 1)].All(gravity => gravity > of.Expected.Middle));
        Assert.Contains(of.Finished.Reasons, reason => reason.Text.Contains("oney", StringComparison.Ordinal) && !reason.Holds);
        Assert.Contains(of.ToDo, task => task.Day is not null);
    }

    [Fact]
    public void The_balance_takes_a_gravity_of_the_fermenter_only_once_it_stands_still()
    {
        GyleReading[] falling = [Read("ferment", 1, 1.034), Read("ferment", 2, 1.022)], still = [.. falling, Read("ferment", 5, 1.012), Read("ferment", 7.5, 1.012)];
        Assert.Empty(SettledReadings.Of(new GyleLog([], [], falling)));
        Assert.Equal(1.012, Assert.Single(SettledReadings.Of(new GyleLog([], [], still))).Gravity!.Value.Value.Ratio, 1e-9);
        Assert.Equal([ReadingPoint.Ferment, ReadingPoint.Rack], SettledReadings.Of(new GyleLog([], [], [.. falling, Read("rack", 6, 1.014)])).Select(taken => taken.At));
    }

    /// <summary>What hands set counts from then on: cooled on its first day, a beer is later done than one left as planned.</summary>
    [Fact]
    public void A_beer_that_is_cooled_takes_longer()
    {
        BrewAction cooled = new() { At = Pitched.AddDays(1), EntryId = Guid.NewGuid(), Kind = ActionKind.Said, Stage = "ferment", What = "cooled", Temperature = Temperature.FromCelsius(12) };
        Fermentation left = Told("plain-bitter", 1.5, (0.5, 1.040)), cold = Told("plain-bitter", 1.5, [cooled], (0.5, 1.040));
        Assert.True(cold.Fan.DoneHours.Middle > left.Fan.DoneHours.Middle + 12);
    }

    private static Fermentation Told(string recipe, double days, params (double Day, double Gravity)[] read) => Told(recipe, days, [], read);

    private static Fermentation Told(string recipe, double days, BrewAction[] actions, params (double Day, double Gravity)[] read)
    {
        (GyleInputs inputs, GylePlan? plan) = BrewStepsTests.Frozen(recipe, "lantern-shed");
        GyleReading[] readings = [.. read.Select(one => Read("ferment", one.Day, one.Gravity))];
        DateTimeOffset now = Pitched.AddDays(days);
        BrewForecast forecast = inputs.Forecast(plan!.Seed, []);
        CellarSeries series = CellarSeries.Of([], readings, new CellarSpan(Pitched, null), now);
        return Fermentation.Of(plan, new GyleLog(plan.Steps, actions, readings), forecast, series, Pitched, now)!;
    }

    private static GyleReading Read(string at, double day, double gravity)
    {
        string typed = Invariant($$"""{ "at": "{{at}}", "gravity": "{{gravity:0.0000}}", "temperature": "20 °C" }""");
        TakenReading taken = ReadingsFile.ReadEntry(typed).Reading!;
        return new() { At = Pitched.AddDays(day), EntryId = Guid.NewGuid(), Stage = at, Gravity = taken.Gravity?.Value, Temperature = Temperature.FromCelsius(20), Typed = typed };
    }
}
