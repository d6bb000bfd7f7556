using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
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

    private Task ToggleBag(ChangeEventArgs change) => Put(Kit with { Bag = change.Value is true ? UsualBag : null });

    private Task ToggleTun(ChangeEventArgs change) => Put(Kit with { Tun = change.Value is true ? UsualTun : null });

    private static Entered<T> Typed<T>(string text)
        where T : struct, IQuantity<T> =>
        UnitTable.TryParse(text, out Entered<T> entered, out string problem) ? entered : throw new InvalidOperationException(problem);
}
