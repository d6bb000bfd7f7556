using System.Globalization;
using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readings;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Liquids;
using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Quantities;

namespace Gylebook.Benchmarks;

/// <summary>Writes the readings of five gyles that nobody brewed, from a truth that the kit's file does not know: <c>samples/gyles</c>.</summary>
/// <remarks>
/// The kit is Lantern Shed, whose file says 4.0 L/h, 0.55 L/kg, 95 % and 0.8 L. The truth of its own middles is below; each gyle lies about
/// them by the spread within one brewer, and all else is drawn. The same unchecked marks and hydrometer are off alike in all five. In the fourth
/// the lid was half on.
/// </remarks>
internal static class SimulatedGyles
{
    private const int Gyles = 5, Odd = 3;
    private const double UnderTheLid = 0.5, HotCopper = 66, Knocked = 98;
    private const string Seed = "simulated gyles";

    /// <summary>The kit's own middles, in its field's units.</summary>
    private static readonly (Known Place, string Id, double Truth)[] Hidden =
    [
        (Known.Evaporation, "kit.kettle.evaporation", 4.9),
        (Known.WortHeld, "kit.wortHeld", WortHeld.FromLiquorKept(0.65)),
        (Known.Conversion, "kit.conversion", 0.92),
        (Known.KettleLeftBehind, "kit.kettle.leftBehind", 1.2),
    ];

    /// <summary>Writes them.</summary>
    /// <param name="recipe">Path of the recipe that all of them are of.</param>
    /// <param name="folder">Where to.</param>
    public static void Write(string recipe, string folder)
    {
        BrewPlan planned = BrewPlanner.Plan(RecipeFile.Read(File.ReadAllText(recipe)).Value!, BuiltInKit.LanternShed, Larder.Empty);
        (string At, string What, Readout Readout, KitInstrument With, double Celsius)[] read = Read();
        Parameter[] instruments = [.. read.SelectMany(reading => reading.With.Off.Parameters).DistinctBy(parameter => parameter.Id)];
        Ensemble drawn = DrawnBrew.Of(planned, RunOutcome.Likely(planned.Plan!), Seed, Gyles, instruments, null, [.. read.Select(reading => reading.Readout).Distinct()]);
        Draws draws = drawn.Draws.Copy();
        Bend(draws, instruments);
        Ensemble truth = Ensemble.Of(planned.Plan!, draws, drawn.Readouts, drawn.Terms);
        for (int gyle = 0; gyle < Gyles; gyle++)
        {
            string[] lines = [.. read.Select(reading => Line(truth, reading, gyle))];
            string odd = gyle == Odd ? " The lid was half on: half the steam." : "";
            File.WriteAllText(Path.Combine(folder, Invariant($"bitter-{gyle + 1}.json")), $$"""
                {
                  "format": "gylebook-readings/1",
                  "name": "Simulated bitter {{(gyle + 1).ToString(CultureInfo.InvariantCulture)}}",
                  "notes": "Simulated, nobody brewed it: from a hidden truth, seed \"{{Seed}}\", by bench/Gylebook.Benchmarks/SimulatedGyles.cs.{{odd}}",
                  "readings": [
                {{string.Join(",\n", lines)}}
                  ]
                }

                """.ReplaceLineEndings("\n"));
        }
    }

    private static (string At, string What, Readout Readout, KitInstrument With, double Celsius)[] Read()
    {
        KitInstrument marks = KitInstrument.Of(new TakenReading(ReadingPoint.CopperUp) { Volume = default(Entered<HotVolume>) });
        KitInstrument fermenter = KitInstrument.Of(new TakenReading(ReadingPoint.Cast) { Volume = default(Entered<HotVolume>) });
        KitInstrument hydrometer = KitInstrument.Of(new TakenReading(ReadingPoint.CopperUp) { Gravity = default(Entered<SpecificGravity>) });
        return
        [
            ("mash", "gravity", StageReadouts.Of(Stage.Mash, 0).Gravity, hydrometer, 20),
            ("copper-up", "volume", StageReadouts.Of(Stage.CopperUp, 0).LitresWithSolids, marks, HotCopper),
            ("copper-up", "gravity", StageReadouts.Of(Stage.CopperUp, 0).Gravity, hydrometer, 20),
            ("knock-out", "volume", StageReadouts.Of(Stage.KnockOut, 0).LitresWithSolids, marks, Knocked),
            ("cast", "volume", StageReadouts.Of(Stage.Cast, 0).LitresWithSolids, fermenter, 20),
            ("cast", "gravity", StageReadouts.Of(Stage.Cast, 0).Gravity, hydrometer, 20),
            ("ferment", "gravity", StageReadouts.Of(Stage.Ferment, 0).Gravity, hydrometer, 20),
        ];
    }

    /// <summary>Puts the hidden truth into the draws: the kit's own middles, one set of instruments, and the odd gyle.</summary>
    private static void Bend(Draws draws, Parameter[] instruments)
    {
        foreach ((Known place, string id, double own) in Hidden)
        {
            Width within = ((Prior.Spread)draws.Parameters[(int)place].Prior).Within!.Value;
            for (int gyle = 0; gyle < Gyles; gyle++)
            {
                draws.Column((int)place)[gyle] = within.About(own).Quantile(ShareOf(Invariant($"{id} {gyle}")));
            }
        }

        draws.Column((int)Known.Evaporation)[Odd] *= UnderTheLid;
        foreach (Parameter instrument in instruments)
        {
            draws.Column(draws.PlaceOf(instrument.Id)!.Value).Fill(instrument.Prior.About(0).Quantile(ShareOf(instrument.Id)));
        }
    }

    private static string Line(Ensemble truth, (string At, string What, Readout Readout, KitInstrument With, double Celsius) reading, int gyle)
    {
        Reading clean = new(Invariant($"{reading.At} {gyle}"), reading.Readout, 0, 0, reading.With.Off);
        double shown = Assimilation.ForecastOf(truth, clean)[gyle], scatter = Math.Sqrt(reading.With.Kind.Scatter.VarianceAt(shown));
        double read = shown + (scatter * StandardNormal.Quantile(ShareOf($"{clean.Id} {reading.What}")));
        double stands = read * WaterDensity.KilogramsPerLitreAt(20) / WaterDensity.KilogramsPerLitreAt(reading.Celsius);
        string value = reading.What == "volume" ? Invariant($"{stands:0.0} L") : Invariant($"{read:0.0000}");
        string degassed = reading.At == "ferment" ? ", \"degassed\": true" : "";
        return Invariant($"    {{ \"at\": \"{reading.At}\", \"{reading.What}\": \"{value}\", \"temperature\": \"{reading.Celsius:0} °C\"{degassed} }}");
    }

    private static double ShareOf(string what) => (SeededRandom.Of(Seed, what).Below(1 << 30) + 0.5) / (1 << 30);
}
