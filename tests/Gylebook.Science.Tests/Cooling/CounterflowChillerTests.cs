using CsCheck;
using Gylebook.Science.Cooling;

namespace Gylebook.Science.Tests.Cooling;

/// <summary>Wort and water in opposite flow.</summary>
public sealed class CounterflowChillerTests
{
    private const double Heat = 4.0;

    private static readonly Gen<(double Wall, double Water, double Wort)> Exchangers =
        Gen.Select(Gen.Double[0.02, 3], Gen.Double[0.5, 30], Gen.Double[0.2, 20]);

    // A worked example of Incropera and DeWitt, from memory: oil, 0.1 kg/s of 2.131 kJ/kg/K, from 100 to 60 °C by water, 0.2 kg/s from
    // 30 °C, opposite flow. Printed: 8524 W, mean difference 43.2 K, so 197.3 W/K; water out at 40.2 °C. The mean difference is good to
    // 0.05 in 43.2: 0.12 % of UA, 0.03 K. Our water takes up 4.18 where theirs takes 4.178: 0.05 %.
    [Fact]
    public void Known_an_example_of_the_textbook()
    {
        CounterflowChiller exchanger = new(8.524 / 43.2, 12, 30);
        Assert.Equal(60, exchanger.WortCelsius(6, 2.131, 100), tolerance: 0.05);
        Assert.Equal(40.2, exchanger.WaterCelsius(6, 2.131, 100), tolerance: 0.05 + 0.03);
        Assert.Equal(6, exchanger.WortKilogramsPerMinute(2.131, 100, 60)!.Value, tolerance: 0.01);
    }

    // ε by number of transfer units, worked by hand: UA 0.4 kW/K, 8 L/min of water (0.5573 kW/K) at 15 °C, wort of 4.0 kJ/kg/K from 98 °C.
    // 2 kg/min: r 0.2392, N 3, ε 0.9204; 4 kg/min: r 0.4785, N 1.5, ε 0.6947. Half of the last digit.
    [Theory]
    [InlineData(2, 21.605)]
    [InlineData(4, 40.343)]
    public void Known_by_hand(double kilogramsPerMinute, double celsius) =>
        Assert.Equal(celsius, new CounterflowChiller(0.4, 8, 15).WortCelsius(kilogramsPerMinute, Heat, 98), tolerance: 0.0005);

    // Equal rates: ε = N/(1 + N), and both streams keep the same difference all along.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(3)]
    public void Limits_equal_rates_have_their_own_form(double units)
    {
        double rate = 6.0 / 60 * 4.18;
        CounterflowChiller exchanger = new(units * rate, 6, 10);
        double expected = 100 - (90 * units / (1 + units));
        Assert.Equal(expected, exchanger.WortCelsius(6, 4.18, 100), tolerance: 1e-9);

        // No step beside it: ten parts in a million off the equal rate move it by no more than ten parts in a million of 90 K.
        Assert.Equal(expected, exchanger.WortCelsius(6 * (1 + 1e-5), 4.18, 100), tolerance: 90e-5);
        Assert.Equal(expected, exchanger.WortCelsius(6 * (1 - 1e-5), 4.18, 100), tolerance: 90e-5);
    }

    [Fact]
    public void Limits_an_endless_wall_brings_the_smaller_stream_all_the_way()
    {
        CounterflowChiller endless = new(1e9, 8, 15);
        Assert.Equal(15, endless.WortCelsius(2, Heat, 98), tolerance: 1e-6);

        // More wort than water: the water leaves as hot as the wort came, and took no more heat than that.
        double wort = 20.0 / 60 * Heat;
        double water = 8.0 / 60 * 4.18;
        Assert.Equal(98, endless.WaterCelsius(20, Heat, 98), tolerance: 1e-6);
        Assert.Equal(98 - (water / wort * 83), endless.WortCelsius(20, Heat, 98), tolerance: 1e-6);
    }

    [Fact]
    public void Balance_what_wort_gives_water_takes() => Exchangers.Sample((wall, water, wort) =>
    {
        CounterflowChiller exchanger = new(wall, water, 12);
        double given = wort * Heat * (97 - exchanger.WortCelsius(wort, Heat, 97));
        double taken = water * 4.18 * (exchanger.WaterCelsius(wort, Heat, 97) - 12);
        Assert.Equal(given, taken, tolerance: 1e-9 * given);
    });

    [Fact]
    public void Limits_neither_stream_passes_the_other() => Exchangers.Sample((wall, water, wort) =>
    {
        CounterflowChiller exchanger = new(wall, water, 12);
        Assert.InRange(exchanger.WortCelsius(wort, Heat, 97), 12 - 1e-9, 97);
        Assert.InRange(exchanger.WaterCelsius(wort, Heat, 97), 12, 97 + 1e-9);
    });

    [Fact]
    public void Monotone_more_wort_comes_out_warmer_more_wall_and_more_water_colder() =>
        Gen.Select(Exchangers, Gen.Double[1.01, 2]).Sample((exchanger, more) =>
        {
            (double wall, double water, double wort) = exchanger;
            double here = new CounterflowChiller(wall, water, 12).WortCelsius(wort, Heat, 97);
            Assert.True(new CounterflowChiller(wall, water, 12).WortCelsius(wort * more, Heat, 97) > here - 1e-9);
            Assert.True(new CounterflowChiller(wall * more, water, 12).WortCelsius(wort, Heat, 97) < here + 1e-9);
            Assert.True(new CounterflowChiller(wall, water * more, 12).WortCelsius(wort, Heat, 97) < here + 1e-9);
        });

    [Fact]
    public void Roundtrip_the_flow_found_comes_out_at_the_temperature_asked_for() =>
        Gen.Select(Gen.Double[0.02, 3], Gen.Double[0.5, 30], Gen.Double[12.5, 90]).Sample((wall, water, to) =>
        {
            CounterflowChiller exchanger = new(wall, water, 12);
            double flow = exchanger.WortKilogramsPerMinute(Heat, 97, to)!.Value;
            Assert.Equal(to, exchanger.WortCelsius(flow, Heat, 97), tolerance: 1e-7);
        });

    [Fact]
    public void Limits_water_that_is_not_cold_enough_has_no_flow()
    {
        Assert.Null(new CounterflowChiller(0.4, 8, 20).WortKilogramsPerMinute(Heat, 98, 20));
        Assert.Null(new CounterflowChiller(0.4, 8, 22).WortKilogramsPerMinute(Heat, 98, 20));
    }

    [Fact]
    public void Invalid_figures_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new CounterflowChiller(0, 8, 15).WortCelsius(2, Heat, 98));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CounterflowChiller(0.4, double.NaN, 15).WortCelsius(2, Heat, 98));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CounterflowChiller(0.4, 8, 15).WortCelsius(0, Heat, 98));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CounterflowChiller(0.4, 8, 15).WortKilogramsPerMinute(Heat, 20, 20));
    }
}
