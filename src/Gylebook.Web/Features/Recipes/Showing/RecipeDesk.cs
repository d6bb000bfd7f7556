using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Solving;
using Gylebook.Pictures;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;
using Gylebook.Store;
using Gylebook.Web.Drafting;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>The recipe on the desk: the draft a tab has open, and what comes of it on the kit in use.</summary>
/// <remarks>
/// While somebody types, <see cref="DraftDesk.Preview"/> reckons with the text as it stands and nothing is saved; a change or a pause
/// commits it. What others save meanwhile is reckoned together with it. When the draft cannot be read, what was last
/// readable stays in view and <see cref="IsStale"/> says so.
/// </remarks>
public sealed class RecipeDesk : DraftDesk<RecipeDraft>
{
    private const string BeerPath = "package.volume";

    private readonly OutlookInView _view;
    private bool _isDrawing;
    private Supposition? _whatIf;
    private RecipeSurroundings _around;

    /// <summary>Why what the recipe holds cannot hold; empty while it does.</summary>
    private IReadOnlyList<Finding> _cannotHold = [];

    /// <summary>The draft before the beer's volume was changed; null while nobody did.</summary>
    private RecipeDraft? _beer;

    /// <summary>A desk with that draft on it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="kit">The kit in use.</param>
    /// <param name="larder">The brewer's own sheets.</param>
    /// <param name="shown">How this reader wants to see numbers.</param>
    /// <param name="water">The recipe's water; null to count liquor as pure.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    /// <param name="door">What its reckonings go through; null for one that tells nobody.</param>
    public RecipeDesk(
        OpenDraft<RecipeDraft> draft, Kit kit, Larder larder, Shown shown, WaterPlan? water = null, ForecastRequest? asked = null, ReckoningDoor? door = null)
        : base(draft, shown)
    {
        Door = door ?? new ReckoningDoor();
        _around = new RecipeSurroundings(kit, larder, shown, water, asked ?? ForecastRequest.Usual);
        _view = new OutlookInView(Now, _around, Door);
    }

    /// <summary>What reckonings on this desk go through.</summary>
    public ReckoningDoor Door { get; }

    /// <summary>The kit in use.</summary>
    public Kit Kit => _around.Kit;

    /// <summary>The recipe's water; null to count liquor as pure.</summary>
    public WaterPlan? Water => _around.Water;

    /// <summary>The brewer's own sheets.</summary>
    public Larder Larder => _around.Larder;

    /// <inheritdoc/>
    public override Shown Shown => _around.Shown;

    /// <summary>What the reader asks for besides: a model of bitterness, a style.</summary>
    public ForecastRequest Asked => _around.Asked;

    /// <summary>What comes of the recipe; null until it could be read for the first time.</summary>
    public RecipeOutlook? Outlook => _view.Outlook;

    /// <summary>How often the numbers were reckoned: a page that shows another count shows other numbers.</summary>
    public int Reckoned => _view.Times;

    /// <summary>Whether the outlook is of an earlier text, because the present one cannot be read or brewed.</summary>
    public bool IsStale => _view.IsStale;

    /// <summary>How many times as much beer it was made, while nothing else was changed and there is a grist to take along; null otherwise.</summary>
    public double? TimesTheBeer => _beer is { } before && WithBeerOf(before)?.Says(before) == true && before.Recipe is { } was && Now.Recipe is { } now
        && AlongWithBeer.HasGrist(now) && now.Package.Volume.Value.Litres / was.Package.Volume.Value.Litres is var times && times != 1 && double.IsFinite(times) && times > 0
            ? times
            : null;

    /// <summary>The line that was just added and wants the focus; null for none.</summary>
    public int? NewLine { get; set; }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => _cannotHold.Count == 0 ? _view.Findings : [.. _view.Findings, .. _cannotHold];

    /// <summary>Weighs all that goes along with the beer for what it is now.</summary>
    public Task TakeAlongAsync() => TimesTheBeer is { } times
        ? EditAsync(draft => draft.Amounts(AlongWithBeer.Amounts(draft.Recipe!, times), $"amounts: taken along, × {Shown.Number(times, 2)}"))
        : Task.CompletedTask;

    /// <inheritdoc/>
    public override async Task CommitAsync(object field, string path, string? text)
    {
        if (path == BeerPath && (_beer is null || WithBeerOf(_beer)?.Says(_beer) != true))
        {
            _beer = Now;
        }

        await base.CommitAsync(field, path, text);
    }

    /// <summary>Draws the bands of what is in view beside the page's own work, and of what came into view meanwhile.</summary>
    /// <param name="draws">How many draws.</param>
    public async Task DrawBandsAsync(int draws)
    {
        if (_isDrawing || draws == 0)
        {
            return;
        }

        _isDrawing = true;
        try
        {
            while (_view.Undrawn is { } recipe)
            {
                (int times, RecipeSurroundings around) = (_view.Times, _around with { Asked = Asked with { Draws = draws } });
                RecipeOutlook? drawn = await Task.Run(() => Door.Reckon(() => around.OutlookOf(recipe), () => around.Told(recipe.Name), out _));
                _view.TakeBands(times, drawn);
                Tell();
            }
        }
        finally
        {
            _isDrawing = false;
        }
    }

    /// <summary>What if some figures were not as likely; null until the bands of what is in view are drawn. With every other outlook it begins anew.</summary>
    public Supposition? WhatIf => IsStale || Outlook is not { HasRun: true, Forecast.HowSure: not null } likely ? null
        : ReferenceEquals(_whatIf?.Likely, likely) ? _whatIf
        : _whatIf = Supposition.None(likely);

    /// <summary>The picture in view: of the run as likely, or as supposed.</summary>
    public RunPicture? Picture => WhatIf?.Outlook is { HasRun: true } supposed ? supposed.Picture : Outlook?.Picture;

    /// <summary>Supposes figures elsewhere than likely. Nothing is edited, and nothing saved.</summary>
    /// <param name="ways">By place of the figure: −1 its 5 %, 1 its 95 %; none for everything as likely.</param>
    public void Suppose(IReadOnlyDictionary<int, double> ways)
    {
        if (WhatIf is { Likely: var likely })
        {
            RecipeOutlook? outlook = ways.Count == 0 ? null : Door.Reckon(() => likely.Supposing(ways), () => _around.Told(likely.Recipe.Name), out _);
            _whatIf = new Supposition(likely, ways, outlook);
            Tell();
        }
    }

    /// <summary>Findings of a line that no field of it shows.</summary>
    public IReadOnlyList<Finding> OfLine(int line, params string[] shownFields) =>
        [.. Findings.Where(f => StagePlaces.LineOf(f) == line && !shownFields.Contains(f.Where[(f.Where.IndexOf(']') + 1)..].TrimStart('.')))];

    /// <summary>Whether nothing goes in yet: what is missing then is no mistake, and the page invites to begin.</summary>
    public bool IsBlank => Now.Lines.Count == 0;

    /// <summary>Findings of a stage that no field of it shows; for null, those of the recipe as a whole.</summary>
    public IReadOnlyList<Finding> OfStage(RecipeStage? stage, params string[] shownFields) =>
        [.. Findings.Where(f => !(IsBlank && f.Code is "mash.empty" or "yeast.none")).Where(f => StagePlaces.LineOf(f) is null && StagePlaces.Of(f) == stage && !shownFields.Contains(f.Where))];

    /// <summary>Cautions of a stage, each said once however many lines it is about.</summary>
    public IReadOnlyList<Caution> CautionsAt(RecipeStage stage) =>
        Outlook is null ? [] : [.. Outlook.Forecast.Cautions.Where(c => StagePlaces.Of(c.Place.Stage) == stage).DistinctBy(c => c.Message)];

    /// <summary>Uses another kit.</summary>
    public void Use(Kit kit) => LookWith(_around with { Kit = kit });

    /// <summary>Takes what goes in from another larder.</summary>
    public void Use(Larder larder) => LookWith(_around with { Larder = larder });

    /// <summary>Brews with another water; null for pure liquor.</summary>
    public void Use(WaterPlan? water) => LookWith(_around with { Water = water });

    /// <inheritdoc/>
    public override void Show(Shown shown) => LookWith(_around with { Shown = shown });

    /// <summary>Tells by another model, or beside another style.</summary>
    public void Ask(ForecastRequest asked) => LookWith(_around with { Asked = asked });

    /// <summary>The address of this page as it is looked at, with that panel open; null for none.</summary>
    public string Address(string? panel) => PageUrls.RecipeAs(Draft.Id, panel, OtherBitterness, Asked.Style?.Id);

    /// <summary>The address of the sheet to print, with the same numbers on it.</summary>
    public string SheetAddress => PageUrls.RecipeSheet(Draft.Id, OtherBitterness);

    private string? OtherBitterness => Asked.Bitterness == ForecastRequest.Usual.Bitterness ? null : Words.Of(Asked.Bitterness);

    /// <summary>Holds the recipe against the version that was kept last; null when none was.</summary>
    public void HoldAgainst(NumberedVersion? kept)
    {
        (Recipe, string)? held = kept is not null && RecipeDraft.Of(kept.Document).Recipe is { } recipe ? (recipe, Invariant($"version {kept.Number}")) : null;
        if (held is not null || _around.Kept is not null)
        {
            LookWith(_around with { Kept = held });
        }
    }

    /// <summary>Shows what a recipe that could be read once came to, until this one can be read.</summary>
    public void Recall(Recipe earlier) => _view.Recall(earlier, _around);

    /// <summary>Weighs what is held for what is around it now: after another kit was chosen.</summary>
    public Task HoldAsync() => Now.Recipe is { } recipe && BeerWish.HeldBy(recipe) is not null
        ? EditAsync(draft => Follow(new DraftEdit<RecipeDraft>(draft, $"weighed for {Kit.Name}")) is { } edit && !edit.After.Says(draft) ? edit : null)
        : Task.CompletedTask;

    /// <summary>What the recipe holds is weighed anew with every edit, as a part of it.</summary>
    private protected override DraftEdit<RecipeDraft>? Follow(DraftEdit<RecipeDraft>? edit)
    {
        if (edit?.After.Recipe is not { } recipe || BeerWish.HeldBy(recipe) is not { } held)
        {
            _cannotHold = edit?.After.Recipe is null ? _cannotHold : [];
            return edit;
        }

        SolvedRecipe? solved = Door.Reckon(() => new RecipeSolver(Kit, Larder, Asked.Bitterness).Solve(recipe, held), () => edit.After.Text, out Finding? problem);
        _cannotHold = solved?.Findings ?? (problem is null ? [] : [problem]);
        return edit with { After = edit.After.Changed(edit.Label, solved?.Fields ?? [])?.After ?? edit.After };
    }

    private protected override void Reckon(RecipeDraft text) => _view.Reckon(text, _around);

    /// <summary>What is on the desk, with as much beer as that says.</summary>
    private RecipeDraft? WithBeerOf(RecipeDraft other) => Now[BeerPath] == other[BeerPath] ? Now : Now.Put(BeerPath, other[BeerPath])?.After;

    private void LookWith(RecipeSurroundings around)
    {
        _around = around;
        ReckonAgain();
    }
}
