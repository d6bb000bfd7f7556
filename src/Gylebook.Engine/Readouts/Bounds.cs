using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;

namespace Gylebook.Engine.Readouts;

/// <summary>Ends of a number when some parameters may stand at either of two ends, and the run stays as it is: the one way to a bound.</summary>
/// <remarks>Only for readouts whose parameters move nothing in the run itself; everything else is drawn.</remarks>
public sealed class Bounds
{
    private readonly List<((int Place, double Value)[] Low, (int Place, double Value)[] High)> _ends = [];

    /// <summary>A parameter that may stand at either end.</summary>
    public Bounds Between(Known parameter, (double Low, double High) ends) => Tied([(parameter, ends.Low)], [(parameter, ends.High)]);

    /// <summary>Parameters that stand at their low ends together, or at their high ends together.</summary>
    public Bounds Tied(IEnumerable<(Known Parameter, double Value)> low, IEnumerable<(Known Parameter, double Value)> high)
    {
        _ends.Add(([.. low.Select(end => ((int)end.Parameter, end.Value))], [.. high.Select(end => ((int)end.Parameter, end.Value))]));
        return this;
    }

    /// <summary>The same, and one of the plan's own besides.</summary>
    public Bounds Tied(Slot own, double ownLow, double ownHigh, IEnumerable<(Known Parameter, double Value)> low, IEnumerable<(Known Parameter, double Value)> high)
    {
        Tied(low, high);
        (var below, var above) = _ends[^1];
        _ends[^1] = ([.. below, (own.Index, ownLow)], [.. above, (own.Index, ownHigh)]);
        return this;
    }

    /// <summary>The least and the most over all corners; not numbers when one of them is none.</summary>
    public (double Low, double High) Of(RunOutcome run, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(run);
        return Over(run.Plan, [.. run.Draw], run.Trace, readout);
    }

    /// <summary>The same of a draw that is the asker's own: it is written over.</summary>
    public (double Low, double High) Over(RunPlan plan, double[] draw, RunTrace trace, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(draw);
        ArgumentNullException.ThrowIfNull(readout);
        (double low, double high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int corner = 0; corner < 1 << _ends.Count; corner++)
        {
            for (int i = 0; i < _ends.Count; i++)
            {
                foreach ((int place, double value) in (corner & (1 << i)) == 0 ? _ends[i].Low : _ends[i].High)
                {
                    draw[place] = value;
                }
            }

            double told = readout.Of(new RunView(plan, draw, trace));
            (low, high) = (Math.Min(low, told), Math.Max(high, told));
        }

        return (low, high);
    }
}
