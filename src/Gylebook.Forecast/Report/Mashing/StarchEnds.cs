using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;

namespace Gylebook.Forecast.Report.Mashing;

/// <summary>The same brew at the ends of what its mash may convert, where nothing in print says how much it is.</summary>
internal static class StarchEnds
{
    /// <summary>The other ends; none where the likely run is all there is to tell.</summary>
    public static IEnumerable<RunOutcome> Of(BrewPlan brew, RunOutcome run)
    {
        List<RunOutcome?> ends = [];
        if (MashCautions.ConversionIsABound(brew))
        {
            ends.Add(With(run, Known.Conversion, 0));
        }

        if (brew.Plan!.Makeups.Any(made => made is MaltMakeup { Opening: { IsBetween: true } }))
        {
            ends.AddRange([With(run, Known.RawGrainOpens, 0), With(run, Known.RawGrainOpens, 1)]);
        }

        return ends.OfType<RunOutcome>();
    }

    /// <summary>The brew with one parameter elsewhere; null when it cannot be run.</summary>
    private static RunOutcome? With(RunOutcome run, Known parameter, double value)
    {
        double[] draw = [.. run.Draw];
        draw[(int)parameter] = value;
        return RunOutcome.At(run.Plan, draw) is { Trace.IsWhole: true } moved ? moved : null;
    }
}
