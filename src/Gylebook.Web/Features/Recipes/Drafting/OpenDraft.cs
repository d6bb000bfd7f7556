using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Recipes.Drafting;

/// <summary>A recipe's draft as one tab has it open: edits, saves, undo, and what other tabs do meanwhile.</summary>
/// <remarks>
/// Saves go by compare-and-set. When somebody else was there first and changed other fields, both edits are made one and
/// saved; when they changed the same field, <see cref="Clash"/> holds both texts until the brewer has chosen. The book
/// keeps the late text in its log either way.
/// </remarks>
public sealed class OpenDraft : IDisposable
{
    private readonly Book _book;
    private readonly SemaphoreSlim _turn = new(1, 1);
    private readonly TypingRun _typing = new();
    private readonly FieldFocus _focus = new();
    private readonly PageSaves _saves;
    private Store.Draft _stored;
    private RecipeDraft _storedText;
    private WaitingEdit? _waiting;

    private OpenDraft(Book book, Store.Draft draft, string tabId, PageSaves saves)
    {
        (_book, _stored, TabId, _saves) = (book, draft, tabId, saves);
        Now = _storedText = RecipeDraft.Of(draft.Document);
    }

    /// <summary>Which recipe.</summary>
    public Guid Id => _stored.RecipeId;

    /// <summary>Which tab.</summary>
    public string TabId { get; }

    /// <summary>What the recipe says, as this tab shows it.</summary>
    public RecipeDraft Now { get; private set; }

    /// <summary>The revision this tab knows of.</summary>
    public long Revision => _stored.Revision;

    /// <summary>When the text last reached the disk.</summary>
    public DateTimeOffset SavedAt => _stored.Updated;

    /// <summary>What undo would take back; null for nothing.</summary>
    public string? UndoLabel => _stored.UndoLabel;

    /// <summary>What redo would bring back; null for nothing.</summary>
    public string? RedoLabel => _stored.RedoLabel;

    /// <summary>Two texts to choose between; null when there are none.</summary>
    public DraftClash? Clash { get; private set; }

    /// <summary>Why the last edit is not on disk yet; null when it is.</summary>
    public string? Unsaved { get; private set; }

    // Until a save succeeds, what is typed answers to the draft that was stored last, not to a text that never was.
    private SeenDraft Seen => _waiting is { } waiting
        ? new SeenDraft(Now, waiting.Seen.Revision, waiting.Seen.Stored)
        : new SeenDraft(Now, Revision, _storedText);

    /// <summary>Opens a recipe; null when there is none.</summary>
    /// <param name="book">The book.</param>
    /// <param name="id">Which recipe.</param>
    /// <param name="tabId">Which tab.</param>
    /// <param name="saves">Hears of each save; null when nobody asks.</param>
    /// <exception cref="InvalidDataException">The draft's text is damaged: the disk has changed it.</exception>
    public static async Task<OpenDraft?> OpenAsync(Book book, Guid id, string tabId, PageSaves? saves = null) =>
        await book.Drafts.FindAsync(id) is not { } draft ? null
        : WholeText.DamageOf(draft) is { } damage ? throw new InvalidDataException(damage)
        : new OpenDraft(book, draft, tabId, saves ?? PageSaves.Unasked());

    /// <summary>A field got the focus: what is typed there answers to what the brewer sees now.</summary>
    /// <param name="field">Which, so that a field left late does not end the focus of the next.</param>
    public void Focus(object field) => _focus.Enter(field, Seen);

    /// <summary>That field has the focus no more.</summary>
    public void Blur(object field) => _focus.Leave(field);

    /// <summary>Edits what this tab shows, and saves it.</summary>
    /// <param name="make">Makes the edit; null for none.</param>
    public Task EditAsync(Func<RecipeDraft, RecipeEdit?> make) => InTurnAsync(() => SaveAsync(Seen, make, null));

    /// <summary>Edits what stood there when the field got the focus, whatever other tabs did since, and saves it.</summary>
    /// <remarks>Typed on a moment after a save of the same field, both are one step.</remarks>
    /// <param name="field">Which field.</param>
    /// <param name="make">Makes the edit; null for none.</param>
    public Task EditFocusedAsync(object field, Func<RecipeDraft, RecipeEdit?> make)
    {
        // Asked now, not in turn: by then the next field may have the focus.
        SeenDraft? seen = _focus.SeenAt(field);
        return InTurnAsync(() => SaveAsync(seen ?? Seen, make, field));
    }

    /// <summary>Saves again what could not be saved.</summary>
    public Task RetryAsync() => InTurnAsync(SaveWaitingAsync);

    /// <summary>Takes the last edit back; one that could not be saved is saved before, so that it can be had again.</summary>
    public Task UndoAsync() => InTurnAsync(async () =>
    {
        await SaveWaitingAsync();
        Moved(await _book.Drafts.UndoAsync(Id, Revision, TabId));
    });

    /// <summary>Brings back what undo took.</summary>
    public Task RedoAsync() => InTurnAsync(async () =>
    {
        await SaveWaitingAsync();
        Moved(await _book.Drafts.RedoAsync(Id, Revision, TabId));
    });

    /// <summary>Another tab changed the draft: shows it. Text that could not be saved yet is not thrown away for it.</summary>
    public Task AdoptAsync() => InTurnAsync(async () =>
    {
        // A damaged text is not taken over: what this tab holds is whole, and its next save mends the draft.
        if (Unsaved is null && await _book.Drafts.FindAsync(Id) is { IsDamaged: false } theirs && theirs.Revision > Revision)
        {
            Take(theirs);
        }
    });

    /// <summary>What the clash is about, against the draft as it stands now.</summary>
    public DraftMerge? Merge() => Clash?.With(Now);

    /// <summary>Ends the clash with the chosen sides.</summary>
    /// <param name="isYours">For each choice of <see cref="Merge"/>, whether this tab's side is taken.</param>
    public Task ChooseAsync(Func<int, bool> isYours) => InTurnAsync(async () =>
    {
        if (Merge() is { } merge)
        {
            string label = Clash!.Label;
            RecipeDraft chosen = merge.With(isYours);
            Clash = null;
            await StoreAsync(chosen, new SeenDraft(Now, Revision, _storedText), label);
        }
    });

    /// <inheritdoc/>
    public void Dispose() => _turn.Dispose();

    private async Task InTurnAsync(Func<Task> work)
    {
        using PageSaves.Run run = _saves.Begin();
        await _turn.WaitAsync();
        try
        {
            await work();
        }
        catch (BookUnavailableException trouble)
        {
            Unsaved = trouble.Message;
        }
        finally
        {
            _turn.Release();
        }

        run.Ends(Unsaved ?? (Clash is null ? null : "Another tab changed the same; both texts wait for a choice."));
    }

    private async Task SaveAsync(SeenDraft seen, Func<RecipeDraft, RecipeEdit?> make, object? field)
    {
        if (make(seen.Draft) is { } edit)
        {
            DraftJoin? join = _typing.Join(field, make, edit.After);
            _typing.Took(field, seen.Draft, await StoreAsync(edit.After, seen, edit.Label, join));
        }
    }

    private Task SaveWaitingAsync() => _waiting is { } waiting ? StoreAsync(waiting.Text, waiting.Seen, waiting.Label) : Task.CompletedTask;

    private async Task<DraftSave> StoreAsync(RecipeDraft text, SeenDraft seen, string label, DraftJoin? join = null)
    {
        // Shown before it is saved: should the disk be full, the text is still on the page.
        Now = seen.Revision == Revision ? text : DraftMerge.Of(seen.Stored, Now, text).With(_ => true);
        _waiting = new WaitingEdit(text, seen, label);
        DraftSave answer = await _book.Drafts.SaveAsync(Id, seen.Revision, text.Text, label, TabId, join);
        if (answer is DraftSave.Stale stale)
        {
            await TogetherAsync(new DraftClash(seen.Stored, text, label), RecipeDraft.Of(stale.Theirs));
        }
        else
        {
            Take((await _book.Drafts.FindAsync(Id))!);
        }

        _focus.Renew(Seen);
        return answer;
    }

    private async Task TogetherAsync(DraftClash clash, RecipeDraft theirs)
    {
        DraftMerge merge = clash.With(theirs);
        Take((await _book.Drafts.FindAsync(Id))!);
        if (merge.HasConflicts)
        {
            Clash = clash;
        }
        else if (merge.Choices.Count > 0)
        {
            await StoreAsync(merge.With(_ => true), Seen, clash.Label);
        }
    }

    private void Moved(DraftMove move)
    {
        if (move switch { DraftMove.Moved moved => moved.Draft, DraftMove.Stale stale => stale.Theirs, _ => null } is { } draft)
        {
            Take(draft);
        }

        _focus.Forget();
    }

    private void Take(Store.Draft draft)
    {
        Now = _storedText = Now.Text == draft.Document ? Now : RecipeDraft.Of(draft.Document);
        _stored = draft;
        _waiting = null;
        Unsaved = null;
    }

    /// <summary>An edit that is on its way to the disk, or could not get there.</summary>
    private sealed record WaitingEdit(RecipeDraft Text, SeenDraft Seen, string Label);
}
