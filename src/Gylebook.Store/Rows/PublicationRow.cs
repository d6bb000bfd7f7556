namespace Gylebook.Store.Rows;

/// <summary>What is given out of a recipe: its public page as a document. Gone when it is taken back.</summary>
public sealed class PublicationRow : ISealedRow
{
    public Guid RecipeId { get; set; }

    /// <summary>Its part of an address; no two have the same.</summary>
    public required string Slug { get; set; }

    public int VersionNumber { get; set; }

    /// <summary>The gyle whose measured numbers go with it; null for none.</summary>
    public Guid? GyleId { get; set; }

    public required string Document { get; set; }

    public DateTimeOffset PublishedTicks { get; set; }

    public long Checksum { get; set; }
}

/// <summary>Something put right in a version that was given out.</summary>
public sealed class ErratumRow : ISealedRow
{
    public long Id { get; set; }

    public Guid RecipeId { get; set; }

    public int VersionNumber { get; set; }

    public DateOnly WrittenDay { get; set; }

    public required string Text { get; set; }

    public long Checksum { get; set; }
}
