using CsCheck;
using Gylebook.Science.Mashing;

namespace Gylebook.Science.Tests.Mashing;

public class AttenuationLimitTests
{
    /// <summary>Where the starting value lies: decision 0020.</summary>
    private const double HalfWay = 0.5;

    // One study, 65 to 80 °C, un-mixed; 62 °C and below from memory. The table is read, not fitted: exact. That the study's own grist
    // makes its printed row with it is held where there are grists.
    [Theory]
    [InlineData(62, 88.6)]
    [InlineData(65, 85.3)]
    [InlineData(70, 72)]
    [InlineData(75, 50)]
    [InlineData(80, 27.5)]
    public void The_study_is_met(double celsius, double percent) =>
        Assert.Equal(percent, AttenuationLimit.ApparentPercentAt(celsius, towardsPlateau: 0), tolerance: 1e-12);

    // The second series, from memory: flat between 85 and 88 % from 63 to 67 °C, then 4 % a degree.
    [Theory]
    [InlineData(63, 86.5)]
    [InlineData(67, 86.5)]
    [InlineData(68, 82.5)]
    [InlineData(75, 54.5)]
    public void The_plateau_is_met(double celsius, double percent) =>
        Assert.Equal(percent, AttenuationLimit.ApparentPercentAt(celsius, towardsPlateau: 1), tolerance: 1e-12);

    [Fact]
    public void At_65_half_way_is_the_middle_of_what_is_printed() =>
        Assert.Equal((85.3 + 86.5) / 2, AttenuationLimit.ApparentPercentAt(65, HalfWay), tolerance: 1e-12);

    [Fact]
    public void Half_way_is_the_middle_of_the_two() => Gen.Double[40, 85].Sample(celsius => Assert.Equal(
        (AttenuationLimit.ApparentPercentAt(celsius, 0) + AttenuationLimit.ApparentPercentAt(celsius, 1)) / 2,
        AttenuationLimit.ApparentPercentAt(celsius, HalfWay), tolerance: 1e-12));

    [Theory]
    [InlineData(20)]
    [InlineData(55)]
    [InlineData(61.9)]
    public void Cooler_than_the_tables_it_stays_at_their_first_figures(double celsius) =>
        Assert.Equal((88.6 + 86.5) / 2, AttenuationLimit.ApparentPercentAt(celsius, HalfWay), tolerance: 1e-12);

    [Fact]
    public void Hotter_than_the_tables_the_last_lines_go_on_down_to_nothing()
    {
        Assert.Equal(27.5 - 4.5, AttenuationLimit.ApparentPercentAt(81, 0), tolerance: 1e-12);
        Assert.Equal(54.5 - (6 * 4), AttenuationLimit.ApparentPercentAt(81, 1), tolerance: 1e-12);
        Assert.Equal(0, AttenuationLimit.ApparentPercentAt(90, HalfWay));
        Assert.Equal(0, AttenuationLimit.ApparentPercentAt(100, HalfWay));
    }

    [Fact]
    public void A_hotter_mash_never_ferments_further() =>
        Gen.Select(Gen.Double[20, 100], Gen.Double[0, 5], Gen.Double[0, 1]).Sample((celsius, more, towards) =>
            Assert.True(AttenuationLimit.ApparentPercentAt(celsius + more, towards) <= AttenuationLimit.ApparentPercentAt(celsius, towards)));

    [Fact]
    public void It_has_no_jumps() =>
        Gen.Double[40, 99].Sample(celsius => Assert.Equal(
            AttenuationLimit.ApparentPercentAt(celsius, HalfWay), AttenuationLimit.ApparentPercentAt(celsius + 1e-6, HalfWay), tolerance: 4.6e-6));

    [Fact]
    public void It_allocates_nothing()
    {
        double sum = AttenuationLimit.ApparentPercentAt(66, HalfWay);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            sum += AttenuationLimit.ApparentPercentAt(60 + (i * 0.02), HalfWay);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    [Theory]
    [InlineData(64.9, false)]
    [InlineData(65, true)]
    [InlineData(80, true)]
    [InlineData(80.1, false)]
    public void It_says_where_the_study_ends(double celsius, bool within) =>
        Assert.Equal(within, AttenuationLimit.IsWithinPublishedRange(celsius));

    [Theory]
    [InlineData(double.NaN, 0.5)]
    [InlineData(500, 0.5)]
    [InlineData(65, -0.1)]
    [InlineData(65, 1.1)]
    public void What_has_no_meaning_is_refused(double celsius, double towards) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AttenuationLimit.ApparentPercentAt(celsius, towards));
}
