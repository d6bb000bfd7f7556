using Microsoft.Data.Sqlite;
using static SQLitePCL.raw;

namespace Gylebook.Store.Sqlite;

/// <summary>Says in plain words what is wrong with a file, and what to do.</summary>
internal static class Trouble
{
    /// <summary>What SQLite's complaint means for the brewer; null when it is not about the file.</summary>
    public static BookUnavailableException? Explain(SqliteException fault, string file) => fault.SqliteErrorCode switch
    {
        SQLITE_FULL => new(
            BookTrouble.DiskFull,
            file,
            $"There is no room left to write to {file}. What was saved before is safe; the last change is not saved. "
            + "Make room on that disk and try again.",
            fault),
        SQLITE_BUSY or SQLITE_LOCKED => new(
            BookTrouble.InUse,
            file,
            $"Another program is writing to {file} and does not let go. The change is not saved. "
            + "Close that program, or wait, and try again.",
            fault),
        SQLITE_CORRUPT => Damaged(file, fault.Message, fault),
        SQLITE_NOTADB => NotABook(file, fault),
        SQLITE_CANTOPEN or SQLITE_READONLY or SQLITE_PERM or SQLITE_AUTH => NoAccess(file, fault),
        SQLITE_IOERR => new(
            BookTrouble.NoAccess,
            file,
            $"The disk does not let us read or write {file} ({fault.Message}). The change is not saved. "
            + "Check the disk and its cable or network, then try again.",
            fault),
        _ => null,
    };

    public static BookUnavailableException Damaged(string file, string detail, Exception? inner = null) => new(
        BookTrouble.Damaged,
        file,
        $"{file} is damaged ({detail}). Nothing was changed in it. "
        + "Keep a copy of it, then bring back your last backup with: gylebook restore BACKUP",
        inner);

    public static BookUnavailableException NotABook(string file, Exception? inner = null) => new(
        BookTrouble.NotABook,
        file,
        $"{file} is not a Gylebook book, and was left as it is. Name another file with --book.",
        inner);

    public static BookUnavailableException Newer(string file) => new(
        BookTrouble.Newer,
        file,
        $"{file} was written by a newer Gylebook than this one, and was left as it is. "
        + "Update Gylebook, or name another file with --book.");

    public static BookUnavailableException Older(string file) => new(
        BookTrouble.Older,
        file,
        $"{file} was written by an older Gylebook, which kept no checksums. Open it once with this one; from then on it can be checked.");

    public static BookUnavailableException NoAccess(string file, Exception inner) => new(
        BookTrouble.NoAccess,
        file,
        $"{file} cannot be opened for writing. Check that its folder exists and that you may write there, "
        + "or name another file with --book.",
        inner);

    public static BookUnavailableException NoRoomFor(string copy, Exception inner) => new(
        BookTrouble.DiskFull,
        copy,
        $"There is no room for {copy}; nothing half-made was left there, and the book is as it was. "
        + "Make room on that disk, or name a file on another one.",
        inner);

    public static BookUnavailableException Gone(string file) => new(
        BookTrouble.Gone,
        file,
        $"{file} was removed or replaced while Gylebook had it open. The last change is not saved, and no other will be. "
        + "Write a copy of the open book under another name, close Gylebook, and open that copy with --book.");

    public static BookUnavailableException Missing(string file) => new(
        BookTrouble.NoAccess, file, $"{file} is not there. Check the name.");

    public static BookUnavailableException AlreadyThere(string file) => new(
        BookTrouble.AlreadyThere, file, $"{file} exists already, and was left as it is. Choose another name, or move it away.");

    public static BookUnavailableException Open(string file, Exception inner) => new(
        BookTrouble.InUse,
        file,
        $"{file} is open in another Gylebook. Close that one first, then try again.",
        inner);
}
