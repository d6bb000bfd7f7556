using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Liquids;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>How grain and wort part on this kit.</summary>
public sealed partial class GrainFields
{
    private const string Bag = "bag";
    private const string Tun = "tun";

    private static readonly Caution Lift = new(
        "lift.heavy", Stage.Lift,
        "A wet bag is hot, and heavier than the dry grain was. Use a pulley or a second pair of hands; each forecast tells its kilograms.",
        "common practice, no source");

    private static StartingValue Usual => BuiltInKit.UsualConversion;

    private string Percent(double share) => $"{Desk.Shown.Number(100 * share, 0)}{Pictures.Shown.Space}%";

    /// <summary>Gravity of the first wort of pale malt (80 % of its dry matter, 4 % water) with four times its weight of liquor, at that conversion: a Congress mash's balance at another thickness.</summary>
    private string FirstWort(double conversion)
    {
        const double Extract = 0.80 * 0.96, Water = 4 + 0.04;
        double dissolved = conversion * Extract;
        return Desk.Shown.Gravity(SucroseSolution.GravityAt(100 * dissolved / (Water + dissolved)));
    }

    private Task ToggleAsync(ChangeEventArgs change, string part, IReadOnlyList<(string, string)> usual) =>
        Desk.EditAsync(draft => change.Value is true ? draft.AddPart(part, usual) : draft.Drop(part));
}
