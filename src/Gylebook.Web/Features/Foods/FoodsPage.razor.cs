using System.Globalization;
using Gylebook.Store;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods;

/// <summary>The table of foods and the brewer's own sheets; what is searched for stands in the address.</summary>
public sealed partial class FoodsPage : IDisposable
{
    private readonly TypingPause _pause = new();
    private IReadOnlyList<FoodLine> _own = [];
    private IReadOnlyList<FoodLine> _found = [];
    private string _typed = "";
    private bool _isTyping;

    /// <summary>What is searched for.</summary>
    [SupplyParameterFromQuery(Name = "search")]
    public string? Search { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Keeps the address in step.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>The time, for the pause.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    private string Count => _found.Count == 1 ? "One food" : string.Create(CultureInfo.InvariantCulture, $"{_found.Count} foods");

    /// <inheritdoc/>
    public void Dispose() => _pause.Dispose();

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => LoadAsync();

    private async Task LoadAsync()
    {
        _own = [.. (await Book.Foods.ListAsync()).Select(FoodSearch.LineOf)];
        Look(Search);
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        // While somebody types, the address follows the field and not the other way round.
        if (!_isTyping)
        {
            Look(Search);
        }
    }

    private Task TypedAsync(string? text)
    {
        Look(text);
        _isTyping = true;
        return _pause.ThenAsync(Clock, null, () =>
        {
            Navigation.NavigateTo(PageUrls.FoodsLike(_typed), replace: true);
            _isTyping = false;
            return Task.CompletedTask;
        });
    }

    private void Look(string? text)
    {
        _typed = text ?? "";
        _found = FoodSearch.Find(_own, _typed);
    }
}
