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

    public long Checksum { get; set; }
}

/// <summary>The one draft of a recipe.</summary>
public sealed class DraftRow : IDraftRow
{
    public Guid RecipeId { get; set; }

    public RecipeRow? Recipe { get; set; }

    public required string Document { get; set; }

    public long Revision { get; set; }

    public long? EditId { get; set; }

    public DateTimeOffset UpdatedTicks { get; set; }

    public long Checksum { get; set; }

    Guid IDraftRow.OwnerId => RecipeId;
}
