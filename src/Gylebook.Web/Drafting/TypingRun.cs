using Gylebook.Recipes.Editing;
using Gylebook.Store;

namespace Gylebook.Web.Drafting;

/// <summary>What a tab saved last while typing into one field, so that a pause in mid-word makes no step of its own.</summary>
/// <typeparam name="TDraft">Which sort of draft.</typeparam>
internal sealed class TypingRun<TDraft>
    where TDraft : FileDraft
{
    private object? _field;
    private TDraft? _before;

    /// <summary>Asks for one step with what was saved before; null when they are two, as of different fields.</summary>
    /// <param name="field">The field typed into.</param>
    /// <param name="make">Makes the edit.</param>
    /// <param name="after">What it made of the draft as it stood last.</param>
    public DraftJoin? Join(object? field, Func<TDraft, DraftEdit<TDraft>?> make, TDraft after)
    {
        // The same edit of the text before the earlier one gives the same text: then nothing of the earlier one is left in it.
        return field is not null && field == _field && make(_before!) is { } whole && whole.After.Text == after.Text
            ? new DraftJoin(_before!.Text, whole.Label)
            : null;
    }

    /// <summary>Remembers what was saved.</summary>
    /// <param name="field">The field typed into; null for none.</param>
    /// <param name="before">The draft before.</param>
    /// <param name="answer">The book's answer.</param>
    public void Took(object? field, TDraft before, DraftSave answer)
    {
        _before = answer is DraftSave.Saved { IsJoined: true } ? _before : before;
        _field = answer is DraftSave.Saved ? field : null;
    }
}
