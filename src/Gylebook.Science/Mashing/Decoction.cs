namespace Gylebook.Science.Mashing;

/// <summary>Part of a mash, boiled and given back, that lifts the rest of it.</summary>
/// <remarks>
/// <para>Symbols: share = (T2 − T1)/(T_b − T1), T1 the rest it stands at, T2 the rest wanted, T_b the boiled part as
/// it comes back (°C).</para>
/// <para>Source: heat balance, the part taken being like the whole.</para>
/// <para>Valid for: a well stirred part. A thick part holds less heat than its mass says: weigh both by their heats.</para>
/// <para>Accuracy: take 10 to 20 % more for losses (common practice, no source).</para>
/// </remarks>
public static class Decoction
{
    /// <summary>Share of the mash to take out and boil.</summary>
    public static double Share(double fromCelsius, double toCelsius, double boiledCelsius)
    {
        Argument.MustBeWithin(fromCelsius, -50, 150);
        Argument.MustBeWithin(boiledCelsius, -50, 150);
        double rise = boiledCelsius - fromCelsius;
        Argument.MustBePositive(rise, nameof(boiledCelsius));
        Argument.MustBeWithin(toCelsius, fromCelsius, boiledCelsius);
        return (toCelsius - fromCelsius) / rise;
    }

    /// <summary>Mash to take out and boil, kg.</summary>
    public static double Kilograms(double mashKilograms, double fromCelsius, double toCelsius, double boiledCelsius)
    {
        Argument.MustNotBeNegative(mashKilograms);
        return mashKilograms * Share(fromCelsius, toCelsius, boiledCelsius);
    }

    /// <summary>Where the mash comes to rest when the boiled part is back, °C.</summary>
    public static double RestCelsius(double share, double fromCelsius, double boiledCelsius)
    {
        Argument.MustBeWithin(share, 0, 1);
        Argument.MustBeWithin(fromCelsius, -50, 150);
        Argument.MustBeWithin(boiledCelsius, -50, 150);
        return fromCelsius + (share * (boiledCelsius - fromCelsius));
    }
}
