using Gylebook.Forecast.Running;
using Gylebook.Forecast.Stages;
using Gylebook.Forecast.State;
using Gylebook.Forecast.Telling;

namespace Gylebook.Forecast.Dosing;

/// <summary>A plain brew run once at the medians, with all that happened.</summary>
internal sealed class TrialRun
{
    private readonly RunPlan _plan;
    private readonly double[] _figures;
    private readonly RunRecord _record = new();

    public TrialRun(RunPlan plan)
    {
        _plan = plan;
        _figures = new double[plan.PortionCount * Figures.Count];
        FullLog log = new(_record);
        Run.Through(plan, plan.Medians, _figures, ref log);
    }

    public double this[Figure figure] => new Figures(_figures)[_plan.Packaged[0], figure];

    /// <summary>What a stage left, the last time it was reached; nothing when it never was.</summary>
    public Wort At(Stage stage) => _record.At(stage);

    /// <summary>All that was lost that way.</summary>
    public Wort Lost(Loss loss)
    {
        Wort sum = default;
        foreach (Movement movement in _record.Losses.Where(movement => movement.Loss == loss))
        {
            sum.Add(movement.What);
        }

        return sum;
    }

    /// <summary>Points by which solids that have not settled lift the gravity.</summary>
    public double SolidsLift(Stage stage) => 1000 * (Suspension.Gravity(At(stage), _plan.Medians) - At(stage).Gravity);
}
