using Gylebook.Science.Mashing;

namespace Gylebook.Science.Cooling;

/// <summary>A coil in the kettle, cold water through it, the wort kept moving.</summary>
/// <param name="KilowattsPerKelvin">UA: heat through the coil for each degree between wort and water, kW/K.</param>
/// <param name="LitresPerMinute">Cooling water.</param>
/// <param name="CoolantCelsius">As it comes, °C.</param>
/// <remarks>
/// <para>Symbols: ε = 1 − e^(−UA/(ṁ c_w)); T = Tc + (T0 − Tc)·e^(−t/τ); τ = M c/(ε ṁ c_w). M wort (kg), c its specific heat
/// (kJ/kg/K), ṁ cooling water (kg/s), c_w 4.18 kJ/kg/K, Tc its temperature as it comes (°C).</para>
/// <para>Source: heat balance of a well mixed vessel with an exchanger whose other side does not change temperature; ε in any
/// textbook of heat transfer (effectiveness and number of transfer units).</para>
/// <para>Valid for: wort that is stirred, constant flow. Wort that stands takes twice as long or more (common practice, no
/// source).</para>
/// <para>Accuracy: that of UA. Read it off one chilling of your own.</para>
/// <para>Notes: a litre of cooling water is counted as a kilogram. What comes out at first is near boiling: it scalds.</para>
/// </remarks>
public readonly record struct ImmersionChiller(double KilowattsPerKelvin, double LitresPerMinute, double CoolantCelsius)
{
    /// <summary>ε: how near the water comes to the wort's temperature, 0 to 1.</summary>
    public double Effectiveness
    {
        get
        {
            Argument.MustBePositive(KilowattsPerKelvin);
            Argument.MustBePositive(LitresPerMinute);
            return 1 - Math.Exp(-KilowattsPerKelvin / FlowKilowattsPerKelvin);
        }
    }

    private double FlowKilowattsPerKelvin => LitresPerMinute / 60 * WortHeat.Water;

    /// <summary>τ: minutes in which the wort's warmth over the water falls to 1/e.</summary>
    public double CoolingMinutes(double wortKilograms, double kilojoulesPerKilogramKelvin)
    {
        Argument.MustBePositive(wortKilograms);
        Argument.MustBePositive(kilojoulesPerKilogramKelvin);
        return wortKilograms * kilojoulesPerKilogramKelvin / (Effectiveness * FlowKilowattsPerKelvin) / 60;
    }

    /// <summary>Temperature of the wort after some minutes, °C: never below the water's.</summary>
    public double WortCelsius(double wortKilograms, double kilojoulesPerKilogramKelvin, double fromCelsius, double minutes) =>
        NewtonCooling.Celsius(
            fromCelsius, CoolantCelsius, minutes / 60, CoolingMinutes(wortKilograms, kilojoulesPerKilogramKelvin) / 60);

    /// <summary>Minutes to a temperature; null when the water is not that cold.</summary>
    public double? Minutes(double wortKilograms, double kilojoulesPerKilogramKelvin, double fromCelsius, double toCelsius) =>
        NewtonCooling.Hours(
            fromCelsius, toCelsius, CoolantCelsius, CoolingMinutes(wortKilograms, kilojoulesPerKilogramKelvin) / 60) * 60;
}
