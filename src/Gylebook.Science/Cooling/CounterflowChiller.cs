using Gylebook.Science.Mashing;
using Gylebook.Science.Numerics;

namespace Gylebook.Science.Cooling;

/// <summary>Wort one way, cold water the other way, a wall between: a tube in a hose, or plates.</summary>
/// <param name="KilowattsPerKelvin">UA: heat through the wall for each degree between wort and water, kW/K.</param>
/// <param name="LitresPerMinute">Cooling water.</param>
/// <param name="CoolantCelsius">As it comes, °C.</param>
/// <remarks>
/// <para>Symbols: C heat capacity rate of a stream, flow times specific heat (kW/K); Cmin the smaller, r = Cmin/Cmax, N = UA/Cmin;
/// ε = (1 − e^(−N(1−r)))/(1 − r·e^(−N(1−r))), and N/(1 + N) where r = 1. Heat ε·Cmin·(T0 − Tc), T0 wort as it comes, Tc water.</para>
/// <para>Source: heat balance of two streams in opposite flow; ε by number of transfer units: Kays and London, Compact Heat
/// Exchangers; Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, from memory.</para>
/// <para>Valid for: steady flow, one UA from end to end, no heat to the room. Plates are not quite in opposite flow.</para>
/// <para>Accuracy: that of UA, which grows with either flow and falls with dirt. Read it off one chilling of your own.</para>
/// <para>Notes: a litre of cooling water is counted as a kilogram. Wort comes out in seconds; what waits in the kettle stays hot.
/// The water that comes out scalds.</para>
/// </remarks>
public readonly record struct CounterflowChiller(double KilowattsPerKelvin, double LitresPerMinute, double CoolantCelsius)
{
    private const int MostHalvings = 100;

    /// <summary>Temperature at which the wort comes out, °C: never below the water's.</summary>
    /// <param name="kilogramsPerMinute">Wort.</param>
    /// <param name="kilojoulesPerKilogramKelvin">Its specific heat.</param>
    /// <param name="fromCelsius">As it comes, °C.</param>
    public double WortCelsius(double kilogramsPerMinute, double kilojoulesPerKilogramKelvin, double fromCelsius)
    {
        double wort = Rate(kilogramsPerMinute, kilojoulesPerKilogramKelvin);
        return fromCelsius - (WortShare(wort) * (fromCelsius - CoolantCelsius));
    }

    /// <summary>Temperature at which the water comes out, °C: never above the wort's.</summary>
    /// <param name="kilogramsPerMinute">Wort.</param>
    /// <param name="kilojoulesPerKilogramKelvin">Its specific heat.</param>
    /// <param name="fromCelsius">As the wort comes, °C.</param>
    public double WaterCelsius(double kilogramsPerMinute, double kilojoulesPerKilogramKelvin, double fromCelsius)
    {
        double wort = Rate(kilogramsPerMinute, kilojoulesPerKilogramKelvin);
        return CoolantCelsius + (WortShare(wort) * wort / Water * (fromCelsius - CoolantCelsius));
    }

    /// <summary>The most wort a minute that still comes out at a temperature, kg; null when the water is not that cold.</summary>
    /// <param name="kilojoulesPerKilogramKelvin">Its specific heat.</param>
    /// <param name="fromCelsius">As it comes, °C.</param>
    /// <param name="toCelsius">As it is to come out, below that, °C.</param>
    public double? WortKilogramsPerMinute(double kilojoulesPerKilogramKelvin, double fromCelsius, double toCelsius)
    {
        Argument.MustBePositive(kilojoulesPerKilogramKelvin);
        Argument.MustBePositive(fromCelsius - toCelsius);
        if (toCelsius <= CoolantCelsius)
        {
            return null;
        }

        // More wort comes out warmer. The wall cannot carry more than UA times the whole difference, nor the water take up more
        // than its own rate times that: both bound the rate from above. Just as cold as wished is cold enough: hence the decrement.
        double wanted = (fromCelsius - toCelsius) / (fromCelsius - CoolantCelsius);
        Bracket rates = new(0, Math.Min(KilowattsPerKelvin, Water) / wanted);
        return rates.Halved(new ShareBeyond(this, Math.BitDecrement(wanted)), MostHalvings).Low * 60 / kilojoulesPerKilogramKelvin;
    }

    private double Water
    {
        get
        {
            Argument.MustBePositive(LitresPerMinute);
            return LitresPerMinute / 60 * WortHeat.Water;
        }
    }

    private static double Rate(double kilogramsPerMinute, double kilojoulesPerKilogramKelvin)
    {
        Argument.MustBePositive(kilogramsPerMinute);
        Argument.MustBePositive(kilojoulesPerKilogramKelvin);
        return kilogramsPerMinute / 60 * kilojoulesPerKilogramKelvin;
    }

    /// <summary>How much of its way down to the water's temperature the wort goes: ε·Cmin over its own rate.</summary>
    private double WortShare(double wort)
    {
        Argument.MustBePositive(KilowattsPerKelvin);
        double least = Math.Min(wort, Water);
        double r = least / Math.Max(wort, Water);
        double units = KilowattsPerKelvin / least;

        // Both halves of the fraction vanish at r = 1; divided by 1 − r they do not.
        double across = units * Decay.MeanLeft(units * (1 - r));
        return across / (1 + (r * across)) * least / wort;
    }

    /// <summary>By how much the wort goes further than wanted, at a rate: more wort goes less far.</summary>
    private readonly struct ShareBeyond(CounterflowChiller chiller, double wanted) : IFalling
    {
        public double At(double at) => chiller.WortShare(at) - wanted;
    }
}
