namespace Gylebook.Store;

/// <summary>A provider's hold on the file of an open book, until disposed.</summary>
public abstract class BookHold : IDisposable
{
    /// <summary>Refuses when the file at the book's place is not the one that was opened.</summary>
    /// <exception cref="BookUnavailableException">It was removed or replaced.</exception>
    public abstract void EnsureInPlace();

    /// <summary>Whether the file at the book's place is the one that was opened.</summary>
    public bool IsInPlace()
    {
        try
        {
            EnsureInPlace();
            return true;
        }
        catch (BookUnavailableException)
        {
            return false;
        }
    }

    /// <summary>Copies the open book into a file of its own, and checks the copy. Works when its own file is gone, too.</summary>
    /// <param name="target">The copy; must not exist yet.</param>
    /// <param name="evenDamaged">Whether a book of which something is damaged is copied all the same.</param>
    /// <exception cref="BookUnavailableException">The copy could not be made; nothing half-made is left.</exception>
    public abstract void Copy(string target, bool evenDamaged);

    /// <summary>Reads row by row whether the book is still what was written.</summary>
    /// <returns>Null for each row that is sound.</returns>
    public abstract IEnumerable<DamagedPlace?> Look();

    /// <inheritdoc/>
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Lets go of the file.</summary>
    /// <param name="disposing">Always true: there is no finaliser.</param>
    protected abstract void Dispose(bool disposing);
}
