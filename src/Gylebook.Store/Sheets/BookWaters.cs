using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>A water plan and what it is for.</summary>
/// <param name="Sheet">The plan.</param>
/// <param name="RecipeId">The recipe it is made for; null for one that is kept for any.</param>
/// <param name="Recipe">What that recipe is called; null when there is none.</param>
public sealed record WaterOf(Sheet Sheet, Guid? RecipeId, string? Recipe);

/// <summary>The brewer's water plans: one for each recipe that has one, and those kept for any.</summary>
public sealed class BookWaters : BookSheets<WaterRow>
{
    internal BookWaters(BookAccess access)
        : base(access, new SheetDraftRows<WaterRow>(BookNoun.Water, "water", DocumentText.Water))
    {
    }

    /// <summary>All that stand in the book, by name; each with the recipe it is made for.</summary>
    public Task<List<WaterOf>> ListWithRecipesAsync(CancellationToken cancellation = default) =>
        WithRecipesAsync(waters => waters.Where(w => w.DeletedTicks == null).OrderBy(w => w.FoldedName), cancellation);

    /// <summary>One of them, in the bin or not, with the recipe it is made for; null when there is none.</summary>
    public async Task<WaterOf?> FindWithRecipeAsync(Guid id, CancellationToken cancellation = default) =>
        (await WithRecipesAsync(waters => waters.Where(w => w.Id == id), cancellation)).SingleOrDefault();

    /// <summary>The plan made for a recipe; null when it has none.</summary>
    public async Task<Sheet?> OfRecipeAsync(Guid recipeId, CancellationToken cancellation = default) =>
        (await ChooseAsync(waters => waters.Where(w => w.RecipeId == recipeId && w.DeletedTicks == null), cancellation)).SingleOrDefault();

    /// <summary>Makes a plan for a recipe; one that has a plan keeps it.</summary>
    /// <param name="recipeId">Which recipe.</param>
    /// <param name="document">Its whole text; the name is in it.</param>
    /// <param name="isDemo">Part of the demo.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>The recipe's plan.</returns>
    public async Task<Guid> CreateForAsync(Guid recipeId, string document, bool isDemo = false, CancellationToken cancellation = default)
    {
        WaterRow made = new() { Id = Guid.CreateVersion7(Access.Now), IsDemo = isDemo, RecipeId = recipeId };
        Put(made, document);
        WaterRow kept = await Access.WriteAsync(
            async context =>
            {
                WaterRow? standing = await StandingAsync(context, recipeId, cancellation);
                return standing ?? context.Waters.Add(made).Entity;
            },
            cancellation);
        if (kept == made)
        {
            Tell(made, null);
        }

        return kept.Id;
    }

    /// <summary>Out of the bin; a plan whose recipe has another one by now comes back as one that is kept for any.</summary>
    private protected override async Task RestoringAsync(BookContext context, WaterRow row, CancellationToken cancellation)
    {
        if (row.RecipeId is { } recipe && await StandingAsync(context, recipe, cancellation) is not null)
        {
            row.RecipeId = null;
        }
    }

    private static Task<WaterRow?> StandingAsync(BookContext context, Guid recipeId, CancellationToken cancellation) =>
        context.Waters.SingleOrDefaultAsync(w => w.RecipeId == recipeId && w.DeletedTicks == null, cancellation);

    private Task<List<WaterOf>> WithRecipesAsync(Func<IQueryable<WaterRow>, IQueryable<WaterRow>> choose, CancellationToken cancellation) =>
        Access.ReadAsync(
            async context => (await choose(context.Waters)
                .Select(w => new { Row = w, Recipe = context.Recipes.Where(r => r.Id == w.RecipeId).Select(r => r.Name).SingleOrDefault() })
                .ToListAsync(cancellation))
                .ConvertAll(water => new WaterOf(Show(context, water.Row), water.Row.RecipeId, water.Recipe)),
            cancellation);
}
