namespace Gylebook.Store.Rows;

/// <summary>A document that is its own draft: a kit, a food sheet, a water plan or a sheet of the larder.</summary>
public abstract class SheetRow : IDraftRow
{
    public Guid Id { get; set; }

    public string Name { get; set; } = "";

    /// <summary>The name without case and accents: see <see cref="NameSearch"/>.</summary>
    public string FoldedName { get; set; } = "";

    public string Document { get; set; } = "";

    public long Revision { get; set; }

    public long? EditId { get; set; }

    public DateTimeOffset UpdatedTicks { get; set; }

    /// <summary>When it was put in the bin; null while it stands in the book.</summary>
    public DateTimeOffset? DeletedTicks { get; set; }

    public bool IsDemo { get; set; }

    public long Checksum { get; set; }

    Guid IDraftRow.OwnerId => Id;
}

/// <summary>A brewer's kit.</summary>
public sealed class KitRow : SheetRow;

/// <summary>A food sheet.</summary>
public sealed class FoodRow : SheetRow
{
    /// <summary>The id in the document, by which recipes name the food; null when it has none.</summary>
    public string? FoodId { get; set; }
}

/// <summary>A water plan.</summary>
public sealed class WaterRow : SheetRow
{
    /// <summary>The recipe it is made for; null for one that is kept for any.</summary>
    public Guid? RecipeId { get; set; }
}

/// <summary>A sheet of the larder: of a malt, a hop, a yeast or anything else on the shelf, with its lots.</summary>
public sealed class LarderSheetRow : SheetRow
{
    /// <summary>What its document is: <c>malt</c>, <c>hop</c>, <c>yeast</c> or <c>shelf</c>.</summary>
    public string Form { get; set; } = "";

    /// <summary>The id in the document, by which recipes name it; null when it has none.</summary>
    public string? SheetId { get; set; }
}

/// <summary>One thing the book remembers about itself or its brewer.</summary>
public sealed class SettingRow : ISealedRow
{
    public required string Key { get; set; }

    public required string Value { get; set; }

    public DateTimeOffset UpdatedTicks { get; set; }

    public long Checksum { get; set; }
}
