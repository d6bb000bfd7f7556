using System.Globalization;
using System.Text.Json.Nodes;
using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>A kit as the keys of its file, in the order of the guide.</summary>
internal static class KitWriter
{
    internal static JsonObject Write(Kit kit) => new ObjectWriter()
        .Put("format", KitFile.Format)
        .Put("name", kit.Name)
        .Put("kettle", Kettle(kit.Kettle))
        .PutAlways("tun", kit.Tun is { } tun ? Tun(tun) : null)
        .Put("racking", new ObjectWriter().Put("leftBehind", kit.RackingLeftBehind).Done)
        .PutAlways("bag", kit.Bag is { } bag ? Bag(bag) : null)
        .Put("conversion", kit.Conversion)
        .Put("mashCooling", kit.MashCooling)
        .PutAlways("chiller", kit.Chiller is { } chiller ? Chiller(chiller) : null)
        .Put("wortCooling", kit.WortCooling)
        .Put("fermenter", new ObjectWriter().Put("brim", kit.Fermenter.Brim).Put("usable", kit.Fermenter.Usable).Done)
        .PutList("packages", kit.Packages, Package)
        .PutAlways("altitude", kit.Altitude?.Text)
        .Put("grainTemperature", kit.GrainTemperature)
        .PutAlways("instruments", kit.Instruments is { } instruments ? Instruments(instruments) : null)
        .Done;

    private static JsonObject Kettle(Kettle kettle) => new ObjectWriter()
        .Put("brim", kettle.Brim)
        .Put("usable", kettle.Usable)
        .Put("evaporation", kettle.Evaporation)
        .PutAlways("power", kettle.Power?.Text)
        .Put("leftBehind", kettle.LeftBehind)
        .Put("solidsLeft", kettle.SolidsLeft)
        .Put("heldBySpentHops", kettle.HeldBySpentHops)
        .Done;

    private static JsonObject Tun(Tun tun) => new ObjectWriter()
        .Put("brim", tun.Brim)
        .Put("deadSpace", tun.DeadSpace)
        .Put("heatCapacity", tun.HeatCapacity)
        .Put("liquorKept", tun.LiquorKept)
        .Done;

    private static JsonObject Bag(Bag bag) => new ObjectWriter()
        .Put("liquorKept", bag.LiquorKept)
        .Put("rinsingShare", bag.RinsingShare)
        .Put("brewsInKettle", bag.BrewsInKettle)
        .Done;

    private static JsonObject Chiller(Chiller chiller) => new ObjectWriter()
        .Put("kind", chiller.Kind)
        .Put("coolant", chiller.Coolant)
        .Put("litresPerMinute", chiller.LitresPerMinute is { } flow ? JsonValue.Create(flow) : null)
        .Put("kilowattsPerKelvin", chiller.KilowattsPerKelvin is { } coil ? JsonValue.Create(coil) : null)
        .Put("wortLitresPerMinute", chiller.WortLitresPerMinute is { } wort ? JsonValue.Create(wort) : null)
        .Done;

    private static JsonObject Package(PackageKind package) => new ObjectWriter()
        .Put("kind", package.Kind)
        .Put("brim", package.Brim)
        .Put("fill", package.Fill)
        .Put("maxVolumes", package.MaxVolumes is { } volumes ? MaxVolumes(volumes) : null)
        .Put("maxPressure", package.MaxPressure)
        .Done;

    /// <summary>The digits as typed where they are a bare number, else the volumes, rounded to a millionth.</summary>
    private static JsonValue MaxVolumes(Entered<Carbonation> entered) =>
        decimal.TryParse(entered.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var typed)
            ? JsonValue.Create(typed)
            : JsonValue.Create(Math.Round(entered.Value.Volumes, 6));

    private static JsonObject Instruments(Instruments instruments) => new ObjectWriter()
        .Put("hydrometer", instruments.Hydrometer)
        .Put("volume", instruments.Volume)
        .Put("thermometer", instruments.Thermometer)
        .Put("scale", instruments.Scale)
        .Done;
}
