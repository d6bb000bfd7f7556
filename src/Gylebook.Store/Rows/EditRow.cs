namespace Gylebook.Store.Rows;

/// <summary>A row that holds what its owner says today: a recipe's draft, or a sheet, which is its own draft.</summary>
public interface IDraftRow : ISealedRow
{
    /// <summary>Whose text it is: of a recipe, a kit, a food or a water plan.</summary>
    Guid OwnerId { get; }

    string Document { get; set; }

    /// <summary>Grows by one with every change, undo and redo included.</summary>
    long Revision { get; set; }

    /// <summary>The edit the text stands on; null before the first.</summary>
    long? EditId { get; set; }

    DateTimeOffset UpdatedTicks { get; set; }
}

/// <summary>One edit, for ever. Edits form a tree: undo goes to the parent, redo to the youngest child.</summary>
public sealed class EditRow : ISealedRow
{
    public long Id { get; set; }

    /// <summary>Whose text was edited; of any noun.</summary>
    public Guid OwnerId { get; set; }

    /// <summary>The edit the draft stood on before, or that one's own parent when both are one step; null at the root.</summary>
    public long? ParentId { get; set; }

    /// <summary>The edit to whose text <see cref="After"/> is the difference; null where it is packed whole.</summary>
    public long? BaseId { get; set; }

    /// <summary>The text before, packed as its difference to the text after.</summary>
    public required byte[] Before { get; set; }

    /// <summary>The text after: see <see cref="PackedText"/>.</summary>
    public required byte[] After { get; set; }

    /// <summary>What was edited, for the undo button: <c>Mash temperature</c>.</summary>
    public required string Label { get; set; }

    public DateTimeOffset AtTicks { get; set; }

    public required string TabId { get; set; }

    /// <summary>The draft had moved on when this arrived: kept, but not part of undo and redo.</summary>
    public bool IsSetAside { get; set; }

    public long Checksum { get; set; }
}

/// <summary>A numbered version, never changed.</summary>
public sealed class VersionRow : ISealedRow
{
    /// <summary>Whose version; of any noun.</summary>
    public Guid OwnerId { get; set; }

    public int Number { get; set; }

    public required string Document { get; set; }

    public CutReason Reason { get; set; }

    public string? Note { get; set; }

    public DateTimeOffset CutTicks { get; set; }

    public long Checksum { get; set; }
}
