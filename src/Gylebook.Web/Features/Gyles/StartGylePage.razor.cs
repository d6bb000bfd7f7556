using Gylebook.Pictures;
using Gylebook.Store;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles;

/// <summary>Before a gyle starts: what to weigh, what to buy, how long it takes.</summary>
public sealed partial class StartGylePage
{
    private GyleToBe? _gyle;
    private IReadOnlyList<ToWeigh> _weighing = [], _missing = [];
    private bool _isLoaded, _isStarting;

    /// <summary>Of which recipe.</summary>
    [Parameter]
    public Guid Recipe { get; set; }

    /// <summary>The gyles.</summary>
    [Inject]
    public required GyleDesk Desk { get; init; }

    /// <summary>Leads to brew day.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _gyle = await Desk.PrepareAsync(Recipe);
        _weighing = _gyle?.Weighing(await Desk.UsedOfLotsAsync()) ?? [];
        _missing = [.. _weighing.Where(item => item.ToBuyKilograms > 0)];
        _isLoaded = true;
    }

    private async Task StartAsync()
    {
        _isStarting = true;
        (GyleLine? gyle, _) = await Desk.StartAsync(Recipe);
        if (gyle is not null)
        {
            // Brew day holds no connection: it is loaded as a page of its own.
            Navigation.NavigateTo(PageUrls.BrewDay(gyle.Id), forceLoad: true);
            return;
        }

        _isStarting = false;
        await OnParametersSetAsync();
    }

    private string From(ToWeigh item) => item switch
    {
        { Lot: null, Item.Lot: null } => "",
        { Lot: null } => "a lot that is no longer in the larder",
        { LeftKilograms: { } left } => $"lot {item.Lot.Name}, {Shown.Kilograms(left)} left",
        _ => $"lot {item.Lot.Name}",
    };

    private string Span(double minutes) => minutes < 60 ? $"{Shown.Number(minutes, 0)} min" : Invariant($"{(int)minutes / 60} h {(int)minutes % 60:00} min");
}
