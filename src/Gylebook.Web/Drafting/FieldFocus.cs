using Gylebook.Recipes.Editing;

namespace Gylebook.Web.Drafting;

/// <summary>A draft as somebody saw it.</summary>
/// <param name="Draft">What it said, edits that could not be saved included.</param>
/// <param name="Revision">The revision it was.</param>
/// <param name="Stored">What the book held as that revision: to this every edit of it is compared.</param>
/// <typeparam name="TDraft">Which sort of draft.</typeparam>
internal sealed record SeenDraft<TDraft>(TDraft Draft, long Revision, TDraft Stored)
    where TDraft : FileDraft;

/// <summary>Which field has the focus, and what the brewer saw when it got it: what is typed there answers to that.</summary>
/// <typeparam name="TDraft">Which sort of draft.</typeparam>
internal sealed class FieldFocus<TDraft>
    where TDraft : FileDraft
{
    private object? _field;
    private SeenDraft<TDraft>? _seen;

    /// <summary>A field got the focus.</summary>
    /// <param name="field">Which, so that a field left late does not end the focus of the next.</param>
    /// <param name="seen">What stands on the page.</param>
    public void Enter(object field, SeenDraft<TDraft> seen) => (_field, _seen) = (field, seen);

    /// <summary>That field has the focus no more.</summary>
    public void Leave(object field)
    {
        if (_field == field)
        {
            (_field, _seen) = (null, null);
        }
    }

    /// <summary>What the brewer saw when that field got the focus; null when it has not.</summary>
    public SeenDraft<TDraft>? SeenAt(object field) => _field == field ? _seen : null;

    /// <summary>What was typed is saved: the brewer sees this now.</summary>
    public void Renew(SeenDraft<TDraft> seen) => _seen = _seen is null ? null : seen;

    /// <summary>The draft moved to another text under the field: what was seen counts no more.</summary>
    public void Forget() => _seen = null;
}
