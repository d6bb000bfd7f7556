using Gylebook.Engine.Readouts;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>How far a brew lands from its plan, in what the models leave open anyway.</summary>
/// <remarks>
/// Source: model errors and widths of <c>docs/science/uncertainty.md</c>: 0.8 points before fermentation and 1 after it, 0.3 L, 15 % of the
/// bitterness, 0.08 of the mash's pH, 30 % of the cells of a gram of yeast. Gas, a tenth of a volume, is judged.
/// </remarks>
internal static class FromPlan
{
    private const double OpenPoints = 0.0008, OpenFinalPoints = 0.001, OpenLitres = 0.3, OpenBitterness = 0.15, OpenMashPh = 0.08, OpenCells = 0.3, OpenVolumes = 0.1;

    /// <summary>Root of the sum of squares over all that both can tell.</summary>
    public static double Off(RunOutcome plan, RunOutcome run)
    {
        ReadOnlySpan<double> off =
        [
            Apart(BeerReadouts.OriginalGravity, OpenPoints), Apart(BeerReadouts.FinalGravity, OpenFinalPoints), Apart(BeerReadouts.PackagedLitres, OpenLitres),
            Apart(BeerReadouts.CarbonationVolumes, OpenVolumes), Apart(PhReadouts.MashPh, OpenMashPh),
            plan[BeerReadouts.Bitterness] > 1 ? Math.Log(run[BeerReadouts.Bitterness] / plan[BeerReadouts.Bitterness]) / OpenBitterness : 0,
            Math.Log(CellsOf(run) / CellsOf(plan)) / OpenCells,
        ];
        double sum = 0;
        foreach (double one in off)
        {
            sum += double.IsFinite(one) ? one * one : 0;
        }

        return Math.Sqrt(sum);

        double Apart(Readout readout, double open) => (run[readout] - plan[readout]) / open;
    }

    /// <summary>Cells pitched for each that is wanted, in the middle of the two rules of ageing; no number where nobody knows.</summary>
    public static double CellsOf(RunOutcome run) => (run[PackageReadouts.CellsLow] + run[PackageReadouts.CellsHigh]) / 2 / run[PackageReadouts.CellsNeeded];
}
