using Gylebook.Pictures;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Reading;

/// <summary>Which units of the table belong to a reader's choice.</summary>
internal static class UnitChoice
{
    /// <summary>Symbols the reader is content with, the one to convert to first; empty where the settings offer no choice.</summary>
    public static IReadOnlyList<string> Of<T>(ReaderUnits units)
        where T : struct, IQuantity<T>
    {
        QuantityKind kind = UnitTable.KindOf<T>();
        return kind == UnitTable.KindOf<Mass>() ? Masses(units.Mass)
            : kind == UnitTable.KindOf<VolumeAt20C>() ? Volumes(units.Volume)
            : kind == UnitTable.KindOf<Temperature>() ? (units.Temperature == TemperatureUnit.Celsius ? ["°C", "K"] : ["°F"])
            : kind == UnitTable.KindOf<TemperatureDifference>() ? (units.Temperature == TemperatureUnit.Celsius ? ["K", "°C"] : ["°F"])
            : kind == UnitTable.KindOf<SpecificGravity>() ? (units.Gravity == GravityUnit.SpecificGravity ? ["SG"] : ["°P", "Brix"])
            : kind == UnitTable.KindOf<BeerColour>() ? (units.Colour == ColourUnit.Srm ? ["SRM", "Lovibond"] : ["EBC"])
            : kind == UnitTable.KindOf<Evaporation>() ? Rates(units.Volume, "L/h", "US gal/h", "imp gal/h")
            : kind == UnitTable.KindOf<SpecificVolume>() ? Rates(units.Volume, "L/kg", "US qt/lb", "imp qt/lb")
            : [];
    }

    private static string[] Masses(MassUnit mass) => mass == MassUnit.Kilogram ? ["kg", "g", "mg", "t"] : ["lb", "oz"];

    private static string[] Volumes(VolumeUnit volume) => volume switch
    {
        VolumeUnit.UsGallon => ["US gal", "US qt", "US pt", "US fl oz", "US bbl"],
        VolumeUnit.ImperialGallon => ["imp gal", "imp qt", "imp pt", "imp fl oz", "imp bbl"],
        _ => ["L", "mL", "hL", "m3"],
    };

    private static string[] Rates(VolumeUnit volume, string litre, string us, string imperial) => volume switch
    {
        VolumeUnit.UsGallon => [us],
        VolumeUnit.ImperialGallon => [imperial],
        _ => [litre],
    };
}
