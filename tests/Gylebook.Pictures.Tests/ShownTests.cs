using Gylebook.Engine.Readouts;

namespace Gylebook.Pictures.Tests;

/// <summary>Each quantity in each unit, against the units' own definitions.</summary>
public sealed class ShownTests
{
    private static readonly Shown Metric = new(ReaderUnits.Metric);
    private static readonly Shown American = new(ReaderUnits.UnitedStates);

    // US gallon: 231 cubic inches of 2.54 cm, 3.785411784 L. Imperial gallon: 4.54609 L (UK Units of Measurement Regulations 1995).
    [Theory]
    [InlineData(VolumeUnit.Litre, 20, "20.0 L")]
    [InlineData(VolumeUnit.Litre, 0.8, "0.80 L")]
    [InlineData(VolumeUnit.UsGallon, 18.92705892, "5.00 US gal")]
    [InlineData(VolumeUnit.ImperialGallon, 22.73045, "5.00 imp gal")]
    public void Volumes(VolumeUnit unit, double litres, string expected) =>
        Assert.Equal(Hard(expected), new Shown(new(Volume: unit)).Litres(litres));

    // Pound: 0.45359237 kg exactly; ounce: a sixteenth of it (agreement of 1959).
    [Theory]
    [InlineData(MassUnit.Kilogram, 3.6, "3.60 kg")]
    [InlineData(MassUnit.Kilogram, 0.056, "56 g")]
    [InlineData(MassUnit.Kilogram, 0.001, "1.0 g")]
    [InlineData(MassUnit.Pound, 4.5359237, "10.00 lb")]
    [InlineData(MassUnit.Pound, 0.028349523125, "1.00 oz")]
    public void Masses(MassUnit unit, double kilograms, string expected) =>
        Assert.Equal(Hard(expected), new Shown(new(Mass: unit)).Kilograms(kilograms));

    // Fixed points of the two scales: 0 °C is 32 °F and 100 °C is 212 °F.
    [Theory]
    [InlineData(0, "0 °C", "32 °F")]
    [InlineData(100, "100 °C", "212 °F")]
    [InlineData(69.9, "69.9 °C", "158 °F")]
    public void Temperatures(double celsius, string metric, string american)
    {
        Assert.Equal(Hard(metric), Metric.Celsius(celsius));
        Assert.Equal(Hard(american), American.Celsius(celsius));
    }

    // Water is 0 °P by definition. 12 °P is 1.0484: Plato's table, from memory.
    [Theory]
    [InlineData(1.0, "1.000", "0.0 °P")]
    [InlineData(1.04838, "1.048", "12.0 °P")]
    public void Gravities(double gravity, string ratio, string plato)
    {
        Assert.Equal(ratio, Metric.Gravity(gravity));
        Assert.Equal(Hard(plato), new Shown(new(Gravity: GravityUnit.Plato)).Gravity(gravity));
    }

    // SRM is 12.7 times, EBC 25 times the same absorbance (ASBC Beer-10A, EBC 9.6).
    [Theory]
    [InlineData(12.7, "13 SRM", "25 EBC")]
    [InlineData(3.4, "3.4 SRM", "7 EBC")]
    public void Colours(double srm, string first, string second)
    {
        Assert.Equal(Hard(first), Metric.Srm(srm));
        Assert.Equal(Hard(second), new Shown(new(Colour: ColourUnit.Ebc)).Srm(srm));
    }

    [Fact]
    public void The_decimal_sign_is_the_reader_s_in_every_quantity()
    {
        Shown comma = new(new(DecimalSign: DecimalSign.Comma));
        Assert.All(
            [comma.Litres(1.5), comma.Kilograms(1.5), comma.Celsius(66.5), comma.Gravity(1.05), comma.Srm(3.4), comma.Percent(5.8), comma.Volumes(2.3)],
            text =>
            {
                Assert.Contains(',', text);
                Assert.DoesNotContain('.', text);
            });
    }

    [Fact]
    public void A_band_shows_its_ends_only_when_it_has_some()
    {
        Assert.Equal(Hard("20.0 L"), Metric.Litres(Band.Point(20, "L at 20 °C")));
        Assert.Equal(Hard("20.0 L") + " (19.5 to 20.6)", Metric.Litres(new Band(19.5, 20, 20.6, "L at 20 °C", BandKind.Quantiles)));
    }

    [Fact]
    public void What_is_not_a_number_is_a_dash_and_nothing_is_less_than_zero_by_rounding()
    {
        Assert.Equal("–", Metric.Litres(double.NaN));
        Assert.Equal("–", American.Celsius(double.PositiveInfinity));
        Assert.Equal(Hard("0.00 L"), Metric.Litres(-1e-9));
    }

    private static string Hard(string text) => text.Replace(" ", Shown.Space, StringComparison.Ordinal).Replace($"US{Shown.Space}gal", "US gal", StringComparison.Ordinal).Replace($"imp{Shown.Space}gal", "imp gal", StringComparison.Ordinal);
}
