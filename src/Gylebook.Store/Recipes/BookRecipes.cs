using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>One line of the list of recipes.</summary>
/// <param name="Id">Which recipe.</param>
/// <param name="Name">As the draft says.</param>
/// <param name="Updated">When the draft last changed.</param>
/// <param name="Revision">Of the draft.</param>
/// <param name="LatestVersion">Number of the latest version; null when none was cut.</param>
/// <param name="PublishedVersion">Number of the version on the public page; null when none.</param>
/// <param name="Deleted">When it went into the bin; null when it stands in the book.</param>
/// <param name="IsDemo">Part of the demo.</param>
public sealed record RecipeLine(
    Guid Id,
    string Name,
    DateTimeOffset Updated,
    long Revision,
    int? LatestVersion,
    int? PublishedVersion,
    DateTimeOffset? Deleted,
    bool IsDemo);

/// <summary>The first lines of a list, and how long it is.</summary>
/// <param name="First">As many as were asked for, if there are.</param>
/// <param name="Count">How many there are.</param>
public sealed record RecipesFound(IReadOnlyList<RecipeLine> First, int Count);

/// <summary>The list of recipes.</summary>
public sealed class BookRecipes
{
    private readonly BookAccess _access;
    private readonly BookDrafts _drafts;

    internal BookRecipes(BookAccess access, BookDrafts drafts) => (_access, _drafts) = (access, drafts);

    /// <summary>The recipes of the book, the one last worked on first.</summary>
    /// <param name="search">Part of the name, whatever its case and accents; null or blank for all.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public Task<List<RecipeLine>> ListAsync(string? search = null, CancellationToken cancellation = default) =>
        LinesAsync(recipes => Named(recipes.Where(r => r.DeletedTicks == null), search), cancellation);

    /// <summary>The first of the recipes that <see cref="ListAsync"/> would give, and how many those are.</summary>
    /// <param name="search">Part of the name, whatever its case and accents; null or blank for all.</param>
    /// <param name="most">How many at most; from 1.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public Task<RecipesFound> SearchAsync(string? search, int most, CancellationToken cancellation = default) =>
        FirstAsync(recipes => Named(recipes.Where(r => r.DeletedTicks == null), search), most, cancellation);

    /// <summary>The first of the recipes that <see cref="DeletedAsync"/> would give, and how many those are.</summary>
    /// <param name="most">How many at most; from 1.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public Task<RecipesFound> BinAsync(int most, CancellationToken cancellation = default) => FirstAsync(InBin, most, cancellation);

    /// <summary>The recipes in the bin, the last thrown first.</summary>
    public Task<List<RecipeLine>> DeletedAsync(CancellationToken cancellation = default) =>
        LinesAsync(InBin, cancellation);

    /// <summary>One recipe, in the bin or not; null when there is no such recipe.</summary>
    public async Task<RecipeLine?> FindAsync(Guid recipeId, CancellationToken cancellation = default) =>
        (await LinesAsync(recipes => recipes.Where(r => r.Id == recipeId), cancellation)).SingleOrDefault();

    /// <summary>Puts a new recipe into the book.</summary>
    /// <param name="document">Its whole text; the name is in it.</param>
    /// <param name="isDemo">Part of the demo.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public Task<Guid> CreateAsync(string document, bool isDemo = false, CancellationToken cancellation = default)
    {
        RecipeRow recipe = New(document, isDemo);
        return AddAsync(recipe, cancellation);
    }

    /// <summary>Gives a recipe another name: an edit of its draft like any other, which undo takes back.</summary>
    public async Task<long> RenameAsync(Guid recipeId, string name, string tabId, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        long revision = await _access.WriteAsync(
            async context => (await _drafts.EditAsync(
                context, recipeId, document => DocumentText.WithName(document, DocumentText.Recipe, name.Trim()), "Name", tabId, cancellation)).Revision,
            cancellation);
        _drafts.Tell(recipeId, revision, tabId);
        return revision;
    }

    /// <summary>Copies the draft into a new recipe, without its history and versions.</summary>
    /// <param name="recipeId">What to copy.</param>
    /// <param name="name">What the copy is called.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<Guid> DuplicateAsync(Guid recipeId, string name, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Draft draft = await _drafts.FindAsync(recipeId, cancellation)
            ?? throw new ArgumentOutOfRangeException(nameof(recipeId), recipeId, "No such recipe in the book.");
        if (draft.IsDamaged)
        {
            throw _access.Damaged("The draft of this recipe", "recipe");
        }

        return await CreateAsync(
            DocumentText.WithName(draft.Document, DocumentText.Recipe, name.Trim()), cancellation: cancellation);
    }

    /// <summary>Puts a recipe into the bin. Its gyles keep their plans, and it can come back.</summary>
    public Task DeleteAsync(Guid recipeId, CancellationToken cancellation = default) =>
        BinAsync(recipeId, _access.Now, cancellation);

    /// <summary>Takes a recipe out of the bin, with all its history.</summary>
    public Task RestoreAsync(Guid recipeId, CancellationToken cancellation = default) =>
        BinAsync(recipeId, null, cancellation);

    private Task<bool> BinAsync(Guid recipeId, DateTimeOffset? deleted, CancellationToken cancellation) =>
        ChangeAsync(
            recipeId,
            (_, recipe) =>
            {
                recipe.DeletedTicks = deleted;
                return Task.FromResult(true);
            },
            cancellation);

    private async Task<T> ChangeAsync<T>(Guid recipeId, Func<BookContext, RecipeRow, Task<T>> change, CancellationToken cancellation)
    {
        long revision = 0;
        T result = await _access.WriteAsync(
            async context =>
            {
                RecipeRow recipe = await context.Recipes.Include(r => r.Draft).SingleOrDefaultAsync(r => r.Id == recipeId, cancellation)
                    ?? throw new ArgumentOutOfRangeException(nameof(recipeId), recipeId, "No such recipe in the book.");
                revision = recipe.Draft!.Revision;
                return await change(context, recipe);
            },
            cancellation);
        _drafts.Tell(recipeId, revision, null);
        return result;
    }

    private async Task<Guid> AddAsync(RecipeRow recipe, CancellationToken cancellation)
    {
        await _access.WriteAsync(context => Task.FromResult(context.Recipes.Add(recipe)), cancellation);
        _drafts.Tell(recipe.Id, recipe.Draft!.Revision, null);
        return recipe.Id;
    }

    private RecipeRow New(string document, bool isDemo)
    {
        string name = DocumentText.NameIn(document, DocumentText.Recipe);
        DateTimeOffset now = _access.Now;
        var id = Guid.CreateVersion7(now);
        return new RecipeRow
        {
            Id = id,
            Name = name,
            FoldedName = NameSearch.Fold(name),
            CreatedTicks = now,
            UpdatedTicks = now,
            IsDemo = isDemo,
            Draft = new DraftRow { RecipeId = id, Document = document, Revision = 1, UpdatedTicks = now },
        };
    }

    private static IQueryable<RecipeRow> Named(IQueryable<RecipeRow> recipes, string? search)
    {
        string wanted = NameSearch.Fold(search ?? "");
        return (wanted.Length == 0 ? recipes : recipes.Where(r => r.FoldedName.Contains(wanted)))
            .OrderByDescending(r => r.UpdatedTicks);
    }

    private static IQueryable<RecipeRow> InBin(IQueryable<RecipeRow> recipes) =>
        recipes.Where(r => r.DeletedTicks != null).OrderByDescending(r => r.DeletedTicks);

    private async Task<RecipesFound> FirstAsync(
        Func<IQueryable<RecipeRow>, IQueryable<RecipeRow>> choose, int most, CancellationToken cancellation)
    {
        List<RecipeLine> first = await LinesAsync(recipes => choose(recipes).Take(most), cancellation);
        int count = first.Count < most
            ? first.Count
            : await _access.ReadAsync(context => choose(context.Recipes).CountAsync(cancellation), cancellation);
        return new RecipesFound(first, count);
    }

    private Task<List<RecipeLine>> LinesAsync(
        Func<IQueryable<RecipeRow>, IQueryable<RecipeRow>> choose, CancellationToken cancellation) =>
        _access.ReadAsync(
            context => choose(context.Recipes)
                .Select(r => new RecipeLine(
                    r.Id,
                    r.Name,
                    r.UpdatedTicks,
                    r.Draft!.Revision,
                    context.Versions.Where(v => v.OwnerId == r.Id).Max(v => (int?)v.Number),
                    r.PublishedVersion,
                    r.DeletedTicks,
                    r.IsDemo))
                .ToListAsync(cancellation),
            cancellation);
}
