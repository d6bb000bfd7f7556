using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Store;
using Gylebook.Web.Features.Foods;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Recipes.Drafting;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Features.Trouble;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;
using Microsoft.JSInterop;

namespace Gylebook.Web.Features.Recipes;

/// <summary>A recipe, edited in place, with its run always in view.</summary>
public sealed partial class RecipePage : IAsyncDisposable
{
    private readonly CancellationTokenSource _leaving = new();
    private readonly string _tab = Guid.CreateVersion7().ToString();
    private RecipeDesk? _desk;
    private RecipeLine? _recipe;
    private RecipeWater? _water;
    private IngredientSearch _search = new([]);
    private Guid? _kitId;
    private TroubleBoundary? _panels;
    private TroubleBoundary? _columns;
    private string? _damage;
    private bool _isMissing;
    private bool _isNarrow;
    private ElementReference _root;
    private PageScript? _script;
    private DotNetObjectReference<RecipePage>? _self;

    /// <summary>Which recipe.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>What is open beside the recipe: <c>versions</c>, <c>history</c>.</summary>
    [SupplyParameterFromQuery(Name = "open")]
    public string? Panel { get; set; }

    /// <summary>The model of bitterness; null for the usual one.</summary>
    [SupplyParameterFromQuery(Name = RecipeQuery.Bitterness)]
    public string? Bitterness { get; set; }

    /// <summary>The style it is compared with; null for none.</summary>
    [SupplyParameterFromQuery(Name = RecipeQuery.Style)]
    public string? Style { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <summary>What this page has yet to save.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>What the terminal is told.</summary>
    [Inject]
    public required ILogger<RecipePage> Log { get; init; }

    /// <summary>The way to the browser.</summary>
    [Inject]
    public required IJSRuntime Script { get; init; }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        _script?.Leave();
        await _leaving.CancelAsync();
        Put(null);
        _self?.Dispose();
        _leaving.Dispose();
    }

    /// <summary>Ctrl+Z outside of any field.</summary>
    [JSInvokable]
    public Task UndoKeyAsync() => _desk?.UndoAsync() ?? Task.CompletedTask;

    /// <summary>Ctrl+Shift+Z or Ctrl+Y outside of any field.</summary>
    [JSInvokable]
    public Task RedoKeyAsync() => _desk?.RedoAsync() ?? Task.CompletedTask;

    /// <summary>The window became narrow, or wide again.</summary>
    [JSInvokable]
    public void Narrow(bool isNarrow)
    {
        _isNarrow = isNarrow;
        StateHasChanged();
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        ForecastRequest asked = RecipeQuery.Read(Bitterness, Style);
        if (_desk is { } open && open.Draft.Id == Id)
        {
            if (open.Asked != asked)
            {
                open.Ask(asked);
            }

            if (open.Shown != Shown)
            {
                open.Show(Shown);
            }

            return;
        }

        await OpenAsync();
    }

    private async Task OpenAsync()
    {
        IAsyncEnumerable<BookChange> changes = Book.Changes.WatchAllAsync(_leaving.Token);
        (_damage, _isMissing) = (null, false);
        if (await FindAsync() is not { } draft)
        {
            _isMissing = _damage is null;
            return;
        }

        Saves?.Opened();
        _recipe = await Book.Recipes.FindAsync(Id);
        KitInUse kit = await KitInUse.FindAsync(Book);
        OwnFoods foods = await OwnFoods.OfAsync(Book);
        _kitId = kit.Id;
        _search = new IngredientSearch(foods.Names);
        _water = new RecipeWater(Book, Id);
        await _water.LookAsync();
        Put(new RecipeDesk(draft, kit.Kit, foods.Find, Shown, _water.Plan, RecipeQuery.Read(Bitterness, Style), new ReckoningDoor(Log)));
        _desk!.HoldAgainst((await Book.Versions.ListAsync(Id)).FirstOrDefault(version => !version.IsDamaged));
        if (_desk.IsUnreadable && await LastReadable.OfAsync(Book, Id) is { } earlier)
        {
            _desk.Recall(earlier);
        }

        _ = changes.HearAsync(IsNews, () => InvokeAsync(TakeChangeAsync));
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_desk is not null)
        {
            _script ??= new PageScript(Script, "./Features/Recipes/RecipePage.razor.js");
            await _script.EnterAsync(_root, _self ??= DotNetObjectReference.Create(this));
        }
    }

    /// <summary>The draft; null when there is none, or when it is damaged.</summary>
    private async Task<OpenDraft?> FindAsync()
    {
        try
        {
            return await OpenDraft.OpenAsync(Book, Id, _tab, Saves);
        }
        catch (Exception damage) when (damage is InvalidDataException or BookUnavailableException { Trouble: BookTrouble.Damaged })
        {
            Log.NotRead(damage, $"recipe {Id}");
            _damage = damage.Message.Split('\n')[0];
            return null;
        }
    }

    private void Put(RecipeDesk? desk)
    {
        if (_desk is not null)
        {
            _desk.Changed -= Redraw;
            _desk.Draft.Dispose();
        }

        _desk = desk;
        if (desk is not null)
        {
            desk.Changed += Redraw;
        }
    }

    /// <summary>A part that could not be shown of the text before may be shown of this one.</summary>
    private void Redraw() => _ = InvokeAsync(() =>
    {
        _panels?.Recover();
        _columns?.Recover();
        StateHasChanged();
    });

    private bool IsNews(BookChange change) => (change.Id == Id && change.TabId != _tab) || change.Noun == BookNoun.Water;

    private async Task TakeChangeAsync()
    {
        if (_desk is { } desk)
        {
            _recipe = await Book.Recipes.FindAsync(Id);
            await desk.AdoptAsync();
            if (_water is { } water && await water.LookAsync())
            {
                desk.Use(water.Plan);
            }

            StateHasChanged();
        }
    }

    private async Task KitChosen(KitInUse kit)
    {
        _kitId = kit.Id;
        if (kit.Id is { } id)
        {
            await KitInUse.ChooseAsync(Book, id);
        }

        _desk?.Use(kit.Kit);
    }

    private async Task RestoreAsync()
    {
        await Book.Recipes.RestoreAsync(Id);
        _recipe = await Book.Recipes.FindAsync(Id);
    }
}
