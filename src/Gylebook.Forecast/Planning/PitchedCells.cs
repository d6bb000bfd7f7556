using Gylebook.Engine.Readouts;

namespace Gylebook.Forecast.Planning;

/// <summary>Living cells pitched against those wanted.</summary>
internal static class PitchedCells
{
    /// <summary>Cells for each that is wanted, in the middle of the two rules of ageing; no number where nobody knows.</summary>
    public static double ShareOf(RunOutcome run) => (run[PackageReadouts.CellsLow] + run[PackageReadouts.CellsHigh]) / 2 / run[PackageReadouts.CellsNeeded];
}
