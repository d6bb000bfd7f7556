using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>The rows that hold the drafts of one noun: all that differs between drafts of recipes, kits, foods, waters and larder sheets.</summary>
/// <param name="noun">Which noun.</param>
/// <param name="word">The noun in a sentence: <c>kit</c>.</param>
/// <param name="formats">The formats its documents may name.</param>
internal abstract class DraftRows(BookNoun noun, string word, IReadOnlyList<string> formats)
{
    public BookNoun Noun => noun;

    public string Word => word;

    public IReadOnlyList<string> Formats => formats;

    /// <summary>The draft of one owner; null when there is no such owner.</summary>
    public abstract Task<IDraftRow?> FindAsync(BookContext context, Guid id, CancellationToken cancellation);

    /// <summary>The draft of one owner.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such owner: the caller's bug.</exception>
    public async Task<IDraftRow> RowAsync(BookContext context, Guid id, CancellationToken cancellation) =>
        await FindAsync(context, id, cancellation)
        ?? throw new ArgumentOutOfRangeException(nameof(id), id, $"No such {word} in the book.");

    /// <summary>Puts a new owner's row into the book, without a text yet.</summary>
    public abstract IDraftRow Add(BookContext context, Guid id, DateTimeOffset now);

    /// <summary>Lets a draft say another text, in all columns that follow from it.</summary>
    public void Put(IDraftRow row, string document, long? editId, DateTimeOffset now)
    {
        row.Document = document;
        row.EditId = editId;
        row.Revision++;
        row.UpdatedTicks = now;
        Follow(row, document, now);
    }

    /// <summary>What else follows from a text: the name at least, by which lists find it.</summary>
    protected abstract void Follow(IDraftRow row, string document, DateTimeOffset now);
}

/// <summary>Drafts of recipes, which have a row of their own beside the recipe's.</summary>
internal sealed class RecipeDraftRows() : DraftRows(BookNoun.Recipe, "recipe", DocumentText.Recipe)
{
    /// <inheritdoc/>
    public override async Task<IDraftRow?> FindAsync(BookContext context, Guid id, CancellationToken cancellation) =>
        await context.Drafts.Include(d => d.Recipe).SingleOrDefaultAsync(d => d.RecipeId == id, cancellation);

    /// <inheritdoc/>
    public override IDraftRow Add(BookContext context, Guid id, DateTimeOffset now)
    {
        RecipeRow recipe = new() { Id = id, Name = "", FoldedName = "", CreatedTicks = now };
        recipe.Draft = new DraftRow { RecipeId = id, Recipe = recipe, Document = "" };
        return context.Recipes.Add(recipe).Entity.Draft!;
    }

    /// <inheritdoc/>
    protected override void Follow(IDraftRow row, string document, DateTimeOffset now)
    {
        RecipeRow recipe = ((DraftRow)row).Recipe!;
        recipe.Name = DocumentText.NameIn(document, Formats);
        recipe.FoldedName = NameSearch.Fold(recipe.Name);
        recipe.UpdatedTicks = now;
    }
}

/// <summary>Sheets, which are their own drafts.</summary>
internal class SheetDraftRows<TRow>(BookNoun noun, string word, IReadOnlyList<string> formats) : DraftRows(noun, word, formats)
    where TRow : SheetRow, new()
{
    /// <inheritdoc/>
    public override async Task<IDraftRow?> FindAsync(BookContext context, Guid id, CancellationToken cancellation) =>
        await context.Set<TRow>().SingleOrDefaultAsync(r => r.Id == id, cancellation);

    /// <inheritdoc/>
    public override IDraftRow Add(BookContext context, Guid id, DateTimeOffset now) => context.Set<TRow>().Add(new TRow { Id = id }).Entity;

    /// <inheritdoc/>
    protected override void Follow(IDraftRow row, string document, DateTimeOffset now)
    {
        var sheet = (TRow)row;
        sheet.Name = DocumentText.NameIn(document, Formats);
        sheet.FoldedName = NameSearch.Fold(sheet.Name);
    }
}

/// <summary>Food sheets, which recipes find by the id in their text.</summary>
internal sealed class FoodDraftRows() : SheetDraftRows<FoodRow>(BookNoun.Food, "food", DocumentText.Food)
{
    /// <inheritdoc/>
    protected override void Follow(IDraftRow row, string document, DateTimeOffset now)
    {
        base.Follow(row, document, now);
        ((FoodRow)row).FoodId = DocumentText.IdIn(document, Formats);
    }
}

/// <summary>Sheets of the larder, which recipes find by the id in their text.</summary>
internal sealed class LarderDraftRows() : SheetDraftRows<LarderSheetRow>(BookNoun.Larder, "larder sheet", DocumentText.Larder)
{
    /// <inheritdoc/>
    protected override void Follow(IDraftRow row, string document, DateTimeOffset now)
    {
        base.Follow(row, document, now);
        var sheet = (LarderSheetRow)row;
        sheet.Form = DocumentText.FormatOf(document, Formats)["gylebook-".Length..].TrimEnd('/');
        sheet.SheetId = DocumentText.IdIn(document, Formats);
    }
}
