using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
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
    private const int MostRecipes = 6;

    private IReadOnlyList<RecipeLine> _recipes = [];
    private List<IGrouping<GyleStatus, GyleLine>> _gyles = [];
    private readonly Dictionary<Guid, string> _hands = [];
    private KitInUse? _kit;

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
            int fermenting = _gyles.Where(state => state.Key == GyleStatus.Fermenting).Sum(state => state.Count());
            return fermenting == 0 ? "Nothing is fermenting." : fermenting == 1 ? "One gyle is fermenting." : $"{Shown.Number(fermenting, 0)} gyles are fermenting.";
        }
    }

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => LoadAsync();

    private async Task LoadAsync()
    {
        _recipes = (await Book.Recipes.SearchAsync(null, MostRecipes)).First;
        _gyles = [.. (await Book.Gyles.ListAsync()).GroupBy(gyle => gyle.Status).OrderBy(state => state.Key)];
        _kit = await KitInUse.FindAsync(Book);
        foreach (GyleLine gyle in _gyles.Where(state => state.Key == GyleStatus.Brewing).SelectMany(state => state))
        {
            if (await Desk.OpenAsync(gyle.Id) is { } open)
            {
                _hands[gyle.Id] = HandOf(open.Log);
            }
        }
    }

    /// <summary>What wants a hand on brew day: the clock that ends next, or the step that is next.</summary>
    private string HandOf(GyleLog log) =>
        log.Timers is [{ } timer, ..] ? $"{timer.Title}, until {Instants.Clock(timer.Until, Clock)}"
        : log.Current is { } step ? $"Next: {step.Step.Title}" : "Brew day is done";

    private async Task NewRecipeAsync()
    {
        KitInUse kit = await KitInUse.FindAsync(Book);
        Guid recipe = await Book.Recipes.CreateAsync(NewRecipe.DocumentFor(kit.Kit));
        Navigation.NavigateTo(PageUrls.Recipe(recipe));
    }

    private string When(DateTimeOffset instant) => Instants.Ago(instant, Clock);
}
