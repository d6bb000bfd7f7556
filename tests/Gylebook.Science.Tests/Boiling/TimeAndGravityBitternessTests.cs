using CsCheck;
using Gylebook.Science.Boiling;

namespace Gylebook.Science.Tests.Boiling;

public class TimeAndGravityBitternessTests
{
    private static readonly double[] Gravities = [1.030, 1.040, 1.050, 1.060, 1.070, 1.080, 1.090, 1.100, 1.110, 1.120, 1.130];

    // Tinseth 1997, table of utilisation against minutes and gravity: three decimals, so half of the last one.
    [Theory]
    [InlineData(0, new[] { 0.0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 })]
    [InlineData(3, new[] { .034, .031, .029, .026, .024, .022, .020, .018, .017, .015, .014 })]
    [InlineData(15, new[] { .137, .125, .114, .105, .096, .087, .080, .073, .067, .061, .056 })]
    [InlineData(30, new[] { .212, .194, .177, .162, .148, .135, .124, .113, .103, .094, .086 })]
    [InlineData(60, new[] { .276, .252, .231, .211, .193, .176, .161, .147, .135, .123, .112 })]
    [InlineData(90, new[] { .295, .270, .247, .226, .206, .188, .172, .157, .144, .132, .120 })]
    public void Utilisation_is_the_published_table(double minutes, double[] printed)
    {
        for (int i = 0; i < Gravities.Length; i++)
        {
            Assert.Equal(printed[i], TimeAndGravityBitterness.Utilisation(minutes, Gravities[i]), tolerance: 0.0005);
        }
    }

    // Worked example of the home-brewing literature: 5 US gal, boiled at 1.080. Printed in whole IBU.
    [Theory]
    [InlineData(1.5, 6.4, 60, 25)]
    [InlineData(1.0, 4.6, 15, 6)]
    public void A_printed_example_comes_out(double ounces, double alphaPercent, double minutes, double ibu)
    {
        double utilisation = TimeAndGravityBitterness.Utilisation(minutes, 1.080);
        double grams = ounces * 28.349523125;
        double litres = 5 * 3.785411784;
        // The example multiplies by 75, the exact factor is 74.89: 0.15 % more. Half of the last digit besides.
        Assert.Equal(ibu, TimeAndGravityBitterness.Ibu(utilisation, grams, alphaPercent / 100, litres), tolerance: 0.5 + (0.0015 * ibu));
    }

    // The same literature interpolates its table by straight lines: 30 min at 1.057 is 0.166.
    [Fact]
    public void A_value_between_two_printed_gravities_comes_out() =>
        Assert.Equal(0.166, TimeAndGravityBitterness.Utilisation(30, 1.057), tolerance: 0.001); // two rounded neighbours

    // Computed by hand from the equation (formula check), two decimals.
    [Theory]
    [InlineData(28, .10, 60, 1.050, 20, 32.29)]
    [InlineData(50, .12, 10, 1.050, 20, 25.09)]
    [InlineData(40, .055, 15, 1.048, 20, 12.82)]
    [InlineData(42.52, .064, 60, 1.080, 18.927, 25.33)]
    public void Whole_additions_come_out(double grams, double alpha, double minutes, double gravity, double litres, double ibu) =>
        Assert.Equal(ibu, TimeAndGravityBitterness.Ibu(TimeAndGravityBitterness.Utilisation(minutes, gravity), grams, alpha, litres), tolerance: 0.005);

    // Tinseth 1997 prints 7490 for ounces and US gallons.
    [Fact]
    public void The_factor_of_ounces_and_gallons_is_the_printed_one() =>
        Assert.Equal(7490, TimeAndGravityBitterness.Ibu(1, 28.349523125, 1, 3.785411784), tolerance: 5); // a round ten

    [Fact]
    public void Longer_boils_give_more_and_stronger_worts_less() =>
        Gen.Select(Gen.Double[0, 119], Gen.Double[1.030, 1.129], Gen.Double[0.01, 1]).Sample((minutes, gravity, step) =>
        {
            double here = TimeAndGravityBitterness.Utilisation(minutes, gravity);
            Assert.True(TimeAndGravityBitterness.Utilisation(minutes + step, gravity) > here);
            Assert.True(here == 0 || TimeAndGravityBitterness.Utilisation(minutes, gravity + (step / 1000)) < here);
            Assert.InRange(here, 0, 0.35);
        });

    [Fact]
    public void Two_halves_of_an_addition_are_as_bitter_as_the_whole() =>
        Gen.Select(Gen.Double[0, 500], Gen.Double[0, 1], Gen.Double[0, 120]).Sample((grams, share, minutes) =>
        {
            double u = TimeAndGravityBitterness.Utilisation(minutes, 1.05);
            double whole = TimeAndGravityBitterness.Ibu(u, grams, 0.1, 20);
            double parts = TimeAndGravityBitterness.Ibu(u, grams * share, 0.1, 20) + TimeAndGravityBitterness.Ibu(u, grams * (1 - share), 0.1, 20);
            Assert.Equal(whole, parts, tolerance: 1e-12 * (1 + whole));
        });

    [Theory]
    [InlineData(0, 1.030, true)]
    [InlineData(120, 1.130, true)]
    [InlineData(121, 1.050, false)]
    [InlineData(60, 1.029, false)]
    [InlineData(60, 1.131, false)]
    [InlineData(double.NaN, 1.050, false)]
    public void It_says_where_the_table_ends(double minutes, double gravity, bool within) =>
        Assert.Equal(within, TimeAndGravityBitterness.IsWithinPublishedRange(minutes, gravity));

    [Theory]
    [InlineData(-1, 1.05)]
    [InlineData(double.NaN, 1.05)]
    [InlineData(double.PositiveInfinity, 1.05)]
    [InlineData(60, double.NaN)]
    [InlineData(60, 50)]
    public void What_has_no_meaning_is_refused(double minutes, double gravity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeAndGravityBitterness.Utilisation(minutes, gravity));

    [Fact]
    public void No_beer_has_no_bitterness() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeAndGravityBitterness.Ibu(0.2, 28, 0.1, 0));
}
