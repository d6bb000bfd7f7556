using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;
using Gylebook.Forecast.Telling;

namespace Gylebook.Forecast.Tests;

/// <summary>A plan run once, with everything that was logged and read.</summary>
internal sealed class OneRun
{
    private readonly double[] _figures;
    private readonly int[] _packaged;

    public OneRun(RunPlan plan, double[]? draw = null)
    {
        _figures = new double[plan.PortionCount * Figures.Count];
        _packaged = plan.Packaged;
        FullLog log = new(Record);
        Run.Through(plan, draw ?? plan.Medians, _figures, ref log);
        Ledger = Ledger.Of(Record);
        Headline = new HeadlineFigures(_packaged, _figures);
    }

    public RunRecord Record { get; } = new();

    public Ledger Ledger { get; }

    public HeadlineFigures Headline { get; }

    public IReadOnlyList<double> Readings => _figures;

    /// <summary>A figure of the first packaged portion.</summary>
    public double this[Figure figure] => Headline.Of(_packaged[0], figure);

    /// <summary>The wort as a stage left it, the last time it was reached.</summary>
    public Wort At(Stage stage) => Record.Stages.Last(s => s.Stage == stage).State.Wort;

    /// <summary>Whether every stage left amounts that can be.</summary>
    public bool IsSound => Record.Stages.All(s => s.State.Wort.IsSound);

    /// <summary>Runs what was laid out; says why when there is nothing to run.</summary>
    public static OneRun Of(LaidOut laidOut)
    {
        Assert.True(laidOut.Plan is not null, string.Join('\n', laidOut.Findings.Select(f => f.Message)));
        return new OneRun(laidOut.Plan);
    }
}
