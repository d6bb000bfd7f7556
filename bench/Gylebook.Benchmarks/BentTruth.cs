using Gylebook.Engine.Drawing;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Benchmarks;

/// <summary>A way in which the truth is not what the forecast thinks it may be.</summary>
/// <param name="Words">What is bent.</param>
/// <param name="Next">The reading after those of the brew day that may name it.</param>
/// <param name="Bend">Bends drawn truths.</param>
internal sealed record BentTruth(string Words, (string Said, Readout Readout, KitInstrument With) Next, Action<BrewPlan, Draws> Bend)
{
    private static readonly KitInstrument Fermenter = KitInstrument.Of(new TakenReading(ReadingPoint.Cast) { Volume = default(Entered<HotVolume>) });
    private static readonly KitInstrument Package = KitInstrument.Of(new TakenReading(ReadingPoint.Package) { Volume = default(Entered<HotVolume>) });

    private static readonly (string, Readout, KitInstrument) CastLitres = ("litres in the fermenter", StageReadouts.Of(Stage.Cast, 0).LitresWithSolids, Fermenter);
    private static readonly (string, Readout, KitInstrument) Packaged = ("litres packaged", StageReadouts.Of(Stage.Package, 0).Litres, Package);
    private static readonly (string, Readout, KitInstrument) Fermented = ("gravity, fermented", StageReadouts.Of(Stage.Ferment, 0).Gravity, ReadTruth.Hydrometer);

    /// <summary>Those the reference asks for; the first is not bent, to be held beside them.</summary>
    public static IReadOnlyList<BentTruth> All { get; } =
    [
        new("nothing", Fermented, (_, _) => { }),
        new("nothing", CastLitres, (_, _) => { }) { Blamed = Known.KettleLeftBehind },
        new("nothing", Packaged, (_, _) => { }) { Blamed = Known.RackingLeftBehind },
        new("limit by the un-mixed study", Fermented, (_, draws) => draws.Column((int)Known.TowardsPlateau).Clear()),
        new("limit by the plateau", Fermented, (_, draws) => draws.Column((int)Known.TowardsPlateau).Fill(1)),
        new("utilisation × 0.64", CastLitres, (_, draws) => Times(draws, (int)Known.UtilisationFactor, 0.64)),
        new("utilisation × 1.26", CastLitres, (_, draws) => Times(draws, (int)Known.UtilisationFactor, 1.26)),
        new("evaporation × 1.3", CastLitres, (_, draws) => Times(draws, (int)Known.Evaporation, 1.3)),
        new("mash 1.5 K hotter", Fermented, (_, draws) => Plus(draws, (int)Known.MashWarmer, 1.5)),
        new("marks + 3 %", CastLitres, (_, draws) => Plus(draws, Place(draws, ReadTruth.Marks.Off.Share!), 0.03)),
        new("hydrometer − 1.3 points", Fermented, (_, draws) => Plus(draws, Place(draws, ReadTruth.Hydrometer.Off.Offset!), -0.0013)),
        new("a stall of 8 %", Fermented, Stall),
        new("0.5 L lost on the way into the fermenter", CastLitres, (_, draws) => Plus(draws, (int)Known.KettleLeftBehind, 0.5)) { Blamed = Known.KettleLeftBehind },
        new("2 L lost on the way into the fermenter", CastLitres, (_, draws) => Plus(draws, (int)Known.KettleLeftBehind, 2)) { Blamed = Known.KettleLeftBehind },
        new("0.5 L lost when racking", Packaged, (_, draws) => Plus(draws, (int)Known.RackingLeftBehind, 0.5)) { Blamed = Known.RackingLeftBehind },
        new("2 L lost when racking", Packaged, (_, draws) => Plus(draws, (int)Known.RackingLeftBehind, 2)) { Blamed = Known.RackingLeftBehind },
    ];

    /// <summary>The figure of the kit that would take the blame; null where none would.</summary>
    public Known? Blamed { get; private init; }

    private static int Place(Draws draws, Parameter parameter) => draws.PlaceOf(parameter.Id)!.Value;

    private static void Plus(Draws draws, int place, double more)
    {
        foreach (ref double value in draws.Column(place))
        {
            value += more;
        }
    }

    private static void Times(Draws draws, int place, double times)
    {
        foreach (ref double value in draws.Column(place))
        {
            value *= times;
        }
    }

    /// <summary>The yeast leaves maltose, so much that the likely run's apparent attenuation falls by 8 per cent of the extract.</summary>
    private static void Stall(BrewPlan brew, Draws draws)
    {
        int place = Enumerable.Range(0, draws.Parameters.Count).Single(place => draws.Parameters[place].Id.StartsWith("yeast.", StringComparison.Ordinal) && draws.Parameters[place].Id.EndsWith(".maltose", StringComparison.Ordinal));
        double whole = Attenuation(1), low = 0, high = 1;
        for (int halving = 0; halving < 40; halving++)
        {
            double middle = (low + high) / 2;
            (low, high) = Attenuation(middle) < whole - 8 ? (middle, high) : (low, middle);
        }

        Times(draws, place, high);

        double Attenuation(double share)
        {
            double[] medians = [.. brew.Plan!.Medians];
            medians[place] *= share;
            return RunOutcome.At(brew.Plan, medians)[BeerReadouts.ApparentAttenuation];
        }
    }
}
