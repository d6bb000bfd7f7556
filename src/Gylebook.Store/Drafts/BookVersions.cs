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

/// <summary>A recipe, a kit, a food or a water plan as it once stood, with a number; never changed.</summary>
/// <param name="OwnerId">Whose version.</param>
/// <param name="Number">From 1.</param>
/// <param name="Document">The whole text.</param>
/// <param name="Reason">Why it was cut.</param>
/// <param name="Note">The brewer's word on it; null when none.</param>
/// <param name="Cut">When.</param>
/// <param name="IsDamaged">Whether the disk no longer gives back what was written.</param>
public sealed record NumberedVersion(
    Guid OwnerId, int Number, string Document, CutReason Reason, string? Note, DateTimeOffset Cut, bool IsDamaged = false);

/// <summary>The numbered versions of one noun.</summary>
/// <remarks>
/// A version is cut from the draft. When the draft still says what the latest version says, that one serves again:
/// the same text never gets two numbers in a row.
/// </remarks>
public sealed class BookVersions
{
    private readonly BookAccess _access;
    private readonly BookDrafts _drafts;

    internal BookVersions(BookAccess access, BookDrafts drafts) => (_access, _drafts) = (access, drafts);

    /// <summary>All versions of one owner, the latest first.</summary>
    public Task<List<NumberedVersion>> ListAsync(Guid id, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            async context => (await Of(context, id).ToListAsync(cancellation)).ConvertAll(v => Show(context, v)),
            cancellation);

    /// <summary>One version; null when there is none of that number.</summary>
    public Task<NumberedVersion?> FindAsync(Guid id, int number, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            context => FindAsync(context, id, number, cancellation),
            cancellation);

    /// <summary>One version, within an operation on the book.</summary>
    internal static async Task<NumberedVersion?> FindAsync(BookContext context, Guid id, int number, CancellationToken cancellation) =>
        await context.Versions.FindAsync([id, number], cancellation) is { } version ? Show(context, version) : null;

    /// <summary>Keeps the draft as it stands, under the next number; under the last one where the text is the same.</summary>
    public async Task<NumberedVersion> KeepAsync(Guid id, string? note = null, CancellationToken cancellation = default)
    {
        long revision = 0;
        NumberedVersion kept = await _access.WriteAsync(
            async context =>
            {
                IDraftRow draft = await _drafts.SoundAsync(context, id, cancellation);
                revision = draft.Revision;
                return await CutAsync(context, draft, CutReason.Kept, note, cancellation);
            },
            cancellation);
        _drafts.Tell(id, revision, null);
        return kept;
    }

    /// <summary>Cuts a version within somebody else's transaction; the caller tells the tabs.</summary>
    /// <exception cref="BookUnavailableException">The draft is damaged.</exception>
    internal async Task<NumberedVersion> CutAsync(
        BookContext context, Guid id, CutReason reason, string? note, CancellationToken cancellation) =>
        await CutAsync(context, await _drafts.SoundAsync(context, id, cancellation), reason, note, cancellation);

    private async Task<NumberedVersion> CutAsync(
        BookContext context, IDraftRow draft, CutReason reason, string? note, CancellationToken cancellation)
    {
        VersionRow? latest = await Of(context, draft.OwnerId).FirstOrDefaultAsync(cancellation);
        if (latest is not null && latest.Document == draft.Document)
        {
            return Show(latest);
        }

        return Show(context.Versions.Add(new VersionRow
        {
            OwnerId = draft.OwnerId,
            Number = (latest?.Number ?? 0) + 1,
            Document = draft.Document,
            Reason = reason,
            Note = note,
            CutTicks = _access.Now,
        }).Entity);
    }

    private static IQueryable<VersionRow> Of(BookContext context, Guid id) =>
        context.Versions.Where(v => v.OwnerId == id).OrderByDescending(v => v.Number);

    private static NumberedVersion Show(BookContext context, VersionRow version) =>
        Show(version) with { IsDamaged = !RowChecksum.IsSound(context, version) };

    private static NumberedVersion Show(VersionRow version) =>
        new(version.OwnerId, version.Number, version.Document, version.Reason, version.Note, version.CutTicks);
}
