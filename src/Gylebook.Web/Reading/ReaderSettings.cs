using Gylebook.Pictures;

namespace Gylebook.Web.Reading;

/// <summary>How the book writes down what a reader wants to see; what it does not know is left at its usual value.</summary>
internal static class ReaderSettings
{
    private static readonly Dictionary<string, GravityUnit> Gravities = new() { ["SG"] = GravityUnit.SpecificGravity, ["P"] = GravityUnit.Plato };

    private static readonly Dictionary<string, VolumeUnit> Volumes =
        new() { ["L"] = VolumeUnit.Litre, ["US gal"] = VolumeUnit.UsGallon, ["imp gal"] = VolumeUnit.ImperialGallon };

    private static readonly Dictionary<string, MassUnit> Masses = new() { ["kg"] = MassUnit.Kilogram, ["lb"] = MassUnit.Pound };

    private static readonly Dictionary<string, TemperatureUnit> Temperatures =
        new() { ["C"] = TemperatureUnit.Celsius, ["F"] = TemperatureUnit.Fahrenheit };

    private static readonly Dictionary<string, ColourUnit> Colours = new() { ["SRM"] = ColourUnit.Srm, ["EBC"] = ColourUnit.Ebc };

    private static readonly Dictionary<string, DecimalSign> Signs = new() { ["point"] = DecimalSign.Point, ["comma"] = DecimalSign.Comma };

    /// <summary>The units that the book's settings say.</summary>
    public static ReaderUnits Read(IReadOnlyDictionary<string, string> settings) => new(
        Of(Gravities, "units.gravity", settings),
        Of(Volumes, "units.volume", settings),
        Of(Masses, "units.mass", settings),
        Of(Temperatures, "units.temperature", settings),
        Of(Colours, "units.colour", settings),
        Of(Signs, "units.decimals", settings));

    /// <summary>The settings that say those units.</summary>
    public static IReadOnlyDictionary<string, string> Write(ReaderUnits units) => new Dictionary<string, string>
    {
        ["units.gravity"] = Word(Gravities, units.Gravity),
        ["units.volume"] = Word(Volumes, units.Volume),
        ["units.mass"] = Word(Masses, units.Mass),
        ["units.temperature"] = Word(Temperatures, units.Temperature),
        ["units.colour"] = Word(Colours, units.Colour),
        ["units.decimals"] = Word(Signs, units.DecimalSign),
    };

    private static T Of<T>(Dictionary<string, T> words, string key, IReadOnlyDictionary<string, string> settings)
        where T : struct, Enum =>
        settings.TryGetValue(key, out string? word) && words.TryGetValue(word, out T known) ? known : default;

    private static string Word<T>(Dictionary<string, T> words, T choice)
        where T : struct, Enum => words.First(word => word.Value.Equals(choice)).Key;
}
