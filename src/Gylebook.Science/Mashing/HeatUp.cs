namespace Gylebook.Science.Mashing;

/// <summary>How long an element or a burner takes, and what boiling off costs.</summary>
/// <remarks>
/// <para>Symbols: minutes = kg·c·ΔT/(η·kW)/60, c specific heat (kJ/kg/K), η the share of the power that reaches the
/// liquid; steam takes 2257 kJ/kg.</para>
/// <para>Source: heat balance; heat of evaporation of water at 100 °C from steam tables.</para>
/// <para>Valid for: liquids below their boiling point; losses to the room are inside η.</para>
/// <para>Accuracy: that of η: about 0.9 for an element in the wort, 0.45 for an open gas burner (common practice, no
/// source).</para>
/// </remarks>
public static class HeatUp
{
    /// <summary>Heat that turns boiling water into steam, kJ/kg.</summary>
    public const double EvaporationKilojoulesPerKilogram = 2257;

    /// <summary>Minutes to heat a liquid.</summary>
    /// <param name="kilograms">What is heated, kg.</param>
    /// <param name="kilojoulesPerKilogramKelvin">Its specific heat, kJ/kg/K.</param>
    /// <param name="fromCelsius">Start, °C.</param>
    /// <param name="toCelsius">End, °C, not below the start.</param>
    /// <param name="kilowatts">Power of the heater, kW.</param>
    /// <param name="efficiency">Share of it that reaches the liquid, above 0 to 1.</param>
    public static double Minutes(
        double kilograms,
        double kilojoulesPerKilogramKelvin,
        double fromCelsius,
        double toCelsius,
        double kilowatts,
        double efficiency)
    {
        Argument.MustNotBeNegative(kilograms);
        Argument.MustBePositive(kilojoulesPerKilogramKelvin);
        Argument.MustBeWithin(fromCelsius, -20, 200);
        Argument.MustBeWithin(toCelsius, fromCelsius, 200);
        Argument.MustBePositive(kilowatts);
        Argument.MustBeWithin(efficiency, double.Epsilon, 1);
        double kilojoules = kilograms * kilojoulesPerKilogramKelvin * (toCelsius - fromCelsius);
        return kilojoules / (kilowatts * efficiency) / 60;
    }

    /// <summary>Power that goes into steam, kW.</summary>
    /// <param name="kilogramsPerHour">Water boiled off, kg/h.</param>
    public static double KilowattsToBoilOff(double kilogramsPerHour)
    {
        Argument.MustNotBeNegative(kilogramsPerHour);
        return kilogramsPerHour * EvaporationKilojoulesPerKilogram / 3600;
    }
}
