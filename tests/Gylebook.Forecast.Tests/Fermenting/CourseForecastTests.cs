using Gylebook.Forecast.Fermenting;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Tests.Fermenting;

public sealed class CourseForecastTests(ITestOutputHelper output)
{
    private const int Draws = 300, Fermentations = 240;
    private const double Point = 0.001;

    /// <summary>
    /// 240 fermentations on curves that are not ours, 80 on de Andrés-Toro's model and 160 asymmetric logistics, read for 48 hours, every other one by
    /// hydrometer each half day, the rest by a sensor each hour. Wanted beforehand: done within a day in 80 %, the end in the 90 % band in 85 to
    /// 95 %. With 240, the latter passes an honest band in 99 % of runs. What came out stands in docs/science/fermentation-course.md.
    /// </summary>
    [Fact]
    public void Foreign_fermentations_end_on_the_day_and_in_the_band()
    {
        int onTheDay = 0, ended = 0;
        List<string> told = [];
        for (int number = 0; number < Fermentations; number++)
        {
            SyntheticFermentation truth = SyntheticFermentation.Of("foreign", number);
            bool isSensor = number % 2 == 0;
            (double offset, double scatter) = isSensor ? (0.0015, 0.0010) : (0.0007, 0.0009);
            IEnumerable<double> hours = Enumerable.Range(0, isSensor ? 49 : 5).Select(i => i * (isSensor ? 1.0 : 12.0));
            CoursePrior prior = truth.Prior("foreign", Draws, offset);
            CourseFan fan = CourseForecast.Of(prior, truth.Read("foreign", hours, offset, scatter), [], "foreign");
            double done = truth.DoneHours(prior.Within);
            bool isOnTheDay = Math.Abs(fan.DoneHours.Middle - done) <= 24, isEnded = truth.End >= fan.End.Low && truth.End <= fan.End.High;
            onTheDay += isOnTheDay ? 1 : 0;
            ended += isEnded ? 1 : 0;
            told.Add(Invariant($"{truth.Kind} {(isSensor ? "sensor" : "hydrometer")} {isOnTheDay} {isEnded} {done >= fan.DoneHours.Low && done <= fan.DoneHours.High}"));
        }

        foreach (IGrouping<string, string> kind in told.GroupBy(line => line).OrderBy(kind => kind.Key, StringComparer.Ordinal))
        {
            output.WriteLine(Invariant($"{kind.Key}: {kind.Count()}"));
        }

        Assert.InRange(onTheDay / (double)Fermentations, 0.80, 1);
        Assert.InRange(ended / (double)Fermentations, 0.85, 0.95);
    }

    [Fact]
    public void Without_readings_the_fan_is_what_was_known()
    {
        SyntheticFermentation truth = SyntheticFermentation.Of("alone", 1);
        CoursePrior prior = truth.Prior("alone", Draws, 0);
        CourseFan fan = CourseForecast.Of(prior, [], [0, 2000], "alone");
        Assert.Equal(Quantiles.Of([.. prior.EndGravities]), fan.End);
        Assert.Equal(Quantiles.Of([.. prior.StartGravities]), fan.Gravities[0]);
        Assert.Empty(fan.Off);
        Assert.InRange(fan.DoneShare, 0.8, 1);
        Assert.False(fan.IsWithinPublishedRange);
    }

    [Fact]
    public void Readings_narrow_the_fan_and_more_of_them_more()
    {
        SyntheticFermentation truth = SyntheticFermentation.Of("narrow", 1);
        CoursePrior prior = truth.Prior("narrow", Draws, 0.0007);
        double Width(params double[] hours) => CourseForecast.Of(prior, truth.Read("narrow", hours, 0.0007, 0.0009), [], "narrow").DoneHours.Width;
        double before = Width(), day = Width(0, 12, 24), days = Width(0, 12, 24, 36, 48, 60);
        Assert.True(day < before && days < day, Invariant($"{before} {day} {days}"));
    }

    /// <summary>Read to the end, the end is known as well as the instrument is: half a point, and the band holds the truth.</summary>
    [Fact]
    public void Read_to_the_end_it_is_at_the_end()
    {
        SyntheticFermentation truth = SyntheticFermentation.Of("whole", 1);
        double[] hours = [.. Enumerable.Range(0, 16).Select(i => i * 12.0)];
        CourseFan fan = CourseForecast.Of(truth.Prior("whole", Draws, 0), truth.Read("whole", hours, 0, 0.0005), hours, "whole");
        Assert.InRange(truth.End, fan.End.Low, fan.End.High);
        Assert.InRange(fan.End.Width / Point, 0, 2);
        Assert.InRange(fan.Gravities[^1].Width, 0, 2 * Point);
    }

    /// <summary>One reading twenty points off among ten moves the middle of what is done by less than a tenth of a day's band.</summary>
    [Fact]
    public void One_wild_reading_is_told_and_moves_little()
    {
        SyntheticFermentation truth = SyntheticFermentation.Of("wild", 1);
        CoursePrior prior = truth.Prior("wild", Draws, 0);
        CourseReading[] sound = truth.Read("wild", Enumerable.Range(0, 10).Select(i => i * 6.0), 0, 0.0009);
        CourseReading[] wild = [.. sound.Select((reading, i) => i == 5 ? reading with { Gravity = reading.Gravity + 0.020 } : reading)];
        CourseFan without = CourseForecast.Of(prior, sound, [54], "wild"), with = CourseForecast.Of(prior, wild, [54], "wild");
        Assert.True(with.Off[5] > 5, string.Join(' ', with.Off.Select(off => Invariant($"{off:0.0}"))));
        Assert.Equal(without.Gravities[0].Middle, with.Gravities[0].Middle, 1.5 * Point);
        Assert.Equal(without.DoneHours.Middle, with.DoneHours.Middle, 12.0);
    }

    [Fact]
    public void The_order_of_readings_is_no_matter_and_the_same_seed_gives_the_same()
    {
        SyntheticFermentation truth = SyntheticFermentation.Of("order", 2);
        CoursePrior prior = truth.Prior("order", Draws, 0);
        CourseReading[] readings = truth.Read("order", [0, 10, 20, 30], 0, 0.001);
        CourseFan one = CourseForecast.Of(prior, readings, [50, 100], "order");
        CourseFan other = CourseForecast.Of(prior, [.. readings.Reverse()], [50, 100], "order");
        Assert.Equal(one.Gravities, other.Gravities);
        Assert.Equal(one.DoneHours, other.DoneHours);
        Assert.Equal(one.Off, other.Off.Reverse());
    }

    /// <summary>A fall that no yeast makes, forty points in a few hours after three days of nothing, is laid on a plain curve, and said.</summary>
    [Fact]
    public void What_the_family_cannot_follow_is_laid_on_a_plain_curve()
    {
        SyntheticFermentation truth = new("cliff", 20, 1.050, 1.010, hours => 1 / (1 + Math.Exp(1.5 * (hours - 72))));
        CoursePrior prior = truth.Prior("cliff", Draws, 0) with { InstrumentOffset = 0 };
        CourseReading[] readings = truth.Read("cliff", [.. Enumerable.Range(0, 25).Select(i => 60.0 + i)], 0, 0.0002);
        CourseFan fan = CourseForecast.Of(prior, readings, [72, 200], "cliff");
        Assert.True(fan.IsLogistic, string.Join(' ', fan.Off.Select(off => Invariant($"{off:0.0}"))));
        Assert.Equal(1.010, fan.Gravities[1].Middle, Point);
        Assert.Equal(truth.DoneHours(prior.Within), fan.DoneHours.Middle, 3.0);
    }

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        CoursePrior prior = SyntheticFermentation.Of("bad", 1).Prior("bad", Draws, 0);
        Assert.Throws<ArgumentOutOfRangeException>(() => CourseForecast.Of(prior with { EndGravities = [1.01] }, [], [], "bad"));
        Assert.Throws<ArgumentOutOfRangeException>(() => CourseForecast.Of(prior, [new(-1, 1.05, 0.001)], [], "bad"));
        Assert.Throws<ArgumentOutOfRangeException>(() => CourseForecast.Of(prior, [new(1, 105, 0.001)], [], "bad"));
        Assert.Throws<ArgumentOutOfRangeException>(() => CourseForecast.Of(prior, [new(1, 1.05, 0)], [], "bad"));
    }
}
