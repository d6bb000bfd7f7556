using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>A recipe that is given out.</summary>
/// <param name="RecipeId">Which recipe.</param>
/// <param name="Slug">Its part of an address.</param>
/// <param name="Version">Which version of it.</param>
/// <param name="GyleId">The gyle whose measured numbers go with it; null for none.</param>
/// <param name="Document">Its public page, as a document.</param>
/// <param name="Published">When it was given out.</param>
/// <param name="Errata">What was put right since, the first first.</param>
/// <param name="IsDamaged">Whether the disk no longer gives back what was written.</param>
public sealed record KeptPublication(
    Guid RecipeId, string Slug, int Version, Guid? GyleId, string Document, DateTimeOffset Published, IReadOnlyList<KeptErratum> Errata, bool IsDamaged);

/// <summary>Something put right in a version that was given out.</summary>
/// <param name="Id">Which.</param>
/// <param name="Version">Of which version.</param>
/// <param name="Day">When it was written.</param>
/// <param name="Text">What is wrong, and what to do.</param>
public sealed record KeptErratum(long Id, int Version, DateOnly Day, string Text);

/// <summary>What is about to be given out.</summary>
/// <param name="Version">The version, as it stands in the book.</param>
/// <param name="Slug">The part of an address it will have.</param>
public sealed record PublicationToBe(NumberedVersion Version, string Slug);

/// <summary>Recipes on public pages, and what was put right in them.</summary>
public sealed class BookPublications
{
    /// <summary>The longest a word of correction may be.</summary>
    public const int LongestErratum = 2000;

    private readonly BookAccess _access;
    private readonly BookDrafts _drafts;
    private readonly BookVersions _versions;

    internal BookPublications(BookAccess access, BookDrafts drafts, BookVersions versions) =>
        (_access, _drafts, _versions) = (access, drafts, versions);

    /// <summary>What is given out, the last first; recipes in the bin are not.</summary>
    public Task<List<KeptPublication>> ListAsync(CancellationToken cancellation = default) => ListAsync(rows => rows, cancellation);

    /// <summary>What is given out of a recipe; null for nothing.</summary>
    public async Task<KeptPublication?> FindAsync(Guid recipeId, CancellationToken cancellation = default) =>
        (await ListAsync(rows => rows.Where(row => row.RecipeId == recipeId), cancellation)).SingleOrDefault();

    /// <summary>Gives a recipe out, in place of what was given out of it before; it keeps its address.</summary>
    /// <param name="recipeId">Which recipe.</param>
    /// <param name="number">The version; null to cut one of the draft as it stands.</param>
    /// <param name="gyleId">The gyle whose measured numbers go with it; null for none.</param>
    /// <param name="write">Writes the document.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <exception cref="BookUnavailableException">The draft is damaged.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such recipe, or no such version of it.</exception>
    public async Task<KeptPublication> PublishAsync(
        Guid recipeId, int? number, Guid? gyleId, Func<PublicationToBe, string> write, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(write);
        await ChangeAsync(
            recipeId,
            async (context, recipe) =>
            {
                NumberedVersion version = number is { } asked
                    ? await BookVersions.FindAsync(context, recipeId, asked, cancellation) ?? throw new ArgumentOutOfRangeException(nameof(number), number, "The recipe has no such version.")
                    : await _versions.CutAsync(context, recipeId, CutReason.Published, null, cancellation);
                PublicationRow? row = await context.Publications.FindAsync([recipeId], cancellation);
                string slug = row?.Slug ?? await FreeSlugAsync(context, recipe.Name, cancellation);
                string document = write(new(version, slug));
                row ??= context.Publications.Add(new PublicationRow { RecipeId = recipeId, Slug = slug, Document = document }).Entity;
                (row.VersionNumber, row.GyleId, row.Document, row.PublishedTicks) = (version.Number, gyleId, document, _access.Now);
                (recipe.PublishedVersion, recipe.PublishedTicks) = (version.Number, _access.Now);
            },
            cancellation);
        return (await FindAsync(recipeId, cancellation))!;
    }

    /// <summary>Takes a recipe back; its versions and what was put right in them stay.</summary>
    public Task WithdrawAsync(Guid recipeId, CancellationToken cancellation = default) => ChangeAsync(
        recipeId,
        async (context, recipe) =>
        {
            if (await context.Publications.FindAsync([recipeId], cancellation) is { } row)
            {
                context.Publications.Remove(row);
            }

            (recipe.PublishedVersion, recipe.PublishedTicks) = (null, null);
        },
        cancellation);

    /// <summary>Puts something right in the version that is given out.</summary>
    /// <param name="recipeId">Which recipe.</param>
    /// <param name="text">What is wrong, and what to do; from 1 to <see cref="LongestErratum"/> characters.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nothing of that recipe is given out.</exception>
    public Task AddErratumAsync(Guid recipeId, string text, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(text.Length, LongestErratum, nameof(text));
        return ChangeAsync(
            recipeId,
            async (context, _) =>
            {
                PublicationRow row = await context.Publications.FindAsync([recipeId], cancellation)
                    ?? throw new ArgumentOutOfRangeException(nameof(recipeId), recipeId, "Nothing of that recipe is given out.");
                context.Errata.Add(new ErratumRow { RecipeId = recipeId, VersionNumber = row.VersionNumber, WrittenDay = _access.Today, Text = text.Trim() });
            },
            cancellation);
    }

    /// <summary>Takes such a word back.</summary>
    public Task RemoveErratumAsync(Guid recipeId, long id, CancellationToken cancellation = default) => ChangeAsync(
        recipeId,
        async (context, _) => context.Errata.RemoveRange(await context.Errata.Where(erratum => erratum.RecipeId == recipeId && erratum.Id == id).ToListAsync(cancellation)),
        cancellation);

    private Task<List<KeptPublication>> ListAsync(Func<IQueryable<PublicationRow>, IQueryable<PublicationRow>> choose, CancellationToken cancellation) =>
        _access.ReadAsync(
            async context =>
            {
                List<PublicationRow> rows = await choose(context.Publications)
                    .Where(row => context.Recipes.Any(recipe => recipe.Id == row.RecipeId && recipe.DeletedTicks == null))
                    .OrderByDescending(row => row.PublishedTicks).ToListAsync(cancellation);
                Guid[] ids = [.. rows.Select(row => row.RecipeId)];
                ILookup<Guid, ErratumRow> errata = (await context.Errata.Where(erratum => ids.Contains(erratum.RecipeId)).OrderBy(erratum => erratum.Id).ToListAsync(cancellation))
                    .ToLookup(erratum => erratum.RecipeId);
                return rows.ConvertAll(row => new KeptPublication(
                    row.RecipeId, row.Slug, row.VersionNumber, row.GyleId, row.Document, row.PublishedTicks,
                    [.. errata[row.RecipeId].Select(erratum => new KeptErratum(erratum.Id, erratum.VersionNumber, erratum.WrittenDay, erratum.Text))],
                    !RowChecksum.IsSound(context, row)));
            },
            cancellation);

    private static async Task<string> FreeSlugAsync(BookContext context, string name, CancellationToken cancellation)
    {
        List<string> taken = await context.Publications.Select(row => row.Slug).ToListAsync(cancellation);
        return FreeId.Of(name, "recipe", slug => taken.Contains(slug) || slug == "engine");
    }

    private async Task ChangeAsync(Guid recipeId, Func<BookContext, RecipeRow, Task> change, CancellationToken cancellation)
    {
        long revision = await _access.WriteAsync(
            async context =>
            {
                RecipeRow recipe = await context.Recipes.Include(r => r.Draft).SingleOrDefaultAsync(r => r.Id == recipeId, cancellation)
                    ?? throw new ArgumentOutOfRangeException(nameof(recipeId), recipeId, "No such recipe in the book.");
                await change(context, recipe);
                return recipe.Draft!.Revision;
            },
            cancellation);
        _drafts.Tell(recipeId, revision, null);
    }
}
