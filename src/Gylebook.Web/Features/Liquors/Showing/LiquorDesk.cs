using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Web.Features.Foods;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Reading;
using Gylebook.Web.Widgets.Fields;

namespace Gylebook.Web.Features.Liquors.Showing;

/// <summary>A water plan on the desk: the text a tab has open, and what comes of it.</summary>
/// <remarks>When the text cannot be read, what was last readable stays in view and <see cref="IsStale"/> says so.</remarks>
public sealed class LiquorDesk : IFieldDesk
{
    private readonly OpenSheet<WaterRow> _sheet;
    private readonly TimeProvider _clock;
    private readonly ReckoningDoor _door;
    private IReadOnlyList<Finding> _findings = [];
    private WaterDraft _shown;

    private LiquorDesk(OpenSheet<WaterRow> sheet, WaterOf water, RecipeToBrew? brewed, Shown shown, TimeProvider clock, ReckoningDoor door)
    {
        (_sheet, _clock, Stored, Brewed, Shown, _door) = (sheet, clock, water, brewed, shown, door);
        Now = _shown = WaterDraft.Of(water.Sheet.Document);
        Reckon(Now);
    }

    /// <summary>Something on the desk is not what it was.</summary>
    public event Action? Changed;

    /// <summary>The plan as it was opened.</summary>
    public WaterOf Stored { get; }

    /// <summary>What the plan says, as this tab shows it.</summary>
    public WaterDraft Now { get; private set; }

    /// <summary>The recipe it is for; null for none.</summary>
    public RecipeToBrew? Brewed { get; }

    /// <inheritdoc/>
    public Shown Shown { get; private set; }

    /// <summary>What comes of the plan; null until it could be read for the first time.</summary>
    public LiquorOutlook? Outlook { get; private set; }

    /// <summary>Whether the outlook is of an earlier text, because the present one cannot be read.</summary>
    public bool IsStale { get; private set; }

    /// <summary>How often the numbers were reckoned.</summary>
    public int Reckoned { get; private set; }

    /// <summary>When it was last saved, or why not, in words; empty before.</summary>
    public string Saved { get; private set; } = "";

    /// <summary>The book's text and ours, when somebody else changed the plan meanwhile; null while all is well.</summary>
    public DraftSave.Stale? Clash => _sheet.Clash;

    /// <summary>Whether the book could not take the last text.</summary>
    public bool IsUnsaved => _sheet.Unsaved is not null;

    /// <summary>Opens a plan; null when there is none.</summary>
    /// <exception cref="ArgumentException">Its text is damaged: it is no file at all.</exception>
    public static async Task<LiquorDesk?> OpenAsync(Book book, Guid id, Shown shown, TimeProvider clock, PageSaves? saves = null, ReckoningDoor? door = null)
    {
        if (await book.Waters.FindWithRecipeAsync(id) is not { } water)
        {
            return null;
        }

        RecipeToBrew? brewed = water.RecipeId is { } recipe ? await RecipeAsync(book, recipe, water.Recipe!) : null;
        return new LiquorDesk(new OpenSheet<WaterRow>(book.Waters, id, water.Sheet.Revision, saves), water, brewed, shown, clock, door ?? new ReckoningDoor());
    }

    /// <inheritdoc/>
    public string? TextAt(string path) => Now.PathOf(path) is { } real ? Now[real] : null;

    /// <inheritdoc/>
    public IReadOnlyList<Finding> At(string path) => Now.PathOf(path) is { } real ? [.. _findings.Where(f => f.Where == real)] : [];

    /// <summary>Findings at a part and all that is in it: <c>sources[0]</c>.</summary>
    public IReadOnlyList<Finding> In(string part) => [.. _findings.Where(f => f.Where == part || f.Where.StartsWith(part + ".", StringComparison.Ordinal) || f.Where.StartsWith(part + "[", StringComparison.Ordinal))];

    /// <summary>Findings that none of those parts and fields shows.</summary>
    public IReadOnlyList<Finding> Beside(params string[] parts) => [.. _findings.Except(parts.SelectMany(In))];

    /// <inheritdoc/>
    public void Focus(object field)
    {
        // A plan is saved whole: what others did to it meanwhile is shown as a clash, whichever field is typed in.
    }

    /// <inheritdoc/>
    public void Blur(object field)
    {
    }

    /// <inheritdoc/>
    public void Preview(string path, string text)
    {
        WaterDraft typed = Now.Put(path, text);
        if (typed.Plan is not null)
        {
            Reckon(typed);
            Changed?.Invoke();
        }
    }

    /// <inheritdoc/>
    public Task CommitAsync(object field, string path, string? text) => EditAsync(draft => draft.Put(path, text));

    /// <summary>Edits, and saves.</summary>
    public async Task EditAsync(Func<WaterDraft, WaterDraft> edit)
    {
        WaterDraft edited = edit(Now);
        if (edited.Text == Now.Text && edited.Text == _shown.Text)
        {
            return;
        }

        Now = edited;
        if (edited.Text != _shown.Text)
        {
            Reckon(edited);
            Changed?.Invoke();
        }

        await SaveAsync(_sheet.SaveAsync);
    }

    /// <summary>Saves again what could not be saved.</summary>
    public Task SaveAgainAsync() => SaveAsync(_sheet.SaveAsync);

    /// <summary>Ends a clash in favour of what stands here.</summary>
    public Task KeepMineAsync() => SaveAsync(_sheet.OverwriteAsync);

    /// <summary>Whether that change of the book asks for another look at it.</summary>
    public bool IsNews(BookChange change) => _sheet.IsNews(change) || change.Id == Brewed?.Id || (Brewed is not null && change.Noun is BookNoun.Kit or BookNoun.Food);

    /// <summary>Shows numbers another way.</summary>
    public void Show(Shown shown)
    {
        Shown = shown;
        Changed?.Invoke();
    }

    private static async Task<RecipeToBrew> RecipeAsync(Book book, Guid id, string name)
    {
        Recipe? recipe = await book.Drafts.FindAsync(id) is { } draft && WholeText.DamageOf(draft) is null ? RecipeDraft.Of(draft.Document).Recipe : null;
        KitInUse kit = await KitInUse.FindAsync(book);
        OwnFoods foods = await OwnFoods.OfAsync(book);
        return new RecipeToBrew(id, name, recipe, kit.Kit, foods.Find);
    }

    private async Task SaveAsync(Func<Func<string>, Task> save)
    {
        await save(() => Now.Text);
        Saved = _sheet.Says("plan", _clock);
        Changed?.Invoke();
    }

    private void Reckon(WaterDraft text)
    {
        Reckoned++;
        _shown = text;
        Finding? problem = null;
        LiquorOutlook? outlook = text.Plan is { } plan ? _door.Reckon(() => LiquorOutlook.Of(plan, Brewed), () => $"{text.Text}\n{Brewed?.Recipe}", out problem) : null;
        _door.Note(outlook?.Brew?.Failure, () => $"{text.Text}\n{Brewed?.Recipe}");
        IsStale = outlook is null;
        Outlook = outlook ?? Outlook;
        IEnumerable<Finding> found = problem is null ? outlook?.Findings ?? [] : [problem];
        _findings = [.. text.Findings.Concat(found).Distinct()];
    }
}
