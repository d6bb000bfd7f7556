using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>How far a brew lands from its plan, each number in what the models leave open of it anyway; 0 where nobody knows one of the two.</summary>
/// <remarks>
/// Source: model errors and widths of <c>docs/science/uncertainty.md</c>: 0.8 points before fermentation and 1 after it, 0.3 L, 15 % of the
/// bitterness, 0.08 of the mash's pH, 30 % of the cells of a gram of yeast. Gas, a tenth of a volume, is judged.
/// </remarks>
/// <param name="Gravity">Original gravity.</param>
/// <param name="FinalGravity">Final gravity.</param>
/// <param name="Litres">In the package.</param>
/// <param name="Bitterness">Bitterness.</param>
/// <param name="Gas">Carbon dioxide.</param>
/// <param name="MashPh">pH of the mash.</param>
/// <param name="Cells">Cells for each that is wanted.</param>
internal readonly record struct FromPlan(double Gravity, double FinalGravity, double Litres, double Bitterness, double Gas, double MashPh, double Cells)
{
    private const double OpenPoints = 0.0008, OpenFinalPoints = 0.001, OpenLitres = 0.3, OpenBitterness = 0.15, OpenMashPh = 0.08, OpenCells = 0.3, OpenVolumes = 0.1;

    /// <summary>All together: the root of the sum of squares.</summary>
    public double Off => Math.Sqrt(
        (Gravity * Gravity) + (FinalGravity * FinalGravity) + (Litres * Litres) + (Bitterness * Bitterness) + (Gas * Gas) + (MashPh * MashPh) + (Cells * Cells));

    /// <summary>A run held against the plan.</summary>
    public static FromPlan Of(RunOutcome plan, RunOutcome run)
    {
        return new(
            Apart(BeerReadouts.OriginalGravity, OpenPoints), Apart(BeerReadouts.FinalGravity, OpenFinalPoints), Apart(BeerReadouts.PackagedLitres, OpenLitres),
            plan[BeerReadouts.Bitterness] > 1 ? Known(Math.Log(run[BeerReadouts.Bitterness] / plan[BeerReadouts.Bitterness]) / OpenBitterness) : 0,
            Apart(BeerReadouts.CarbonationVolumes, OpenVolumes), Apart(PhReadouts.MashPh, OpenMashPh), Known(Math.Log(PitchedCells.ShareOf(run) / PitchedCells.ShareOf(plan)) / OpenCells));

        double Apart(Readout readout, double open) => Known((run[readout] - plan[readout]) / open);

        static double Known(double off) => double.IsFinite(off) ? off : 0;
    }
}
