using Gylebook.Pictures;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Water;
using Gylebook.Web.Features.Liquors.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Liquors;

/// <summary>Ions and pH that the brewer wants.</summary>
public sealed partial class WishFields
{
    private static readonly PrintedAs Milligrams = new("mg/L", "amount", "mg/L");
    private static readonly Ion[] Wanted = [Ion.Calcium, Ion.Magnesium, Ion.Sodium, Ion.Sulphate, Ion.Chloride, Ion.Bicarbonate];
    private static readonly (string, string)[] Balances = [("", "none"), .. WaterBalances.All.Select(balance => (balance.Name, balance.Name))];

    /// <summary>The plan.</summary>
    [Parameter]
    [EditorRequired]
    public required LiquorDesk Desk { get; set; }

    private WaterBalance? Balance => Desk.TextAt("balance") is { Length: > 0 } name ? WaterBalances.Find(name).Match : null;

    private static string Label(Ion ion) => $"{ion}, mg/L";

    private string Usual(Ion ion) =>
        Balance?.Targets.FirstOrDefault(target => target.Ion == ion) is { } target ? Desk.Shown.Number(target.MilligramsPerLitre, 0) : "any";

    private string Decimal(string text) => Desk.Shown.Units.DecimalSign == DecimalSign.Comma ? text.Replace('.', ',') : text;
}
