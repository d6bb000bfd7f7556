using Gylebook.Store.Sqlite.Migrations;

namespace Gylebook.Store.Sqlite;

/// <summary>A table whose rows carry checksums, and how a person calls such a row.</summary>
/// <param name="Name">Of the table.</param>
/// <param name="Sum">SQL: the checksum its values ought to have.</param>
/// <param name="Words">What a row is.</param>
/// <param name="Title">SQL: which one, to follow the words.</param>
/// <param name="Owner">SQL: the id of the recipe or sheet it belongs to; null for what belongs to none.</param>
internal sealed record SealedTable(string Name, string Sum, string Words, string Title, string? Owner)
{
    private const string Itself = """ '"' || t.name || '"' """;
    private const string OfRecipe = """ (SELECT '"' || r.name || '"' FROM recipes r WHERE r.id = t.recipe_id) """;
    private const string OfGyle = """ (SELECT '"' || g.name || '"' FROM gyles g WHERE g.id = t.gyle_id) """;
    private const string OfPortion = """ (SELECT '"' || g.name || '"' FROM gyles g JOIN portions p ON p.gyle_id = g.id WHERE p.id = t.portion_id) """;

    private const string OfDevice = """ (SELECT '"' || d.name || '"' FROM devices d WHERE d.id = t.device_id) """;

    /// <exception cref="ArgumentOutOfRangeException">A new table that has no words here yet.</exception>
    public static SealedTable Of(string table, IEnumerable<string> columns)
    {
        (string words, string title, string? owner) = table switch
        {
            "recipes" => ("The entry of the recipe", Itself, "t.id"),
            "drafts" => ("The draft of the recipe", OfRecipe, "t.recipe_id"),
            "edits" => ("An edit", OfOwner("t.label"), "t.owner_id"),
            "versions" => ("A version", OfOwner("t.number"), "t.owner_id"),
            "publications" => ("The public page of the recipe", OfRecipe, "t.recipe_id"),
            "errata" => ("A correction of the recipe", OfRecipe, "t.recipe_id"),
            "kits" => ("The kit", Itself, "t.id"),
            "foods" => ("The food", Itself, "t.id"),
            "waters" => ("The water plan", Itself, "t.id"),
            "larder_sheets" => ("The larder sheet", Itself, "t.id"),
            "gyles" => ("The gyle", Itself, null),
            "plans" => ("The plan of the gyle", OfGyle, null),
            "portions" => ("A portion of the gyle", OfGyle, null),
            "stays" => ("Days of a vessel of the gyle", OfGyle, null),
            "readings" => ("A reading of the gyle", OfPortion, null),
            "actions" => ("An action of the gyle", OfPortion, null),
            "devices" => ("The device", Itself, null),
            "device_places" => ("A place of the device", OfDevice, null),
            "settings" => ("The setting", """ '"' || t.key || '"' """, null),
            _ => ((string, string, string?)?)null,
        } ?? throw new ArgumentOutOfRangeException(nameof(table), table, "Nobody has said how a row of this table is called.");
        return new SealedTable(table, HandWritten.SumOf(columns), words, title, owner);
    }

    private static string OfOwner(string which) =>
        $"""
        (SELECT 'of the ' || o.word || ' "' || o.name || ', ' || {which} || '"' FROM (
            SELECT id, name, 'recipe' AS word FROM recipes
            UNION ALL SELECT id, name, 'kit' FROM kits
            UNION ALL SELECT id, name, 'food' FROM foods
            UNION ALL SELECT id, name, 'water plan' FROM waters
            UNION ALL SELECT id, name, 'larder sheet' FROM larder_sheets) o
         WHERE o.id = t.owner_id)
        """;
}
