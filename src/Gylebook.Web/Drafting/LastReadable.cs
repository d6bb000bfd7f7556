using Gylebook.Store;

namespace Gylebook.Web.Drafting;

/// <summary>A draft that cannot be read just now was read before: the last text of it that could be serves meanwhile.</summary>
internal static class LastReadable
{
    /// <summary>What that text meant; null when none the draft ever stood on can be read.</summary>
    /// <param name="log">Where its edits are kept.</param>
    /// <param name="id">Which draft.</param>
    /// <param name="read">Reads a text; null for one that cannot be read.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <typeparam name="T">What it means.</typeparam>
    public static async Task<T?> OfAsync<T>(BookDrafts log, Guid id, Func<string, T?> read, CancellationToken cancellation = default)
        where T : class => (await log.HistoryAsync(id, cancellation: cancellation))
        .Where(edit => !edit.IsDamaged)
        .Select(edit => read(edit.Before))
        .FirstOrDefault(earlier => earlier is not null);
}
