using Gylebook.Forecast.Stages;
using Gylebook.Forecast.State;

namespace Gylebook.Forecast.Running;

/// <summary>Runs a plan from water to glass. Pure, and without allocation: thousands of draws go through here.</summary>
public static class Run
{
    /// <summary>Runs the plan once.</summary>
    /// <param name="plan">The recipe laid out.</param>
    /// <param name="draw">One number for each of the plan's parameters.</param>
    /// <param name="figures">Receives the readings: portions times <see cref="Figures.Count"/>, cleared first.</param>
    /// <param name="log">Who watches.</param>
    /// <returns>False when the kettle boils dry: the run ends there, and there are no readings.</returns>
    public static bool Through<TLog>(RunPlan plan, ReadOnlySpan<double> draw, Span<double> figures, ref TLog log)
        where TLog : struct, IRunLog
    {
        figures.Clear();
        Span<Portion> portions = stackalloc Portion[plan.PortionCount];
        Span<BoilMark> marks = stackalloc BoilMark[plan.Additions.Length];
        var state = new RunState<TLog>(plan, draw, portions, marks, new Figures(figures), ref log);
        foreach (Step step in plan.Steps)
        {
            state.Take(step);
            if (step.Kind == StepKind.Boil && !(portions[step.To].Wort[Component.Water] > 0))
            {
                log.Reached(Stage.Boil, step.To, portions[step.To]);
                figures.Clear();
                return false;
            }
        }

        return true;
    }
}
