using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;
using Gylebook.Store;
using Gylebook.Web.Features.Recipes.Drafting;
using Gylebook.Web.Reading;
using Gylebook.Web.Widgets.Fields;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>The recipe on the desk: the draft a tab has open, and what comes of it on the kit in use.</summary>
/// <remarks>
/// While somebody types, <see cref="Preview"/> reckons with the text as it stands and nothing is saved; a change or a pause
/// commits it. What others save meanwhile is reckoned together with it. When the draft cannot be read, what was last
/// readable stays in view and <see cref="IsStale"/> says so.
/// </remarks>
public sealed class RecipeDesk : IFieldDesk
{
    private readonly OutlookInView _view;
    private RecipeSurroundings _around;
    private Typed? _typed;

    /// <summary>A desk with that draft on it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="kit">The kit in use.</param>
    /// <param name="foods">The brewer's own foods, by id.</param>
    /// <param name="shown">How this reader wants to see numbers.</param>
    /// <param name="water">The recipe's water; null to count liquor as pure.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    /// <param name="door">What its reckonings go through; null for one that tells nobody.</param>
    public RecipeDesk(
        OpenDraft draft, Kit kit, Func<string, FoodMakeup?> foods, Shown shown, WaterPlan? water = null, ForecastRequest? asked = null, ReckoningDoor? door = null)
    {
        (Draft, Door) = (draft, door ?? new ReckoningDoor());
        _around = new RecipeSurroundings(kit, foods, shown, water, asked ?? ForecastRequest.Usual);
        _view = new OutlookInView(Now, _around, Door);
    }

    /// <summary>Something on the desk is not what it was.</summary>
    public event Action? Changed;

    /// <summary>The draft as this tab has it open.</summary>
    public OpenDraft Draft { get; }

    /// <summary>What reckonings on this desk go through.</summary>
    public ReckoningDoor Door { get; }

    /// <summary>What the recipe says.</summary>
    public RecipeDraft Now => Draft.Now;

    /// <summary>The kit in use.</summary>
    public Kit Kit => _around.Kit;

    /// <summary>The recipe's water; null to count liquor as pure.</summary>
    public WaterPlan? Water => _around.Water;

    /// <summary>The brewer's own foods, by id.</summary>
    public Func<string, FoodMakeup?> Foods => _around.Foods;

    /// <inheritdoc/>
    public Shown Shown => _around.Shown;

    /// <summary>What the reader asks for besides: a model of bitterness, a style.</summary>
    public ForecastRequest Asked => _around.Asked;

    /// <summary>What comes of the recipe; null until it could be read for the first time.</summary>
    public RecipeOutlook? Outlook => _view.Outlook;

    /// <summary>How often the numbers were reckoned: a page that shows another count shows other numbers.</summary>
    public int Reckoned => _view.Times;

    /// <summary>Whether the outlook is of an earlier text, because the present one cannot be read or brewed.</summary>
    public bool IsStale => _view.IsStale;

    /// <summary>The line that was just added and wants the focus; null for none.</summary>
    public int? NewLine { get; set; }

    /// <summary>Everything found, in the text or by the forecast.</summary>
    public IReadOnlyList<Finding> Findings => _view.Findings;

    /// <summary>Whether some field cannot be read.</summary>
    public bool IsUnreadable => Now.Recipe is null;

    /// <inheritdoc/>
    public string? TextAt(string path) => Now[path];

    /// <inheritdoc/>
    public void Focus(object field) => Draft.Focus(field);

    /// <inheritdoc/>
    public void Blur(object field) => Draft.Blur(field);

    /// <inheritdoc/>
    public IReadOnlyList<Finding> At(string path) => [.. Findings.Where(f => f.Where == path)];

    /// <summary>Findings of a line that no field of it shows.</summary>
    public IReadOnlyList<Finding> OfLine(int line, params string[] shownFields) =>
        [.. Findings.Where(f => StagePlaces.LineOf(f) == line && !shownFields.Contains(f.Where[(f.Where.IndexOf(']') + 1)..].TrimStart('.')))];

    /// <summary>Findings of a stage that no field of it shows; for null, those of the recipe as a whole.</summary>
    public IReadOnlyList<Finding> OfStage(RecipeStage? stage, params string[] shownFields) =>
        [.. Findings.Where(f => StagePlaces.LineOf(f) is null && StagePlaces.Of(f) == stage && !shownFields.Contains(f.Where))];

    /// <summary>Cautions of a stage, each said once however many lines it is about.</summary>
    public IReadOnlyList<Caution> CautionsAt(RecipeStage stage) =>
        Outlook is null ? [] : [.. Outlook.Forecast.Cautions.Where(c => StagePlaces.Of(c.Place.Stage) == stage).DistinctBy(c => c.Message)];

    /// <inheritdoc/>
    public void Preview(string path, string text)
    {
        // Typed back to what is saved, it is no edit any more, and the numbers go back too.
        RecipeDraft typed = Now.Put(path, text)?.After ?? Now;
        if (typed.Recipe is not null)
        {
            _typed = new Typed(Now, typed);
            ReckonWhenNew(typed);
            Changed?.Invoke();
        }
    }

    /// <inheritdoc/>
    public Task CommitAsync(object field, string path, string? text) => DoAsync(Draft.EditFocusedAsync(field, draft => draft.Put(path, text)));

    /// <summary>Edits, and saves.</summary>
    public Task EditAsync(Func<RecipeDraft, RecipeEdit?> make) => DoAsync(Draft.EditAsync(make));

    /// <summary>Takes the last edit back.</summary>
    public Task UndoAsync() => DoAsync(Draft.UndoAsync());

    /// <summary>Brings back what undo took.</summary>
    public Task RedoAsync() => DoAsync(Draft.RedoAsync());

    /// <summary>Saves again what could not be saved.</summary>
    public Task RetryAsync() => DoAsync(Draft.RetryAsync());

    /// <summary>Another tab changed the draft.</summary>
    public Task AdoptAsync() => DoAsync(Draft.AdoptAsync(), endsTyping: false);

    /// <summary>Ends a clash.</summary>
    public Task ChooseAsync(Func<int, bool> isYours) => DoAsync(Draft.ChooseAsync(isYours));

    /// <summary>Uses another kit.</summary>
    public void Use(Kit kit) => LookWith(_around with { Kit = kit });

    /// <summary>Brews with another water; null for pure liquor.</summary>
    public void Use(WaterPlan? water) => LookWith(_around with { Water = water });

    /// <summary>Shows numbers another way.</summary>
    public void Show(Shown shown) => LookWith(_around with { Shown = shown });

    /// <summary>Tells by another model, or beside another style.</summary>
    public void Ask(ForecastRequest asked) => LookWith(_around with { Asked = asked });

    /// <summary>The address of this page as it is looked at, with that panel open; null for none.</summary>
    public string Address(string? panel) => PageUrls.RecipeAs(
        Draft.Id, panel, Asked.Bitterness == ForecastRequest.Usual.Bitterness ? null : Words.Of(Asked.Bitterness), Asked.Style?.Id);

    /// <summary>Holds the recipe against the version that was kept last; null when none was.</summary>
    public void HoldAgainst(RecipeVersion? kept)
    {
        (Recipe, string)? held = kept is not null && RecipeDraft.Of(kept.Document).Recipe is { } recipe ? (recipe, Invariant($"version {kept.Number}")) : null;
        if (held is not null || _around.Kept is not null)
        {
            LookWith(_around with { Kept = held });
        }
    }

    /// <summary>Shows what a recipe that could be read once came to, until this one can be read.</summary>
    public void Recall(Recipe earlier) => _view.Recall(earlier, _around);

    private void LookWith(RecipeSurroundings around)
    {
        _around = around;
        _view.Reckon(_view.Text, around);
        Changed?.Invoke();
    }

    private async Task DoAsync(Task work, bool endsTyping = true)
    {
        await work;
        _typed = endsTyping ? null : _typed;
        ReckonWhenNew(_typed?.On(Now) ?? Now);
        Changed?.Invoke();
    }

    /// <summary>What was reckoned while it was typed is not reckoned again when it is saved.</summary>
    private void ReckonWhenNew(RecipeDraft text)
    {
        if (text.Text != _view.Text.Text)
        {
            _view.Reckon(text, _around);
        }
    }

    /// <summary>A text that is being typed and not saved yet, with the draft it was typed into.</summary>
    private sealed record Typed(RecipeDraft Basis, RecipeDraft Text)
    {
        public RecipeDraft On(RecipeDraft now) => now == Basis ? Text : DraftMerge.Of(Basis, now, Text).With(_ => true);
    }
}
