using Gylebook.Gyles;
using Gylebook.Pictures;
using Gylebook.Store;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Today;

/// <summary>What there is, and the way to begin.</summary>
public sealed partial class TodayPage
{
    private const int MostRecipes = 6, MostGyles = 6;

    private IReadOnlyList<RecipeLine> _recipes = [];
    private readonly CancellationTokenSource _left = new();
    private List<GyleLine> _gyles = [];
    private IReadOnlyList<Hand> _hands = [];
    private KitInUse? _kit;
    private int _looked;

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>The gyles.</summary>
    [Inject]
    public required GyleDesk Desk { get; init; }

    /// <summary>Leads to the new recipe.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private string Summary
    {
        get
        {
            string[] said =
            [
                .. new[] { (GyleStatus.Brewing, "on brew day"), (GyleStatus.Fermenting, "fermenting"), (GyleStatus.Planned, "planned") }
                    .Select(state => (Count: _gyles.Count(gyle => gyle.Status == state.Item1), Words: state.Item2))
                    .Where(state => state.Count > 0).Select(state => $"{(state.Count == 1 ? "one" : Shown.Number(state.Count, 0))} {state.Words}"),
            ];
            return said.Length == 0 ? "Nothing is fermenting." : $"{Gylebook.Forecast.Words.Sentence(string.Join(", ", said))}.";
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _left.Cancel();
        _left.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        // What is tapped at the kettle is here within a second.
        IAsyncEnumerable<BookChange>? changes = RendererInfo.IsInteractive ? Book.Changes.WatchAllAsync(_left.Token) : null;
        await LoadAsync();
        _ = changes?.HearAsync(change => change.Noun == BookNoun.Gyle, _ => InvokeAsync(async () =>
        {
            await LoadAsync();
            StateHasChanged();
        }));
    }

    private async Task LoadAsync()
    {
        _recipes = (await Book.Recipes.SearchAsync(null, MostRecipes)).First;
        _gyles = await Book.Gyles.ListAsync();
        _kit = await KitInUse.FindAsync(Book);
        _hands = await Hand.AllAsync(_gyles, Desk, Clock);
        _looked++;
    }

    private async Task NewRecipeAsync()
    {
        KitInUse kit = await KitInUse.FindAsync(Book);
        Guid recipe = await Book.Recipes.CreateAsync(NewRecipe.DocumentFor(kit.Kit));
        Navigation.NavigateTo(PageUrls.Recipe(recipe));
    }

    private string When(DateTimeOffset instant) => Instants.Ago(instant, Clock);
}
