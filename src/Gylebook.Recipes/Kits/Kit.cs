using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Kits;

/// <summary>One brewer's equipment as numbers.</summary>
public sealed record Kit
{
    /// <summary>What the brewer calls it.</summary>
    public required string Name { get; init; }

    /// <summary>The kettle and its burner.</summary>
    public required Kettle Kettle { get; init; }

    /// <summary>A mash tun; null when the bag stands in the kettle.</summary>
    public Tun? Tun { get; init; }

    /// <summary>The bag; null when there is none.</summary>
    public Bag? Bag { get; init; }

    /// <summary>Share of the grist's laboratory extract that the mash reaches; the shortfall is starch.</summary>
    public required Entered<Fraction> Conversion { get; init; }

    /// <summary>Time in which a standing mash's warmth over the room falls to 1/e; null when nobody has measured it.</summary>
    public Entered<Duration>? MashCooling { get; init; }

    /// <summary>What cools the wort; null for nothing: it cools by itself.</summary>
    public Chiller? Chiller { get; init; }

    /// <summary>Time in which the warmth over the room of a full, closed vessel of wort falls to 1/e; null when nobody has measured it.</summary>
    public Entered<Duration>? WortCooling { get; init; }

    /// <summary>The fermenter.</summary>
    public required Fermenter Fermenter { get; init; }

    /// <summary>Clear beer that stays in the fermenter or the siphon when racking.</summary>
    public required Entered<VolumeAt20C> RackingLeftBehind { get; init; }

    /// <summary>What the beer can be packaged in.</summary>
    public required IReadOnlyList<PackageKind> Packages { get; init; }

    /// <summary>Fermenters and kegs by name; empty where nobody keeps count of them.</summary>
    public IReadOnlyList<Vessel> Vessels { get; init; } = [];

    /// <summary>How long cleaner and sanitiser stay on; null when nobody said.</summary>
    public Cleaning? Cleaning { get; init; }

    /// <summary>Height above the sea; null when nobody said.</summary>
    public Entered<Length>? Altitude { get; init; }

    /// <summary>The same in metres; the sea's where nobody said.</summary>
    public double MetresAboveSea => Altitude?.Value.Metres ?? 0;

    /// <summary>Temperature of the grain before it is mashed.</summary>
    public required Entered<Temperature> GrainTemperature { get; init; }

    /// <summary>How far the instruments may be off.</summary>
    public Instruments? Instruments { get; init; }

    /// <summary>Figures that gyles taught and the brewer accepted, the earliest first.</summary>
    public IReadOnlyList<AcceptedFigure> Learned { get; init; } = [];

    /// <summary>What was last accepted of a figure, for as long as the kit still says so; null once it was typed anew, or never learned.</summary>
    public AcceptedFigure? LearnedOf(KitFigure figure) =>
        Learned.LastOrDefault(accepted => accepted.Figure == figure) is { } last && last.To == figure.TextIn(this) ? last : null;
}

/// <summary>The kettle and its burner.</summary>
/// <param name="Brim">Litres to the rim.</param>
/// <param name="Usable">Litres it may hold at work.</param>
/// <param name="Evaporation">Water boiled off per hour.</param>
/// <param name="Power">Heat at full flame; null when unknown.</param>
/// <param name="LeftBehind">Clear wort that cannot be poured or pumped out.</param>
/// <param name="SolidsLeft">Share of break and food solids that stays in the kettle with the wort it holds.</param>
/// <param name="HeldBySpentHops">Wort that a kilogram of whole hops keeps.</param>
public sealed record Kettle(
    Entered<VolumeAt20C> Brim,
    Entered<VolumeAt20C> Usable,
    Entered<Evaporation> Evaporation,
    Entered<Power>? Power,
    Entered<VolumeAt20C> LeftBehind,
    Entered<Fraction> SolidsLeft,
    Entered<SpecificVolume> HeldBySpentHops);

/// <summary>A mash tun.</summary>
/// <param name="Brim">Litres to the rim.</param>
/// <param name="DeadSpace">Wort below the outlet.</param>
/// <param name="HeatCapacity">Heat it takes up per degree when it starts cold.</param>
/// <param name="LiquorKept">Litres of liquor in, less litres of wort out, per kilogram of grist as weighed.</param>
public sealed record Tun(
    Entered<VolumeAt20C> Brim,
    Entered<VolumeAt20C> DeadSpace,
    Entered<HeatCapacity> HeatCapacity,
    Entered<SpecificVolume> LiquorKept);

/// <summary>A mesh bag for the grain.</summary>
/// <param name="LiquorKept">Litres of liquor in, less litres of wort out, per kilogram of grist as weighed.</param>
/// <param name="RinsingShare">Share of the held wort that a poured rinse mixes with.</param>
/// <param name="BrewsInKettle">Whether the bag hangs in the kettle, which is then warm already.</param>
public sealed record Bag(Entered<SpecificVolume> LiquorKept, Entered<Fraction> RinsingShare, bool BrewsInKettle);

/// <summary>What cools the wort.</summary>
/// <param name="Kind">As it is written, such as <c>immersion</c>; <see cref="ChillerKinds"/> has the words.</param>
/// <param name="Coolant">Temperature of the water that cools it.</param>
public sealed record Chiller(string Kind, Entered<Temperature>? Coolant)
{
    /// <summary>The kind meant; null for a word we do not know.</summary>
    public ChillerKind? Means => ChillerKinds.Of(Kind);

    /// <summary>Cooling water, litres a minute; null when unknown.</summary>
    public double? LitresPerMinute { get; init; }

    /// <summary>Heat it carries for each degree between wort and water, kW/K; null when unknown.</summary>
    public double? KilowattsPerKelvin { get; init; }

    /// <summary>Wort through a counterflow chiller, litres a minute; null to run it as fast as still reaches the pitch.</summary>
    public double? WortLitresPerMinute { get; init; }
}

/// <summary>The fermenter.</summary>
/// <param name="Brim">Litres to the rim.</param>
/// <param name="Usable">Litres it may hold below the foam.</param>
public sealed record Fermenter(Entered<VolumeAt20C> Brim, Entered<VolumeAt20C> Usable);

/// <summary>A kind of package the brewer has.</summary>
/// <param name="Kind">What recipes call it by.</param>
/// <param name="Brim">Litres to the rim.</param>
/// <param name="Fill">Litres it is filled with; null for the brim.</param>
/// <param name="MaxVolumes">Carbonation it is made for; null when unsaid.</param>
/// <param name="MaxPressure">Gauge pressure it is rated for; null when unsaid.</param>
public sealed record PackageKind(
    string Kind,
    Entered<VolumeAt20C> Brim,
    Entered<VolumeAt20C>? Fill,
    Entered<Carbonation>? MaxVolumes,
    Entered<GaugePressure>? MaxPressure)
{
    /// <summary>Whether it is a keg: its name says so.</summary>
    public bool IsKeg => IsKegCalled(Kind);

    /// <summary>Whether packages of that name are kegs.</summary>
    public static bool IsKegCalled(string kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return kind.Contains("keg", StringComparison.OrdinalIgnoreCase);
    }
}

/// <summary>How far the instruments may be off, as typed: "± 0.001".</summary>
/// <param name="Hydrometer">In specific gravity.</param>
/// <param name="Volume">In litres.</param>
/// <param name="Thermometer">In degrees.</param>
/// <param name="Scale">In grams.</param>
public sealed record Instruments(string? Hydrometer, string? Volume, string? Thermometer, string? Scale);
