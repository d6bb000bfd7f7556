using Gylebook.Gyles.Days;
using Gylebook.Gyles.Plans;

namespace Gylebook.Gyles.Tests;

/// <summary>The days of a gyle: counted by hand from its recipe.</summary>
public sealed class GyleDaysTests
{
    private static readonly DateTimeOffset Start = new(2026, 3, 1, 9, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Honey_on_day_3_and_bottles_after_12_days()
    {
        GylePlan plan = BrewStepsTests.Frozen("hedgerow-brown", "lantern-shed").Plan!;
        IReadOnlyList<GyleDay> days = GyleDays.Of(plan, Start, null);
        Assert.Equal(["brew-day", "ferment-day-3", "rest-1-ends", "package"], days.Select(day => day.Key));
        Assert.Equal([Start, Start.AddDays(3), Start.AddDays(12), Start.AddDays(12)], days.Select(day => day.At));
        Assert.Equal(plan.Steps.Sum(step => step.Minutes ?? 0), (days[0].Until!.Value - Start).TotalMinutes, 1e-3);
        Assert.Equal("Add to the fermenter: 500 g Buckwheat honey.", days[1].Sentence);
        Assert.Contains(days[1].Cautions, caution => caution.Contains("headspace", StringComparison.Ordinal));
        Assert.Equal("Package (bottle): 113 g white sugar.", days[3].Sentence);
        Assert.Contains(days[3].Cautions, caution => caution.Contains("stood still for three days", StringComparison.Ordinal));
    }

    [Fact]
    public void Fermentation_counts_from_the_pitch_where_somebody_said_when()
    {
        IReadOnlyList<GyleDay> days = GyleDays.Of(BrewStepsTests.Frozen("apricot-cardamom-wheat", "lantern-shed").Plan!, Start, Start.AddHours(7));
        Assert.Equal(Start, days[0].At);
        Assert.Equal(("ferment-day-5", Start.AddHours(7).AddDays(5)), (days[1].Key, days[1].At));
        Assert.Equal("Add to the fermenter: 1.6 kg Apricot purée (fruit).", days[1].Sentence);
        Assert.Equal(Start.AddHours(7).AddDays(14), days[^1].At);
    }

    [Fact]
    public void Each_rest_ends_when_those_before_it_have()
    {
        GylePlan plan = BrewStepsTests.Frozen("plain-bitter", "lantern-shed").Plan!;
        string two = System.Text.RegularExpressions.Regex.Replace(plan.Recipe, "\"ferment\": \\[[^\\]]*\\]", """ "ferment": [ { "temperature": "18 °C", "time": "10 d" }, { "temperature": "2 °C", "time": "36 h" } ] """);
        IReadOnlyList<GyleDay> days = GyleDays.Of(plan with { Recipe = two }, Start, null);
        Assert.Equal([("rest-1-ends", 10.0), ("rest-2-ends", 11.5), ("package", 11.5)], days.Skip(1).Select(day => (day.Key, day.AfterPitch!.Value)));
        Assert.Equal("10 d at 18 °C are over, then 2 °C", days[1].Title);
    }

    [Fact]
    public void A_plan_whose_files_no_program_can_read_has_its_brew_day() =>
        Assert.Equal("brew-day", Assert.Single(GyleDays.Of(BrewStepsTests.Frozen("plain-bitter", "lantern-shed").Plan! with { Kit = "{}" }, Start, null)).Key);
}
