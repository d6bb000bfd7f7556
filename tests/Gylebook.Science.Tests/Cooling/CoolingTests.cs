using Gylebook.Science.Cooling;

namespace Gylebook.Science.Tests.Cooling;

/// <summary>Chilling with a coil, and cooling by itself. Rows are worked by hand from the heat balance; half a digit is rounding.</summary>
public sealed class CoolingTests
{
    /// <summary>21 L of wort of 1.045 kg/L and 4.0 kJ/kg/K.</summary>
    private const double Wort = 21 * 1.045;
    private const double Heat = 4.0;

    [Theory]
    [InlineData(8, 0.5121, 5.13)]
    [InlineData(4, 0.7620, 6.89)]
    public void Known_coils_have_their_effectiveness_and_cooling_time(double litresPerMinute, double effectiveness, double minutes)
    {
        ImmersionChiller coil = new(0.40, litresPerMinute, 15);
        Assert.Equal(effectiveness, coil.Effectiveness, 0.00005);
        Assert.Equal(minutes, coil.CoolingMinutes(Wort, Heat), 0.005);
    }

    [Theory]
    [InlineData(8, 15, 98, 20, 14.40)]
    [InlineData(4, 15, 98, 20, 19.36)]
    [InlineData(8, 22, 98, 25, 16.57)]
    public void Known_chillings_take_their_minutes(double litresPerMinute, double coolant, double from, double to, double minutes) =>
        Assert.Equal(minutes, new ImmersionChiller(0.40, litresPerMinute, coolant).Minutes(Wort, Heat, from, to)!.Value, 0.005);

    [Theory]
    [InlineData(0.5, 64.86)]
    [InlineData(1.0, 63.76)]
    [InlineData(1.5, 62.68)]
    public void Known_mash_of_66_in_a_room_of_20_with_a_cooling_time_of_20_hours(double hours, double celsius) =>
        Assert.Equal(celsius, NewtonCooling.Celsius(66, 20, hours, 20), 0.005);

    [Theory]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(1000)]
    public void Limits_wort_never_falls_below_the_water_that_cools_it(double minutes)
    {
        double celsius = new ImmersionChiller(0.40, 8, 15).WortCelsius(Wort, Heat, 98, minutes);
        Assert.InRange(celsius, 15, 98);
    }

    [Fact]
    public void Limits_water_that_is_not_cold_enough_never_gets_there()
    {
        Assert.Null(new ImmersionChiller(0.40, 8, 22).Minutes(Wort, Heat, 98, 20));
        Assert.Null(NewtonCooling.Hours(98, 18, 18, 20));
    }

    [Fact]
    public void Monotone_more_water_is_quicker_and_never_by_more_than_it_runs()
    {
        double slow = new ImmersionChiller(0.40, 4, 15).Minutes(Wort, Heat, 98, 20)!.Value;
        double quick = new ImmersionChiller(0.40, 8, 15).Minutes(Wort, Heat, 98, 20)!.Value;
        Assert.InRange(slow / quick, 1, 2);
    }

    [Fact]
    public void Roundtrip_of_two_readings_gives_the_cooling_time_back() =>
        Assert.Equal(20, NewtonCooling.CoolingHours(66, NewtonCooling.Celsius(66, 20, 1.5, 20), 20, 1.5), 1e-9);

    [Fact]
    public void Invalid_coils_and_times_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new ImmersionChiller(0, 8, 15).Effectiveness);
        Assert.Throws<ArgumentOutOfRangeException>(() => new ImmersionChiller(0.4, double.NaN, 15).Effectiveness);
        Assert.Throws<ArgumentOutOfRangeException>(() => NewtonCooling.Celsius(66, 20, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => NewtonCooling.CoolingHours(66, 70, 20, 1));
    }
}
