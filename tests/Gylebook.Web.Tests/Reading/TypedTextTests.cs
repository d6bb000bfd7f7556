using Gylebook.Pictures;
using Gylebook.Science.Quantities;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Tests.Reading;

/// <summary>Between what stands in a field and what stands in a document.</summary>
public sealed class TypedTextTests
{
    private static readonly ReaderUnits Comma = ReaderUnits.Metric with { DecimalSign = DecimalSign.Comma };
    private static readonly ReaderUnits Plato = ReaderUnits.Metric with { Gravity = GravityUnit.Plato };

    [Theory]
    [InlineData("5", "56 g", "5 g")]
    [InlineData("5", "4.2 kg", "5 kg")]
    [InlineData("5", null, "5 kg")]
    [InlineData("5", "9 lb", "5 kg")]
    public void A_bare_mass_takes_the_unit_it_had_or_the_readers_own(string typed, string? before, string kept)
    {
        Assert.True(TypedText.TryRead(typed, before, ReaderUnits.Metric, out Entered<Mass> mass, out _));
        Assert.Equal(kept, mass.Text);
    }

    [Fact]
    public void A_share_without_its_sign_is_per_cent_where_per_cent_stood()
    {
        Assert.True(TypedText.TryRead("0.9", "0.5 %", ReaderUnits.Metric, out Entered<Fraction> share, out _));
        Assert.Equal(0.009, share.Value.Ratio, 12);
    }

    [Fact]
    public void A_gravity_is_known_by_its_figures_whatever_stood_there()
    {
        Assert.True(TypedText.TryRead("1.050", "12 °P", Plato, out Entered<SpecificGravity> gravity, out _));
        Assert.Equal(("1.050", 1.050), (gravity.Text, gravity.Value.Canonical));
        Assert.True(TypedText.TryRead("12", "12.5 °P", Plato, out Entered<SpecificGravity> plato, out _));
        Assert.Equal("12 °P", plato.Text);
    }

    [Fact]
    public void Three_figures_after_a_comma_are_asked_about_unless_the_reader_writes_commas()
    {
        Assert.False(TypedText.TryRead("1,068 kg", null, ReaderUnits.Metric, out Entered<Mass> _, out string problem));
        Assert.Contains("comma", problem, StringComparison.Ordinal);
        Assert.True(TypedText.TryRead("1,068 kg", null, Comma, out Entered<Mass> mass, out _));
        Assert.Equal(1.068, mass.Value.Kilograms, 12);

        // What is kept must be readable by itself, wherever the file goes.
        Assert.True(UnitTable.TryParse(mass.Text, out Entered<Mass> again, out _));
        Assert.Equal(mass.Value, again.Value);
    }

    // Definitions: pound 0.45359237 kg, ounce 1/16 lb, US gallon 3.785411784 L, °F = 1.8 °C + 32; 7.9 EBC / (25/12.7) = 4.013 SRM.
    [Fact]
    public void Other_units_are_shown_converted()
    {
        Assert.Equal("1.975 oz", TypedText.Show(Typed<Mass>("56 g"), ReaderUnits.UnitedStates));
        Assert.Equal("5.283 US gal", TypedText.Show(Typed<VolumeAt20C>("20 L"), ReaderUnits.UnitedStates));
        Assert.Equal("150.8 °F", TypedText.Show(Typed<Temperature>("66 °C"), ReaderUnits.UnitedStates));
        Assert.Equal("4.013 SRM", TypedText.Show(Typed<BeerColour>("7.9 EBC"), ReaderUnits.Metric));
        Assert.Equal("9,259 lb", TypedText.Show(Typed<Mass>("4.2 kg"), ReaderUnits.UnitedStates with { DecimalSign = DecimalSign.Comma }));
    }

    [Theory]
    [InlineData("10 gal", "10 US gal")]
    [InlineData("1.5 Gallons", "1.5 US gal")]
    [InlineData("3qt", "3 US qt")]
    [InlineData("1 pt", "1 US pt")]
    [InlineData("8 fl oz", "8 US fl oz")]
    [InlineData("10 imp gal", "10 imp gal")]
    [InlineData("20 L", "20 L")]
    public void A_gallon_is_the_readers_own(string typed, string kept)
    {
        Assert.True(TypedText.TryRead(typed, null, ReaderUnits.UnitedStates, out Entered<VolumeAt20C> volume, out _));
        Assert.Equal(kept, volume.Text);
    }

    [Fact]
    public void A_reader_of_litres_is_asked_whose_gallon_it_is()
    {
        Assert.False(TypedText.TryRead("10 gal", null, ReaderUnits.Metric, out Entered<VolumeAt20C> _, out string problem));
        Assert.Contains("US gal", problem, StringComparison.Ordinal);
        Assert.True(TypedText.TryRead("10 gal", null, ReaderUnits.Metric with { Volume = VolumeUnit.ImperialGallon }, out Entered<VolumeAt20C> imperial, out _));
        Assert.Equal("10 imp gal", imperial.Text);
        Assert.Equal("2 US qt", Gylebook.Web.Widgets.Fields.FieldText.Amount.Keep("2 qt", null, ReaderUnits.UnitedStates));
        Assert.Equal("2 qt", Gylebook.Web.Widgets.Fields.FieldText.Amount.Keep("2 qt", null, ReaderUnits.Metric));
    }

    [Theory]
    [InlineData("4.20 KG")]
    [InlineData("500 g")]
    public void Ones_own_units_are_shown_as_typed(string text) =>
        Assert.Equal(text, TypedText.Show(Typed<Mass>(text), ReaderUnits.Metric));

    private static Entered<T> Typed<T>(string text)
        where T : struct, IQuantity<T> =>
        UnitTable.TryParse(text, out Entered<T> entered, out string problem) ? entered : throw new ArgumentException(problem, nameof(text));
}
