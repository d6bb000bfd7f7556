using System.Text.Json;
using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Features.Gyles;

/// <summary>Brew day, one step at a time.</summary>
public sealed partial class BrewPage
{
    private OpenGyle? _gyle;
    private BrewForecast? _live;
    private string _log = "[]";

    /// <summary>Which gyle.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The gyles.</summary>
    [Inject]
    public required GyleDesk Desk { get; init; }

    /// <summary>Who reads.</summary>
    [Inject]
    public required Reader Reader { get; init; }

    [CascadingParameter]
    private HttpContext? HttpContext { get; set; }

    private Shown Shown => Reader.Shown;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        _gyle = await Desk.OpenAsync(Id);
        if (_gyle is null)
        {
            HttpContext?.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        _live = _gyle.Moved();
        _log = JsonSerializer.Serialize(GyleIntake.LogOf(_gyle.Log), JsonSerializerOptions.Web);
    }

    private string Told(string sentence) => ToldText.Of(sentence, Shown.Units);
}
