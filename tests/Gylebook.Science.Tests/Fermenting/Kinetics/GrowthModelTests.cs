using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Fermenting.Kinetics;

public class GrowthModelTests
{
    private const double HalfOfThirdDecimal = 0.0005, HalfOfSecondDecimal = 0.005;

    // Computed elsewhere from the same constants: fourth-order Runge-Kutta, steps of 0.05 h, crowding counted, 70/220/40/125.
    // A check of the typing: no printed course was within reach. Three decimals for sugars, two for yeast and ethanol.
    [Theory]
    [InlineData(10.5, 24, 29.871, 198.634, 37.769, 137.00, 171.95)]
    [InlineData(10.5, 48, 0.001, 172.816, 35.020, 149.01, 344.27)]
    [InlineData(10.5, 72, 0, 146.693, 32.151, 157.15, 461.11)]
    [InlineData(10.5, 120, 0, 100.690, 26.727, 171.60, 669.01)]
    [InlineData(10.5, 168, 0, 64.931, 21.869, 183.05, 834.30)]
    [InlineData(10.5, 240, 0, 30.510, 15.838, 194.57, 1001.22)]
    [InlineData(12, 24, 19.277, 192.910, 36.988, 140.26, 218.76)]
    [InlineData(12, 48, 0, 160.485, 33.323, 152.99, 401.40)]
    [InlineData(12, 72, 0, 129.746, 29.732, 162.65, 540.12)]
    [InlineData(12, 120, 0, 78.499, 23.188, 178.92, 774.60)]
    [InlineData(12, 168, 0, 43.182, 17.695, 190.48, 941.86)]
    [InlineData(12, 240, 0, 15.480, 11.494, 200.26, 1083.95)]
    public void Known_rows_of_two_temperatures(
        double celsius, double hours, double glucose, double maltose, double maltotriose, double yeast, double ethanol)
    {
        SugarsAndYeast there = At(celsius, hours);
        Near.Equal(glucose, there.Glucose, HalfOfThirdDecimal);
        Near.Equal(maltose, there.Maltose, HalfOfThirdDecimal);
        Near.Equal(maltotriose, there.Maltotriose, HalfOfThirdDecimal);
        Near.Equal(yeast, there.Yeast, HalfOfSecondDecimal);
        Near.Equal(ethanol, there.Ethanol, HalfOfSecondDecimal);
    }

    // The same run's alcohol at 12 °C, per cent by volume, three decimals.
    [Theory]
    [InlineData(24, 1.277)]
    [InlineData(48, 2.344)]
    [InlineData(72, 3.154)]
    [InlineData(120, 4.523)]
    [InlineData(168, 5.500)]
    [InlineData(240, 6.329)]
    public void Known_alcohol(double hours, double percent) => Near.Equal(percent, At(12, hours).AlcoholByVolume, HalfOfThirdDecimal);

    // As above, ethanol alone.
    [Theory]
    [InlineData(24, 361.25)]
    [InlineData(48, 597.26)]
    [InlineData(72, 795.23)]
    [InlineData(96, 944.00)]
    [InlineData(120, 1044.59)]
    [InlineData(168, 1145.19)]
    [InlineData(240, 1190.28)]
    public void Known_ethanol_at_sixteen_degrees(double hours, double ethanol) =>
        Near.Equal(ethanol, At(16, hours).Ethanol, HalfOfSecondDecimal);

    // The set fitted at 10.5 °C, from 125/220/50/125; the same hours and hand.
    [Theory]
    [InlineData(24, 92.54)]
    [InlineData(48, 198.99)]
    [InlineData(72, 380.36)]
    [InlineData(96, 710.73)]
    [InlineData(120, 1040.50)]
    [InlineData(168, 1360.28)]
    [InlineData(240, 1372.78)]
    public void Known_ethanol_of_the_set_of_one_temperature(double hours, double ethanol) =>
        Near.Equal(ethanol, OfOneTemperature(hours).Ethanol, HalfOfSecondDecimal);

    [Fact]
    public void Known_yeast_of_the_set_of_one_temperature() => Near.Equal(220.02, OfOneTemperature(240).Yeast, HalfOfSecondDecimal);

    // Constants by the same hand, as many digits as written down.
    [Fact]
    public void Known_constants_at_twelve_degrees()
    {
        UptakeConstants c = UptakeConstants.At(12);
        Near.Equal(0.01628, c.Glucose, 5e-6);
        Near.Equal(0.02890, c.Maltose, 5e-6);
        Near.Equal(0.12913, c.Maltotriose, 5e-6);
        Near.Equal(0.79816, c.HalfGlucose, 5e-6);
        Near.Equal(370.579, c.HalfMaltose, 5e-4);
        Near.Equal(4197.36, c.HalfMaltotriose, 5e-3);
        Near.Equal(205.956, c.GlucoseRepresses, 5e-4);
        Near.Equal(9820.28, c.MaltoseRepresses, 5e-3);
    }

    // As above at 10.5 °C, where the papers fitted 0.01348, 0.02581 and 0.09881 alone: the two sets are not one.
    [Fact]
    public void Known_constants_at_ten_and_a_half()
    {
        UptakeConstants c = UptakeConstants.At(10.5);
        Near.Equal(0.01319, c.Glucose, 5e-6);
        Near.Equal(0.02601, c.Maltose, 5e-6);
        Near.Equal(0.12078, c.Maltotriose, 5e-6);
        Near.Equal(1.5141, c.HalfGlucose, 5e-5);
        Near.Equal(423.887, c.HalfMaltose, 5e-4);
        Near.Equal(5054.04, c.HalfMaltotriose, 5e-3);
        Near.Equal(187.253, c.GlucoseRepresses, 5e-4);
        Near.Equal(7682.79, c.MaltoseRepresses, 5e-3);
    }

    // The other printed logarithm of K_M, −19.15: 674.58 on the fifth day at 12 °C, computed elsewhere.
    [Fact]
    public void Known_the_other_maltose_constant()
    {
        UptakeConstants c = UptakeConstants.At(12);
        double ethanol = Course(SugarsAndYeast.OfThePapers, c with { HalfMaltose = c.HalfMaltose * Math.Exp(0.35) }, true, [120])[0].Ethanol;
        Near.Equal(674.58, ethanol, HalfOfSecondDecimal);
    }

    /// <summary>What goes in comes out, whatever the steps: ethanol by its yields, and without crowding yeast by its own. Nothing but rounding is left.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(12)]
    [InlineData(16)]
    public void Balance_yeast_grown_is_what_the_sugar_gives(double celsius)
    {
        SugarsAndYeast start = SugarsAndYeast.OfThePapers;
        foreach (SugarsAndYeast now in Course(start, UptakeConstants.At(celsius), false, [10, 50, 100, 400]))
        {
            (double g, double m, double n) = (start.Glucose - now.Glucose, start.Maltose - now.Maltose, start.Maltotriose - now.Maltotriose);
            Assert.Equal((0.134 * g) + (0.268 * m) + (0.402 * n), now.Yeast - start.Yeast, 1e-10);
            Assert.Equal((1.92 * g) + (3.84 * m) + (5.76 * n), now.Ethanol, 1e-10);
        }
    }

    // All sugar gone: 1.92·70 + 3.84·220 + 5.76·40 = 1209.6 mol/m³, 7.063 % by volume.
    [Fact]
    public void Limits_the_end_is_all_the_sugar()
    {
        SugarsAndYeast end = At(16, 4000);
        Assert.Equal(1209.6, end.Ethanol, 1e-6);
        Near.Equal(7.063, end.AlcoholByVolume, HalfOfThirdDecimal);
    }

    [Fact]
    public void Limits_no_yeast_and_no_sugar_do_nothing()
    {
        SugarsAndYeast idle = SugarsAndYeast.OfThePapers with { Yeast = 0 };
        Assert.Equal(idle, Course(idle, UptakeConstants.At(12), true, [1000])[0]);
        SugarsAndYeast bare = new(0, 0, 0, 125, 0);
        Assert.Equal(bare, Course(bare, UptakeConstants.At(12), true, [1000])[0]);
    }

    /// <summary>Against another method on equations written anew: Gauss and Legendre's three stages, sixth order, implicit, steps of 0.01 h.</summary>
    [Theory]
    [InlineData(10.5, true)]
    [InlineData(12, true)]
    [InlineData(16, true)]
    [InlineData(12, false)]
    public void Convergence_another_integrator_agrees_to_a_millionth(double celsius, bool isCrowded)
    {
        double[] hours = [6, 24, 48, 96, 168];
        SugarsAndYeast[] course = Course(SugarsAndYeast.OfThePapers, UptakeConstants.At(celsius), isCrowded, hours);
        Agree(hours, course, _ => celsius, isCrowded);
    }

    [Fact]
    public void Convergence_it_agrees_while_the_temperature_changes()
    {
        double[] hours = [6, 24, 48, 96, 168];
        SugarsAndYeast[] course = new SugarsAndYeast[hours.Length];
        GrowthModel.Follow(SugarsAndYeast.OfThePapers, TemperatureCourse.Of([(0, 9), (48, 12), (96, 16)]), true, hours, course);
        Agree(hours, course, hour => hour < 48 ? 9 + (3 * hour / 48) : hour < 96 ? 12 + (4 * (hour - 48) / 48) : 16, true);
    }

    [Fact]
    public void Limits_a_course_of_one_temperature_is_that_temperature()
    {
        SugarsAndYeast[] level = new SugarsAndYeast[1], straight = new SugarsAndYeast[1];
        GrowthModel.Follow(SugarsAndYeast.OfThePapers, TemperatureCourse.Constant(12), true, [100], level);
        GrowthModel.Follow(SugarsAndYeast.OfThePapers, TemperatureCourse.Of([(0, 12), (60, 12)]), true, [100], straight);
        Assert.Equal(At(12, 100), level[0]);
        Assert.Equal(level[0].Ethanol, straight[0].Ethanol, 1e-9);
    }

    [Fact]
    public void Monotone_warmer_is_faster()
    {
        double before = 0;
        for (double celsius = 6; celsius <= 24; celsius += 2)
        {
            double ethanol = At(celsius, 72).Ethanol;
            Assert.True(ethanol > before);
            before = ethanol;
        }
    }

    [Fact]
    public void Range_it_says_where_the_fit_ends()
    {
        Assert.True(UptakeConstants.IsWithinPublishedRange(8) && UptakeConstants.IsWithinPublishedRange(16));
        Assert.False(UptakeConstants.IsWithinPublishedRange(7.9) || UptakeConstants.IsWithinPublishedRange(16.1));
    }

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => UptakeConstants.At(51));
        Assert.Throws<ArgumentOutOfRangeException>(() => Course(new(-1, 0, 0, 1, 0), UptakeConstants.At(12), true, [1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Course(SugarsAndYeast.OfThePapers, UptakeConstants.At(12), true, [5, 4]));
        Assert.Throws<ArgumentOutOfRangeException>(() => TemperatureCourse.Of([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => TemperatureCourse.Of([(0, 12), (0, 13)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => TemperatureCourse.Of([(0, 60)]));
    }

    [Theory]
    [InlineData(-1, 10)]
    [InlineData(0, 10)]
    [InlineData(5, 15)]
    [InlineData(10, 20)]
    [InlineData(15, 15)]
    [InlineData(99, 10)]
    public void Known_temperatures_between_those_told(double hour, double celsius) =>
        Assert.Equal(celsius, TemperatureCourse.Of([(0, 10), (10, 20), (20, 10)]).CelsiusAt(hour), 1e-12);

    private static SugarsAndYeast At(double celsius, double hours) =>
        Course(SugarsAndYeast.OfThePapers, UptakeConstants.At(celsius), true, [hours])[0];

    private static SugarsAndYeast OfOneTemperature(double hours) =>
        Course(new(125, 220, 50, 125, 0), UptakeConstants.FittedAt10Point5, true, [hours])[0];

    private static SugarsAndYeast[] Course(SugarsAndYeast start, UptakeConstants constants, bool isCrowded, double[] hours)
    {
        SugarsAndYeast[] course = new SugarsAndYeast[hours.Length];
        GrowthModel.Follow(start, constants, isCrowded, hours, course);
        return course;
    }

    private static void Agree(double[] hours, SugarsAndYeast[] course, Func<double, double> celsius, bool isCrowded)
    {
        double[][] other = GaussLegendre.Follow((hour, y) => Written(hour, y, celsius, isCrowded), [70, 220, 40, 125, 0], 0.01, hours);
        for (int i = 0; i < hours.Length; i++)
        {
            double[] ours = [course[i].Glucose, course[i].Maltose, course[i].Maltotriose, course[i].Yeast, course[i].Ethanol];
            Assert.All(ours.Zip(other[i]), pair => Assert.Equal(pair.Second, pair.First, 1e-6));
        }
    }

    /// <summary>The equations, written from the page and not from the code.</summary>
    internal static double[] Written(double hour, double[] y, Func<double, double> celsius, bool isCrowded)
    {
        double kelvins = celsius(hour) + 273.15;
        double P(double lnA, double ea) => Math.Exp(lnA - (ea / (0.001987 * kelvins)));
        double mu1 = P(35.77, 22.6) * y[0] / (P(-121.3, -68.6) + y[0]);
        double repressed = P(23.33, 10.2) / (P(23.33, 10.2) + y[0]);
        double mu2 = P(16.40, 11.3) * y[1] / (P(-19.5, -14.4) + y[1]) * repressed;
        double mu3 = P(10.59, 7.16) * y[2] / (P(-26.78, -19.9) + y[2]) * repressed * P(55.61, 26.3) / (P(55.61, 26.3) + y[1]);
        double growth = (0.134 * mu1) + (0.268 * mu2) + (0.402 * mu3);
        double crowded = isCrowded ? 3.65e5 / (3.65e5 + ((y[3] - 125) * (y[3] - 125))) : 1;
        return [-mu1 * y[3], -mu2 * y[3], -mu3 * y[3], growth * crowded * y[3], ((1.92 * mu1) + (3.84 * mu2) + (5.76 * mu3)) * y[3]];
    }
}
