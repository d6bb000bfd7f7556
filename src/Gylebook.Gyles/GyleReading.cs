using Gylebook.Science.Quantities;

namespace Gylebook.Gyles;

/// <summary>A measured value with its instrument, time and temperature, as it was read: nothing corrected.</summary>
/// <remarks>
/// Readings are never changed. A reading that was wrong is replaced by a later one that names it in
/// <see cref="ReplacesId"/>.
/// </remarks>
public sealed record GyleReading
{
    /// <summary>When it was measured.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Made where it was tapped, so that sending it twice keeps it once; null for a sensor's stream.</summary>
    public Guid? EntryId { get; init; }

    /// <summary>The stage it belongs to: <c>copperUp</c>, <c>ferment</c>; null when unsaid.</summary>
    public string? Stage { get; init; }

    /// <summary>The portion it is of; null for the whole.</summary>
    public string? Portion { get; init; }

    /// <summary>With what: <c>hydrometer</c>, or a sensor's name.</summary>
    public string? Instrument { get; init; }

    /// <summary>Gravity as the instrument showed it.</summary>
    public SpecificGravity? Gravity { get; init; }

    /// <summary>Volume as it stood in the vessel.</summary>
    public HotVolume? Volume { get; init; }

    /// <summary>Temperature of what was measured.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>pH, at the temperature of the sample.</summary>
    public double? Ph { get; init; }

    /// <summary>Pressure on the gauge of the vessel.</summary>
    public GaugePressure? Pressure { get; init; }

    /// <summary>Anything the brewer wants to remember.</summary>
    public string? Note { get; init; }

    /// <summary>The reading as it was typed, as JSON of one entry of <c>gylebook-readings/1</c>; null for a sensor's.</summary>
    public string? Typed { get; init; }

    /// <summary>Number of the reading that this one corrects.</summary>
    public long? ReplacesId { get; init; }
}
