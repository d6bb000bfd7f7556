using System.Globalization;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Store.Sqlite;

namespace Gylebook.Benchmarks;

/// <summary>A book of many years: 2,000 recipes with 100,000 edits.</summary>
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
            context.Edits.AddRange(recipes.SelectMany((recipe, i) => Edits(recipe, 1 + ((long)some[i] * EditsEach))));
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

    private static IEnumerable<EditRow> Edits(RecipeRow recipe, long first) => Enumerable.Range(0, EditsEach).Select(number =>
    {
        int place = number % (EditTree.MostOnOne + 1);
        string after = Document(recipe.Name, number + 1);
        return new EditRow
        {
            Id = first + number,
            OwnerId = recipe.Id,
            BaseId = place == 0 ? null : first + number - place,
            Before = PackedText.Pack(Document(recipe.Name, number), after),
            After = PackedText.Pack(after, place == 0 ? null : Document(recipe.Name, number + 1 - place)),
            Label = "Boil",
            AtTicks = recipe.UpdatedTicks,
            TabId = "bench",
        };
    });

    private static string Document(string name, int number) => TwentyIngredients.Recipe
        .Replace("\"Twenty\"", $"\"{name}\"", StringComparison.Ordinal)
        .Replace("\"time\": \"60 min\" },", string.Create(CultureInfo.InvariantCulture, $"\"time\": \"{60 + number} min\" }},"), StringComparison.Ordinal);
}
