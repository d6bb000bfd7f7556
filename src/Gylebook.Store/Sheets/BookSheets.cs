using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>A kit, a food sheet, a water plan or a sheet of the larder as it stands today.</summary>
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

/// <summary>What kits, food sheets, water plans and sheets of the larder have in common: one document each, which is its own draft.</summary>
/// <typeparam name="TRow">Their row.</typeparam>
public abstract class BookSheets<TRow>
    where TRow : SheetRow, new()
{
    private readonly SheetDraftRows<TRow> _rows;

    private protected BookSheets(BookAccess access, SheetDraftRows<TRow> rows)
    {
        Access = access;
        _rows = rows;
        Drafts = new BookDrafts(access, rows);
        Versions = new BookVersions(access, Drafts);
    }

    /// <summary>What they say today: edit, undo, redo, history.</summary>
    public BookDrafts Drafts { get; }

    /// <summary>What they said when it mattered: keep, read.</summary>
    public BookVersions Versions { get; }

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

    private protected void Put(TRow row, string document) => _rows.Put(row, document, null, Access.Now);

    /// <summary>It is about to come out of the bin.</summary>
    private protected virtual Task RestoringAsync(BookContext context, TRow row, CancellationToken cancellation) => Task.CompletedTask;

    private async Task BinAsync(Guid id, DateTimeOffset? deleted, CancellationToken cancellation)
    {
        TRow binned = await Access.WriteAsync(
            async context =>
            {
                var row = (TRow)await _rows.RowAsync(context, id, cancellation);
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

    private protected void Tell(TRow row, string? tabId) => Drafts.Tell(row.Id, row.Revision, tabId);
}
