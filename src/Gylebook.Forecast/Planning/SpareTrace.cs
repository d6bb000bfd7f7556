using Gylebook.Engine.Running;

namespace Gylebook.Forecast.Planning;

/// <summary>A trace for runs that are read and then forgotten: lent to one borrower at a time, so that a key needs no new one.</summary>
/// <remarks>Any number of threads may ask; whoever finds it lent gets a new one. Nobody may read a trace that he has given back.</remarks>
internal static class SpareTrace
{
    private static RunTrace? Kept;

    /// <summary>A trace for runs of a plan.</summary>
    public static RunTrace For(RunPlan plan)
    {
        if (Interlocked.Exchange(ref Kept, null) is not { } spare)
        {
            return new RunTrace(plan);
        }

        spare.LayOut(plan);
        return spare;
    }

    /// <summary>Gives it back.</summary>
    public static void GiveBack(RunTrace trace) => Interlocked.Exchange(ref Kept, trace);
}
