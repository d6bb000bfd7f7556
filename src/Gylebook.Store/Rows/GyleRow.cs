using Gylebook.Gyles;
using Gylebook.Recipes.Kits;

namespace Gylebook.Store.Rows;

/// <summary>One brewing of one recipe version on one kit.</summary>
public sealed class GyleRow : ISealedRow
{
    public Guid Id { get; set; }

    public required string Name { get; set; }

    public Guid RecipeId { get; set; }

    /// <summary>Set when the gyle starts, and not before.</summary>
    public int? VersionNumber { get; set; }

    public Guid? KitId { get; set; }

    public GyleStatus Status { get; set; }

    public DateTimeOffset? PlannedTicks { get; set; }

    public DateTimeOffset? StartedTicks { get; set; }

    public DateTimeOffset UpdatedTicks { get; set; }

    public DateTimeOffset? DeletedTicks { get; set; }

    public bool IsDemo { get; set; }

    public List<PortionRow> Portions { get; } = [];

    public List<StayRow> Stays { get; } = [];

    public long Checksum { get; set; }
}

/// <summary>The plan as it was frozen when the gyle started: shown ever after, never recomputed.</summary>
public sealed class PlanRow : ISealedRow
{
    public Guid GyleId { get; set; }

    public required string Document { get; set; }

    public DateTimeOffset FrozenTicks { get; set; }

    public long Checksum { get; set; }
}

/// <summary>Liquid in one vessel. A gyle that is never divided has one portion.</summary>
public sealed class PortionRow : ISealedRow
{
    /// <summary>A number, not a Guid: millions of readings carry it, in the row and in the index.</summary>
    public long Id { get; set; }

    public Guid GyleId { get; set; }

    public required string Name { get; set; }

    /// <summary>Share of the gyle, 0 to 1.</summary>
    public double Share { get; set; }

    /// <summary>The stage after which it stands on its own; null for the whole gyle.</summary>
    public string? FromStage { get; set; }

    public long Checksum { get; set; }
}

/// <summary>Days for which a gyle has a vessel, as planned.</summary>
public sealed class StayRow : ISealedRow
{
    public long Id { get; set; }

    public Guid GyleId { get; set; }

    public VesselKind Kind { get; set; }

    /// <summary>By its name: a kit may be described anew, and the lid still says it.</summary>
    public required string Vessel { get; set; }

    public DateOnly FromDay { get; set; }

    public DateOnly? UntilDay { get; set; }

    public long Checksum { get; set; }
}

/// <summary>A reading, for ever.</summary>
public sealed class ReadingRow : ISealedRow
{
    public long Id { get; set; }

    public long PortionId { get; set; }

    public Guid? EntryId { get; set; }

    public DateTimeOffset AtTicks { get; set; }

    public DateTimeOffset RecordedTicks { get; set; }

    public string? Stage { get; set; }

    public string? Instrument { get; set; }

    public double? GravitySg { get; set; }

    public double? VolumeL { get; set; }

    public double? TemperatureC { get; set; }

    public double? Ph { get; set; }

    public double? PressureBar { get; set; }

    public string? Note { get; set; }

    /// <summary>As JSON of a readings file's entry.</summary>
    public string? Typed { get; set; }

    public long? ReplacesId { get; set; }

    public long Checksum { get; set; }
}

/// <summary>An action, for ever.</summary>
public sealed class ActionRow : ISealedRow
{
    public long Id { get; set; }

    public long PortionId { get; set; }

    public Guid? EntryId { get; set; }

    public DateTimeOffset AtTicks { get; set; }

    public DateTimeOffset RecordedTicks { get; set; }

    public ActionKind Kind { get; set; }

    public required string What { get; set; }

    public string? Stage { get; set; }

    public string? Step { get; set; }

    public string? Item { get; set; }

    public string? Lot { get; set; }

    public DateTimeOffset? UntilTicks { get; set; }

    public Guid? Undoes { get; set; }

    /// <summary>As JSON of the form its kind has.</summary>
    public string? Detail { get; set; }

    public double? MassKg { get; set; }

    public double? VolumeL { get; set; }

    public double? TemperatureC { get; set; }

    public long? ReplacesId { get; set; }

    public long Checksum { get; set; }
}
