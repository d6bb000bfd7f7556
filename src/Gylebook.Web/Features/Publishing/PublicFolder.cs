using System.IO.Compression;
using Gylebook.Site.Folder;
using Gylebook.Store;
using Gylebook.Web.Features.Gyles;

namespace Gylebook.Web.Features.Publishing;

/// <summary>What is given out, as this program serves it by itself: kept in memory, and made anew when it changed.</summary>
/// <param name="book">The book.</param>
/// <param name="clock">The time.</param>
internal sealed class PublicFolder(Book book, TimeProvider clock) : IDisposable
{
    /// <summary>For so long nobody looks whether something changed: another program may have published into the same book.</summary>
    private static readonly TimeSpan Trusted = TimeSpan.FromSeconds(1);

    private readonly PublishDesk _desk = new(book, new GyleDesk(book, clock), clock);
    private readonly SemaphoreSlim _one = new(1);
    private volatile Made _made = new("", default, new Dictionary<string, ServedFile>());

    /// <summary>A file of it; null where there is none.</summary>
    /// <param name="path">As in the folder: <c>hedgerow-brown/index.html</c>.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<ServedFile?> FindAsync(string path, CancellationToken cancellation)
    {
        if (path.StartsWith($"{SiteEngine.Folder}/", StringComparison.Ordinal))
        {
            return ServedEngine.All.GetValueOrDefault(path);
        }

        if (clock.GetUtcNow() - _made.Looked > Trusted)
        {
            await LookAsync(cancellation);
        }

        return _made.Files.GetValueOrDefault(path);
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();

    /// <summary>The whole folder as one file to take to a web host.</summary>
    public async Task<byte[]> ZipAsync(Uri? address, CancellationToken cancellation)
    {
        (IReadOnlyList<SiteFile> pages, _) = await _desk.FolderAsync(address, cancellation);
        using MemoryStream packed = new();
        using (ZipArchive zip = new(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (SiteFile file in pages.Concat(SiteEngine.IsHere ? SiteEngine.Files() : []))
            {
                await using Stream entry = await zip.CreateEntry(file.Path).OpenAsync(cancellation);
                await entry.WriteAsync(file.Bytes, cancellation);
            }
        }

        return packed.ToArray();
    }

    private async Task LookAsync(CancellationToken cancellation)
    {
        await _one.WaitAsync(cancellation);
        try
        {
            DateTimeOffset now = clock.GetUtcNow();
            if (now - _made.Looked <= Trusted)
            {
                return;
            }

            string stamp = await StampAsync(cancellation);
            if (stamp == _made.Stamp)
            {
                _made = _made with { Looked = now };
                return;
            }

            (IReadOnlyList<SiteFile> files, _) = await _desk.FolderAsync(null, cancellation);
            _made = new Made(stamp, now, files.ToDictionary(file => file.Path, ServedFile.Of, StringComparer.Ordinal));
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>What the folder depends on, in a line: the documents themselves change only when something is given out anew.</summary>
    private async Task<string> StampAsync(CancellationToken cancellation) => string.Join(
        '\n', (await book.Publications.ListAsync(cancellation)).Select(kept => Invariant($"{kept.RecipeId} {kept.Published.UtcTicks} {kept.IsDamaged} {string.Join(' ', kept.Errata.Select(erratum => erratum.Id))}"))
            .Append(await _desk.ByAsync(cancellation)));

    private sealed record Made(string Stamp, DateTimeOffset Looked, IReadOnlyDictionary<string, ServedFile> Files);
}
