using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Running;
using Gylebook.Forecast.Treating;

namespace Gylebook.Forecast.Telling;

/// <summary>The headline numbers, in the order in which they are told.</summary>
public static class Headlines
{
    private const string MashPh = "mashPh";
    private const string WortPh = "wortPh";
    private const string BeerPh = "beerPh";

    private static readonly Line[] Order =
    [
        new("castGravity", "gravity in the fermenter", Figure.CastGravity, "SG", 4),
        new("originalGravity", "original gravity, all in", Figure.OriginalGravity, "SG", 4),
        new("finalGravity", "final gravity", Figure.FinalGravity, "SG", 4),
        new("apparentAttenuation", "apparent attenuation", Figure.ApparentAttenuation, "%", 1),
        new("realAttenuation", "real attenuation", Figure.RealAttenuation, "%", 1),
        new("alcoholAtRacking", "alcohol by volume, when racked", Figure.AlcoholAtRacking, "%", 2),
        new("alcoholByVolume", "alcohol by volume, in the glass", Figure.AlcoholByVolume, "%", 2),
        new("bitterness", "bitterness", Figure.Bitterness, "IBU", 1),
        new("colourSrm", "colour", Figure.Colour, "SRM", 1),
        new(MashPh, "pH of the mash", null, PhTold.Unit, 2),
        new(WortPh, "pH of the wort in the fermenter", null, PhTold.Unit, 1),
        new(BeerPh, "pH of the beer", null, PhTold.Unit, 1),
        new("copperUpLitres", "wort at copper-up", Figure.CopperUpLitres, "L at 20 °C", 2),
        new("copperUpGravity", "gravity at copper-up", Figure.CopperUpGravity, "SG", 4),
        new("castLitres", "wort in the fermenter", Figure.CastLitres, "L at 20 °C", 2),
        new("sludgeLitres", "sludge", Figure.SludgeLitres, "L", 2),
        new("packagedLitres", "beer packaged", Figure.PackagedLitres, "L at 20 °C", 2),
        new("energyKcalPer100ml", "energy", Figure.Energy, "kcal/100 mL", 0),
        new("carbohydrateGPer100ml", "carbohydrate", Figure.Carbohydrate, "g/100 mL", 1),
        new("sodiumMgPerL", "sodium from foods and salts", Figure.Sodium, "mg/L", 0),
        new("mashYield", "extract from the grist", Figure.MashYield, "%", 1),
        new("costPerLitre", "cost of a litre", null, "", 2),
    ];

    /// <summary>All names, every number unknown.</summary>
    public static IReadOnlyList<Headline> Unknown { get; } = [.. Order.Select(line => line.With(null))];

    /// <summary>The headline of a run.</summary>
    internal static IReadOnlyList<Headline> Of(LaidOut laidOut, HeadlineFigures figures, WaterOutcome? water, PhTold ph) =>
        [.. Order.Select(line => line.With(line.Name switch
        {
            MashPh => water?.MashPh,
            WortPh => ph.Wort,
            BeerPh => ph.Beer,
            _ => IsKnown(laidOut, line.Figure, water) ? Band.Point(figures[line.Figure!.Value], line.Unit) : null,
        }))];

    /// <summary>Sodium is told only where something brings some, or the liquor is known.</summary>
    private static bool IsKnown(LaidOut laidOut, Figure? figure, WaterOutcome? water) => figure switch
    {
        null => false,
        Figure.Sodium => water is not null || laidOut.Lines.Any(l => l.Makeup[State.Component.Sodium] > 0),
        Figure.MashYield => laidOut.Plan!.Mash.GristKilograms > 0,
        _ => true,
    };

    /// <summary>What is fixed of a headline: its stable name, its title, what it reads, and how it is written.</summary>
    private sealed record Line(string Name, string Title, Figure? Figure, string Unit, int Decimals)
    {
        public Headline With(Band? band) => new(Name, Title, Decimals, band);
    }
}
