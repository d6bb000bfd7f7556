using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;

namespace Gylebook.Forecast.Records;

/// <summary>Everything that happened in one run, in order.</summary>
/// <param name="outcome">The run itself, to be read.</param>
public sealed class RunRecord(RunOutcome outcome)
{
    /// <summary>The run itself, to be read.</summary>
    public RunOutcome Outcome => outcome;

    /// <summary>Runs a plan once, and keeps everything.</summary>
    public static RunRecord Of(RunPlan plan, double[] draw)
    {
        RunRecord record = new(new RunOutcome(plan, draw, new RunTrace(plan)));
        FullLog log = new(record);
        Run.Through(plan, draw, record.Outcome.Trace, ref log);
        return record;
    }

    /// <summary>What entered.</summary>
    public List<Movement> Additions { get; } = [];

    /// <summary>What left.</summary>
    public List<Movement> Losses { get; } = [];

    /// <summary>What each stage left behind it.</summary>
    public List<Reached> Stages { get; } = [];

    /// <summary>The wort as a stage left it, the last time it was reached; nothing when it never was.</summary>
    public Wort At(Stage stage) => Stages.LastOrDefault(reached => reached.Stage == stage)?.Wort ?? default;
}

/// <summary>Something that entered or left.</summary>
/// <param name="Stage">Where.</param>
/// <param name="Portion">Which portion.</param>
/// <param name="Loss">What loss it was; null for an addition.</param>
/// <param name="What">How much of what.</param>
public sealed record Movement(Stage Stage, int Portion, Loss? Loss, Wort What);

/// <summary>A stage reached.</summary>
/// <param name="Stage">Which.</param>
/// <param name="Portion">Which portion.</param>
/// <param name="Wort">What it left.</param>
public sealed record Reached(Stage Stage, int Portion, Wort Wort);

/// <summary>The log that keeps everything.</summary>
/// <param name="record">Where to.</param>
public readonly struct FullLog(RunRecord record) : IRunLog
{
    private readonly TraceLog _kept = new(record.Outcome.Trace);

    /// <inheritdoc/>
    public void Added(Stage stage, int portion, in Wort added) => record.Additions.Add(new(stage, portion, null, added));

    /// <inheritdoc/>
    public void Lost(Stage stage, int portion, Loss what, in Wort lost)
    {
        _kept.Lost(stage, portion, what, lost);
        record.Losses.Add(new(stage, portion, what, lost));
    }

    /// <inheritdoc/>
    public void Reached(Stage stage, int portion, in Portion state)
    {
        _kept.Reached(stage, portion, state);
        record.Stages.Add(new(stage, portion, state.Wort));
    }

    /// <inheritdoc/>
    public void Bittered(int addition, double milligrams) => _kept.Bittered(addition, milligrams);
}
