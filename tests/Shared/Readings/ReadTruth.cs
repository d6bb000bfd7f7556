using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readings;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Quantities;

namespace Gylebook.Tests.Shared;

/// <summary>Gyles whose truth was drawn, read with instruments that are off and scatter, as a brewer would: what coverage is counted on.</summary>
/// <param name="plan">The plan.</param>
/// <param name="before">Its draws before any reading.</param>
internal sealed class ReadTruth(RunPlan plan, Ensemble before)
{
    private const string Seed = "coverage scatter", Steps = "coverage";

    /// <summary>The numbers whose bands are held against the truth.</summary>
    public static IReadOnlyList<Readout> Asked { get; } =
    [
        BeerReadouts.OriginalGravity, BeerReadouts.FinalGravity, BeerReadouts.AlcoholByVolume, BeerReadouts.Bitterness, BeerReadouts.Colour,
        BeerReadouts.KnockOutLitres, BeerReadouts.CastLitres, BeerReadouts.PackagedLitres,
    ];

    /// <summary>The kettle's marks, unchecked.</summary>
    public static KitInstrument Marks { get; } = KitInstrument.Of(new TakenReading(ReadingPoint.CopperUp) { Volume = default(Entered<HotVolume>) });

    /// <summary>A hydrometer, unchecked.</summary>
    public static KitInstrument Hydrometer { get; } = KitInstrument.Of(new TakenReading(ReadingPoint.CopperUp) { Gravity = default(Entered<SpecificGravity>) });

    /// <summary>What is read on the brew day, in its order.</summary>
    public static IReadOnlyList<(Readout Readout, KitInstrument With)> Read { get; } =
    [
        (StageReadouts.Of(Stage.CopperUp, 0).LitresWithSolids, Marks), (StageReadouts.Of(Stage.CopperUp, 0).Gravity, Hydrometer),
        (StageReadouts.Of(Stage.KnockOut, 0).LitresWithSolids, Marks), (StageReadouts.Of(Stage.Cast, 0).Gravity, Hydrometer),
    ];

    /// <summary>A reading of one gyle's truth.</summary>
    /// <param name="truth">Truths, a draw a gyle.</param>
    /// <param name="place">Which draw.</param>
    /// <param name="gyle">The gyle's number, on which the scatter hangs.</param>
    /// <param name="readout">Of what.</param>
    /// <param name="with">With what.</param>
    public static Reading Off(Ensemble truth, int place, int gyle, Readout readout, KitInstrument with)
    {
        Reading clean = new(Invariant($"{gyle} {readout.Id}"), readout, 0, 0, with.Off);
        double shown = Assimilation.ForecastOf(truth, clean)[place], variance = with.Kind.Scatter.VarianceAt(shown);
        double chance = StandardNormal.Quantile((SeededRandom.Of(Seed, clean.Id).Below(1 << 30) + 0.5) / (1 << 30));
        return clean with { Value = shown + (Math.Sqrt(variance) * chance), ScatterVariance = variance };
    }

    /// <summary>Reads a gyle's brew day, and lets in what the gate lets in: the draws after all of it at once, and the readings as they were taken.</summary>
    public (Ensemble Once, IReadOnlyList<Reading> Taken) LetIn(Ensemble truth, int place, int gyle)
    {
        Ensemble now = before;
        List<Reading> taken = [];
        foreach ((Readout readout, KitInstrument with) in Read.Where(reading => double.IsFinite(truth[reading.Readout][place])))
        {
            Reading reading = Off(truth, place, gyle, readout, with);
            GatedReading gate = GatedReading.Of(reading.Value, reading.ScatterVariance, Assimilation.ForecastOf(now, reading));
            if (gate.Trust != ReadingTrust.SetAside)
            {
                taken.Add(reading with { ScatterVariance = gate.ErrorVariance });
                now = Assimilation.AtOnce(now, [taken[^1]], ReadingReach.Of(plan, before, taken).Last(), Steps);
            }
        }

        return (now, taken);
    }

    /// <summary>The draws after those readings in four steps; as they were where none was taken.</summary>
    public Ensemble After(IReadOnlyList<Reading> taken) => taken.Count == 0
        ? before
        : Assimilation.Repeated(plan, before, taken, ReadingReach.Of(plan, before, taken), Steps, Environment.ProcessorCount).Ensemble;
}
