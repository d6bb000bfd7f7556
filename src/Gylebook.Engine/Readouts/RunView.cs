using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Readouts;

/// <summary>All that a readout may look at: the plan, the draw, and what the run left.</summary>
public readonly ref struct RunView
{
    /// <summary>A run seen.</summary>
    public RunView(RunPlan plan, Draw draw, RunTrace trace)
    {
        Plan = plan;
        Draw = draw;
        Trace = trace;
    }

    /// <summary>The plan that was run.</summary>
    public RunPlan Plan { get; }

    /// <summary>The draw it was run with.</summary>
    public Draw Draw { get; }

    /// <summary>What it left.</summary>
    public RunTrace Trace { get; }

    /// <summary>The wort as a stage left it.</summary>
    public ref readonly Wort Wort(Stage stage, int portion = 0) => ref Trace.Wort(stage, portion);

    /// <summary>Litres of it at 20 °C.</summary>
    public double Litres(Stage stage, int portion = 0) => Trace.Litres(stage, portion);

    /// <summary>Gravity of it.</summary>
    public double Gravity(Stage stage, int portion = 0) => Trace.Gravity(stage, portion);

    /// <summary>A number summed over the portions that are packaged.</summary>
    public double Sum(PortionReadoutOf of)
    {
        double sum = 0;
        foreach (int portion in Plan.Packaged)
        {
            sum += of(this, portion);
        }

        return sum;
    }

    /// <summary>The largest over the portions that are packaged.</summary>
    public double Most(PortionReadoutOf of)
    {
        double most = double.NegativeInfinity;
        foreach (int portion in Plan.Packaged)
        {
            most = Math.Max(most, of(this, portion));
        }

        return most;
    }

    /// <summary>A number of the whole gyle: its portions' mean by packaged litres.</summary>
    public double Mean(PortionReadoutOf of)
    {
        double litres = 0, sum = 0;
        foreach (int portion in Plan.Packaged)
        {
            double its = Litres(Stage.Package, portion);
            litres += its;
            sum += of(this, portion) * its;
        }

        return sum / litres;
    }
}

/// <summary>A run that was made, kept to be read as often as one likes.</summary>
/// <param name="plan">The plan.</param>
/// <param name="draw">The draw.</param>
/// <param name="trace">What the run left.</param>
public sealed class RunOutcome(RunPlan plan, double[] draw, RunTrace trace)
{
    /// <summary>The plan that was run.</summary>
    public RunPlan Plan => plan;

    /// <summary>The draw it was run with.</summary>
    public double[] Draw => draw;

    /// <summary>What it left.</summary>
    public RunTrace Trace => trace;

    /// <summary>The run as a readout sees it.</summary>
    public RunView View => new(plan, draw, trace);

    /// <summary>One number of it.</summary>
    public double this[Readout readout] => readout.Of(View);

    /// <summary>One number of it; null where it cannot be known.</summary>
    public double? Known(Readout readout) => this[readout] is var value && double.IsNaN(value) ? null : value;

    /// <summary>The plan run at its medians.</summary>
    public static RunOutcome Likely(RunPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return At(plan, plan.Medians);
    }

    /// <summary>The plan run at a draw; whether it came to its end, the trace says.</summary>
    public static RunOutcome At(RunPlan plan, double[] draw)
    {
        RunTrace trace = new(plan);
        Run.Through(plan, draw, trace);
        return new RunOutcome(plan, draw, trace);
    }
}
