namespace Gylebook.Store;

/// <summary>Why the book cannot be used just now.</summary>
public enum BookTrouble
{
    /// <summary>The disk has no room left.</summary>
    DiskFull,

    /// <summary>Another program holds the book.</summary>
    InUse,

    /// <summary>The file is damaged.</summary>
    Damaged,

    /// <summary>The file is not a book of ours.</summary>
    NotABook,

    /// <summary>A later Gylebook wrote it.</summary>
    Newer,

    /// <summary>An earlier Gylebook wrote it, and it has to be brought up to date first.</summary>
    Older,

    /// <summary>The file or its folder cannot be opened, written or found.</summary>
    NoAccess,

    /// <summary>The file was removed or replaced while it was open; <see cref="Book.BackupAsync(string, CancellationToken)"/> can still copy what is open.</summary>
    Gone,

    /// <summary>Something is already there, and we do not write over it.</summary>
    AlreadyThere,
}

/// <summary>The book's file cannot be used. The message names the file and says what to do.</summary>
public sealed class BookUnavailableException(BookTrouble trouble, string file, string message, Exception? inner = null)
    : IOException(message, inner)
{
    /// <summary>What is wrong.</summary>
    public BookTrouble Trouble { get; } = trouble;

    /// <summary>The file it is about.</summary>
    public string File { get; } = file;
}
