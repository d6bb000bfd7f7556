using Gylebook.Forecast.Liquors;
using Gylebook.Pictures;
using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Features.Liquors.Showing;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Features.Liquors;

/// <summary>A water plan: the report, the wishes, the shelf, and always in view what to weigh out.</summary>
public sealed partial class LiquorPage : IDisposable
{
    private readonly CancellationTokenSource _page = new();
    private LiquorDesk? _desk;
    private List<WaterOf> _others = [];
    private Sheet? _damaged;
    private bool _isMissing;
    private string _said = "";

    /// <summary>Which plan.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <summary>What this page has yet to save.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>What the terminal is told.</summary>
    [Inject]
    public required ILogger<LiquorPage> Log { get; init; }

    /// <summary>Leads away when the plan is thrown away.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _page.Cancel();
        _page.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if ((_desk?.Stored.Sheet ?? _damaged)?.Id != Id)
        {
            await LoadAsync();
        }
        else if (_desk is not null && _desk.Shown != Shown)
        {
            _desk.Show(Shown);
        }
    }

    /// <inheritdoc/>
    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            _ = Book.Changes.WatchAllAsync(_page.Token).HearAsync(change => _desk?.IsNews(change) == true, () => InvokeAsync(ReloadAsync));
        }
    }

    private static string Things(WaterOutcome outcome)
    {
        int count = new[] { outcome.Mash, outcome.Sparge, outcome.Kettle, outcome.Package }.Sum(place => place.Salts.Count + place.Acids.Count);
        return count == 1 ? "1 thing to weigh out" : Invariant($"{count} things to weigh out");
    }

    private async Task LoadAsync()
    {
        Sheet? sheet = await Book.Waters.FindAsync(Id);
        _damaged = sheet is not null && !WholeText.Is(sheet) ? sheet : null;
        _desk = _damaged is null ? await LiquorDesk.OpenAsync(Book, Id, Shown, Clock, Saves, new ReckoningDoor(Log)) : null;
        Saves?.Opened();
        _isMissing = sheet is null;
        await ListOthersAsync();
        if (_desk is not null)
        {
            _desk.Changed += () => _ = InvokeAsync(StateHasChanged);
        }
    }

    private async Task KeepAsync()
    {
        WaterDraft kept = WaterDraft.New(_desk!.TextAt("sources[0].name") ?? _desk.Now.Name).TakeSources(_desk.Now).TakeShelf(_desk.Now);
        await Book.Waters.CreateAsync(kept.Text);
        await ListOthersAsync();
        _said = $"Kept as {kept.Name}. The plan of another recipe can start from it.";
    }

    private async Task ListOthersAsync() => _others = [.. (await Book.Waters.ListWithRecipesAsync()).Where(water => water.Sheet.Id != Id && WholeText.Is(water.Sheet))];

    private async Task DeleteAsync()
    {
        await Book.Waters.DeleteAsync(Id);
        Navigation.NavigateTo(PageUrls.Liquors);
    }

    private async Task RestoreAsync()
    {
        await Book.Waters.RestoreAsync(Id);
        await LoadAsync();
    }

    private async Task ReloadAsync()
    {
        await LoadAsync();
        StateHasChanged();
    }
}
