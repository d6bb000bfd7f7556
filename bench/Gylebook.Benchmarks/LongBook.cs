using System.Globalization;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Store.Sqlite;

namespace Gylebook.Benchmarks;

/// <summary>A book of many years: 2,000 recipes with 100,000 edits, some 400 MB.</summary>
internal static class LongBook
{
    public const int Recipes = 2000;

    private const int EditsEach = 50;

    /// <summary>Makes it, row by row as the program would write them, a hundred recipes in one go.</summary>
    public static async Task MakeAsync(string file)
    {
        await using (await SqliteBook.OpenAsync(file, TimeProvider.System))
        {
        }

        foreach (int[] some in Enumerable.Range(0, Recipes).Chunk(100))
        {
            await using var context = new BookContext(SqliteBook.Options(file, SqliteBook.Patience));
            RecipeRow[] recipes = [.. some.Select(Recipe)];
            context.Recipes.AddRange(recipes);
            context.Edits.AddRange(recipes.SelectMany(Edits));
            await context.SaveChangesAsync();
        }
    }

    private static RecipeRow Recipe(int number)
    {
        DateTimeOffset at = new DateTimeOffset(2020, 1, 1, 0, 0, 0, TimeSpan.Zero).AddHours(number);
        string name = string.Create(CultureInfo.InvariantCulture, $"Beer {number:0000}");
        var id = Guid.CreateVersion7(at);
        return new RecipeRow
        {
            Id = id,
            Name = name,
            FoldedName = name.ToLowerInvariant(),
            CreatedTicks = at,
            UpdatedTicks = at,
            Draft = new DraftRow { RecipeId = id, Document = Document(name, 0), Revision = EditsEach + 1, UpdatedTicks = at },
        };
    }

    private static IEnumerable<EditRow> Edits(RecipeRow recipe) => Enumerable.Range(0, EditsEach).Select(number => new EditRow
    {
        RecipeId = recipe.Id,
        Before = Document(recipe.Name, number),
        After = Document(recipe.Name, number + 1),
        Label = "Boil",
        AtTicks = recipe.UpdatedTicks,
        TabId = "bench",
    });

    private static string Document(string name, int number) => TwentyIngredients.Recipe
        .Replace("\"Twenty\"", $"\"{name}\"", StringComparison.Ordinal)
        .Replace("\"time\": \"60 min\" },", string.Create(CultureInfo.InvariantCulture, $"\"time\": \"{60 + number} min\" }},"), StringComparison.Ordinal);
}
