using Gylebook.Forecast.Telling;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Science.Quantities;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>Strike and top-up: what the plan found, and what the brewer fixes.</summary>
public sealed partial class LiquorFields
{
    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    private StageRow? Strike => Desk.Outlook?.Forecast.Stages.FirstOrDefault(s => s.Stage == "strike");

    private bool HasTopUp => Desk.Outlook?.Recipe.Mash?.Method == MashMethod.Part || Desk.Now.Has("liquor.topUp");

    private string Planned => Strike is { } strike ? $"{Desk.Shown.Litres(strike.LitresAt20C)}, planned" : "planned";

    private string Says => Strike is not { } strike ? "" : string.Join(" ", new[]
    {
        Desk.Now.Has("liquor.strike") ? "Fixed by you:" : "Planned backwards from the package:",
        Desk.Shown.Litres(strike.LitresAt20C),
        strike.TemperatureC is double celsius ? $"at {Desk.Shown.Celsius(celsius)}." : "of liquor.",
    });

    private Task FixAsync(double litres)
    {
        string text = UnitTable.Format(VolumeAt20C.FromLitres(Math.Round(litres, 1)), "L");
        return Desk.EditAsync(draft => draft.Put("liquor.strike", text));
    }
}
