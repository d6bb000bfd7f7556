using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Drafting;

/// <summary>A draft as one tab has it open: edits, saves, undo, and what other tabs do meanwhile, whatever it is of.</summary>
public abstract class OpenDraft
{
    private protected OpenDraft(string tabId) => TabId = tabId;

    /// <summary>Opens a draft; null when there is none.</summary>
    /// <param name="book">The drafts of the book.</param>
    /// <param name="id">Which one.</param>
    /// <param name="read">Reads its text.</param>
    /// <param name="tabId">Which tab.</param>
    /// <param name="saves">Hears of each save; null when nobody asks.</param>
    /// <typeparam name="TDraft">Which sort of draft.</typeparam>
    /// <exception cref="InvalidDataException">The draft's text is damaged: the disk has changed it.</exception>
    public static async Task<OpenDraft<TDraft>?> OpenAsync<TDraft>(BookDrafts book, Guid id, Func<string, TDraft> read, string tabId, PageSaves? saves = null)
        where TDraft : FileDraft =>
        await book.FindAsync(id) is not { } draft ? null
        : WholeText.DamageOf(draft) is { } damage ? throw new InvalidDataException(damage)
        : new OpenDraft<TDraft>(book, read, draft, tabId, saves ?? PageSaves.Unasked());

    /// <summary>Begins a draft that is not in the book yet: its first edit brings it there, and undo leads back to this text.</summary>
    /// <param name="book">The drafts of the book.</param>
    /// <param name="id">Which one it will be.</param>
    /// <param name="text">What it says at first.</param>
    /// <param name="read">Reads its text.</param>
    /// <param name="tabId">Which tab.</param>
    /// <param name="saves">Hears of each save; null when nobody asks.</param>
    /// <typeparam name="TDraft">Which sort of draft.</typeparam>
    public static OpenDraft<TDraft> Begin<TDraft>(BookDrafts book, Guid id, string text, Func<string, TDraft> read, string tabId, PageSaves? saves = null)
        where TDraft : FileDraft =>
        new(book, read, new Store.Draft(id, text, NotInBook, default, null, null), tabId, saves ?? PageSaves.Unasked());

    /// <summary>The revision of what the book has never seen.</summary>
    private protected const long NotInBook = 0;

    /// <summary>Which one.</summary>
    public abstract Guid Id { get; }

    /// <summary>Which tab.</summary>
    public string TabId { get; }

    /// <summary>What it says, as this tab shows it.</summary>
    public abstract FileDraft Now { get; }

    /// <summary>The revision this tab knows of.</summary>
    public abstract long Revision { get; }

    /// <summary>Whether it is in the book; one that was begun here is from its first edit on.</summary>
    public bool IsInBook => Revision > NotInBook;

    /// <summary>When the text last reached the disk.</summary>
    public abstract DateTimeOffset SavedAt { get; }

    /// <summary>What undo would take back; null for nothing.</summary>
    public abstract string? UndoLabel { get; }

    /// <summary>What redo would bring back; null for nothing.</summary>
    public abstract string? RedoLabel { get; }

    /// <summary>Why the last edit is not on disk yet; null when it is.</summary>
    public string? Unsaved { get; private protected set; }

    /// <summary>Whether two texts wait for a choice.</summary>
    public abstract bool HasClash { get; }

    /// <summary>What has to be chosen between two texts, each choice with both; null when there are none.</summary>
    public abstract IReadOnlyList<MergeChoice>? Choices { get; }
}

/// <summary>The same with the sort of draft it is.</summary>
/// <remarks>
/// Saves go by compare-and-set. When somebody else was there first and changed other fields, both edits are made one and
/// saved; when they changed the same field, <see cref="OpenDraft.Choices"/> holds both until the brewer has chosen. The book
/// keeps the late text in its log either way.
/// </remarks>
/// <typeparam name="TDraft">Which sort of draft.</typeparam>
public sealed class OpenDraft<TDraft> : OpenDraft, IDisposable
    where TDraft : FileDraft
{
    private readonly BookDrafts _book;
    private readonly Func<string, TDraft> _read;
    private readonly SemaphoreSlim _turn = new(1, 1);
    private readonly TypingRun<TDraft> _typing = new();
    private readonly FieldFocus<TDraft> _focus = new();
    private readonly PageSaves _saves;
    private Store.Draft _stored;
    private TDraft _storedText;
    private TDraft _now;
    private DraftClash<TDraft>? _clash;
    private WaitingEdit? _waiting;

    internal OpenDraft(BookDrafts book, Func<string, TDraft> read, Store.Draft draft, string tabId, PageSaves saves)
        : base(tabId)
    {
        (_book, _read, _stored, _saves) = (book, read, draft, saves);
        _now = _storedText = read(draft.Document);
    }

    /// <inheritdoc/>
    public override Guid Id => _stored.Id;

    /// <inheritdoc/>
    public override TDraft Now => _now;

    /// <inheritdoc/>
    public override long Revision => _stored.Revision;

    /// <inheritdoc/>
    public override DateTimeOffset SavedAt => _stored.Updated;

    /// <inheritdoc/>
    public override string? UndoLabel => _stored.UndoLabel;

    /// <inheritdoc/>
    public override string? RedoLabel => _stored.RedoLabel;

    /// <inheritdoc/>
    public override bool HasClash => _clash is not null;

    /// <inheritdoc/>
    public override IReadOnlyList<MergeChoice>? Choices => Merge()?.Choices;

    // Until a save succeeds, what is typed answers to the draft that was stored last, not to a text that never was.
    private SeenDraft<TDraft> Seen => _waiting is { } waiting
        ? new SeenDraft<TDraft>(Now, waiting.Seen.Revision, waiting.Seen.Stored)
        : new SeenDraft<TDraft>(Now, Revision, _storedText);

    /// <summary>A field got the focus: what is typed there answers to what the brewer sees now.</summary>
    /// <param name="field">Which, so that a field left late does not end the focus of the next.</param>
    public void Focus(object field) => _focus.Enter(field, Seen);

    /// <summary>That field has the focus no more.</summary>
    public void Blur(object field) => _focus.Leave(field);

    /// <summary>Edits what this tab shows, and saves it.</summary>
    /// <param name="make">Makes the edit; null for none.</param>
    public Task EditAsync(Func<TDraft, DraftEdit<TDraft>?> make) => InTurnAsync(() => SaveAsync(Seen, make, null));

    /// <summary>Edits what stood there when the field got the focus, whatever other tabs did since, and saves it.</summary>
    /// <remarks>Typed on a moment after a save of the same field, both are one step.</remarks>
    /// <param name="field">Which field.</param>
    /// <param name="make">Makes the edit; null for none.</param>
    public Task EditFocusedAsync(object field, Func<TDraft, DraftEdit<TDraft>?> make)
    {
        // Asked now, not in turn: by then the next field may have the focus.
        SeenDraft<TDraft>? seen = _focus.SeenAt(field);
        return InTurnAsync(() => SaveAsync(seen ?? Seen, make, field));
    }

    /// <summary>Saves again what could not be saved.</summary>
    public Task RetryAsync() => InTurnAsync(SaveWaitingAsync);

    /// <summary>Takes the last edit back; one that could not be saved is saved before, so that it can be had again.</summary>
    public Task UndoAsync() => InTurnAsync(() => MoveAsync(_book.UndoAsync));

    /// <summary>Brings back what undo took.</summary>
    public Task RedoAsync() => InTurnAsync(() => MoveAsync(_book.RedoAsync));

    /// <summary>Another tab changed the draft: shows it. Text that could not be saved yet is not thrown away for it.</summary>
    public Task AdoptAsync() => InTurnAsync(async () =>
    {
        // A damaged text is not taken over: what this tab holds is whole, and its next save mends the draft.
        if (Unsaved is null && await _book.FindAsync(Id) is { IsDamaged: false } theirs && theirs.Revision > Revision)
        {
            Take(theirs);
        }
    });

    /// <summary>What the clash is about, against the draft as it stands now.</summary>
    public DraftMerge<TDraft>? Merge() => _clash?.With(Now);

    /// <summary>Ends the clash with the chosen sides.</summary>
    /// <param name="isYours">For each choice of <see cref="Merge"/>, whether this tab's side is taken.</param>
    public Task ChooseAsync(Func<int, bool> isYours) => InTurnAsync(async () =>
    {
        if (Merge() is { } merge)
        {
            string label = _clash!.Label;
            TDraft chosen = merge.With(isYours);
            _clash = null;
            await StoreAsync(chosen, new SeenDraft<TDraft>(Now, Revision, _storedText), label);
        }
    });

    /// <summary>A text of the same sort.</summary>
    /// <exception cref="ArgumentException">Not a file at all.</exception>
    public TDraft Read(string text) => _read(text);

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

        run.Ends(Unsaved ?? (_clash is null ? null : "Another tab changed the same; both texts wait for a choice."));
    }

    private async Task SaveAsync(SeenDraft<TDraft> seen, Func<TDraft, DraftEdit<TDraft>?> make, object? field)
    {
        if (make(seen.Draft) is { } edit)
        {
            DraftJoin? join = _typing.Join(field, make, edit.After);
            _typing.Took(field, seen.Draft, await StoreAsync(edit.After, seen, edit.Label, join));
        }
    }

    private Task SaveWaitingAsync() => _waiting is { } waiting ? StoreAsync(waiting.Text, waiting.Seen, waiting.Label) : Task.CompletedTask;

    private async Task<DraftSave> StoreAsync(TDraft text, SeenDraft<TDraft> seen, string label, DraftJoin? join = null)
    {
        // Shown before it is saved: should the disk be full, the text is still on the page.
        _now = seen.Revision == Revision ? text : DraftMerge.Of(seen.Stored, Now, text).With(_ => true);
        _waiting = new WaitingEdit(text, seen, label);
        DraftSave answer = seen.Revision == NotInBook
            ? await _book.BeginAsync(Id, seen.Stored.Text, text.Text, label, TabId)
            : await _book.SaveAsync(Id, seen.Revision, text.Text, label, TabId, join);
        if (answer is DraftSave.Stale stale)
        {
            await TogetherAsync(new DraftClash<TDraft>(seen.Stored, text, label), _read(stale.Theirs));
        }
        else
        {
            Take((await _book.FindAsync(Id))!);
        }

        _focus.Renew(Seen);
        return answer;
    }

    private async Task TogetherAsync(DraftClash<TDraft> clash, TDraft theirs)
    {
        DraftMerge<TDraft> merge = clash.With(theirs);
        Take((await _book.FindAsync(Id))!);
        if (merge.HasConflicts)
        {
            _clash = clash;
        }
        else if (merge.Choices.Count > 0)
        {
            await StoreAsync(merge.With(_ => true), Seen, clash.Label);
        }
    }

    private async Task MoveAsync(Func<Guid, long, string, CancellationToken, Task<DraftMove>> step)
    {
        await SaveWaitingAsync();
        if (!IsInBook)
        {
            return;
        }

        DraftMove move = await step(Id, Revision, TabId, CancellationToken.None);
        if (move switch { DraftMove.Moved moved => moved.Draft, DraftMove.Stale stale => stale.Theirs, _ => null } is { } draft)
        {
            Take(draft);
        }

        _focus.Forget();
    }

    private void Take(Store.Draft draft)
    {
        _now = _storedText = Now.Text == draft.Document ? Now : _read(draft.Document);
        _stored = draft;
        _waiting = null;
        Unsaved = null;
    }

    /// <summary>An edit that is on its way to the disk, or could not get there.</summary>
    private sealed record WaitingEdit(TDraft Text, SeenDraft<TDraft> Seen, string Label);
}
