using CsCheck;
using Gylebook.Engine.Parameters;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Forecast.Tests.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Mashing;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>Several rests make one limit of attenuation: each by how much beta-amylase does in it (decisions 0013 and 0020).</summary>
public sealed class SeveralRestsTests
{
    private static readonly Recipe Bitter = Bitters.With(Bitters.Hop(20, AdditionPoint.Boil, 60));

    [Fact]
    public void Known_one_rest_is_the_tables_own_row() => Gen.Double[60, 80].Sample(
        celsius => Near.Equal(HalfWay(celsius), Limit(Typed.Rest(celsius, 60)), 1e-12));

    [Fact]
    public void Known_after_half_an_hour_at_63_a_long_rest_at_72_does_not_matter() =>
        Near.Equal(HalfWay(63), Limit(Typed.Rest(63, 30), Typed.Rest(72, 40)), 1e-9);

    // By hand, with k(65 °C) = 0.069/min and Ea 410.7 kJ/mol: k(63) = 0.0289. A minute there is 0.986 minutes' worth of work, half an hour 20.1: 4.9 %
    // of the wort is made at 63 °C, the rest at 72. So one minute is worth 1.1 points; by minutes of work alone it was worth 12.
    [Fact]
    public void Known_one_minute_at_63_before_an_hour_at_72_is_worth_what_it_does() => Near.Equal(
        (0.049 * HalfWay(63)) + (0.951 * HalfWay(72)),
        Limit(Typed.Rest(63, 1), Typed.Rest(72, 60)), 0.05);

    [Fact]
    public void Balance_a_rest_written_in_two_parts_is_the_same_rest() => Gen.Select(Gen.Double[60, 75], Gen.Double[1, 40], Gen.Double[1, 40], Gen.Double[60, 75]).Sample(
        (celsius, first, second, then) => Near.Equal(
            Limit(Typed.Rest(celsius, first + second), Typed.Rest(then, 60)),
            Limit(Typed.Rest(celsius, first), Typed.Rest(celsius, second), Typed.Rest(then, 60)), 1e-9));

    [Fact]
    public void Limits_a_mash_that_starts_hot_stays_what_it_was()
    {
        Near.Equal(HalfWay(72), Limit(Typed.Rest(72, 30), Typed.Rest(62, 60)), 0.01);
        Near.Equal(HalfWay(66), Limit(Typed.Rest(66, 60), Typed.Rest(76, 10)), 0.05);
    }

    [Fact]
    public void Limits_a_rest_below_opening_starch_sets_nothing() =>
        Near.Equal(Limit(Typed.Rest(66, 60)), Limit(Typed.Rest(52, 30), Typed.Rest(66, 60)), 1e-9);

    [Fact]
    public void Limits_where_no_work_is_done_the_warmest_rest_speaks()
    {
        Near.Equal((88.6 + 86.5) / 2, Limit(Typed.Rest(50, 60)), 1e-12);
        Near.Equal(HalfWay(66), Limit(Typed.Rest(66, 0)), 1e-12);
    }

    [Fact]
    public void Range_it_never_leaves_the_rows_it_is_made_of() =>
        Gen.Select(Gen.Double[60, 80], Gen.Double[1, 60], Gen.Double[60, 80], Gen.Double[1, 60]).Sample((first, time, second, other) =>
        {
            double[] rows = [HalfWay(first), HalfWay(second)];
            Assert.InRange(Limit(Typed.Rest(first, time), Typed.Rest(second, other)), rows.Min() - 1e-9, rows.Max() + 1e-9);
        });

    [Theory]
    [InlineData(62, 30, true)]
    [InlineData(62, 60, false)]
    [InlineData(66, 30, false)]
    [InlineData(66, 8, true)]
    [InlineData(62, 90, false)]
    public void A_rest_too_short_for_the_tables_limit_is_a_caution_and_no_changed_limit(double celsius, double minutes, bool told)
    {
        BrewForecast forecast = (Bitter with { Mash = Bitter.Mash! with { Rests = [Typed.Rest(celsius, minutes)] } }).Forecast();
        Assert.Equal(told, forecast.Cautions.Any(c => c.Code == "mash.shortRest"));
        Near.Equal(Limit(Typed.Rest(celsius, 60)), Limit(Typed.Rest(celsius, minutes)), 1e-12);
    }

    // 62 °C: k = 0.069 e^(−49399 (1/335.15 − 1/338.15)) = 0.01867; half an hour does (1 − e^(−0.560))/(1 − e^(−1.120)) = 63.6 % of an hour.
    [Fact]
    public void The_caution_says_how_much() => Assert.Contains(
        "about 64 % of what it does in an hour at 62 °C",
        (Bitter with { Mash = Bitter.Mash! with { Rests = [Typed.Rest(62, 30)] } }).Forecast().Cautions.Single(c => c.Code == "mash.shortRest").Message,
        StringComparison.Ordinal);

    [Fact]
    public void Each_rest_tells_what_is_left_of_both_amylases()
    {
        MashSchedule schedule = (Bitter with { Mash = Bitter.Mash! with { Rests = [Typed.Rest(63, 30), Typed.Rest(72, 20)] } }).Forecast().MashSchedule!;
        Near.Equal(EnzymeLife.BetaLeft(Math.Exp(-30 * EnzymeLife.BetaPerMinute(63))), schedule.Rests[0].BetaLeft, 1e-12);
        Near.Equal(schedule.Rests[0].AlphaLeft * Math.Exp(-20 * EnzymeLife.AlphaPerMinute(72)), schedule.Rests[1].AlphaLeft, 1e-12);
        Assert.True(schedule.Rests[1].BetaLeft is >= EnzymeLife.ToughShareOfBeta and < EnzymeLife.ToughShareOfBeta + 1e-6 && schedule.Rests[1].AlphaLeft > 0.2);
    }

    private static double Limit(params Rest[] rests)
    {
        BrewPlan planned = BrewPlanner.Plan(Bitter with { Mash = Bitter.Mash! with { Rests = rests } }, Bitters.AtTheSea, RandomBrews.Foods);
        return planned.Plan!.Medians[(int)Known.LimitOfAttenuation];
    }

    /// <summary>Where the two series of the limit start from: decision 0020.</summary>
    private static double HalfWay(double celsius) => AttenuationLimit.ApparentPercentAt(celsius, towardsPlateau: 0.5);
}
