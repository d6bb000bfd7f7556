using System.Globalization;
using Gylebook.Gyles.Shopping;
using Gylebook.Gyles.Vessels;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles;

/// <summary>Before a gyle starts: where it stands, what to weigh, what to buy, how long it takes.</summary>
public sealed partial class StartGylePage
{
    private static readonly CultureInfo Invariantly = CultureInfo.InvariantCulture;

    private GyleToBe? _gyle;
    private IReadOnlyList<ToWeigh> _weighing = [];
    private ShoppingList _shopping = new([]);
    private IReadOnlyList<GyleLine> _others = [];
    private IReadOnlyList<VesselHold> _held = [];
    private IReadOnlyList<Finding> _refused = [];
    private string? _fermenter, _keg;
    private DateOnly _day;
    private bool _isLoaded, _isBusy;

    /// <summary>Of which recipe.</summary>
    [Parameter]
    public Guid Recipe { get; set; }

    /// <summary>The planned gyle that is to start; null for a new one.</summary>
    [SupplyParameterFromQuery(Name = PageUrls.PlannedGyle)]
    public Guid? GyleId { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The gyles.</summary>
    [Inject]
    public required GyleDesk Desk { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>Leads to brew day.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    private IReadOnlyList<Vessel> Fermenters => Of(VesselKind.Fermenter);

    private IReadOnlyList<Vessel> Kegs => _gyle?.Recipe is { } recipe && VesselPlan.WantsKeg(recipe) ? Of(VesselKind.Keg) : [];

    private VesselPlan Vessels => new(Named(_fermenter), Named(_keg));

    private bool IsCleanKnown => _gyle?.Kit.Cleaning is { Cleaner: not null, Sanitiser: not null };

    private GyleOrder Order => new(Recipe)
    {
        GyleId = GyleId, Vessels = Vessels,
    };

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _gyle = await Desk.PrepareAsync(new GyleOrder(Recipe) { GyleId = GyleId });
        _others = GyleId is null ? await Desk.PlannedAsync(Recipe) : [];
        _held = [.. (await Book.Gyles.VesselsAsync()).Where(hold => hold.GyleId != GyleId)];
        Dictionary<string, double> used = await Desk.UsedOfLotsAsync();
        _weighing = _gyle?.Weighing(used) ?? [];
        _shopping = _gyle?.Shopping(used) ?? _shopping;
        (_fermenter, _keg) = (_gyle?.Vessels.Fermenter, _gyle?.Vessels.Keg);
        _day = _gyle?.Planned?.Planned is { } planned ? DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(planned, Clock.LocalTimeZone).DateTime) : Today.AddDays(1);
        _refused = [];
        _isLoaded = true;
    }

    private void Chosen() => _refused = [];

    private Task StartAsync() => KeepAsync(
        () => Desk.StartAsync(Order, _gyle),

        // Brew day holds no connection: it is loaded as a page of its own.
        gyle => Navigation.NavigateTo(PageUrls.BrewDay(gyle.Id), forceLoad: true));

    private Task PlanAsync() => KeepAsync(() => Desk.PlanAsync(Order, _day), gyle => Navigation.NavigateTo(PageUrls.Gyle(gyle.Id)));

    private async Task KeepAsync(Func<Task<(GyleLine? Gyle, IReadOnlyList<Finding> Findings)>> keep, Action<GyleLine> then)
    {
        if (_isBusy)
        {
            return;
        }

        _isBusy = true;
        try
        {
            (GyleLine? gyle, IReadOnlyList<Finding> findings) = await keep();
            _refused = gyle is null ? [.. findings.Where(finding => finding.Severity == Severity.Error)] : [];
            if (gyle is not null)
            {
                then(gyle);
            }
        }
        finally
        {
            _isBusy = false;
        }
    }

    private string? IsRefused(string field) => _refused.Any(finding => finding.Where == field) ? "true" : null;

    private Vessel[] Of(VesselKind kind) => [.. (_gyle?.Kit.Vessels ?? []).Where(vessel => vessel.Kind == kind)];

    private static string? Named(string? name) => string.IsNullOrEmpty(name) ? null : name;

    /// <summary>A vessel, and who has it: whoever has it first from today on.</summary>
    private string Choice(Vessel vessel) =>
        _held.Where(hold => hold.Stay.Kind == vessel.Kind && string.Equals(hold.Stay.Vessel, vessel.Name, StringComparison.OrdinalIgnoreCase)).ToArray() is [{ } first, ..]
            ? $"{vessel.Name}: {first.Gyle} {VesselDays.Words(first.On(Today))}" : $"{vessel.Name}: free";

    private string From(ToWeigh item) => item switch
    {
        { Lot: null, Item.Lot: null } => "",
        { Lot: null } => "a lot that is no longer in the larder",
        { LeftKilograms: { } left } => $"lot {item.Lot.Name}, {Shown.Kilograms(left)} left",
        _ => $"lot {item.Lot.Name}",
    };

    private string Span(double minutes) => minutes < 60 ? $"{Shown.Number(minutes, 0)} min" : Invariant($"{(int)minutes / 60} h {(int)minutes % 60:00} min");
}
