using System.Diagnostics.CodeAnalysis;
using Gylebook.Forecast.Telling;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;
using Gylebook.Web.Features.Recipes.Drafting;
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
    private IReadOnlyList<Finding> _findings = [];
    private RecipeDraft _shown;
    private Typed? _typed;

    /// <summary>A desk with that draft on it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="kit">The kit in use.</param>
    /// <param name="foods">The brewer's own foods, by id.</param>
    /// <param name="shown">How this reader wants to see numbers.</param>
    /// <param name="water">The recipe's water; null to count liquor as pure.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public RecipeDesk(OpenDraft draft, Kit kit, Func<string, FoodMakeup?> foods, Shown shown, WaterPlan? water = null, ForecastRequest? asked = null)
    {
        (Draft, Kit, Foods, Shown, Water, Asked) = (draft, kit, foods, shown, water, asked ?? ForecastRequest.Usual);
        Reckon(Now);
    }

    /// <summary>Something on the desk is not what it was.</summary>
    public event Action? Changed;

    /// <summary>The draft as this tab has it open.</summary>
    public OpenDraft Draft { get; }

    /// <summary>What the recipe says.</summary>
    public RecipeDraft Now => Draft.Now;

    /// <summary>The kit in use.</summary>
    public Kit Kit { get; private set; }

    /// <summary>The recipe's water; null to count liquor as pure.</summary>
    public WaterPlan? Water { get; private set; }

    /// <summary>The brewer's own foods, by id.</summary>
    public Func<string, FoodMakeup?> Foods { get; }

    /// <inheritdoc/>
    public Shown Shown { get; private set; }

    /// <summary>What the reader asks for besides: a model of bitterness, a style.</summary>
    public ForecastRequest Asked { get; private set; }

    /// <summary>What comes of the recipe; null until it could be read for the first time.</summary>
    public RecipeOutlook? Outlook { get; private set; }

    /// <summary>How often the numbers were reckoned: a page that shows another count shows other numbers.</summary>
    public int Reckoned { get; private set; }

    /// <summary>Whether the outlook is of an earlier text, because the present one cannot be read or brewed.</summary>
    public bool IsStale { get; private set; }

    /// <summary>The line that was just added and wants the focus; null for none.</summary>
    public int? NewLine { get; set; }

    /// <summary>Everything found, in the text or by the forecast.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Whether some field cannot be read.</summary>
    public bool IsUnreadable => Now.Recipe is null;

    /// <inheritdoc/>
    public string? TextAt(string path) => Now[path];

    /// <inheritdoc/>
    public void Focus(object field) => Draft.Focus(field);

    /// <inheritdoc/>
    public void Blur(object field) => Draft.Blur(field);

    /// <inheritdoc/>
    public IReadOnlyList<Finding> At(string path) => [.. _findings.Where(f => f.Where == path)];

    /// <summary>Findings of a line that no field of it shows.</summary>
    public IReadOnlyList<Finding> OfLine(int line, params string[] shownFields) =>
        [.. _findings.Where(f => StagePlaces.LineOf(f) == line && !shownFields.Contains(f.Where[(f.Where.IndexOf(']') + 1)..].TrimStart('.')))];

    /// <summary>Findings of a stage that no field of it shows; for null, those of the recipe as a whole.</summary>
    public IReadOnlyList<Finding> OfStage(RecipeStage? stage, params string[] shownFields) =>
        [.. _findings.Where(f => StagePlaces.LineOf(f) is null && StagePlaces.Of(f) == stage && !shownFields.Contains(f.Where))];

    /// <summary>Cautions of a stage, each said once however many lines it is about.</summary>
    public IReadOnlyList<Caution> CautionsAt(RecipeStage stage) =>
        Outlook is null ? [] : [.. Outlook.Forecast.Cautions.Where(c => StagePlaces.Of(c) == stage).DistinctBy(c => c.Message)];

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
    public void Use(Kit kit)
    {
        Kit = kit;
        Reckon(_shown);
        Changed?.Invoke();
    }

    /// <summary>Brews with another water; null for pure liquor.</summary>
    public void Use(WaterPlan? water)
    {
        Water = water;
        Reckon(_shown);
        Changed?.Invoke();
    }

    /// <summary>Shows numbers another way.</summary>
    public void Show(Shown shown)
    {
        Shown = shown;
        Reckon(_shown);
        Changed?.Invoke();
    }

    /// <summary>Tells by another model, or beside another style.</summary>
    public void Ask(ForecastRequest asked)
    {
        Asked = asked;
        Reckon(_shown);
        Changed?.Invoke();
    }

    /// <summary>The address of this page as it is looked at, with that panel open; null for none.</summary>
    public string Address(string? panel) => PageUrls.RecipeAs(
        Draft.Id, panel, Asked.Bitterness == ForecastRequest.Usual.Bitterness ? null : Words.Of(Asked.Bitterness), Asked.Style?.Id);

    /// <summary>Shows what a recipe that could be read once came to, until this one can be read.</summary>
    public void Recall(Recipe earlier)
    {
        if (Outlook is null)
        {
            Outlook = RecipeOutlook.Of(earlier, Kit, Foods, Shown.Units, Water, Asked);
            IsStale = true;
        }
    }

    private async Task DoAsync(Task work, bool endsTyping = true)
    {
        await work;
        _typed = endsTyping ? null : _typed;
        ReckonWhenNew(_typed?.On(Now) ?? Now);
        Changed?.Invoke();
    }

    /// <summary>What a water plan cannot reach is told on its own page.</summary>
    private static bool IsShownHere(Finding finding) =>
        finding.Severity == Severity.Error || !finding.Where.StartsWith("water.", StringComparison.Ordinal);

    /// <summary>What was reckoned while it was typed is not reckoned again when it is saved.</summary>
    private void ReckonWhenNew(RecipeDraft text)
    {
        if (text.Text != _shown.Text)
        {
            Reckon(text);
        }
    }

    [MemberNotNull(nameof(_shown))]
    private void Reckon(RecipeDraft text)
    {
        Reckoned++;
        _shown = text;
        if (_shown.Recipe is not { } recipe)
        {
            _findings = [.. _shown.Findings.Select(FindingWords.Plain)];
            IsStale = true;
            return;
        }

        RecipeOutlook outlook = RecipeOutlook.Of(recipe, Kit, Foods, Shown.Units, Water, Asked);
        _findings = [.. _shown.Findings.Concat(outlook.Forecast.Findings.Where(IsShownHere)).Select(FindingWords.Plain)];
        IsStale = !outlook.HasRun && Outlook is { HasRun: true };
        Outlook = IsStale ? Outlook : outlook;
    }

    /// <summary>A text that is being typed and not saved yet, with the draft it was typed into.</summary>
    private sealed record Typed(RecipeDraft Basis, RecipeDraft Text)
    {
        public RecipeDraft On(RecipeDraft now) => now == Basis ? Text : DraftMerge.Of(Basis, now, Text).With(_ => true);
    }
}
