using Gylebook.Recipes.Editing;

namespace Gylebook.Web.Drafting;

/// <summary>Two texts that both changed the same field: a person has to choose.</summary>
/// <param name="Basis">What this tab had seen.</param>
/// <param name="Yours">What it wanted to save.</param>
/// <param name="Label">What was edited here.</param>
/// <typeparam name="TDraft">Which sort of draft.</typeparam>
internal sealed record DraftClash<TDraft>(TDraft Basis, TDraft Yours, string Label)
    where TDraft : FileDraft
{
    /// <summary>What there is to choose, against what they made of the same.</summary>
    public DraftMerge<TDraft> With(TDraft theirs) => DraftMerge.Of(Basis, theirs, Yours);
}
