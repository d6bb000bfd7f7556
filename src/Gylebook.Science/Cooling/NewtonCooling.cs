namespace Gylebook.Science.Cooling;

/// <summary>What a standing vessel loses to the room: mash in its tun, wort left overnight.</summary>
/// <remarks>
/// <para>Symbols: T = Ta + (T0 − Ta)·e^(−t/τ); Ta room, T0 start (°C), t time, τ cooling time (both h), in which the warmth
/// over the room falls to 1/e.</para>
/// <para>Source: Newton's law of cooling.</para>
/// <para>Valid for: a vessel whose contents are of one temperature and whose losses grow with the difference to the room.</para>
/// <para>Accuracy: that of τ, which each vessel has its own of: <see cref="CoolingHours"/> reads it off two thermometer
/// readings.</para>
/// <para>Notes: steam from an open vessel takes more than this at the start.</para>
/// </remarks>
public static class NewtonCooling
{
    /// <summary>Temperature after some hours, °C.</summary>
    public static double Celsius(double startCelsius, double roomCelsius, double hours, double coolingHours)
    {
        Argument.MustBeWithin(startCelsius, -50, 200);
        Argument.MustBeWithin(roomCelsius, -50, 100);
        Argument.MustNotBeNegative(hours);
        Argument.MustBePositive(coolingHours);
        return roomCelsius + ((startCelsius - roomCelsius) * Math.Exp(-hours / coolingHours));
    }

    /// <summary>The vessel's cooling time from what it fell by, h.</summary>
    /// <param name="startCelsius">First reading, °C.</param>
    /// <param name="endCelsius">Second reading, between the first and the room, °C.</param>
    /// <param name="roomCelsius">The room, °C.</param>
    /// <param name="hours">Hours between the two.</param>
    public static double CoolingHours(double startCelsius, double endCelsius, double roomCelsius, double hours)
    {
        Argument.MustBePositive(hours);
        double ratio = (startCelsius - roomCelsius) / (endCelsius - roomCelsius);
        Argument.MustBeWithin(ratio, 1 + 1e-9, 1e9);
        return hours / Math.Log(ratio);
    }

    /// <summary>Hours until it has cooled to a temperature; null when the room never lets it.</summary>
    public static double? Hours(double startCelsius, double endCelsius, double roomCelsius, double coolingHours)
    {
        Argument.MustBePositive(coolingHours);
        double ratio = (startCelsius - roomCelsius) / (endCelsius - roomCelsius);
        return ratio >= 1 && double.IsFinite(ratio) ? coolingHours * Math.Log(ratio) : null;
    }
}
