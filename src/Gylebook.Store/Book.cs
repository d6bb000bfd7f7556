using System.Runtime.CompilerServices;

namespace Gylebook.Store;

/// <summary>The brewer's book. Each noun has its own door; all of them write to the same file.</summary>
/// <remarks>
/// Made by a provider, such as <c>SqliteBook.OpenAsync</c>. Safe to share between threads and tabs: every operation
/// takes a context of its own. When a method that writes has returned, what it wrote is on disk.
/// </remarks>
public sealed class Book : IAsyncDisposable
{
    private readonly BookAccess _access;
    private readonly BookHold? _hold;

    /// <summary>A book over that access.</summary>
    /// <param name="access">The way to the database.</param>
    /// <param name="file">Where the book lies; shown to the brewer.</param>
    /// <param name="hold">The hold on its file; let go of at the end. Null where nobody holds it.</param>
    public Book(BookAccess access, string file, BookHold? hold = null)
    {
        _access = access;
        _hold = hold;
        File = file;
        Drafts = new BookDrafts(access, new RecipeDraftRows());
        Versions = new BookVersions(access, Drafts);
        Recipes = new BookRecipes(access, Drafts);
        Publications = new BookPublications(access, Drafts, Versions);
        Kits = new BookKits(access);
        Foods = new BookFoods(access);
        Waters = new BookWaters(access);
        Larder = new BookLarder(access);
        Gyles = new BookGyles(access, Versions);
        Readings = new BookReadings(access);
        Devices = new BookDevices(access);
        Sensors = new BookSensors(access, Devices, Readings);
        Settings = new BookSettings(access);
        Demo = new BookDemo(access);
        Files = new BookFiles(this);
        Landings = new BookLandings(this, access);
    }

    /// <summary>How many rows a slow sweep reads at a time.</summary>
    public const int RowsBetweenPauses = 20;

    private BookHold Hold => _hold ?? throw new InvalidOperationException("Nobody holds this book's file.");

    /// <summary>Where the book lies.</summary>
    public string File { get; }

    /// <summary>Today, by the clock that stamps what is written.</summary>
    public DateOnly Today => _access.Today;

    /// <summary>Whether the book's file lies where it was opened: neither removed nor replaced.</summary>
    public bool IsInPlace => _hold?.IsInPlace() ?? true;

    /// <summary>The list of recipes: search, create, rename, duplicate, delete, restore.</summary>
    public BookRecipes Recipes { get; }

    /// <summary>What recipes say today: edit, undo, redo, history.</summary>
    public BookDrafts Drafts { get; }

    /// <summary>What recipes said when it mattered: keep, read.</summary>
    public BookVersions Versions { get; }

    /// <summary>Recipes on public pages: publish, put right, withdraw.</summary>
    public BookPublications Publications { get; }

    /// <summary>The brewer's kits.</summary>
    public BookKits Kits { get; }

    /// <summary>The brewer's food sheets.</summary>
    public BookFoods Foods { get; }

    /// <summary>The brewer's water plans.</summary>
    public BookWaters Waters { get; }

    /// <summary>The brewer's sheets of malts, hops, yeasts and what else is on the shelf.</summary>
    public BookLarder Larder { get; }

    /// <summary>Gyles: plan, start, follow.</summary>
    public BookGyles Gyles { get; }

    /// <summary>What was measured and done, by portion.</summary>
    public BookReadings Readings { get; }

    /// <summary>Floats and other things that send readings by themselves.</summary>
    public BookDevices Devices { get; }

    /// <summary>What they sent.</summary>
    public BookSensors Sensors { get; }

    /// <summary>What the book remembers about itself and its brewer.</summary>
    public BookSettings Settings { get; }

    /// <summary>The demo: is it wanted, and away with it.</summary>
    public BookDemo Demo { get; }

    /// <summary>Files in and out, whatever they hold.</summary>
    public BookFiles Files { get; }

    /// <summary>Files of other formats: in, and back out together.</summary>
    public BookLandings Landings { get; }

    /// <summary>Tells other tabs of this process what changed.</summary>
    public BookChanges Changes => _access.Changes;

    /// <summary>Takes the demo out of the book; it stays out.</summary>
    public Task RemoveDemoAsync(CancellationToken cancellation = default) => Demo.RemoveAsync(cancellation);

    /// <summary>Copies the book, while it is in use, into a file of its own, and checks the copy.</summary>
    /// <inheritdoc cref="BackupAsync(string, bool, CancellationToken)"/>
    public Task BackupAsync(string target, CancellationToken cancellation = default) => BackupAsync(target, false, cancellation);

    /// <summary>Copies the book, while it is in use, into a file of its own, and checks the copy.</summary>
    /// <param name="target">The copy; must not exist yet.</param>
    /// <param name="evenDamaged">Whether a book of which something is damaged is copied all the same.</param>
    /// <param name="cancellation">Stops waiting before the copy begins.</param>
    /// <remarks>What is copied is the book that is open, even when its file was removed or replaced.</remarks>
    /// <exception cref="BookUnavailableException">The copy could not be made; nothing half-made is left.</exception>
    public Task BackupAsync(string target, bool evenDamaged, CancellationToken cancellation = default) =>
        Task.Run(() => Hold.Copy(Path.GetFullPath(target), evenDamaged), cancellation);

    /// <summary>Reads through the whole book and names what is no longer as it was written.</summary>
    /// <param name="pause">How long to rest after every <see cref="RowsBetweenPauses"/> rows; none to hurry.</param>
    /// <param name="cancellation">Stops reading.</param>
    public async IAsyncEnumerable<DamagedPlace> SweepAsync(TimeSpan pause, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        int rows = 0;
        foreach (DamagedPlace? place in Hold.Look())
        {
            cancellation.ThrowIfCancellationRequested();
            if (place is not null)
            {
                yield return place;
            }

            if (++rows % RowsBetweenPauses == 0 && pause > TimeSpan.Zero)
            {
                await Task.Delay(pause, cancellation);
            }
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        _hold?.Dispose();
        return ValueTask.CompletedTask;
    }
}
