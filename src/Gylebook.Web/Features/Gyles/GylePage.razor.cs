using Gylebook.Forecast.Report;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Pictures;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles;

/// <summary>One gyle: the plan as it was frozen beside what happened.</summary>
public sealed partial class GylePage
{
    private const int MostLearned = 8;

    private readonly CancellationTokenSource _left = new();
    private OpenGyle? _gyle;
    private GyleLine? _planned;
    private BrewForecast? _live;
    private IReadOnlyList<GyleNumber> _numbers = [];
    private string _recipe = "the recipe";
    private bool _isLoaded;

    /// <summary>Which gyle.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The gyles.</summary>
    [Inject]
    public required GyleDesk Desk { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _left.Cancel();
        _left.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        // What is tapped on another screen is here within a second.
        IAsyncEnumerable<BookChange>? changes = RendererInfo.IsInteractive ? Book.Changes.WatchAsync(Id, _left.Token) : null;
        await LoadAsync();
        _ = changes?.HearAsync(_ => true, _ => InvokeAsync(async () =>
        {
            await LoadAsync();
            StateHasChanged();
        }));
    }

    private async Task LoadAsync()
    {
        _gyle = await Desk.OpenAsync(Id);
        _planned = _gyle is null && await Book.Gyles.FindAsync(Id) is { Status: GyleStatus.Planned } line ? line : null;
        _live = _gyle?.Moved();
        _recipe = (_gyle?.Line ?? _planned) is { } its && await Book.Recipes.FindAsync(its.RecipeId) is { } recipe ? recipe.Name : _recipe;
        _numbers = _gyle is { } gyle ? GyleNumber.Of(gyle.Plan, _live, Shown) : [];
        _isLoaded = true;
    }

    private string State(StepNow now) => now.State switch
    {
        StepState.Done when now.At is { } at => $"done {Instants.Clock(at, Clock)}",
        StepState.Skipped => $"left out{(now.Why is { } why ? $": {why}" : "")}",
        _ => "",
    };
}
