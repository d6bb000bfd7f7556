namespace Gylebook.Science.Mashing;

/// <summary>Hot water that lifts a mash from one rest to the next.</summary>
/// <remarks>
/// <para>Symbols: m = C·(T2 − T1)/(c_w·(T_h − T2)) (kg), C heat the mash takes up per degree (kJ/K), T1 and T2 the two
/// rests, T_h the water (°C), c_w 4.18 kJ/kg/K.</para>
/// <para>Source: heat balance.</para>
/// <para>Valid for: water hotter than the rest wanted.</para>
/// <para>Accuracy: loses no heat on the way; in practice the water arrives a degree or two cooler.</para>
/// </remarks>
public static class Infusion
{
    /// <summary>Heat a mash takes up per degree, kJ/K.</summary>
    /// <param name="grainKilograms">Grain, kg.</param>
    /// <param name="grainMoisture">Its moisture, 0.04 for 4 %.</param>
    /// <param name="liquorKilograms">Liquor already with it, kg.</param>
    public static double MashKilojoulesPerKelvin(double grainKilograms, double grainMoisture, double liquorKilograms)
    {
        Argument.MustNotBeNegative(grainKilograms);
        Argument.MustNotBeNegative(liquorKilograms);
        return (grainKilograms * WortHeat.OfMalt(grainMoisture)) + (liquorKilograms * WortHeat.Water);
    }

    /// <summary>Hot water to add, kg.</summary>
    /// <param name="mashKilojoulesPerKelvin">Heat the mash, and its vessel, takes up per degree, kJ/K.</param>
    /// <param name="fromCelsius">The rest it stands at, °C.</param>
    /// <param name="toCelsius">The rest wanted, °C.</param>
    /// <param name="waterCelsius">The hot water, °C, hotter than the rest wanted.</param>
    public static double WaterKilograms(
        double mashKilojoulesPerKelvin, double fromCelsius, double toCelsius, double waterCelsius)
    {
        Argument.MustNotBeNegative(mashKilojoulesPerKelvin);
        Argument.MustBeWithin(fromCelsius, -50, 150);
        Argument.MustBeWithin(toCelsius, fromCelsius, 150);
        double warmerBy = waterCelsius - toCelsius;
        Argument.MustBePositive(warmerBy, nameof(waterCelsius));
        return mashKilojoulesPerKelvin * (toCelsius - fromCelsius) / (WortHeat.Water * warmerBy);
    }

    /// <summary>Where the mash comes to rest after the water, °C.</summary>
    public static double RestCelsius(
        double mashKilojoulesPerKelvin, double fromCelsius, double waterKilograms, double waterCelsius)
    {
        Argument.MustBePositive(mashKilojoulesPerKelvin);
        Argument.MustNotBeNegative(waterKilograms);
        Argument.MustBeWithin(fromCelsius, -50, 150);
        Argument.MustBeWithin(waterCelsius, -50, 150);
        double water = waterKilograms * WortHeat.Water;
        return ((mashKilojoulesPerKelvin * fromCelsius) + (water * waterCelsius)) / (mashKilojoulesPerKelvin + water);
    }
}
