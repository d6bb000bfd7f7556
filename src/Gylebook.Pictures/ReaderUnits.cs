namespace Gylebook.Pictures;

/// <summary>The units a reader wants to see; what files hold and the engine reckons with is not touched by it.</summary>
/// <param name="Gravity">Of wort and beer.</param>
/// <param name="Volume">Of liquids.</param>
/// <param name="Mass">Of what is weighed.</param>
/// <param name="Temperature">Of anything.</param>
/// <param name="Colour">Of beer.</param>
/// <param name="DecimalSign">Before the decimals.</param>
public sealed record ReaderUnits(
    GravityUnit Gravity = GravityUnit.SpecificGravity,
    VolumeUnit Volume = VolumeUnit.Litre,
    MassUnit Mass = MassUnit.Kilogram,
    TemperatureUnit Temperature = TemperatureUnit.Celsius,
    ColourUnit Colour = ColourUnit.Srm,
    DecimalSign DecimalSign = DecimalSign.Point)
{
    /// <summary>Litres, kilograms, °C; gravity as 1.050; colour in SRM.</summary>
    public static ReaderUnits Metric { get; } = new();

    /// <summary>US gallons, pounds, °F; gravity as 1.050; colour in SRM.</summary>
    public static ReaderUnits UnitedStates { get; } =
        new(Volume: VolumeUnit.UsGallon, Mass: MassUnit.Pound, Temperature: TemperatureUnit.Fahrenheit);
}

/// <summary>How gravity is shown.</summary>
public enum GravityUnit
{
    /// <summary>As 1.050.</summary>
    SpecificGravity,

    /// <summary>As 12.4 °P.</summary>
    Plato,
}

/// <summary>How volume is shown.</summary>
public enum VolumeUnit
{
    /// <summary>Litres.</summary>
    Litre,

    /// <summary>US gallons.</summary>
    UsGallon,

    /// <summary>Imperial gallons.</summary>
    ImperialGallon,
}

/// <summary>How mass is shown.</summary>
public enum MassUnit
{
    /// <summary>Kilograms, and grams below one.</summary>
    Kilogram,

    /// <summary>Pounds, and ounces below one.</summary>
    Pound,
}

/// <summary>How temperature is shown.</summary>
public enum TemperatureUnit
{
    /// <summary>°C.</summary>
    Celsius,

    /// <summary>°F.</summary>
    Fahrenheit,
}

/// <summary>How beer colour is shown.</summary>
public enum ColourUnit
{
    /// <summary>SRM.</summary>
    Srm,

    /// <summary>EBC.</summary>
    Ebc,
}

/// <summary>What stands before the decimals.</summary>
public enum DecimalSign
{
    /// <summary>1.050.</summary>
    Point,

    /// <summary>1,050.</summary>
    Comma,
}
