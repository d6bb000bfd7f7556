using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>Why a version was cut.</summary>
public enum CutReason
{
    /// <summary>The brewer chose to keep it.</summary>
    Kept,

    /// <summary>A gyle was started from it.</summary>
    Gyle,

    /// <summary>It was published.</summary>
    Published,
}

/// <summary>A recipe as it once stood, with a number; never changed.</summary>
/// <param name="RecipeId">Whose version.</param>
/// <param name="Number">From 1.</param>
/// <param name="Document">The whole text.</param>
/// <param name="Reason">Why it was cut.</param>
/// <param name="Note">The brewer's word on it; null when none.</param>
/// <param name="Cut">When.</param>
/// <param name="IsDamaged">Whether the disk no longer gives back what was written.</param>
public sealed record RecipeVersion(
    Guid RecipeId, int Number, string Document, CutReason Reason, string? Note, DateTimeOffset Cut, bool IsDamaged = false);

/// <summary>The numbered versions of recipes.</summary>
/// <remarks>
/// A version is cut from the draft. When the draft still says what the latest version says, that one serves again:
/// the same text never gets two numbers in a row.
/// </remarks>
public sealed class BookVersions
{
    private readonly BookAccess _access;

    internal BookVersions(BookAccess access) => _access = access;

    /// <summary>All versions of a recipe, the latest first.</summary>
    public Task<List<RecipeVersion>> ListAsync(Guid recipeId, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            async context => (await context.Versions
                .Where(v => v.RecipeId == recipeId)
                .OrderByDescending(v => v.Number)
                .ToListAsync(cancellation))
                .ConvertAll(v => Show(context, v)),
            cancellation);

    /// <summary>One version; null when there is none of that number.</summary>
    public Task<RecipeVersion?> FindAsync(Guid recipeId, int number, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            async context => await context.Versions.FindAsync([recipeId, number], cancellation) is { } version
                ? Show(context, version)
                : null,
            cancellation);

    /// <summary>Keeps the draft as it stands, under the next number.</summary>
    public Task<RecipeVersion> KeepAsync(Guid recipeId, string? note = null, CancellationToken cancellation = default) =>
        ChangeAsync(recipeId, (context, recipe) => Cut(_access, context, recipe, CutReason.Kept, note), cancellation);

    /// <summary>Puts the draft, as it stands, on the public page.</summary>
    public Task<RecipeVersion> PublishAsync(Guid recipeId, string? note = null, CancellationToken cancellation = default) =>
        ChangeAsync(
            recipeId,
            (context, recipe) =>
            {
                RecipeVersion version = Cut(_access, context, recipe, CutReason.Published, note);
                recipe.PublishedVersion = version.Number;
                recipe.PublishedTicks = _access.Now;
                return version;
            },
            cancellation);

    /// <summary>Takes the recipe off the public page; its versions stay.</summary>
    public Task WithdrawAsync(Guid recipeId, CancellationToken cancellation = default) =>
        ChangeAsync(
            recipeId,
            (_, recipe) =>
            {
                recipe.PublishedVersion = null;
                recipe.PublishedTicks = null;
                return true;
            },
            cancellation);

    /// <summary>Cuts a version within a running transaction; the recipe comes with its draft and versions.</summary>
    /// <exception cref="BookUnavailableException">The draft is damaged.</exception>
    internal static RecipeVersion Cut(BookAccess access, BookContext context, RecipeRow recipe, CutReason reason, string? note)
    {
        access.EnsureSound(context, recipe.Draft!);
        VersionRow? latest = recipe.Versions.MaxBy(v => v.Number);
        if (latest is not null && latest.Document == recipe.Draft!.Document)
        {
            return Show(latest);
        }

        var version = new VersionRow
        {
            RecipeId = recipe.Id,
            Number = (latest?.Number ?? 0) + 1,
            Document = recipe.Draft!.Document,
            Reason = reason,
            Note = note,
            CutTicks = access.Now,
        };
        recipe.Versions.Add(version);
        return Show(version);
    }

    internal static async Task<RecipeRow> RecipeAsync(BookContext context, Guid recipeId, CancellationToken cancellation)
    {
        RecipeRow recipe = await BookDrafts.RecipeAsync(context, recipeId, cancellation);
        await context.Entry(recipe).Collection(r => r.Versions).LoadAsync(cancellation);
        return recipe;
    }

    private async Task<T> ChangeAsync<T>(Guid recipeId, Func<BookContext, RecipeRow, T> change, CancellationToken cancellation)
    {
        long revision = 0;
        T result = await _access.WriteAsync(
            async context =>
            {
                RecipeRow recipe = await RecipeAsync(context, recipeId, cancellation);
                revision = recipe.Draft!.Revision;
                return change(context, recipe);
            },
            cancellation);
        _access.Changes.Tell(new BookChange(BookNoun.Recipe, recipeId, revision, null));
        return result;
    }

    private static RecipeVersion Show(BookContext context, VersionRow version) =>
        Show(version) with { IsDamaged = !RowChecksum.IsSound(context, version) };

    private static RecipeVersion Show(VersionRow version) =>
        new(version.RecipeId, version.Number, version.Document, version.Reason, version.Note, version.CutTicks);
}
