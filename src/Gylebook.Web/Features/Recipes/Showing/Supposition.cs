using System.Collections.ObjectModel;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>What if: figures of a recipe's outlook moved by hand, and what comes of it then. It stands beside the recipe and is saved nowhere.</summary>
/// <param name="Likely">The outlook as likely, with its bands.</param>
/// <param name="Ways">How far each is moved, by its place: −1 its 5 %, 1 its 95 %; what is not there is as likely.</param>
/// <param name="Outlook">What comes of it; null while everything is as likely, or when it could not be reckoned.</param>
public sealed record Supposition(RecipeOutlook Likely, IReadOnlyDictionary<int, double> Ways, RecipeOutlook? Outlook)
{
    /// <summary>Everything as likely.</summary>
    public static Supposition None(RecipeOutlook likely) => new(likely, ReadOnlyDictionary<int, double>.Empty, null);

    /// <summary>Whether some figure is moved.</summary>
    public bool IsMoved => Ways.Count > 0;
}
