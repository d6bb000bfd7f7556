using CsCheck;
using Gylebook.Science.Boiling;

namespace Gylebook.Science.Tests.Boiling;

public class WortAppearanceTests
{
    // CIE 15: the white of D65 for the 2° observer. Our table begins at 380 nm; the standard's four steps below that
    // carry 0.004 of X and 0.017 of Z, so nearer than 0.02 it need not be.
    [Fact]
    public void Clear_water_is_the_published_white_of_daylight()
    {
        Assert.Equal(95.047, WortAppearance.White.X, tolerance: 0.02);
        Assert.Equal(100, WortAppearance.White.Y, tolerance: 1e-9);
        Assert.Equal(108.883, WortAppearance.White.Z, tolerance: 0.02);
        Assert.Equal("#FFFFFF", WortAppearance.In(0, 5).Hex);
        Assert.True(WortAppearance.In(0, 5).InGamut);
    }

    // deLange 2016, the mean spectrum at round wavelengths (formula check), five decimals.
    [Theory]
    [InlineData(430, 1)]
    [InlineData(500, .41634)]
    [InlineData(550, .22626)]
    [InlineData(600, .12307)]
    [InlineData(650, .06694)]
    [InlineData(700, .03642)]
    public void The_spectrum_falls_from_blue_to_red(double nanometres, double share) =>
        Assert.Equal(share, WortAppearance.RelativeAbsorbance(nanometres), tolerance: 0.000005);

    // The same spectrum through the CIE sum in another program (formula check): three, two and two decimals.
    [Theory]
    [InlineData(2, 64.191, 66.664, 29.787, 85.33, 1.90, 44.88, "#F4D180", "#FDF6DF")]
    [InlineData(3, 55.126, 55.242, 16.353, 79.18, 6.72, 57.79, "#EEBD55", "#FCF1D1")]
    [InlineData(4, 48.039, 46.149, 9.242, 73.64, 11.90, 66.66, "#E7AA31", "#FBECC3")]
    [InlineData(5, 42.253, 38.830, 5.368, 68.63, 16.83, 72.58, "#E09A03", "#FAE8B6")]
    [InlineData(6, 37.393, 32.882, 3.198, 64.07, 21.27, 76.33, "#D98A00", "#F9E3AA")]
    [InlineData(8, 29.643, 23.981, 1.220, 56.07, 28.44, 79.51, "#C97000", "#F7DA94")]
    [InlineData(10, 23.760, 17.834, 0.508, 49.29, 33.54, 77.73, "#BA5B00", "#F4D180")]
    [InlineData(12, 19.201, 13.486, 0.229, 43.49, 36.98, 71.70, "#AC4900", "#F2C96D")]
    [InlineData(15, 14.125, 9.107, 0.079, 36.19, 39.89, 61.27, "#993400", "#EEBD55")]
    [InlineData(20, 8.708, 5.015, 0.018, 26.78, 41.02, 45.91, "#7D1900", "#E7AA31")]
    [InlineData(25, 5.528, 2.923, 0.006, 19.73, 39.71, 33.94, "#660400", "#E09A03")]
    [InlineData(30, 3.598, 1.781, 0.002, 14.29, 37.33, 24.61, "#540000", "#D98A00")]
    [InlineData(40, 1.622, 0.731, 0.000, 6.60, 31.32, 11.37, "#390000", "#C97000")]
    public void Five_and_one_centimetres_look_as_computed_elsewhere(
        double srm, double x, double y, double z, double lightness, double a, double b, string thick, string thin)
    {
        var seen = WortAppearance.In(srm, 5);
        Assert.Equal(x, seen.Tristimulus.X, tolerance: 0.0005);
        Assert.Equal(y, seen.Tristimulus.Y, tolerance: 0.0005);
        Assert.Equal(z, seen.Tristimulus.Z, tolerance: 0.0005);
        var lab = seen.Tristimulus.ToCielab(WortAppearance.White);
        Assert.Equal(lightness, lab.Lightness, tolerance: 0.005);
        Assert.Equal(a, lab.RedOverGreen, tolerance: 0.005);
        Assert.Equal(b, lab.YellowOverBlue, tolerance: 0.005);
        Assert.Equal(thick, seen.Hex);
        Assert.Equal(thin, WortAppearance.In(srm, 1).Hex);
    }

    // Same table: in 5 cm everything from 6 SRM on is outside what a screen shows, and up to 5 is inside.
    [Theory]
    [InlineData(2, true)]
    [InlineData(5, true)]
    [InlineData(6, false)]
    [InlineData(40, false)]
    public void It_says_when_a_screen_cannot_show_it(double srm, bool inGamut) =>
        Assert.Equal(inGamut, WortAppearance.In(srm, 5).InGamut);

    [Fact]
    public void Only_colour_times_thickness_matters() =>
        Gen.Select(Gen.Double[0.1, 60], Gen.Double[0.5, 10]).Sample((srm, centimetres) =>
        {
            var one = WortAppearance.In(srm, centimetres).Tristimulus;
            var other = WortAppearance.In(srm * centimetres, 1).Tristimulus;
            Assert.Equal(one.X, other.X, tolerance: 1e-9);
            Assert.Equal(one.Y, other.Y, tolerance: 1e-9);
            Assert.Equal(one.Z, other.Z, tolerance: 1e-9);
        });

    [Fact]
    public void Darker_beer_lets_less_light_through() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[0.1, 5]).Sample((srm, more) =>
            Assert.True(WortAppearance.In(srm + more, 5).Tristimulus.Y < WortAppearance.In(srm, 5).Tristimulus.Y));

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WortAppearance.In(-1, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => WortAppearance.In(5, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => WortAppearance.RelativeAbsorbance(379));
    }
}
