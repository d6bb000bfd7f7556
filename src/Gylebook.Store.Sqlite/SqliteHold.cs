using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store.Sqlite;

/// <summary>Holds a book's file open, so that one that was removed or replaced is noticed and can still be copied.</summary>
internal sealed class SqliteHold : BookHold
{
    private const int HasMoved = 20;

    private readonly string _file;
    private readonly string? _vfs;
    private readonly FileStream _presence;
    private readonly DbContextOptions<BookContext> _options;
    private readonly SqliteConnection _anchor;
    private readonly Lock _copying = new();

    /// <summary>Takes hold of a book that was just found good.</summary>
    /// <param name="file">The book's file.</param>
    /// <param name="vfs">SQLite's way to the disk; null for the usual one.</param>
    /// <param name="presence">The sign on the door; taken down at the end.</param>
    /// <param name="options">Those of the book's contexts, whose pooled connections are closed at the end.</param>
    public SqliteHold(string file, string? vfs, FileStream presence, DbContextOptions<BookContext> options)
    {
        (_file, _vfs, _presence, _options) = (file, vfs, presence, options);
        _anchor = BookFile.OpenToRead(file, vfs);
    }

    /// <inheritdoc/>
    /// <remarks>
    /// SQLite compares the open handle with what lies at the path, by the file's number on its disk. On Windows an open
    /// book can be neither removed nor replaced, and SQLite answers that it does not know.
    /// </remarks>
    public override void EnsureInPlace()
    {
        int moved = 0;
        bool known = FileControl(_anchor.Handle!.DangerousGetHandle(), "main\0"u8.ToArray(), HasMoved, ref moved) == SQLitePCL.raw.SQLITE_OK;
        if ((known && moved != 0) || !File.Exists(_file))
        {
            throw Trouble.Gone(_file);
        }
    }

    /// <inheritdoc/>
    public override void Copy(string target, bool evenDamaged)
    {
        if (File.Exists(target))
        {
            throw Trouble.AlreadyThere(target);
        }

        bool isInPlace = IsInPlace();

        // The last there is of a book whose file is gone: a copy with a damaged row is better than none.
        CopyCare care = evenDamaged || !isInPlace ? CopyCare.None : CopyCare.Rows;
        if (isInPlace && _vfs is null)
        {
            BookCopy.Make(_file, target, overwrite: false, care);
            return;
        }

        lock (_copying)
        {
            BookCopy.Make(_anchor, _file, target, overwrite: false, care);
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<DamagedPlace?> Look()
    {
        EnsureInPlace();
        using SqliteConnection connection = BookFile.OpenToRead(_file, _vfs);
        foreach (DamagedPlace? place in Soundness.Look(connection))
        {
            yield return place;
        }
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        SqliteBook.Release(_options);
        _anchor.Dispose();
        _presence.Dispose();
    }

    [DllImport("e_sqlite3", EntryPoint = "sqlite3_file_control")]
    private static extern int FileControl(nint connection, byte[] database, int question, ref int answer);
}
