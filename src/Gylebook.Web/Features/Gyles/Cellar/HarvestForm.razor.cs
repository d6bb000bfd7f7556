using System.Globalization;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>Takes yeast out of a gyle's fermenter into the larder, once it was pitched.</summary>
public sealed partial class HarvestForm
{
    private GylePlan? _plan;
    private HarvestOutlook? _outlook;
    private IReadOnlyList<BrewAction> _jars = [];
    private IReadOnlyList<Finding> _problems = [];
    private string _amount = "", _cells = "", _called = "", _of = "", _said = "";
    private DateTime? _day;
    private bool _isOpen;

    /// <summary>The gyle.</summary>
    [Parameter]
    [EditorRequired]
    public required OpenGyle Gyle { get; set; }

    /// <summary>Yeast was taken out, or put back.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>The way into the larder.</summary>
    [Inject]
    public required HarvestDesk Harvests { get; init; }

    /// <summary>Takes entries back.</summary>
    [Inject]
    public required CellarDesk Cellar { get; init; }

    private string Max => Harvests.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _jars = HarvestDesk.Jars(Gyle);
        if (Gyle.Pitched is null)
        {
            _outlook = null;
        }
        else if (_outlook is null || _plan != Gyle.Plan)
        {
            GylePlan plan = Gyle.Plan;
            _plan = plan;
            _outlook = await Task.Run(() => HarvestOutlook.Of(plan));
        }
    }

    private async Task HarvestAsync()
    {
        _said = "";
        TypedHarvest typed = new(Poured(_amount), _day is { } day ? DateOnly.FromDateTime(day) : Harvests.Today) { Cells = _cells, Called = _called, Of = _of };
        (BrewAction? entry, _problems) = await Harvests.HarvestAsync(Gyle, _outlook!, typed);
        _isOpen = entry is null;
        if (entry is not null)
        {
            (_amount, _cells, _called, _day) = ("", "", "", null);
            _said = $"Lot {LotKey.NameIn(entry.Lot!)} is in the larder: a recipe's yeast may name it.";
            await Changed.InvokeAsync();
        }
    }

    private async Task UndoAsync(BrewAction jar)
    {
        await Cellar.UndoAsync(Gyle, jar.EntryId!.Value);
        _said = "Taken back. The lot is out of the larder, unless something was pitched from it.";
        await Changed.InvokeAsync();
    }

    /// <summary>A bare number is of millilitres: nobody has a kilogram of yeast in a jar.</summary>
    private static string Poured(string typed) => typed.Trim() is { Length: > 0 } bare && bare.All(letter => char.IsAsciiDigit(letter) || letter is '.' or ',') ? $"{bare} mL" : typed;

    private string Day(BrewAction jar) => TimeZoneInfo.ConvertTime(jar.At, Harvests.Zone).ToString("d MMM", CultureInfo.InvariantCulture);
}
