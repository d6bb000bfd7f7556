using Gylebook.Gyles.Cellar;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Gyles.Tests.Cellar;

/// <summary>"Finished?": the same reading on two to three days and at the limit, which is common practice; each way in which it is not.</summary>
public sealed class FinishedCheckTests
{
    private static readonly DateTimeOffset Now = new(2026, 12, 4, 18, 0, 0, TimeSpan.Zero);
    private static readonly Quantiles Expected = new(1.012, 1.014, 1.017);

    [Fact]
    public void It_is_finished_where_it_stands_still_at_its_end()
    {
        FinishedAnswer answer = Asked([(3, 1.015), (1, 1.0145), (0, 1.0145)]);
        Assert.Equal(FinishedVerdict.Finished, answer.Verdict);
        Assert.All(answer.Reasons, reason => Assert.True(reason.Holds));
    }

    [Theory]
    [InlineData("1.018 1.016 1.0155", FinishedVerdict.NotYet, "still falls")]
    [InlineData("1.020 1.020 1.020", FinishedVerdict.Stuck, "six points above its likely end")]
    [InlineData("1.0165 1.0165 1.0165", FinishedVerdict.Doubtful, "forced ferment")]
    public void Three_days_tell(string days, FinishedVerdict verdict, string because)
    {
        double[] read = [.. days.Split(' ').Select(day => double.Parse(day, System.Globalization.CultureInfo.InvariantCulture))];
        FinishedAnswer answer = Asked([.. read.Select((gravity, day) => (read.Length - 1.0 - day, gravity))]);
        Assert.Equal(verdict, answer.Verdict);
        Assert.Contains(because.Replace("six", "6", StringComparison.Ordinal), answer.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void One_reading_or_none_tells_nothing()
    {
        Assert.Equal(FinishedVerdict.NotRead, Asked([]).Verdict);
        Assert.Equal(FinishedVerdict.NotYet, Asked([(0, 1.014)]).Verdict);
        Assert.Equal(FinishedVerdict.NotYet, Asked([(0.6, 1.014), (0, 1.014)]).Verdict);
    }

    [Fact]
    public void A_forced_ferment_has_the_last_word()
    {
        Assert.Equal(FinishedVerdict.Finished, Asked([(2, 1.019), (0, 1.019)], forced: 1.018).Verdict);
        Assert.Equal(FinishedVerdict.Stuck, Asked([(2, 1.016), (0, 1.016)], forced: 1.010).Verdict);
    }

    [Fact]
    public void What_is_sweet_has_to_go_in_and_to_be_gone()
    {
        FermenterAddition planned = new("500 g honey", Now.AddDays(-6), null), late = planned with { Done = Now.AddDays(-1) }, gone = planned with { Done = Now.AddDays(-5) };
        Assert.Equal(FinishedVerdict.NotYet, Asked([(3, 1.014), (0, 1.014)], additions: planned).Verdict);
        Assert.Equal(FinishedVerdict.NotYet, Asked([(3, 1.014), (0, 1.014)], additions: late).Verdict);
        Assert.Equal(FinishedVerdict.Finished, Asked([(3, 1.014), (0, 1.014)], additions: gone).Verdict);
    }

    [Fact]
    public void A_cold_yeast_may_only_sleep()
    {
        Assert.Equal(FinishedVerdict.NotYet, Asked([(3, 1.014), (0, 1.014)], celsius: 12).Verdict);
        Assert.Equal(FinishedVerdict.Finished, Asked([(3, 1.014), (0, 1.014)], celsius: 18).Verdict);
    }

    [Fact]
    public void Far_below_its_end_something_else_is_at_work()
    {
        FinishedAnswer answer = Asked([(3, 1.006), (0, 1.006)]);
        Assert.Equal(FinishedVerdict.Doubtful, answer.Verdict);
        Assert.Contains(answer.Reasons, reason => !reason.Holds && reason.Text.Contains("something else", StringComparison.Ordinal));
    }

    [Fact]
    public void A_float_that_falls_is_believed_beside_a_hydrometer_that_does_not()
    {
        IEnumerable<CellarPoint> floating = Enumerable.Range(0, 73).Select(hour => new CellarPoint(Now.AddHours(-72 + hour), CellarSource.Device, "float") { GravitySg = 1.020 - (0.00005 * hour) + (hour % 2 * 0.0008), GravitySd = 0.001 });
        CellarPoint[] hand = [.. Points([(3, 1.015), (0, 1.015)])];
        Assert.True(Stillness.Of(hand)[0].IsStill);
        IReadOnlyList<Stillness> both = Stillness.Of([.. hand, .. floating]);
        Assert.Equal(FinishedVerdict.NotYet, FinishedCheck.Of(new FinishedQuestion { Read = both, Expected = Expected, Now = Now }).Verdict);
    }

    private static FinishedAnswer Asked((double DaysAgo, double Gravity)[] read, double? forced = null, double? celsius = null, params FermenterAddition[] additions) =>
        FinishedCheck.Of(new FinishedQuestion { Read = Stillness.Of(Points(read)), Expected = Expected, Forced = forced, Additions = additions, Celsius = celsius, PlannedCelsius = 19, Now = Now });

    private static IEnumerable<CellarPoint> Points((double DaysAgo, double Gravity)[] read) =>
        read.Select(one => new CellarPoint(Now.AddDays(-one.DaysAgo), CellarSource.Hand, "hydrometer") { GravitySg = one.Gravity, GravitySd = 0.001 });
}
