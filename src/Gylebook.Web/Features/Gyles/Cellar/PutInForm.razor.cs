using Gylebook.Gyles;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Store;
using Gylebook.Web.Features.Larders;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>Something that goes into the fermenter and the plan did not have; and what hands changed so far.</summary>
public sealed partial class PutInForm
{
    private IReadOnlyList<string> _names = [];
    private IReadOnlyList<Finding> _problems = [];
    private string _what = "", _amount = "";
    private DateTime? _when;

    /// <summary>The gyle.</summary>
    [Parameter]
    [EditorRequired]
    public required OpenGyle Gyle { get; set; }

    /// <summary>Into which portion; null for the whole.</summary>
    [Parameter]
    public string? Portion { get; set; }

    /// <summary>It is in the book.</summary>
    [Parameter]
    public EventCallback Put { get; set; }

    /// <summary>An entry is to be taken back.</summary>
    [Parameter]
    public EventCallback<Guid> Undone { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Gyles in the fermenter.</summary>
    [Inject]
    public required CellarDesk Cellar { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private IReadOnlyList<BrewAction> Changes => [.. Gyle.Log.Actions.Where(action => action.EntryId is not null && (action.Kind is ActionKind.Given or ActionKind.Divided || (action.Kind == ActionKind.Said && action.Stage == "ferment")))];

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync() =>
        _names = [.. (await OwnLarder.OfAsync(Book)).Sheets.Select(sheet => sheet.Name).Concat(FoodTable.All.Select(food => food.Name)).Concat(Sugars.All.Select(sugar => sugar.Name)).Concat(HopCultivars.All.Select(hop => hop.Name)).Distinct()];

    private async Task PutAsync()
    {
        DateTimeOffset? at = _when is { } typed ? new DateTimeOffset(typed, Clock.LocalTimeZone.GetUtcOffset(typed)) : null;
        _problems = await Cellar.PutAsync(Gyle, _what, _amount, Portion, at);
        if (_problems.Count == 0)
        {
            (_what, _amount, _when) = ("", "", null);
            await Put.InvokeAsync();
        }
    }
}
