using Gylebook.Recipes.Editing;

namespace Gylebook.Web.Features.Recipes.Drafting;

/// <summary>Two texts that both changed the same field: a person has to choose.</summary>
/// <param name="Basis">What this tab had seen.</param>
/// <param name="Yours">What it wanted to save.</param>
/// <param name="Label">What was edited here.</param>
public sealed record DraftClash(RecipeDraft Basis, RecipeDraft Yours, string Label)
{
    /// <summary>What there is to choose, against what they made of the same.</summary>
    public DraftMerge With(RecipeDraft theirs) => DraftMerge.Of(Basis, theirs, Yours);
}
