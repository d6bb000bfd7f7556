using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Store;

namespace Gylebook.Web.Features.Recipes.Drafting;

/// <summary>A draft that cannot be read just now still had a run: that of the last text that could.</summary>
internal static class LastReadable
{
    /// <summary>The recipe that text was; null when none of the draft's history can be read.</summary>
    public static async Task<Recipe?> OfAsync(Book book, Guid id)
    {
        foreach (DraftEdit edit in await book.Drafts.HistoryAsync(id))
        {
            if (RecipeDraft.Of(edit.Before).Recipe is { } earlier)
            {
                return earlier;
            }
        }

        return null;
    }
}
