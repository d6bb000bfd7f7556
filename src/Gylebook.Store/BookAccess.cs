using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Gylebook.Store;

/// <summary>One context per operation, and one place where a database's complaint becomes advice.</summary>
/// <param name="contexts">Makes the contexts.</param>
/// <param name="clock">The time, for what is stamped.</param>
/// <param name="file">Where the book lies, for messages.</param>
/// <param name="explain">Turns the provider's error into one that names the file, or null when it cannot.</param>
/// <param name="ensureInPlace">Refuses when the book's file is no longer the one that was opened; null where nobody looks.</param>
public sealed class BookAccess(
    IDbContextFactory<BookContext> contexts,
    TimeProvider clock,
    string file,
    Func<DbException, BookUnavailableException?> explain,
    Action? ensureInPlace = null)
{
    internal BookChanges Changes { get; } = new();

    internal DateTimeOffset Now => clock.GetUtcNow();

    /// <summary>The day it is where the book lies: vessels are filled and emptied by days.</summary>
    internal DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>Why a text that the disk has changed is not gone on from: it would be sealed as if it were sound.</summary>
    /// <param name="what">Which text: <c>The draft of this recipe</c>.</param>
    /// <param name="word">Of which noun: <c>recipe</c>.</param>
    internal BookUnavailableException Damaged(string what, string word) => new(
        BookTrouble.Damaged, file, $"{what} is damaged: the disk no longer gives back what was written. Open the {word} to go back to a sound text.");

    internal async Task<T> ReadAsync<T>(Func<BookContext, Task<T>> work, CancellationToken cancellation)
    {
        try
        {
            // A connection opened now would find whatever lies there by now.
            ensureInPlace?.Invoke();
            await using BookContext context = await contexts.CreateDbContextAsync(cancellation);
            context.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;
            return await work(context);
        }
        catch (Exception fault) when (Explained(fault) is { } advice)
        {
            throw advice;
        }
    }

    /// <summary>Does the work in one transaction that holds the pen from its start; commits when the work returns.</summary>
    internal async Task<T> WriteAsync<T>(Func<BookContext, Task<T>> work, CancellationToken cancellation)
    {
        try
        {
            ensureInPlace?.Invoke();
            await using BookContext context = await contexts.CreateDbContextAsync(cancellation);
            await using IDbContextTransaction transaction = await context.Database.BeginTransactionAsync(cancellation);
            T result = await work(context);
            await context.SaveChangesAsync(cancellation);

            ensureInPlace?.Invoke();

            // Once the work is done it is kept: a reader who walks away now does not undo it.
            await transaction.CommitAsync(CancellationToken.None);
            return result;
        }
        catch (Exception fault) when (Explained(fault) is { } advice)
        {
            throw advice;
        }
    }

    private BookUnavailableException? Explained(Exception fault)
    {
        for (Exception? cause = fault; cause is not null; cause = cause.InnerException)
        {
            if (cause is DbException database)
            {
                return explain(database);
            }
        }

        return null;
    }
}
