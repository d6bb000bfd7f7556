using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>A kit, a food sheet or a water plan as it stands today.</summary>
/// <param name="Id">Which one.</param>
/// <param name="Name">As the document says.</param>
/// <param name="Document">The whole text.</param>
/// <param name="Revision">To be named when saving.</param>
/// <param name="Updated">When it last changed.</param>
/// <param name="Deleted">When it went into the bin; null when it stands in the book.</param>
/// <param name="IsDemo">Part of the demo.</param>
/// <param name="IsDamaged">Whether the disk no longer gives back what was written.</param>
public sealed record Sheet(
    Guid Id, string Name, string Document, long Revision, DateTimeOffset Updated, DateTimeOffset? Deleted, bool IsDemo, bool IsDamaged = false);

/// <summary>What kits, food sheets and water plans have in common: one document each, saved whole.</summary>
/// <typeparam name="TRow">Their row.</typeparam>
public abstract class BookSheets<TRow>
    where TRow : SheetRow, new()
{
    private readonly BookNoun _noun;
    private readonly string _format;

    private protected BookSheets(BookAccess access, BookNoun noun, string format)
    {
        Access = access;
        _noun = noun;
        _format = format;
    }

    private protected BookAccess Access { get; }

    /// <summary>Those that stand in the book, by name.</summary>
    /// <param name="search">Part of the name, whatever its case and accents; null or blank for all.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public Task<List<Sheet>> ListAsync(string? search = null, CancellationToken cancellation = default)
    {
        string wanted = NameSearch.Fold(search ?? "");
        return ChooseAsync(
            rows => rows
                .Where(r => r.DeletedTicks == null && (wanted == "" || r.FoldedName.Contains(wanted)))
                .OrderBy(r => r.FoldedName),
            cancellation);
    }

    /// <summary>Those in the bin, the last thrown first.</summary>
    public Task<List<Sheet>> DeletedAsync(CancellationToken cancellation = default) =>
        ChooseAsync(rows => rows.Where(r => r.DeletedTicks != null).OrderByDescending(r => r.DeletedTicks), cancellation);

    /// <summary>One of them, in the bin or not; null when there is none.</summary>
    public async Task<Sheet?> FindAsync(Guid id, CancellationToken cancellation = default) =>
        (await ChooseAsync(rows => rows.Where(r => r.Id == id), cancellation)).SingleOrDefault();

    /// <summary>Puts a new one into the book.</summary>
    /// <param name="document">Its whole text; the name is in it.</param>
    /// <param name="isDemo">Part of the demo.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<Guid> CreateAsync(string document, bool isDemo = false, CancellationToken cancellation = default)
    {
        var row = new TRow { Id = Guid.CreateVersion7(Access.Now), IsDemo = isDemo };
        Put(row, document);
        await Access.WriteAsync(context => Task.FromResult(context.Set<TRow>().Add(row)), cancellation);
        Tell(row, null);
        return row.Id;
    }

    /// <summary>Saves the whole text, if the sheet still is what the tab has read.</summary>
    public async Task<DraftSave> SaveAsync(
        Guid id, long seenRevision, string document, string tabId, CancellationToken cancellation = default)
    {
        DocumentText.NameIn(document, _format);
        TRow? saved = null;
        DraftSave answer = await Access.WriteAsync<DraftSave>(
            async context =>
            {
                TRow row = await RowAsync(context, id, cancellation);
                if (row.Document == document)
                {
                    return new DraftSave.Saved(row.Revision);
                }

                if (row.Revision != seenRevision)
                {
                    return new DraftSave.Stale(row.Document, document, row.Revision);
                }

                Put(row, document);
                saved = row;
                return new DraftSave.Saved(row.Revision);
            },
            cancellation);
        if (saved is not null)
        {
            Tell(saved, tabId);
        }

        return answer;
    }

    /// <summary>Puts it into the bin; gyles keep their frozen copy, and it can come back.</summary>
    public Task DeleteAsync(Guid id, CancellationToken cancellation = default) => BinAsync(id, Access.Now, cancellation);

    /// <summary>Takes it out of the bin.</summary>
    public Task RestoreAsync(Guid id, CancellationToken cancellation = default) => BinAsync(id, null, cancellation);

    private protected async Task<List<Sheet>> ChooseAsync(
        Func<IQueryable<TRow>, IQueryable<TRow>> choose, CancellationToken cancellation) =>
        await Access.ReadAsync(
            async context => (await choose(context.Set<TRow>()).ToListAsync(cancellation)).ConvertAll(row => Show(context, row)),
            cancellation);

    private protected static Sheet Show(BookContext context, TRow row) => new(
        row.Id, row.Name, row.Document, row.Revision, row.UpdatedTicks, row.DeletedTicks, row.IsDemo, !RowChecksum.IsSound(context, row));

    private protected virtual void Put(TRow row, string document)
    {
        row.Name = DocumentText.NameIn(document, _format);
        row.FoldedName = NameSearch.Fold(row.Name);
        row.Document = document;
        row.Revision++;
        row.UpdatedTicks = Access.Now;
    }

    /// <summary>It is about to come out of the bin.</summary>
    private protected virtual Task RestoringAsync(BookContext context, TRow row, CancellationToken cancellation) => Task.CompletedTask;

    private async Task BinAsync(Guid id, DateTimeOffset? deleted, CancellationToken cancellation)
    {
        TRow binned = await Access.WriteAsync(
            async context =>
            {
                TRow row = await RowAsync(context, id, cancellation);
                if (deleted is null && row.DeletedTicks is not null)
                {
                    await RestoringAsync(context, row, cancellation);
                }

                row.DeletedTicks = deleted;
                return row;
            },
            cancellation);
        Tell(binned, null);
    }

    private protected void Tell(TRow row, string? tabId) => Access.Changes.Tell(new BookChange(_noun, row.Id, row.Revision, tabId));

    private static async Task<TRow> RowAsync(BookContext context, Guid id, CancellationToken cancellation) =>
        await context.Set<TRow>().SingleOrDefaultAsync(r => r.Id == id, cancellation)
        ?? throw new ArgumentOutOfRangeException(nameof(id), id, "No such sheet in the book.");
}
