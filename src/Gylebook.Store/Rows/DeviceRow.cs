namespace Gylebook.Store.Rows;

/// <summary>Something that sends readings by itself.</summary>
public sealed class DeviceRow : ISealedRow
{
    /// <summary>A number, not a Guid: millions of rows carry it.</summary>
    public long Id { get; set; }

    public required string Name { get; set; }

    public DeviceKind Kind { get; set; }

    /// <summary>What its token hashes to; the token itself is nowhere. Null where none may send.</summary>
    public string? TokenHash { get; set; }

    /// <summary>Of the line that brings its gravity to what is so.</summary>
    public double Slope { get; set; }

    public double OffsetSg { get; set; }

    public double OffsetC { get; set; }

    public DateTimeOffset CreatedTicks { get; set; }

    /// <summary>When it was retired: nothing more is taken from it, and what it said stays.</summary>
    public DateTimeOffset? RetiredTicks { get; set; }

    public long Checksum { get; set; }
}

/// <summary>Where a device swims, or swam: one portion at a time.</summary>
public sealed class DevicePlaceRow : ISealedRow
{
    public long Id { get; set; }

    public long DeviceId { get; set; }

    public long PortionId { get; set; }

    public DateTimeOffset FromTicks { get; set; }

    /// <summary>Null while it is there.</summary>
    public DateTimeOffset? UntilTicks { get; set; }

    public long Checksum { get; set; }
}

/// <summary>What a device said once, for ever: see decision 0028.</summary>
/// <remarks>Not an <see cref="ISealedRow"/>, whose rows are sealed one by one as a context saves them: these come in thousands, past the context, and are looked through in stretches.</remarks>
public sealed class SensorRow
{
    public long DeviceId { get; set; }

    /// <summary>By the device's own clock.</summary>
    public DateTimeOffset AtTicks { get; set; }

    /// <summary>Of what else it said: the same said twice is kept once.</summary>
    public long SentKey { get; set; }

    public DateTimeOffset ArrivedTicks { get; set; }

    public double? GravitySg { get; set; }

    public double? TemperatureC { get; set; }

    public double? PressureBar { get; set; }

    public double? BatteryV { get; set; }

    /// <summary>What the device's own number for it hashes to; null where it gave none.</summary>
    public long? SentId { get; set; }

    public long Checksum { get; set; }
}
