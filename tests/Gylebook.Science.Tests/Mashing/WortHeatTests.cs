using CsCheck;
using Gylebook.Science.Mashing;

namespace Gylebook.Science.Tests.Mashing;

public class WortHeatTests
{
    // Briggs et al. 2004, mixing rule for malt, at round moistures; three decimals.
    [Theory]
    [InlineData(0, 1.590)]
    [InlineData(.02, 1.642)]
    [InlineData(.04, 1.694)]
    [InlineData(.05, 1.720)]
    [InlineData(.08, 1.797)]
    public void Moist_malt_takes_up_more_heat(double moisture, double expected) =>
        Assert.Equal(expected, WortHeat.OfMalt(moisture), tolerance: 0.000501); // 5 % is 1.7195, printed rounded up

    // Mixing rule for sugar solutions at round extracts; three decimals.
    [Theory]
    [InlineData(0, 4.18)]
    [InlineData(5, 4.042)]
    [InlineData(10, 3.904)]
    [InlineData(12, 3.849)]
    [InlineData(15, 3.766)]
    [InlineData(20, 3.628)]
    public void Strong_wort_takes_up_less_heat(double plato, double expected) =>
        Assert.Equal(expected, WortHeat.OfWort(plato), tolerance: 0.0005);

    // Heat balance by hand (formula check), two decimals: 28 L of 1.04 kg/L and 4.0 kJ/kg/K by element and by gas, 20 L of
    // water by element.
    [Theory]
    [InlineData(28 * 1.04, 4.0, 65, 100, 3.5, .90, 21.57)]
    [InlineData(28 * 1.04, 4.0, 65, 100, 9, .45, 16.78)]
    [InlineData(20, 4.18, 15, 72, 2.4, .9, 36.77)]
    public void Heating_takes_its_time(double kilograms, double heat, double from, double to, double kilowatts, double efficiency, double minutes) =>
        Assert.Equal(minutes, HeatUp.Minutes(kilograms, heat, from, to, kilowatts, efficiency), tolerance: 0.005);

    // Steam tables: 2257 kJ/kg at 100 °C, worked out at round rates; three decimals.
    [Theory]
    [InlineData(2, 1.254)]
    [InlineData(3, 1.881)]
    [InlineData(4, 2.508)]
    [InlineData(5, 3.135)]
    public void Boiling_off_takes_power(double kilogramsPerHour, double kilowatts) =>
        Assert.Equal(kilowatts, HeatUp.KilowattsToBoilOff(kilogramsPerHour), tolerance: 0.0005);

    [Fact]
    public void Two_steps_take_as_long_as_one() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[5, 50], Gen.Double[50, 100]).Sample((kilograms, from, to) =>
        {
            double middle = (from + to) / 2;
            double whole = HeatUp.Minutes(kilograms, 4.18, from, to, 3, 0.9);
            double steps = HeatUp.Minutes(kilograms, 4.18, from, middle, 3, 0.9) + HeatUp.Minutes(kilograms, 4.18, middle, to, 3, 0.9);
            Assert.Equal(whole, steps, tolerance: 1e-10 * (1 + whole));
        });

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WortHeat.OfMalt(1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WortHeat.OfWort(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatUp.Minutes(20, 4.18, 70, 60, 3, 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatUp.Minutes(20, 4.18, 20, 60, 0, 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatUp.Minutes(20, 4.18, 20, 60, 3, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatUp.KilowattsToBoilOff(-1));
    }
}
