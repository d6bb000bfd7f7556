namespace Gylebook.Store.Rows;

/// <summary>A recipe as a thing with a name; what it says stands in its draft and its versions.</summary>
public sealed class RecipeRow : ISealedRow
{
    public Guid Id { get; set; }

    /// <summary>The draft's name, kept here so that lists need not read documents.</summary>
    public required string Name { get; set; }

    /// <summary>The name without case and accents: see <see cref="NameSearch"/>.</summary>
    public required string FoldedName { get; set; }

    public DateTimeOffset CreatedTicks { get; set; }

    public DateTimeOffset UpdatedTicks { get; set; }

    /// <summary>When it was put in the bin; null while it stands in the book.</summary>
    public DateTimeOffset? DeletedTicks { get; set; }

    public bool IsDemo { get; set; }

    /// <summary>The version on the public page; null when none.</summary>
    public int? PublishedVersion { get; set; }

    public DateTimeOffset? PublishedTicks { get; set; }

    public DraftRow? Draft { get; set; }

    public List<VersionRow> Versions { get; } = [];

    public long Checksum { get; set; }
}

/// <summary>The one draft of a recipe.</summary>
public sealed class DraftRow : ISealedRow
{
    public Guid RecipeId { get; set; }

    public required string Document { get; set; }

    /// <summary>Grows by one with every change, undo and redo included.</summary>
    public long Revision { get; set; }

    /// <summary>The edit the draft stands on; null before the first.</summary>
    public long? EditId { get; set; }

    public DateTimeOffset UpdatedTicks { get; set; }

    public long Checksum { get; set; }
}

/// <summary>One edit, for ever. Edits form a tree: undo goes to the parent, redo to the youngest child.</summary>
public sealed class EditRow : ISealedRow
{
    public long Id { get; set; }

    public Guid RecipeId { get; set; }

    /// <summary>The edit the draft stood on before, or that one's own parent when both are one step; null at the root.</summary>
    public long? ParentId { get; set; }

    public required string Before { get; set; }

    public required string After { get; set; }

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
    public Guid RecipeId { get; set; }

    public int Number { get; set; }

    public required string Document { get; set; }

    public CutReason Reason { get; set; }

    public string? Note { get; set; }

    public DateTimeOffset CutTicks { get; set; }

    public long Checksum { get; set; }
}
