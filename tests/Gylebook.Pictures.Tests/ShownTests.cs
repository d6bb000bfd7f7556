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
    [InlineData(VolumeUnit.UsGallon, 0.52, "17.6 US fl oz")]
    [InlineData(VolumeUnit.UsGallon, 1.892705892, "2.00 US qt")]
    [InlineData(VolumeUnit.ImperialGallon, 0.284130625, "10.0 imp fl oz")]
    [InlineData(VolumeUnit.UsGallon, 0, "0.00 US gal")]
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

    // Pound and gallon as above; psi: 6.894757 kPa (pound-force on a square inch); foot: 0.3048 m; inch: 2.54 cm.
    [Theory]
    [InlineData("The bag weighs about 9.7 kg wet.", "The bag weighs about 21 lb wet.")]
    [InlineData("1.9 bar at 20 °C against the air of 120 m", "28 psi at 68 °F against the air of 394 ft")]
    [InlineData("keep 9.0 L of headspace above 20.9 L", "keep 2.4 US gal of headspace above 5.52 US gal")]
    [InlineData("usually kept at 22 to 32 °C", "usually kept at 72 to 90 °F")]
    [InlineData("69.8 °C", "157.6 °F")]
    [InlineData("In 5 cm of glass", "In 2 in of glass")]
    [InlineData("60 g in 100 g, 24 g/L, 21 mEq/(kg of malt·pH), 2.5 kg/L, 5 000 ppm, 3.5 volumes, 10 mL", "60 g in 100 g, 24 g/L, 21 mEq/(kg of malt·pH), 2.5 kg/L, 5 000 ppm, 3.5 volumes, 10 mL")]
    public void Sentences(string metric, string american)
    {
        Assert.Equal(american, ToldText.Of(metric, ReaderUnits.UnitedStates));
        Assert.Equal(metric, ToldText.Of(metric, ReaderUnits.Metric));
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

    [Theory]
    [InlineData(VolumeUnit.Litre, "0.58 EUR/L")]
    [InlineData(VolumeUnit.UsGallon, "2.18 EUR/US gal")]
    [InlineData(VolumeUnit.ImperialGallon, "2.62 EUR/imp gal")]
    public void What_a_litre_costs_is_told_of_the_readers_volume(VolumeUnit volume, string told)
    {
        // 11.52 EUR over 20 L; NIST Handbook 44, appendix C: 3.785412 and 4.546090 L.
        Assert.Equal(told, new Shown(ReaderUnits.Metric with { Volume = volume }).PerLitre(0.576, "EUR").Replace(Shown.Space, " ", StringComparison.Ordinal));
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

    /// <summary>The space between a number and its unit is hard; those inside a unit's name are not.</summary>
    private static string Hard(string text) => text.IndexOf(' ', StringComparison.Ordinal) is var space && space < 0 ? text : $"{text[..space]}{Shown.Space}{text[(space + 1)..]}";
}
