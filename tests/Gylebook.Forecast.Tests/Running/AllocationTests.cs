using System.Diagnostics;
using System.Reflection;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>Thousands of draws go through a run: none of them may leave work for the collector.</summary>
public sealed class AllocationTests
{
    [Fact]
    public void A_thousand_runs_allocate_nothing()
    {
        // Unoptimised code boxes where the optimiser does not; the ensemble is always run optimised.
        Assert.SkipWhen(
            typeof(Run).Assembly.GetCustomAttribute<DebuggableAttribute>()?.IsJITOptimizerDisabled == true,
            "Only an optimised build says anything about allocation.");
        foreach (Tour tour in Tours.All)
        {
            RunTrace trace = new(tour.Plan);
            ReadoutTable readouts = new(tour.Plan);
            double[] told = new double[readouts.All.Count];
            RunMany(tour, trace, readouts, told, 100);
            long before = GC.GetAllocatedBytesForCurrentThread();
            RunMany(tour, trace, readouts, told, 1000);
            Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        }
    }

    /// <summary>Readouts are read in the hot loop too: all that there are.</summary>
    private static void RunMany(Tour tour, RunTrace trace, ReadoutTable readouts, double[] told, int times)
    {
        for (int i = 0; i < times; i++)
        {
            Run.Through(tour.Plan, tour.Draw, trace);
            readouts.Read(new RunView(tour.Plan, tour.Draw, trace), told);
        }
    }
}
