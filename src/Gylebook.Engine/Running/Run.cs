using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;

// A wort is hundreds of bytes: clearing those that are about to be written over takes longer than the brewing.
[module: System.Runtime.CompilerServices.SkipLocalsInit]

namespace Gylebook.Engine.Running;

/// <summary>Runs a plan from water to glass: a pure function of a draw. Without allocation, for thousands of draws go through here.</summary>
public static class Run
{
    /// <summary>Runs the plan once, and leaves a trace of it to read.</summary>
    /// <param name="plan">The recipe laid out.</param>
    /// <param name="draw">One number for each of the plan's parameters.</param>
    /// <param name="trace">Made for this plan; written over.</param>
    /// <returns>False when the kettle boils dry: the run ends there, and there is little to read.</returns>
    public static bool Through(RunPlan plan, Draw draw, RunTrace trace)
    {
        TraceLog log = new(trace);
        return Through(plan, draw, trace, ref log);
    }

    /// <summary>Runs the plan once, with somebody watching.</summary>
    /// <param name="plan">The recipe laid out.</param>
    /// <param name="draw">One number for each of the plan's parameters.</param>
    /// <param name="trace">Made for this plan; what goes in is reckoned there, and the log may keep the rest in it.</param>
    /// <param name="log">Who watches.</param>
    /// <returns>False when the kettle boils dry.</returns>
    public static bool Through<TLog>(RunPlan plan, Draw draw, RunTrace trace, ref TLog log)
        where TLog : struct, IRunLog
    {
        trace.ReckonMakeups(plan, draw);
        return Again(plan, draw, trace, ref log);
    }

    /// <summary>Runs the plan once more at the draw of the run before, other liquor or priming in it: what goes in is made up already.</summary>
    /// <inheritdoc cref="Through{TLog}(RunPlan, Draw, RunTrace, ref TLog)"/>
    public static bool Again<TLog>(RunPlan plan, Draw draw, RunTrace trace, ref TLog log)
        where TLog : struct, IRunLog
    {
        trace.Begin();
        Span<Portion> portions = stackalloc Portion[plan.PortionCount];
        portions.Clear();
        Span<BoilMark> marks = stackalloc BoilMark[plan.Additions.Length];
        var state = new RunState<TLog>(plan, draw, trace, portions, marks, ref log);
        foreach (ref readonly Step step in plan.Steps.AsSpan())
        {
            state.Take(step);
            if (step.Move == Move.BoilOff && !(portions[step.To].Wort[Component.Water] > 0))
            {
                log.Reached(Stage.Boil, step.To, portions[step.To]);
                return false;
            }
        }

        trace.IsWhole = true;
        return true;
    }
}
