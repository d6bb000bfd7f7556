using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Running;
using Gylebook.Forecast.Treating;

namespace Gylebook.Forecast.Telling;

/// <summary>The headline numbers, in the order in which they are told.</summary>
public static class Headlines
{
    private static readonly (string Name, Figure? Figure, string Unit)[] Order =
    [
        ("castGravity", Figure.CastGravity, "SG"),
        ("originalGravity", Figure.OriginalGravity, "SG"),
        ("finalGravity", Figure.FinalGravity, "SG"),
        ("apparentAttenuation", Figure.ApparentAttenuation, "%"),
        ("realAttenuation", Figure.RealAttenuation, "%"),
        ("alcoholAtRacking", Figure.AlcoholAtRacking, "%"),
        ("alcoholByVolume", Figure.AlcoholByVolume, "%"),
        ("bitterness", Figure.Bitterness, "IBU"),
        ("colourSrm", Figure.Colour, "SRM"),
        ("mashPh", null, "pH"),
        ("beerPh", null, "pH"),
        ("copperUpLitres", Figure.CopperUpLitres, "L at 20 °C"),
        ("copperUpGravity", Figure.CopperUpGravity, "SG"),
        ("castLitres", Figure.CastLitres, "L at 20 °C"),
        ("sludgeLitres", Figure.SludgeLitres, "L"),
        ("packagedLitres", Figure.PackagedLitres, "L at 20 °C"),
        ("energyKcalPer100ml", Figure.Energy, "kcal/100 mL"),
        ("carbohydrateGPer100ml", Figure.Carbohydrate, "g/100 mL"),
        ("sodiumMgPerL", Figure.Sodium, "mg/L"),
        ("mashYield", Figure.MashYield, "%"),
        ("costPerLitre", null, ""),
    ];

    /// <summary>All names, every number unknown.</summary>
    public static IReadOnlyList<Headline> Unknown { get; } = [.. Order.Select(o => new Headline(o.Name, null))];

    /// <summary>The headline of a run.</summary>
    public static IReadOnlyList<Headline> Of(LaidOut laidOut, HeadlineFigures figures, WaterOutcome? water) =>
        [.. Order.Select(o => new Headline(
            o.Name,
            o.Name == "mashPh" ? water?.MashPh
            : IsKnown(laidOut, o.Figure, water) ? Band.Point(figures[o.Figure!.Value], o.Unit) : null))];

    /// <summary>Sodium is told only where something brings some, or the liquor is known.</summary>
    private static bool IsKnown(LaidOut laidOut, Figure? figure, WaterOutcome? water) => figure switch
    {
        null => false,
        Figure.Sodium => water is not null || laidOut.Lines.Any(l => l.Makeup[State.Component.Sodium] > 0),
        Figure.MashYield => laidOut.Plan!.Mash.GristKilograms > 0,
        _ => true,
    };
}
