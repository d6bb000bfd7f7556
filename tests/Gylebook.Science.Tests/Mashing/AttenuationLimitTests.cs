using CsCheck;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;

namespace Gylebook.Science.Tests.Mashing;

public class AttenuationLimitTests
{
    // One study, 65 to 80 °C, whole per cents; the figure for 62 °C and below is from memory. The table is read, not
    // fitted: exact.
    [Theory]
    [InlineData(62, 85)]
    [InlineData(65, 82)]
    [InlineData(70, 70)]
    [InlineData(75, 50)]
    [InlineData(80, 30)]
    public void The_table_is_met(double celsius, double percent) =>
        Assert.Equal(percent, AttenuationLimit.ApparentPercentAt(celsius), tolerance: 1e-12);

    // The same study gives its slopes: 2.4 % a degree from 65 to 70, 4 above; one decimal.
    [Theory]
    [InlineData(67, 2.4)]
    [InlineData(72, 4)]
    [InlineData(77, 4)]
    public void The_slopes_are_the_printed_ones(double celsius, double percentPerKelvin) =>
        Assert.Equal(percentPerKelvin, AttenuationLimit.ApparentPercentAt(celsius) - AttenuationLimit.ApparentPercentAt(celsius + 1), tolerance: 0.05);

    [Theory]
    [InlineData(20)]
    [InlineData(55)]
    [InlineData(61.9)]
    public void Cooler_than_the_table_it_stays_at_its_first_figure(double celsius) =>
        Assert.Equal(85, AttenuationLimit.ApparentPercentAt(celsius));

    [Fact]
    public void Hotter_than_the_table_the_last_line_goes_on_down_to_nothing()
    {
        Assert.Equal(26, AttenuationLimit.ApparentPercentAt(81), tolerance: 1e-12);
        Assert.Equal(0, AttenuationLimit.ApparentPercentAt(88));
        Assert.Equal(0, AttenuationLimit.ApparentPercentAt(100));
    }

    [Fact]
    public void A_hotter_mash_never_ferments_further() =>
        Gen.Select(Gen.Double[20, 100], Gen.Double[0, 5]).Sample((celsius, more) =>
            Assert.True(AttenuationLimit.ApparentPercentAt(celsius + more) <= AttenuationLimit.ApparentPercentAt(celsius)));

    [Fact]
    public void It_has_no_jumps() =>
        Gen.Double[40, 99].Sample(celsius => Assert.Equal(
            AttenuationLimit.ApparentPercentAt(celsius), AttenuationLimit.ApparentPercentAt(celsius + 1e-6), tolerance: 4.1e-6));

    [Fact]
    public void Typed_quantities_give_the_same() =>
        Assert.Equal(82, AttenuationLimit.At(Temperature.FromCelsius(65)).Percent, tolerance: 1e-12);

    [Fact]
    public void It_allocates_nothing()
    {
        double sum = AttenuationLimit.ApparentPercentAt(66);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            sum += AttenuationLimit.ApparentPercentAt(60 + (i * 0.02));
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
    [InlineData(double.NaN)]
    [InlineData(500)]
    public void What_has_no_meaning_is_refused(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AttenuationLimit.ApparentPercentAt(celsius));
}
