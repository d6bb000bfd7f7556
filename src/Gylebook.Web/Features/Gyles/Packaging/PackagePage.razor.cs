using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast;
using Gylebook.Gyles.Packaging;
using Gylebook.Pictures;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;
using Gylebook.Web.Features.Gyles.Cellar;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles.Packaging;

/// <summary>A gyle on its way into bottles or a keg: how much there is, what is weighed and set, or why not.</summary>
public sealed partial class PackagePage
{
    private OpenPackage? _of;
    private Band _litres = new(0, 0, 0, "L", BandKind.Point);
    private List<KindRow> _kinds = [];
    private IReadOnlyList<string> _sugars = [];
    private string _volumes = "", _since = "", _store = "", _priming = PrimingSource.Usual, _weakest = "", _burst = "";
    private string? _wrong, _portion;
    private PackageQuestion? _asked;
    private PackagePlan? _plan;
    private LabelText? _label;
    private bool _isLoaded, _isBusy;

    /// <summary>Which gyle.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>Which portion of it; null for the first, or the whole.</summary>
    [SupplyParameterFromQuery]
    public string? Portion { get; set; }

    /// <summary>The gyles.</summary>
    [Inject]
    public required GyleDesk Gyles { get; init; }

    /// <summary>Those that are packaged.</summary>
    [Inject]
    public required PackageDesk Packages { get; init; }

    /// <summary>Those in the fermenter.</summary>
    [Inject]
    public required CellarDesk Cellar { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (!RendererInfo.IsInteractive)
        {
            // It takes a second or two, and the page that comes alive works it out.
            return;
        }

        OpenGyle? gyle = await Gyles.OpenAsync(Id);
        _portion = gyle?.Division.Find(_portion ?? Portion)?.Name ?? gyle?.Division.Names[0];
        _of = gyle is not null ? await Packages.OpenAsync(gyle, _portion) : null;
        _isLoaded = true;
        if (_of is not { } of)
        {
            return;
        }

        _litres = of.Portion.Litres(of.Live) ?? _litres;
        _kinds = [.. of.Inputs.Kit.Packages.Select(kind => new KindRow(kind, Says(kind)) { IsChosen = kind.Kind == of.Inputs.Recipe.Package.In })];
        _sugars = [.. Sugars.All.Select(sugar => sugar.Name)];
        PackageQuestion? usual = of.Of(of.Recipes).Asked;
        _volumes = Shown.Number(usual?.Volumes ?? 2.3, 1);
        _since = Shown.Celsius(usual?.WarmestSince ?? 20).Replace(Shown.Space, " ", StringComparison.Ordinal);
        _store = Shown.Celsius(PackageWish.UsualStore).Replace(Shown.Space, " ", StringComparison.Ordinal);
        Ask();
    }

    private async Task ChooseAsync(string? portion)
    {
        _portion = portion;
        await OnParametersSetAsync();
    }

    private void Choose(KindRow row, ChangeEventArgs change)
    {
        row.IsChosen = change.Value is true;
        Ask();
    }

    private void Count(KindRow row, ChangeEventArgs change)
    {
        row.Count = change.Value as string ?? "";
        Ask();
    }

    private void Set(ref string field, ChangeEventArgs change)
    {
        field = change.Value as string ?? "";
        Ask();
    }

    private void Ask()
    {
        (_asked, _plan, _wrong) = (null, null, null);
        if (Wish() is { } wish)
        {
            (_asked, _plan, _wrong) = _of!.Of(wish);
        }

        _label = _asked is null ? null : LabelText.Of(_of!, _asked, _plan, Clock.GetLocalNow());
    }

    private PackageWish? Wish()
    {
        List<(string, int?)> into = [];
        foreach (KindRow row in _kinds.Where(row => row.IsChosen))
        {
            if (row.Count.Trim().Length > 0 && !int.TryParse(row.Count, NumberStyles.None, CultureInfo.InvariantCulture, out _))
            {
                return Wrong($"how many {row.Kind}: \"{row.Count}\"; must be a whole number from 1 to 1000");
            }

            into.Add((row.Kind, int.TryParse(row.Count, NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : null));
        }

        return !double.TryParse(_volumes.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double volumes) ? Wrong($"volumes: \"{_volumes}\"; must be a number from 0 to 8")
            : !TypedText.TryRead(_since, null, Shown.Units, out Entered<Temperature> since, out _) ? Wrong($"the warmest it has stood: \"{_since}\"; write \"20 °C\" or \"68 °F\"")
            : !TypedText.TryRead(_store, null, Shown.Units, out Entered<Temperature> store, out _) ? Wrong($"the warmest it may come to stand: \"{_store}\"; write \"25 °C\" or \"77 °F\"")
            : !TypedText.TryRead(_weakest.Trim().Length > 0 ? _weakest : "0 bar", null, Shown.Units, out Entered<GaugePressure> weakest, out _) ? Wrong($"the weakest part: \"{_weakest}\"; write \"4 bar\" or \"60 psi\"")
            : !TypedText.TryRead(_burst.Trim().Length > 0 ? _burst : "0 bar", null, Shown.Units, out Entered<GaugePressure> burst, out _) ? Wrong($"in haste: \"{_burst}\"; write \"2 bar\" or \"30 psi\"")
            : new PackageWish
            {
                Into = into, Volumes = volumes, WarmestSince = since.Value.Celsius, WarmestStore = store.Value.Celsius, Priming = _kinds.Any(row => row.IsChosen && !row.IsKeg) ? _priming : null,
                WeakestPart = _weakest.Trim().Length > 0 ? weakest.Value.Bar : null,
                BurstBar = _burst.Trim().Length > 0 ? burst.Value.Bar : null,
            };
    }

    private PackageWish? Wrong(string why)
    {
        _wrong = why;
        return null;
    }

    private async Task PackagedAsync()
    {
        if (_of is { } of && _asked is { } asked && _plan is { IsRefused: false } plan)
        {
            _isBusy = true;
            await Packages.PackagedAsync(of, plan, asked);
            _isBusy = false;
            await OnParametersSetAsync();
        }
    }

    private async Task UndoAsync(Guid entry)
    {
        await Cellar.UndoAsync(_of!.Gyle, entry);
        await OnParametersSetAsync();
    }

    private static string Lead(OpenPackage of) => of.Fermentation is null ? "Not pitched yet." : $"{of.Fermentation.Finished.Heading.Replace("Finished? ", "", StringComparison.Ordinal)} {of.Fermentation.Finished.Because}";

    private string Says(PackageKind kind) => string.Join(", ", new[]
    {
        Shown.Litres((kind.Fill ?? kind.Brim).Value.Litres),
        kind.MaxVolumes is { } volumes ? $"good for {Shown.Number(volumes.Value.Volumes, 1)} volumes" : null,
        kind.MaxPressure is { } pressure ? ToldText.Of(Invariant($"rated {pressure.Value.Bar:0.0} bar"), Shown.Units) : null,
    }.OfType<string>());

    private IEnumerable<(string, string)> Told(PackagePlan plan)
    {
        if (plan.PrimingGrams is { } grams)
        {
            string band = plan.VolumesBand is { } volumes ? $"; {Shown.Number(volumes.Low, 1)} to {Shown.Volumes(volumes.High)}, as much or as little beer as may come out" : "";
            yield return (Words.Sentence(_asked!.Priming!.Name), $"{Shown.Kilograms(grams / 1000)}, boiled in a little water and cooled, into the bucket first{band}");
        }

        foreach (FilledPackages filled in plan.Filled)
        {
            yield return (Words.Sentence(filled.Kind), ToldText.Of(Invariant($"{filled.Count} × {filled.Litres / Math.Max(1, filled.Count):0.00} L; {filled.PressureStored:0.0} bar at the warmest it may come to stand"), Shown.Units));
        }

        if (plan.Keg is { } keg)
        {
            yield return ("Before it", ToldText.Of(Invariant($"{keg.PurgeCycles} times {keg.PurgeBar:0.0} bar of gas in and out leave less than 100 ppm of oxygen in the empty keg"), Shown.Units));
            yield return ("Regulator", ToldText.Of(Invariant($"{keg.GaugeBar:0.00} bar, kept at {keg.Celsius:0} °C: one to two weeks"), Shown.Units));
            if (keg is { BurstBar: { } burst, BurstHours: { } hours })
            {
                yield return ("In haste", ToldText.Of(Invariant($"{burst:0.0} bar for {hours.Low:0} to {hours.High:0} hours, {hours.Middle:0} likely; stop after {keg.TasteAfterHours:0} and taste, then set the regulator back"), Shown.Units));
            }

            yield return ("Tube", ToldText.Of(Invariant($"{keg.LineMetres:0.0} m of 3/16 inch vinyl at a trade's pour; a slow pour wants more"), Shown.Units));
        }

        foreach (FilledPackages filled in plan.Filled)
        {
            if (filled.Oxygen is { } oxygen)
            {
                yield return ($"Oxygen in a {filled.Kind}", Invariant($"{oxygen.Low / 1000:0.00} to {oxygen.High / 1000:0.00} mg/L, capped on its foam or with air above it; breweries aim below {PackageOxygen.Aim / 1000:0.0}, and primed yeast takes part of it"));
            }
        }

        if (plan.LeftOver > 0.05)
        {
            yield return ("Left over", Shown.Litres(plan.LeftOver));
        }

        yield return ("Gas in it now", Shown.Volumes(plan.Residual));
        if (plan.PrimingGrams is not null)
        {
            yield return ("Then", "Two weeks warm, then cold and dark. Open one after a week, cold, over the sink.");
        }
    }

    private sealed class KindRow(PackageKind kind, string says)
    {
        public string Kind => kind.Kind;

        public bool IsKeg => new PackageFill(kind, null).IsKeg;

        public string Says => says;

        public bool IsChosen { get; set; }

        public string Count { get; set; } = "";
    }
}
