using CsCheck;
using Gylebook.Science.Mashing;

namespace Gylebook.Science.Tests.Mashing;

public class GelatinisationTests
{
    // Institute of Brewing, Malting, Wort Production and Fermentation, pp. 50-51; whole degrees, so the printed span must
    // lie within ours, which joins all sources.
    [Theory]
    [InlineData(Cereal.Maize, 70, 75)]
    [InlineData(Cereal.Sorghum, 70, 75)]
    [InlineData(Cereal.Rice, 68, 75)]
    [InlineData(Cereal.Wheat, 52, 54)]
    [InlineData(Cereal.Barley, 61, 62)]
    [InlineData(Cereal.Potato, 56, 69)]
    // Briggs et al. 2004 and Kunze, from memory.
    [InlineData(Cereal.Barley, 60, 65)]
    [InlineData(Cereal.Wheat, 58, 64)]
    [InlineData(Cereal.Rye, 55, 70)]
    [InlineData(Cereal.Oats, 53, 60)]
    [InlineData(Cereal.Rice, 68, 80)]
    [InlineData(Cereal.Buckwheat, 63, 70)]
    [InlineData(Cereal.Millet, 66, 75)]
    [InlineData(Cereal.Quinoa, 57, 68)]
    public void Every_printed_span_lies_within_ours(Cereal cereal, double low, double high)
    {
        var (from, to) = Gelatinisation.SpanCelsius(cereal);
        Assert.True(from <= low);
        Assert.True(to >= high);
    }

    // Both ends of every joined span are somebody's printed figure: no source makes it wider than this.
    [Theory]
    [InlineData(Cereal.Barley, 60, 65)]
    [InlineData(Cereal.Wheat, 52, 64)]
    [InlineData(Cereal.Rye, 55, 70)]
    [InlineData(Cereal.Oats, 53, 60)]
    [InlineData(Cereal.Rice, 68, 80)]
    [InlineData(Cereal.Maize, 70, 75)]
    [InlineData(Cereal.Sorghum, 70, 75)]
    [InlineData(Cereal.Millet, 66, 75)]
    [InlineData(Cereal.Buckwheat, 63, 70)]
    [InlineData(Cereal.Quinoa, 57, 68)]
    [InlineData(Cereal.Potato, 56, 69)]
    public void A_joined_span_is_no_wider_than_its_sources(Cereal cereal, double low, double high)
    {
        var (from, to) = Gelatinisation.SpanCelsius(cereal);
        Assert.Equal(low, from);
        Assert.Equal(high, to);
    }

    [Fact]
    public void Barley_opens_in_an_ordinary_mash_and_rice_does_not()
    {
        Assert.True(Gelatinisation.IsOpenAt(Cereal.Barley, 66));
        Assert.False(Gelatinisation.IsOpenAt(Cereal.Rice, 66));
        Assert.False(Gelatinisation.BeginsToOpenAt(Cereal.Maize, 66));
    }

    [Fact]
    public void What_is_open_has_begun_and_stays_open() =>
        Gen.Select(Gen.Enum<Cereal>(), Gen.Double[20, 100], Gen.Double[0, 20]).Sample((cereal, celsius, more) =>
        {
            if (Gelatinisation.IsOpenAt(cereal, celsius))
            {
                Assert.True(Gelatinisation.BeginsToOpenAt(cereal, celsius));
                Assert.True(Gelatinisation.IsOpenAt(cereal, celsius + more));
            }
        });

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Gelatinisation.IsOpenAt(Cereal.Barley, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gelatinisation.IsOpenAt((Cereal)99, 66));
    }
}
