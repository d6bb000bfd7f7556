using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys of a kit file.</summary>
internal static class KitReader
{
    // Starting values: all is poured, so no solids stay (a definition); whole hops keep 6 L/kg (a trade sheet's drained
    // hop back); a racking cane leaves a tenth of a litre (common practice, no source).
    private static readonly Entered<Fraction> NoSolidsLeft = new(Fraction.FromPercent(0), "0 %");
    private static readonly Entered<SpecificVolume> HeldBySpentHops = new(SpecificVolume.FromLitresPerKilogram(6), "6 L/kg");
    private static readonly Entered<VolumeAt20C> RackingLeftBehind = new(VolumeAt20C.FromLitres(0.1), "0.1 L");

    internal static Kit Read(ObjectReader file) => new()
    {
        Name = file.Name("name"),
        Kettle = file.Object("kettle", Kettle),
        Tun = file.OptionalObject("tun", Tun),
        Bag = file.OptionalObject("bag", Bag),
        Conversion = file.Quantity<Fraction>("conversion"),
        MashCooling = file.OptionalQuantity<Duration>("mashCooling"),
        Chiller = file.OptionalObject("chiller", Chiller),
        WortCooling = file.OptionalQuantity<Duration>("wortCooling"),
        Fermenter = file.Object("fermenter", at => new Fermenter(at.Quantity<VolumeAt20C>("brim"), at.Quantity<VolumeAt20C>("usable"))),
        RackingLeftBehind = Racking(file),
        Packages = file.ListOfObjects("packages", Package),
        Altitude = file.OptionalQuantity<Length>("altitude"),
        GrainTemperature = file.Quantity<Temperature>("grainTemperature"),
        Instruments = file.OptionalObject("instruments", InstrumentReader.Read),
    };

    private static Kettle Kettle(ObjectReader at) => new(
        at.Quantity<VolumeAt20C>("brim"),
        at.Quantity<VolumeAt20C>("usable"),
        at.Quantity<Evaporation>("evaporation"),
        at.OptionalQuantity<Power>("power"),
        at.Quantity<VolumeAt20C>("leftBehind"),
        at.QuantityOr("solidsLeft", NoSolidsLeft),
        at.QuantityOr("heldBySpentHops", HeldBySpentHops));

    private static Tun Tun(ObjectReader at) => new(
        at.Quantity<VolumeAt20C>("brim"),
        at.Quantity<VolumeAt20C>("deadSpace"),
        at.Quantity<HeatCapacity>("heatCapacity"),
        at.Quantity<SpecificVolume>("liquorKept"));

    private static Bag Bag(ObjectReader at) => new(
        at.Quantity<SpecificVolume>("liquorKept"),
        at.Quantity<Fraction>("rinsingShare"),
        at.Need("brewsInKettle")?.Flag() ?? false);

    /// <summary>The bare numbers carry their unit in the key.</summary>
    private static Chiller Chiller(ObjectReader at) => new(at.Name("kind"), at.OptionalQuantity<Temperature>("coolant"))
    {
        LitresPerMinute = at.Take("litresPerMinute")?.Number(0.01, 1000),
        KilowattsPerKelvin = at.Take("kilowattsPerKelvin")?.Number(0.001, 1000),
        WortLitresPerMinute = at.Take("wortLitresPerMinute")?.Number(0.01, 1000),
    };

    /// <summary>An absent <c>racking</c> and one without its key come to the same.</summary>
    private static Entered<VolumeAt20C> Racking(ObjectReader file)
    {
        if (file.Take("racking") is not null)
        {
            return file.Object("racking", at => at.QuantityOr("leftBehind", RackingLeftBehind));
        }

        file.Findings.Note("default.taken", "racking.leftBehind", $"not given; taken as {RackingLeftBehind.Text}", RackingLeftBehind.Text);
        return RackingLeftBehind;
    }

    private static PackageKind Package(ObjectReader at) => new(
        at.Name("kind"),
        at.Quantity<VolumeAt20C>("brim"),
        at.OptionalQuantity<VolumeAt20C>("fill"),
        MaxVolumes(at),
        at.OptionalQuantity<GaugePressure>("maxPressure"));

    /// <summary>A bare number, since volumes of gas per volume of beer have no unit; its digits are kept.</summary>
    private static Entered<Carbonation>? MaxVolumes(ObjectReader at)
    {
        const double Most = 100;
        var cursor = at.Take("maxVolumes");
        return cursor?.Number(0, Most) is { } volumes
            ? new Entered<Carbonation>(Carbonation.FromVolumes(volumes), cursor.Value.Element.GetRawText())
            : null;
    }
}
