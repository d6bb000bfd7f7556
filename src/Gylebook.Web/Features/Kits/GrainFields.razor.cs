using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>How grain and wort part on this kit.</summary>
public sealed partial class GrainFields
{
    private static readonly Caution Lift = new(
        "lift.heavy", Severity.Warning, Stage.Lift,
        "A wet bag is hot, and heavier than the dry grain was. Use a pulley or a second pair of hands; each forecast tells its kilograms.",
        "common practice, no source");

    // Figures to start from until the brewer has measured their own (common practice, no source).
    private static Bag UsualBag => new(Typed<SpecificVolume>("0.6 L/kg"), Typed<Fraction>("60 %"), true);

    private static Tun UsualTun => new(
        Typed<VolumeAt20C>("30 L"), Typed<VolumeAt20C>("0.5 L"), Typed<HeatCapacity>("4 kJ/K"), Typed<SpecificVolume>("0.9 L/kg"));

    private static StartingValue Usual => BuiltInKit.UsualConversion;

    private string Percent(double share) => Shown is { } shown ? $"{shown.Number(100 * share, 0)}{Pictures.Shown.Space}%" : "";

    /// <summary>Gravity of the first wort of pale malt (80 % of its dry matter, 4 % water) with four times its weight of liquor, at that conversion: a Congress mash's balance at another thickness.</summary>
    private string FirstWort(double conversion)
    {
        const double Extract = 0.80 * 0.96, Water = 4 + 0.04;
        double dissolved = conversion * Extract;
        return Shown?.Gravity(SucroseSolution.GravityAt(100 * dissolved / (Water + dissolved))) ?? "";
    }

    private Task ToggleBag(ChangeEventArgs change) => Put(Kit with { Bag = change.Value is true ? UsualBag : null });

    private Task ToggleTun(ChangeEventArgs change) => Put(Kit with { Tun = change.Value is true ? UsualTun : null });

    private static Entered<T> Typed<T>(string text)
        where T : struct, IQuantity<T> =>
        UnitTable.TryParse(text, out Entered<T> entered, out string problem) ? entered : throw new InvalidOperationException(problem);
}
