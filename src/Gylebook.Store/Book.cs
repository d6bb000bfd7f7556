namespace Gylebook.Store;

/// <summary>The brewer's book. Each noun has its own door; all of them write to the same file.</summary>
/// <remarks>
/// Made by a provider, such as <c>SqliteBook.OpenAsync</c>. Safe to share between threads and tabs: every operation
/// takes a context of its own. When a method that writes has returned, what it wrote is on disk.
/// </remarks>
public sealed class Book : IAsyncDisposable
{
    private readonly BookAccess _access;
    private readonly Action _close;

    /// <summary>A book over that access.</summary>
    /// <param name="access">The way to the database.</param>
    /// <param name="file">Where the book lies; shown to the brewer.</param>
    /// <param name="close">What to let go of at the end.</param>
    public Book(BookAccess access, string file, Action close)
    {
        _access = access;
        _close = close;
        File = file;
        Recipes = new BookRecipes(access);
        Drafts = new BookDrafts(access);
        Versions = new BookVersions(access);
        Kits = new BookKits(access);
        Foods = new BookFoods(access);
        Waters = new BookWaters(access);
        Gyles = new BookGyles(access);
        Readings = new BookReadings(access);
        Settings = new BookSettings(access);
        Demo = new BookDemo(access);
    }

    /// <summary>Where the book lies.</summary>
    public string File { get; }

    /// <summary>The list of recipes: search, create, rename, duplicate, delete, restore.</summary>
    public BookRecipes Recipes { get; }

    /// <summary>What recipes say today: edit, undo, redo, history.</summary>
    public BookDrafts Drafts { get; }

    /// <summary>What recipes said when it mattered: keep, publish, read.</summary>
    public BookVersions Versions { get; }

    /// <summary>The brewer's kits.</summary>
    public BookKits Kits { get; }

    /// <summary>The brewer's food sheets.</summary>
    public BookFoods Foods { get; }

    /// <summary>The brewer's water plans.</summary>
    public BookWaters Waters { get; }

    /// <summary>Gyles: plan, start, follow.</summary>
    public BookGyles Gyles { get; }

    /// <summary>What was measured and done, by portion.</summary>
    public BookReadings Readings { get; }

    /// <summary>What the book remembers about itself and its brewer.</summary>
    public BookSettings Settings { get; }

    /// <summary>The demo: is it wanted, and away with it.</summary>
    public BookDemo Demo { get; }

    /// <summary>Tells other tabs of this process what changed.</summary>
    public BookChanges Changes => _access.Changes;

    /// <summary>Takes the demo out of the book; it stays out.</summary>
    public Task RemoveDemoAsync(CancellationToken cancellation = default) => Demo.RemoveAsync(cancellation);

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        _close();
        return ValueTask.CompletedTask;
    }
}
