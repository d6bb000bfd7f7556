using Gylebook.Store.Sqlite.Migrations;

namespace Gylebook.Store.Sqlite;

/// <summary>A table whose rows carry checksums, and how a person calls such a row.</summary>
/// <param name="Name">Of the table.</param>
/// <param name="Sum">SQL: the checksum its values ought to have.</param>
/// <param name="Words">What a row is.</param>
/// <param name="Title">SQL: what it is called.</param>
/// <param name="Recipe">SQL: the recipe it belongs to; null for what belongs to none.</param>
internal sealed record SealedTable(string Name, string Sum, string Words, string Title, string? Recipe)
{
    private const string OfRecipe = "(SELECT r.name FROM recipes r WHERE r.id = t.recipe_id)";
    private const string OfGyle = "(SELECT g.name FROM gyles g WHERE g.id = t.gyle_id)";
    private const string OfPortion = "(SELECT g.name FROM gyles g JOIN portions p ON p.gyle_id = g.id WHERE p.id = t.portion_id)";

    /// <exception cref="ArgumentOutOfRangeException">A new table that has no words here yet.</exception>
    public static SealedTable Of(string table, IEnumerable<string> columns)
    {
        (string words, string title, string? recipe) = table switch
        {
            "recipes" => ("The entry of the recipe", "t.name", "t.id"),
            "drafts" => ("The draft of the recipe", OfRecipe, "t.recipe_id"),
            "edits" => ("An edit of the recipe", $"{OfRecipe} || ', ' || t.label", "t.recipe_id"),
            "versions" => ("A version of the recipe", $"{OfRecipe} || ', ' || t.number", "t.recipe_id"),
            "kits" => ("The kit", "t.name", null),
            "foods" => ("The food", "t.name", null),
            "waters" => ("The water plan", "t.name", null),
            "gyles" => ("The gyle", "t.name", null),
            "plans" => ("The plan of the gyle", OfGyle, null),
            "portions" => ("A portion of the gyle", OfGyle, null),
            "readings" => ("A reading of the gyle", OfPortion, null),
            "actions" => ("An action of the gyle", OfPortion, null),
            "settings" => ("The setting", "t.key", null),
            _ => ((string, string, string?)?)null,
        } ?? throw new ArgumentOutOfRangeException(nameof(table), table, "Nobody has said how a row of this table is called.");
        return new SealedTable(table, HandWritten.SumOf(columns), words, title, recipe);
    }
}
