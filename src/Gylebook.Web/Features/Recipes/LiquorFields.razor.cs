using Gylebook.Engine.State;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Report.Stages;
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

    private StageRow? Strike => Desk.Outlook?.Forecast.Stages.FirstOrDefault(s => s.Stage == Stage.Strike);

    private bool HasTopUp => Desk.Outlook?.Recipe.Mash?.Method == MashMethod.Part || Desk.Now.Has("liquor.topUp");

    private string Planned => Strike is { } strike ? $"{Desk.Shown.Litres(strike.LitresAt20C)}, planned" : "planned";

    private string Says => Strike is not { } strike ? "" : string.Join(", ", new[]
    {
        strike.TemperatureC is double celsius ? $"at {Desk.Shown.Celsius(celsius)}" : "",
        Desk.Now.Has("liquor.strike") ? "fixed by you" : "planned backwards from the package",
    }.Where(part => part.Length > 0));

    /// <summary>What goes into mash and sparge, and what the mash comes to, in one breath.</summary>
    private string Water => Desk.Outlook?.Forecast.Water is not { } water ? "" : string.Join(" ", new[]
    {
        Of("Mash:", water.Mash), Of("Sparge:", water.Sparge), Of("Kettle:", water.Kettle), Of("Package:", water.Package),
        water.MashPh is { } ph ? $"Mash pH {Desk.Shown.Number(ph.Likely, 2)}, between {Desk.Shown.Number(ph.Low, 2)} and {Desk.Shown.Number(ph.High, 2)}, cooled to 20 °C." : "",
    }.Where(part => part.Length > 0));

    private string Of(string place, TreatedLiquor liquor)
    {
        IEnumerable<string> doses = liquor.Salts.Select(dose => $"{Desk.Shown.Number(dose.Grams, 1)} g {dose.Salt.Name}")
            .Concat(liquor.Acids.Select(dose => $"{Desk.Shown.Number(dose.Units, 1)} {dose.Acid.Acid.UnitSymbol} {dose.Acid.Name}"));
        string all = string.Join(", ", doses);
        return all.Length == 0 ? "" : $"{place} {all}.";
    }

    private Task FixAsync(double litres)
    {
        string text = UnitTable.Format(VolumeAt20C.FromLitres(Math.Round(litres, 1)), "L");
        return Desk.EditAsync(draft => draft.Put("liquor.strike", text));
    }
}
