using System.Diagnostics;
using System.Reflection;
using Gylebook.Forecast.Running;

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
            double[] figures = new double[tour.Plan.PortionCount * Figures.Count];
            NoLog log = default;
            RunMany(tour, figures, ref log, 100);
            long before = GC.GetAllocatedBytesForCurrentThread();
            RunMany(tour, figures, ref log, 1000);
            Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        }
    }

    private static void RunMany(Tour tour, double[] figures, ref NoLog log, int times)
    {
        for (int i = 0; i < times; i++)
        {
            Run.Through(tour.Plan, tour.Draw, figures, ref log);
        }
    }
}
