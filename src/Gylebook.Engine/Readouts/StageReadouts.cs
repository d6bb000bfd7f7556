using System.Collections.Concurrent;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Science.Boiling;
using Gylebook.Science.Liquids;

namespace Gylebook.Engine.Readouts;

/// <summary>What can be told of one portion as a stage leaves it.</summary>
public sealed record StageReadouts
{
    /// <summary>Few there can be, and the same in every plan: made once, not at every key.</summary>
    private static readonly ConcurrentDictionary<(Stage Stage, int Portion), StageReadouts> Made = new();

    /// <summary>The rows of a stage and portion.</summary>
    public static StageReadouts Of(Stage stage, int portion) => Made.GetOrAdd((stage, portion), static at => new(at.Stage, at.Portion));

    private StageReadouts(Stage stage, int portion)
    {
        Place = new Place(stage, null, portion);
        string id = Names.Of(stage) + (portion == 0 ? "" : Invariant($".{portion}"));
        Readout Row(string key, string title, string unit, int decimals, ReadoutOf of) => new($"stage.{id}.{key}", title, unit, decimals, Place, of);
        Litres = Row("litres", "clear liquid", "L at 20 °C", 2, (in run) => run.Litres(stage, portion));
        LitresWithSolids = Row("litresWithSolids", "with its solids", "L at 20 °C", 2, (in run) => Suspension.Litres(run.Wort(stage, portion), run.Litres(stage, portion), run.Draw));
        LitresHot = Row("litresHot", "as it stands", "L", 2, (in run) => run.Litres(stage, portion) * Warmed(Heat.CelsiusAt(run, stage)));
        Celsius = Row("celsius", "temperature", "°C", 1, (in run) => Heat.CelsiusAt(run, stage));
        Gravity = Row("gravity", "gravity", "SG", 4, (in run) => run.Gravity(stage, portion));
        SuspensionGravity = Row("suspensionGravity", "gravity with its solids stirred up", "SG", 4, (in run) => Suspension.Gravity(run.Wort(stage, portion), run.Litres(stage, portion), run.Draw));
        Plato = Row("plato", "real extract", "°P", 2, (in run) => run.Wort(stage, portion).RealExtractPlato);
        Alcohol = Row("alcohol", "alcohol by volume", "%", 2, (in run) => run.Wort(stage, portion).AlcoholByVolumePercentOf(run.Litres(stage, portion)));
        Colour = Row("colour", "colour", "SRM", 1, (in run) => ColourOf(run.Wort(stage, portion), run.Litres(stage, portion)));
    }

    /// <summary>Where.</summary>
    public Place Place { get; }

    /// <summary>Clear liquid, litres at 20 °C.</summary>
    public Readout Litres { get; }

    /// <summary>What the vessel's marks would read at 20 °C.</summary>
    public Readout LitresWithSolids { get; }

    /// <summary>Clear liquid as it stands at its temperature.</summary>
    public Readout LitresHot { get; }

    /// <summary>How warm, °C.</summary>
    public Readout Celsius { get; }

    /// <summary>Gravity of the clear liquid.</summary>
    public Readout Gravity { get; }

    /// <summary>Gravity with what has not settled stirred in.</summary>
    public Readout SuspensionGravity { get; }

    /// <summary>Real extract, °P.</summary>
    public Readout Plato { get; }

    /// <summary>Alcohol, % by volume.</summary>
    public Readout Alcohol { get; }

    /// <summary>Colour once there is one, SRM.</summary>
    public Readout Colour { get; }

    /// <summary>All rows.</summary>
    public IEnumerable<Readout> All =>
        [Litres, LitresWithSolids, LitresHot, Celsius, Gravity, SuspensionGravity, Plato, Alcohol, Colour];

    private static double ColourOf(in Wort wort, double litres) => litres > 0 ? WortColour.SrmOfAbsorbance(wort[Component.Colour] / litres) : 0;

    /// <summary>By how much water swells from 20 °C; an unknown temperature swells nothing.</summary>
    private static double Warmed(double celsius) => celsius is > 20 and <= 100.5
        ? WaterDensity.KilogramsPerLitreAt(20) / WaterDensity.KilogramsPerLitreAt(Math.Min(100, celsius)) : 1;
}

/// <summary>What can be told of one loss.</summary>
public sealed record LossReadouts
{
    private static readonly ConcurrentDictionary<(Loss Loss, Stage Stage, int Portion), LossReadouts> Made = new();

    /// <summary>The rows of a loss at a stage of a portion.</summary>
    public static LossReadouts Of(Loss loss, Stage stage, int portion) =>
        Made.GetOrAdd((loss, stage, portion), static at => new(at.Loss, at.Stage, at.Portion));

    private LossReadouts(Loss loss, Stage stage, int portion)
    {
        (Loss, Place) = (loss, new Place(stage, null, portion));
        bool souring = stage == Stage.Sour;
        string id = Names.Of(loss) + (souring ? ".sour" : "") + (portion == 0 ? "" : Invariant($".{portion}"));
        Readout Row(string key, string title, string unit, ReadoutOf of) => new($"loss.{id}.{key}", title, unit, 3, Place, of);
        Litres = Row("litres", "clear liquid lost", "L at 20 °C", (in run) => run.Trace.Lost(loss, portion, souring).Litres);
        Kilograms = Row("kilograms", "lost in all", "kg", (in run) => run.Trace.Lost(loss, portion, souring).Mass);
        ExtractKilograms = Row("extract", "extract lost", "kg", (in run) => run.Trace.Lost(loss, portion, souring).ExtractMass);
    }

    /// <summary>Which.</summary>
    public Loss Loss { get; }

    /// <summary>Where.</summary>
    public Place Place { get; }

    /// <summary>Clear liquid lost, litres at 20 °C.</summary>
    public Readout Litres { get; }

    /// <summary>Everything lost, solids and gas included, kg.</summary>
    public Readout Kilograms { get; }

    /// <summary>Extract lost, kg.</summary>
    public Readout ExtractKilograms { get; }

    /// <summary>All rows.</summary>
    public IEnumerable<Readout> All => [Litres, Kilograms, ExtractKilograms];
}
