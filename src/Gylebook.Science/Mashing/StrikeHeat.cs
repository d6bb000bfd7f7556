namespace Gylebook.Science.Mashing;

/// <summary>How hot the strike liquor must be, and where a mash comes to rest.</summary>
/// <remarks>
/// <para>Symbols: m mass (kg), c specific heat (kJ/kg/K), C heat the vessel takes up (kJ/K), T temperature (°C), g grain,
/// w liquor, v vessel, s strike, r rest, S slaking rise (K). With R = r − S:
/// m_w·c_w·(T_s − R) = m_g·c_g·(R − T_g) + C·(R − T_v).</para>
/// <para>Source: heat balance; specific heats of <see cref="WortHeat"/>.</para>
/// <para>Valid for: any mash that loses no heat to the room while it is stirred.</para>
/// <para>Accuracy: within 1 °C of what a thermometer shows (common practice, no source); the vessel's own heat is the
/// usual culprit.</para>
/// <para>Notes: slaking is 0.3 °C by our starting value, 0 to 0.6 (from memory); older rules leave it out.</para>
/// </remarks>
public static class StrikeHeat
{
    /// <summary>Temperature of the liquor that brings the mash to its rest, °C.</summary>
    /// <param name="mash">What comes together.</param>
    /// <param name="restCelsius">The rest wanted, °C.</param>
    public static double StrikeCelsius(in MashIn mash, double restCelsius)
    {
        mash.Check();
        Argument.MustBeWithin(restCelsius, -50, 150);
        double balance = restCelsius - mash.SlakingKelvins;
        double taken = (mash.GrainKilojoulesPerKelvin * (balance - mash.GrainCelsius))
            + (mash.VesselKilojoulesPerKelvin * (balance - mash.VesselCelsius));
        return balance + (taken / mash.LiquorKilojoulesPerKelvin);
    }

    /// <summary>Temperature at which the mash comes to rest, °C.</summary>
    /// <param name="mash">What comes together.</param>
    /// <param name="strikeCelsius">Temperature of the liquor as it meets vessel and grain, °C.</param>
    public static double RestCelsius(in MashIn mash, double strikeCelsius)
    {
        mash.Check();
        Argument.MustBeWithin(strikeCelsius, -50, 500);
        double heat = (mash.LiquorKilojoulesPerKelvin * strikeCelsius)
            + (mash.GrainKilojoulesPerKelvin * mash.GrainCelsius)
            + (mash.VesselKilojoulesPerKelvin * mash.VesselCelsius);
        double capacity = mash.LiquorKilojoulesPerKelvin + mash.GrainKilojoulesPerKelvin
            + mash.VesselKilojoulesPerKelvin;
        return (heat / capacity) + mash.SlakingKelvins;
    }
}
