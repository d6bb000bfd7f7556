using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Records;

namespace Gylebook.Forecast.Foods;

/// <summary>A plain brew run once at the medians, with all that happened.</summary>
internal sealed class TrialRun(RunPlan plan, double[] draw)
{
    private readonly RunRecord _record = RunRecord.Of(plan, draw);

    /// <summary>The plain brew as it is likely.</summary>
    public TrialRun(RunPlan plan)
        : this(plan, plan.Medians)
    {
    }

    public double this[Readout readout] => _record.Outcome[readout];

    /// <summary>What a stage left, the last time it was reached; nothing when it never was.</summary>
    public Wort At(Stage stage) => _record.Outcome.Trace.Wort(stage);

    /// <summary>All that was lost that way.</summary>
    public Wort Lost(Loss loss) => _record.Outcome.Trace.Lost(loss);

    /// <summary>Points by which solids that have not settled lift the gravity.</summary>
    public double SolidsLift(Stage stage) => 1000 * (Suspension.Gravity(At(stage), At(stage).Litres, draw) - At(stage).Gravity);
}
