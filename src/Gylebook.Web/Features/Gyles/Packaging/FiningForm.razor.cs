using Gylebook.Pictures;
using Gylebook.Recipes.Ingredients;
using Gylebook.Web.Features.Gyles.Cellar;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles.Packaging;

/// <summary>What helps a beer to clear: doses for its litres, and what was given.</summary>
public sealed partial class FiningForm
{
    private string _what = Finings.OfBeer[0].Name, _amount = "";
    private string? _wrong;

    /// <summary>The gyle.</summary>
    [Parameter]
    [EditorRequired]
    public required OpenGyle Gyle { get; set; }

    /// <summary>Which portion; null for the whole.</summary>
    [Parameter]
    public string? Portion { get; set; }

    /// <summary>Litres of it.</summary>
    [Parameter]
    [EditorRequired]
    public double Litres { get; set; }

    /// <summary>Something was given, or taken back.</summary>
    [Parameter]
    public EventCallback Fined { get; set; }

    /// <summary>Packages.</summary>
    [Inject]
    public required PackageDesk Packages { get; init; }

    /// <summary>Takes entries back.</summary>
    [Inject]
    public required CellarDesk Cellar { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private async Task GiveAsync()
    {
        _wrong = await Packages.FineAsync(Gyle, Portion, _what, _amount, Litres);
        if (_wrong is null)
        {
            _amount = "";
            await Fined.InvokeAsync();
        }
    }

    private async Task UndoAsync(Guid entry)
    {
        await Cellar.UndoAsync(Gyle, entry);
        await Fined.InvokeAsync();
    }
}
