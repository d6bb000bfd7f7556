using CsCheck;
using Gylebook.Science.Quantities;

namespace Gylebook.Science.Tests.Quantities.Units;

/// <summary>Typed value to any unit of its kind.</summary>
public sealed class UnitConversionTests
{
    [Theory]
    [InlineData("1 lb", "g", "453.592 g")]
    [InlineData("1 US gal", "L", "3.78541 L")]
    [InlineData("1 US bbl", "US gal", "31 US gal")]
    [InlineData("1 imp bbl", "imp gal", "36 imp gal")]
    [InlineData("212 F", "C", "100 °C")]
    [InlineData("1 atm", "psi", "14.6959 psi")]
    [InlineData("1 atm", "kPa", "101.325 kPa")]
    [InlineData("12 P", "Brix", "12 Brix")]
    // ASBC Methods of Analysis, Table 1: 10 °P is 1.04003, 20 °P 1.08297.
    [InlineData("10 P", "SG", "1.04003 SG")]
    [InlineData("20 P", "SG", "1.08297 SG")]
    [InlineData("12.7 SRM", "EBC", "25 EBC")]
    [InlineData("2 vol", "g/L", "3.927 g/L")]
    [InlineData("1 dH", "mg/L CaCO3", "17.848 mg/L CaCO3")]
    [InlineData("1 mEq/L", "fH", "5.0043 fH")]
    [InlineData("250 ppm", "g/L", "0.25 g/L")]
    [InlineData("50 %", "1", "0.5")]
    public void A_value_is_written_with_its_new_unit(string text, string unit, string expected)
    {
        Assert.True(UnitConversion.TryConvert(text, unit, out Conversion? conversion, out string problem), problem);
        Assert.Equal(expected, conversion!.ToString());
    }

    [Theory]
    [InlineData("12 kg", "SG", "12 kg: kg measures a mass; a gravity is written with SG, °P, Brix.")]
    [InlineData("12 kg", "bananas", "bananas: no unit of that name is known here; among those known are kg, L, °C, bar, SG, °P, SRM, % ABV, volumes, mg/L CaCO3.")]
    [InlineData("12 L", "gal", "gal: gal could be US gal or imp gal; write US gal or imp gal.")]
    [InlineData("-300 °C", "K", "-300 °C: a temperature is from -273.15 °C to 2000 °C.")]
    [InlineData("101 % ABW", "% ABV", "101 % ABW: % ABW and % ABV convert from 0 to 100 % only.")]
    [InlineData("", "kg", "Nothing entered: a mass is a number with kg, g, mg, lb, oz, t.")]
    [InlineData("5 kg", "", "Nothing to convert to: name a unit.")]
    public void Invalid_conversions_say_why(string text, string unit, string expected)
    {
        Assert.False(UnitConversion.TryConvert(text, unit, out Conversion? conversion, out string problem));
        Assert.Null(conversion);
        Assert.Equal(expected, problem);
    }

    [Fact]
    public void Every_straight_row_comes_back_as_it_went()
    {
        Unit[] rows = [.. UnitTable.Kinds.SelectMany(kind => kind.Units).Where(unit => unit.Scale is LinearScale)];
        Gen.Select(Gen.Int[0, rows.Length - 1].Select(row => rows[row]), Gen.Double[0, 1000]).Sample((unit, number) =>
        {
            Assert.True(unit.Scale.TryToBase(number, out double inBase));
            Assert.True(unit.Scale.TryFromBase(inBase, out double back));
            // A few roundings at the size of the largest number on the way, 1000 + 459.67.
            Assert.Equal(number, back, 4 * 1.1e-16 * 2000);
        });
    }

    [Fact]
    public void Every_spelling_means_one_unit_of_its_kind()
    {
        foreach (QuantityKind kind in UnitTable.Kinds)
        {
            Assert.All(kind.Units, unit => Assert.All(unit.Spellings.Append(unit.Symbol), word =>
            {
                Assert.Equal(unit, kind.Find(word));
                Assert.Null(kind.FindAmbiguous(word));
            }));
            Assert.All(kind.Ambiguous, twice => Assert.All(twice.Candidates, word => Assert.NotNull(kind.Find(word))));
        }
    }

    [Fact]
    public void What_is_written_can_be_read_again()
    {
        ComesBack<Mass>(0.001, 5000);
        ComesBack<VolumeAt20C>(0.001, 5000);
        ComesBack<HotVolume>(0.001, 5000);
        ComesBack<SpecificVolume>(0.01, 100);
        ComesBack<Length>(-500, 5000);
        ComesBack<Duration>(0.1, 1e5);
        ComesBack<Concentration>(0.1, 1e5);
        ComesBack<Fraction>(0.001, 1);
        ComesBack<Temperature>(-200, 1000);
        ComesBack<TemperatureDifference>(-200, 1000);
        ComesBack<Power>(0.01, 1000);
        ComesBack<HeatCapacity>(0.01, 1000);
        ComesBack<Evaporation>(0.01, 1000);
        ComesBack<GaugePressure>(-1, 50);
        ComesBack<AbsolutePressure>(0.01, 50);
        ComesBack<SpecificGravity>(1.001, 1.17);
        ComesBack<ApparentExtract>(0.1, 39);
        ComesBack<RealExtract>(0.1, 99);
        ComesBack<BeerColour>(0.1, 500);
        ComesBack<MaltColour>(0.1, 2000);
        ComesBack<AlcoholByVolume>(0, 100);
        ComesBack<AlcoholByMass>(0, 100);
        ComesBack<Carbonation>(0.1, 50);
        ComesBack<Equivalents>(-50, 50);
        ComesBack<Bitterness>(0.1, 500);
    }

    private static void ComesBack<T>(double low, double high)
        where T : struct, IQuantity<T>
    {
        IReadOnlyList<Unit> units = UnitTable.UnitsOf<T>();
        Gen.Select(Gen.Int[0, units.Count - 1].Select(row => units[row]), Gen.Double[low, high]).Sample((unit, canonical) =>
        {
            string text = UnitTable.Format(T.FromCanonical(canonical), unit.Symbol, 15);
            Assert.True(UnitTable.TryParse(text, out Entered<T> entered, out string problem), problem);
            // Fifteen digits written, at the size of the scale's offset where it has one; curves settle to 1e-9.
            double tolerance = unit.Scale is CurvedScale || T.Limits.Unit is "SG" or "% ABW" ? 1e-8 : 1e-14 * (Math.Abs(canonical) + 1000);
            Assert.Equal(canonical, entered.Value.Canonical, tolerance);
        });
    }
}
