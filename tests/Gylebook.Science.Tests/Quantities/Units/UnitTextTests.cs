using Gylebook.Science.Quantities;

namespace Gylebook.Science.Tests.Quantities.Units;

/// <summary>From typed text to quantity and back, and every refusal.</summary>
public sealed class UnitTextTests
{
    [Theory]
    [InlineData("4.2 kg", 4.2)]
    [InlineData("4,2 kg", 4.2)]
    [InlineData("4.2kg", 4.2)]
    [InlineData("  4.2   KG ", 4.2)]
    [InlineData("4200 g", 4.2)]
    [InlineData(".5 kg", 0.5)]
    [InlineData("0,125 kg", 0.125)]
    [InlineData("1e2 g", 0.1)]
    [InlineData("1 lb", 0.45359237)]
    [InlineData("16 oz", 0.45359237)]
    [InlineData("2 pounds", 0.90718474)]
    [InlineData("4.2\u00a0kg", 4.2)]
    public void A_mass_is_read_as_people_type_it(string text, double kilograms)
    {
        Mass mass = Read<Mass>(text);
        Assert.Equal(kilograms, mass.Kilograms, 1e-15 * kilograms * 4);
    }

    [Fact]
    public void The_text_is_kept_as_it_was_typed()
    {
        Assert.True(UnitTable.TryParse("4,20 KG", out Entered<Mass> entered, out string problem), problem);
        Assert.Equal("4,20 KG", entered.Text);
    }

    [Theory]
    [InlineData("1.068")]
    [InlineData("1,068")]
    [InlineData("1.068 SG")]
    [InlineData("1.068 sg")]
    public void A_bare_number_near_one_is_a_gravity(string text)
    {
        Assert.Equal(1.068, Read<SpecificGravity>(text).Ratio, 1e-15);
        // ASBC Table 1 by its cubic fit: 1.068 gives 16.60 °P; the table prints two decimals here.
        Assert.Equal(16.60, Read<ApparentExtract>(text).Plato, 0.005);
    }

    [Theory]
    [InlineData("66 °C", 66)]
    [InlineData("66 C", 66)]
    [InlineData("66°c", 66)]
    [InlineData("66 ° C", 66)]
    [InlineData("66 ºC", 66)]
    [InlineData("150.8 F", 66)]
    [InlineData("\u22125 °C", -5)]
    [InlineData("339.15 K", 66)]
    public void A_temperature_is_read_on_any_scale(string text, double celsius) =>
        Assert.Equal(celsius, Read<Temperature>(text).Celsius, 1e-12);

    [Fact]
    public void A_share_may_be_bare_or_in_percent()
    {
        Assert.Equal(0.25, Read<Fraction>("25 %").Ratio);
        Assert.Equal(0.25, Read<Fraction>("0.25").Ratio);
        Assert.Equal("25 %", UnitTable.Format(Fraction.FromRatio(0.25), "%"));
        Assert.Equal("0.25", UnitTable.Format(Fraction.FromRatio(0.25), "1"));
    }

    [Theory]
    [InlineData("12 bananas", "12 bananas: a mass is written with kg, g, mg, lb, oz, t.")]
    [InlineData("12", "12: the unit is missing; a mass is written with kg, g, mg, lb, oz, t.")]
    [InlineData("12 psi", "12 psi: psi measures a gauge pressure or an absolute pressure; a mass is written with kg, g, mg, lb, oz, t.")]
    [InlineData("-5 kg", "-5 kg: a mass is from 0 kg to 1000000 kg.")]
    [InlineData("2e6 kg", "2e6 kg: a mass is from 0 kg to 1000000 kg.")]
    [InlineData("1,068 kg", "1,068 kg: the comma could be a decimal comma or group thousands; write 1.068 or 1068.")]
    [InlineData("12 gal", "12 gal: gal measures a volume; a mass is written with kg, g, mg, lb, oz, t.")]
    [InlineData("", "Nothing entered: a mass is a number with kg, g, mg, lb, oz, t.")]
    [InlineData(null, "Nothing entered: a mass is a number with kg, g, mg, lb, oz, t.")]
    public void Invalid_masses_are_refused_in_plain_words(string? text, string expected)
    {
        Assert.False(UnitTable.TryParse(text, out Entered<Mass> _, out string problem));
        Assert.Equal(expected, problem);
    }

    [Theory]
    [InlineData("NaN kg")]
    [InlineData("∞ kg")]
    [InlineData("Infinity kg")]
    [InlineData("1e999 kg")]
    [InlineData("-1e999 kg")]
    [InlineData("1,234.5 kg")]
    [InlineData("1.234,5 kg")]
    [InlineData("1 234 kg")]
    [InlineData("1'234 kg")]
    [InlineData("1,234,567 g")]
    [InlineData("kg")]
    [InlineData("kg 5")]
    [InlineData("5 Mg")]
    [InlineData("--5 kg")]
    [InlineData("5 lb 4 oz")]
    [InlineData("٣ kg")]
    public void Invalid_numbers_are_refused(string text)
    {
        Assert.False(UnitTable.TryParse(text, out Entered<Mass> entered, out string problem));
        Assert.StartsWith(text, problem, StringComparison.Ordinal);
        Assert.Equal(default, entered);
    }

    [Fact]
    public void Invalid_length_is_refused_without_repeating_it_all()
    {
        Assert.False(UnitTable.TryParse(new string('9', 5000) + " kg", out Entered<Mass> _, out string problem));
        Assert.True(problem.Length < 200, problem);
    }

    [Theory]
    [InlineData("5 gal", "5 gal: gal could be US gal or imp gal; write 5 US gal or 5 imp gal.")]
    [InlineData("5 quarts", "5 quarts: quarts could be US qt or imp qt; write 5 US qt or 5 imp qt.")]
    [InlineData("5 pt", "5 pt: pt could be US pt or imp pt; write 5 US pt or 5 imp pt.")]
    [InlineData("5 fl oz", "5 fl oz: fl oz could be US fl oz or imp fl oz; write 5 US fl oz or 5 imp fl oz.")]
    [InlineData("5 BBL", "5 BBL: BBL could be US bbl or imp bbl; write 5 US bbl or 5 imp bbl.")]
    public void Invalid_bare_gallons_and_their_kin_name_both(string text, string expected)
    {
        Assert.False(UnitTable.TryParse(text, out Entered<VolumeAt20C> _, out string cold));
        Assert.False(UnitTable.TryParse(text, out Entered<HotVolume> _, out string hot));
        Assert.Equal(expected, cold);
        Assert.Equal(expected, hot);
    }

    [Fact]
    public void Invalid_bare_gravity_says_what_a_bare_number_may_be()
    {
        Assert.False(UnitTable.TryParse("12", out Entered<SpecificGravity> _, out string problem));
        Assert.Equal("12: without a unit, a gravity is from 0.9 to 1.2; otherwise write it with SG, °P, Brix.", problem);
    }

    [Fact]
    public void Invalid_gravity_beyond_the_tables_names_their_range()
    {
        Assert.False(UnitTable.TryParse("80 Brix", out Entered<SpecificGravity> _, out string problem));
        Assert.Contains("0.95 to 1.18 SG", problem, StringComparison.Ordinal);
        // On its own scale a syrup is fine.
        Assert.Equal(80, Read<ApparentExtract>("80 Brix").Plato);
        Assert.Equal(1.4, Read<SpecificGravity>("1.4 SG").Ratio, 1e-15);
    }

    [Fact]
    public void A_gauge_does_not_take_an_absolute_reading()
    {
        Assert.False(UnitTable.TryParse("30 psia", out Entered<GaugePressure> _, out string problem));
        Assert.StartsWith("30 psia: psia measures an absolute pressure; a gauge pressure is written with", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1234567.0, "1234570")]
    [InlineData(0.00001234567, "0.0000123457")]
    [InlineData(-0.0, "0")]
    [InlineData(1.0500000001, "1.05")]
    [InlineData(0.1 + 0.2, "0.3")]
    public void Digits_are_stable_and_trimmed(double number, string expected) => Assert.Equal(expected, UnitTable.Digits(number));

    [Fact]
    public void An_unknown_unit_to_write_in_is_a_programmers_mistake() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => UnitTable.Format(Mass.FromKilograms(1), "bananas"));

    private static T Read<T>(string text)
        where T : struct, IQuantity<T>
    {
        Assert.True(UnitTable.TryParse(text, out Entered<T> entered, out string problem), problem);
        return entered.Value;
    }
}
