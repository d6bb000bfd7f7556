using Gylebook.Forecast.Report;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Store;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Drafting;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Features.Trouble;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Gylebook.Web.Features.Recipes;

/// <summary>A recipe, edited in place, with its run always in view.</summary>
public sealed partial class RecipePage
{
    private RecipeLine? _recipe;
    private RecipeWater? _water;
    private IngredientSearch _search = new(Larder.Empty);
    private Guid? _kitId;
    private TroubleBoundary? _columns;
    private bool _isNarrow;
    private ElementReference _root;
    private PageScript? _script;
    private DotNetObjectReference<RecipePage>? _self;

    /// <summary>The model of bitterness; null for the usual one.</summary>
    [SupplyParameterFromQuery(Name = RecipeQuery.Bitterness)]
    public string? Bitterness { get; set; }

    /// <summary>The style it is compared with; null for none.</summary>
    [SupplyParameterFromQuery(Name = RecipeQuery.Style)]
    public string? Style { get; set; }

    /// <summary>The line that was put in elsewhere, and wants its weight; null for none.</summary>
    [SupplyParameterFromQuery(Name = RecipeQuery.Line)]
    public int? Line { get; set; }

    /// <summary>The way to the browser.</summary>
    [Inject]
    public required IJSRuntime Script { get; init; }

    /// <summary>How many draws bands are made of.</summary>
    [Inject]
    public required BandDraws Bands { get; init; }

    /// <inheritdoc/>
    protected override BookDrafts Drafts => Book.Drafts;

    /// <inheritdoc/>
    protected override BookVersions Versions => Book.Versions;

    private ForecastRequest Asked => RecipeQuery.Read(Bitterness, Style);

    /// <summary>The window became narrow, or wide again.</summary>
    [JSInvokable]
    public void Narrow(bool isNarrow)
    {
        _isNarrow = isNarrow;
        StateHasChanged();
    }

    /// <inheritdoc/>
    protected override string Address(string? panel) => Desk!.Address(panel);

    /// <inheritdoc/>
    protected override RecipeDraft Read(string text) => RecipeDraft.Of(text);

    /// <inheritdoc/>
    protected override async Task LookAsync() => _recipe = await Book.Recipes.FindAsync(Which);

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await base.OnParametersSetAsync();
        if (Desk is { } desk && desk.Asked != Asked)
        {
            desk.Ask(Asked);
        }
    }

    /// <inheritdoc/>
    protected override async Task<RecipeDesk> LayOutAsync(OpenDraft<RecipeDraft> draft)
    {
        KitInUse kit = await KitInUse.FindAsync(Book);
        Larder larder = await OwnLarder.OfAsync(Book);
        _kitId = kit.Id;
        _search = new IngredientSearch(larder);
        _water = new RecipeWater(Book, Which);
        await _water.LookAsync();
        RecipeDesk desk = new(draft, kit.Kit, larder, Shown, _water.Plan, Asked, new ReckoningDoor(Log)) { NewLine = Line };
        if (desk.IsUnreadable && await LastReadable.OfAsync(Drafts, Which, text => Read(text).Recipe) is { } earlier)
        {
            desk.Recall(earlier);
        }

        return desk;
    }

    /// <inheritdoc/>
    protected override void Keep(NumberedVersion? latest)
    {
        base.Keep(latest);
        Desk!.HoldAgainst(latest);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (Desk is { } desk)
        {
            // Likely numbers are on the page by now; their bands follow.
            _ = desk.DrawBandsAsync(Bands.Count);
            _script ??= new PageScript(Script, "./Features/Recipes/RecipePage.razor.js");
            await _script.EnterAsync(_root, _self ??= DotNetObjectReference.Create(this));
        }
    }

    /// <summary>A part that could not be shown of the text before may be shown of this one.</summary>
    protected override void Redrawing() => _columns?.Recover();

    /// <inheritdoc/>
    protected override bool IsNews(BookChange change) => change.Noun switch
    {
        BookNoun.Recipe => base.IsNews(change),
        BookNoun.Water => true,
        _ => KitInUse.MayHaveChanged(change) || OwnLarder.MayHaveChanged(change),
    };

    /// <inheritdoc/>
    protected override async Task TakeChangeAsync(BookChange change)
    {
        RecipeDesk desk = Desk!;
        switch (change.Noun)
        {
            case BookNoun.Food or BookNoun.Larder:
                Larder larder = await OwnLarder.OfAsync(Book);
                _search = new IngredientSearch(larder);
                desk.Use(larder);
                break;
            case BookNoun.Kit or BookNoun.Setting:
                Use(await KitInUse.FindAsync(Book));
                break;
            default:
                await base.TakeChangeAsync(change);
                break;
        }

        if (_water is { } water && await water.LookAsync())
        {
            desk.Use(water.Plan);
        }
    }

    /// <inheritdoc/>
    protected override void Dispose(bool isLeft)
    {
        _script?.Leave();
        base.Dispose(isLeft);
        _self?.Dispose();
    }

    private async Task KitChosen(KitInUse kit)
    {
        Use(kit);
        if (kit.Id is { } id)
        {
            await KitInUse.ChooseAsync(Book, id);
        }

        if (Desk is { } desk)
        {
            await desk.HoldAsync();
        }
    }

    private void Use(KitInUse kit)
    {
        _kitId = kit.Id;
        if (Desk is { } desk && KitFile.Write(desk.Kit) != KitFile.Write(kit.Kit))
        {
            desk.Use(kit.Kit);
        }
    }

    private async Task RestoreAsync()
    {
        await Book.Recipes.RestoreAsync(Which);
        await LookAsync();
    }
}
