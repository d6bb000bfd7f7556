using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Threading.Channels;

namespace Gylebook.Store;

/// <summary>What in the book a change is about.</summary>
public enum BookNoun
{
    Recipe,
    Gyle,
    Kit,
    Food,
    Water,
    Larder,
    Setting,
    Device,
}

/// <summary>Something in the book changed, and is on disk.</summary>
/// <param name="Noun">What it is.</param>
/// <param name="Id">Which one; empty for a setting.</param>
/// <param name="Revision">Its revision now; 0 where revisions are not counted.</param>
/// <param name="TabId">The tab that did it, so that a tab can pass over its own; null when no tab did.</param>
public sealed record BookChange(BookNoun Noun, Guid Id, long Revision, string? TabId);

/// <summary>Tells every other tab of this process what changed, after it is safely on disk.</summary>
public sealed class BookChanges
{
    // A reader that sleeps keeps the newest changes; older revisions of the same thing are past anyway.
    private const int KeptPerReader = 64;

    private readonly ConcurrentDictionary<Channel<BookChange>, Guid?> _readers = new();

    /// <summary>Changes of one thing from this call on; the stream ends when cancelled, and throws nothing.</summary>
    public IAsyncEnumerable<BookChange> WatchAsync(Guid id, CancellationToken cancellation) =>
        ReadAsync(Subscribe(id, cancellation), cancellation);

    /// <summary>All changes from this call on; the stream ends when cancelled, and throws nothing.</summary>
    public IAsyncEnumerable<BookChange> WatchAllAsync(CancellationToken cancellation) =>
        ReadAsync(Subscribe(null, cancellation), cancellation);

    internal void Tell(BookChange change)
    {
        foreach ((Channel<BookChange> reader, Guid? wanted) in _readers)
        {
            if (wanted is null || wanted == change.Id)
            {
                reader.Writer.TryWrite(change);
            }
        }
    }

    // Subscribed at the call, not at the first read, so that nothing slips between loading a page and listening.
    private Channel<BookChange> Subscribe(Guid? id, CancellationToken cancellation)
    {
        var reader = Channel.CreateBounded<BookChange>(
            new BoundedChannelOptions(KeptPerReader) { FullMode = BoundedChannelFullMode.DropOldest });
        _readers[reader] = id;
        cancellation.Register(() => _readers.TryRemove(reader, out _));
        return reader;
    }

    private async IAsyncEnumerable<BookChange> ReadAsync(
        Channel<BookChange> reader, [EnumeratorCancellation] CancellationToken cancellation)
    {
        using CancellationTokenRegistration end = cancellation.Register(() => reader.Writer.TryComplete());
        try
        {
            // Not cancelled itself: whoever leaves a page wants no more changes, and no exception either.
            await foreach (BookChange change in reader.Reader.ReadAllAsync(CancellationToken.None))
            {
                if (cancellation.IsCancellationRequested)
                {
                    yield break;
                }

                yield return change;
            }
        }
        finally
        {
            _readers.TryRemove(reader, out _);
        }
    }
}
