using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Forms;
using Gylebook.Web.Widgets.Fields;

namespace Gylebook.Web.Drafting;

/// <summary>A file of the book on the desk: its fields, and the ways back.</summary>
public abstract class DraftDesk : IFieldDesk
{
    /// <summary>Something on the desk is not what it was.</summary>
    public event Action? Changed;

    /// <summary>The draft as this tab has it open.</summary>
    public abstract OpenDraft Draft { get; }

    /// <summary>What the file says.</summary>
    public abstract FileDraft Now { get; }

    /// <inheritdoc/>
    public abstract Shown Shown { get; }

    /// <summary>Everything found, in the text or by what comes of it.</summary>
    public abstract IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether some field cannot be read.</summary>
    public bool IsUnreadable => !Now.IsReadable;

    /// <inheritdoc/>
    public string? TextAt(string path) => Now.PathOf(path) is { } real ? Now[real] : null;

    /// <inheritdoc/>
    public Field? FieldAt(string path) => Now.Form.At(Now.PathOf(path) ?? path);

    /// <inheritdoc/>
    public IReadOnlyList<Finding> At(string path) => Now.PathOf(path) is { } real ? [.. Findings.Where(f => f.Where == real)] : [];

    /// <summary>Findings at a part and all that is in it: <c>sources[0]</c>.</summary>
    public IReadOnlyList<Finding> In(string part) => [.. Findings.Where(f =>
        f.Where == part || f.Where.StartsWith(part + ".", StringComparison.Ordinal) || f.Where.StartsWith(part + "[", StringComparison.Ordinal))];

    /// <summary>Findings that none of those parts and fields shows.</summary>
    public IReadOnlyList<Finding> Beside(params string[] parts) => [.. Findings.Except(parts.SelectMany(In))];

    /// <inheritdoc/>
    public abstract void Focus(object field);

    /// <inheritdoc/>
    public abstract void Blur(object field);

    /// <inheritdoc/>
    public abstract void Preview(string path, string text);

    /// <inheritdoc/>
    public abstract Task CommitAsync(object field, string path, string? text);

    /// <summary>Takes the last edit back.</summary>
    public abstract Task UndoAsync();

    /// <summary>Brings back what undo took.</summary>
    public abstract Task RedoAsync();

    /// <summary>Saves again what could not be saved.</summary>
    public abstract Task RetryAsync();

    /// <summary>Another tab changed the draft.</summary>
    public abstract Task AdoptAsync();

    /// <summary>Ends a clash with the chosen sides.</summary>
    /// <param name="isYours">For each choice, whether this tab's side is taken.</param>
    public abstract Task ChooseAsync(Func<int, bool> isYours);

    /// <summary>A text of the same sort: of the history, of a version.</summary>
    public abstract FileDraft Read(string text);

    /// <summary>Puts a whole text in place of what stands here, as one edit.</summary>
    /// <param name="text">A text of the history, or of a version.</param>
    /// <param name="label">What was done.</param>
    public abstract Task ReturnAsync(string text, string label);

    /// <summary>Tells those who show the desk.</summary>
    private protected void Tell() => Changed?.Invoke();
}

/// <summary>A desk for one sort of draft. While somebody types, what comes of the text is reckoned and nothing is saved; a change or a pause commits it.</summary>
/// <typeparam name="TDraft">Which sort.</typeparam>
public abstract class DraftDesk<TDraft> : DraftDesk
    where TDraft : FileDraft
{
    private Shown _shown;
    private Typed? _typed;

    /// <summary>A desk with that draft on it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="shown">How this reader wants to see numbers.</param>
    private protected DraftDesk(OpenDraft<TDraft> draft, Shown shown) => (Draft, _shown, InView) = (draft, shown, draft.Now);

    /// <inheritdoc/>
    public override OpenDraft<TDraft> Draft { get; }

    /// <inheritdoc/>
    public override TDraft Now => Draft.Now;

    /// <inheritdoc/>
    public override Shown Shown => _shown;

    /// <summary>The text that was reckoned last, readable or not.</summary>
    private protected TDraft InView { get; private set; }

    /// <inheritdoc/>
    public override void Focus(object field) => Draft.Focus(field);

    /// <inheritdoc/>
    public override void Blur(object field) => Draft.Blur(field);

    /// <inheritdoc/>
    public override void Preview(string path, string text)
    {
        // Typed back to what is saved, it is no edit any more, and the numbers go back too.
        TDraft typed = Follow(Put(Now, path, text))?.After ?? Now;
        if (typed.IsReadable)
        {
            _typed = new Typed(Now, typed);
            ReckonWhenNew(typed);
            Tell();
        }
    }

    /// <inheritdoc/>
    public override Task CommitAsync(object field, string path, string? text) => DoAsync(Draft.EditFocusedAsync(field, draft => Follow(Put(draft, path, text))));

    /// <summary>Edits, and saves.</summary>
    public Task EditAsync(Func<TDraft, DraftEdit<TDraft>?> make) => DoAsync(Draft.EditAsync(draft => Follow(make(draft))));

    /// <inheritdoc/>
    public override Task UndoAsync() => DoAsync(Draft.UndoAsync());

    /// <inheritdoc/>
    public override Task RedoAsync() => DoAsync(Draft.RedoAsync());

    /// <inheritdoc/>
    public override Task RetryAsync() => DoAsync(Draft.RetryAsync());

    /// <inheritdoc/>
    public override Task AdoptAsync() => DoAsync(Draft.AdoptAsync(), endsTyping: false);

    /// <inheritdoc/>
    public override Task ChooseAsync(Func<int, bool> isYours) => DoAsync(Draft.ChooseAsync(isYours));

    /// <inheritdoc/>
    public override TDraft Read(string text) => Draft.Read(text);

    /// <inheritdoc/>
    public override Task ReturnAsync(string text, string label) => DoAsync(Draft.EditAsync(_ => new DraftEdit<TDraft>(Read(text), label)));

    /// <summary>Shows numbers another way.</summary>
    public virtual void Show(Shown shown)
    {
        _shown = shown;
        Tell();
    }

    /// <summary>Types into a field.</summary>
    private protected virtual DraftEdit<TDraft>? Put(TDraft draft, string path, string? text) => draft.Put(path, text);

    /// <summary>What an edit brings about besides, as a part of it.</summary>
    private protected virtual DraftEdit<TDraft>? Follow(DraftEdit<TDraft>? edit) => edit;

    /// <summary>Works out what comes of a text.</summary>
    private protected abstract void Reckon(TDraft text);

    /// <summary>Works out once more what comes of the text in view, since something around it changed.</summary>
    private protected void ReckonAgain()
    {
        Reckon(InView);
        Tell();
    }

    /// <summary>Waits for what is done to the draft, and shows what came of it.</summary>
    /// <param name="work">The edit, the step, the taking over.</param>
    /// <param name="endsTyping">Whether what was being typed went with it.</param>
    private protected async Task DoAsync(Task work, bool endsTyping = true)
    {
        await work;
        _typed = endsTyping ? null : _typed;
        ReckonWhenNew(_typed?.On(Now) ?? Now);
        Tell();
    }

    /// <summary>What was reckoned while it was typed is not reckoned again when it is saved.</summary>
    private void ReckonWhenNew(TDraft text)
    {
        if (!text.Says(InView))
        {
            InView = text;
            Reckon(text);
        }
    }

    /// <summary>A text that is being typed and not saved yet, with the draft it was typed into.</summary>
    private sealed record Typed(TDraft Basis, TDraft Text)
    {
        public TDraft On(TDraft now) => now == Basis ? Text : DraftMerge.Of(Basis, now, Text).With(_ => true);
    }
}
