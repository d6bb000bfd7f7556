using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Records;

namespace Gylebook.Forecast.Tests;

/// <summary>A plan run once, with everything that was logged and read.</summary>
internal sealed class OneRun
{
    private readonly RunPlan _plan;

    public OneRun(RunPlan plan, double[]? draw = null)
    {
        _plan = plan;
        Record = RunRecord.Of(plan, draw ?? plan.Medians);
        Ledger = Ledger.Of(Record);
    }

    public RunRecord Record { get; }

    public Ledger Ledger { get; }

    /// <summary>The beer as a whole.</summary>
    public RunOutcome Beer => Record.Outcome;

    /// <summary>Everything that can be told of every portion.</summary>
    public IReadOnlyList<double> Readings => [.. _plan.Packaged.SelectMany(portion => BeerReadouts.All.Select(readout => Of(portion, readout)))];

    /// <summary>A number of the first packaged portion.</summary>
    public double this[Readout readout] => Of(_plan.Packaged[0], readout);

    /// <summary>A number of one portion, as if there were no other.</summary>
    public double Of(int portion, Readout readout)
    {
        int row = _plan.RowOf(portion);
        RunPlan alone = _plan with { Packaged = [portion], Ferments = [_plan.Ferments[row]], Packages = [_plan.Packages[row]] };
        return readout.Of(new RunView(alone, Beer.Draw, Beer.Trace));
    }

    /// <summary>The wort as a stage left it, the last time it was reached.</summary>
    public Wort At(Stage stage) => Record.Stages.Last(s => s.Stage == stage).Wort;

    /// <summary>Whether every stage left amounts that can be.</summary>
    public bool IsSound => Record.Stages.All(s => s.Wort.IsSound);

    /// <summary>Runs what was laid out; says why when there is nothing to run.</summary>
    public static OneRun Of(BrewPlan brew)
    {
        Assert.True(brew.Plan is not null, string.Join('\n', brew.Findings.Select(f => f.Message)));
        return new OneRun(brew.Plan);
    }
}
