using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>A trace is written over, by the next run and by runs of another plan: nothing of the one before may be read.</summary>
public sealed class RunTraceTests
{
    [Fact]
    public void A_trace_laid_out_for_another_plan_is_as_good_as_a_new_one()
    {
        RunTrace used = new(Tours.All[0].Plan);
        foreach (Tour tour in Tours.All.Reverse())
        {
            used.LayOut(tour.Plan);
            Assert.Equal(Told(tour, new RunTrace(tour.Plan)), Told(tour, used));
        }
    }

    [Fact]
    public void A_run_once_more_is_the_run_itself()
    {
        foreach (Tour tour in Tours.All)
        {
            RunTrace once = new(tour.Plan), again = new(tour.Plan);
            double[] told = Told(tour, once);
            Run.Through(tour.Plan, tour.Draw, again);
            TraceLog log = new(again);
            Run.Again(tour.Plan, tour.Draw, again, ref log);
            Assert.Equal(told, Read(tour, again));
        }
    }

    private static double[] Told(Tour tour, RunTrace trace)
    {
        Run.Through(tour.Plan, tour.Draw, trace);
        return Read(tour, trace);
    }

    private static double[] Read(Tour tour, RunTrace trace)
    {
        ReadoutTable readouts = new(tour.Plan);
        double[] told = new double[readouts.All.Count];
        readouts.Read(new RunView(tour.Plan, tour.Draw, trace), told);
        return told;
    }
}
