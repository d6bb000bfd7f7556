using Gylebook.Store;

namespace Gylebook.Web.Reading;

/// <summary>How a page hears of what others do to the book.</summary>
internal static class ChangeListening
{
    /// <summary>Takes in each change that is news, one after the other, until the stream ends.</summary>
    /// <param name="changes">The book's changes, until the page is left.</param>
    /// <param name="isNews">Whether the page does not know it yet.</param>
    /// <param name="take">Takes it in, on the page's own thread.</param>
    public static async Task HearAsync(this IAsyncEnumerable<BookChange> changes, Func<BookChange, bool> isNews, Func<BookChange, Task> take)
    {
        await foreach (BookChange change in changes)
        {
            if (isNews(change))
            {
                await take(change);
            }
        }
    }
}
