using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>How planning backwards went.</summary>
/// <param name="Solved">Whether the package comes out as wished.</param>
/// <param name="Runs">How many runs it took.</param>
/// <param name="PackagedLitres">What the last run packaged.</param>
/// <param name="LiquorLitres">The planned liquor, litres at 20 °C.</param>
/// <param name="Binding">When it failed: the limit that binds.</param>
public readonly record struct PlanOutcome(bool Solved, int Runs, double PackagedLitres, double LiquorLitres, string? Binding);

/// <summary>Plans liquor backwards from the wished package: a bounded secant on the run itself, at the median parameters.</summary>
public static class LiquorPlanner
{
    private const int MostRuns = 8;
    private const double LitresClose = 1e-6;
    private const double MostPackages = 10;

    /// <summary>Finds the liquor that packages what is wished, and the priming that carbonates it.</summary>
    /// <param name="plan">The plan; its liquor and priming rows are filled in.</param>
    /// <param name="unknown">Row of the liquor to find; below 0 when the brewer has fixed it.</param>
    /// <param name="wishedLitres">Litres at 20 °C to package.</param>
    /// <param name="firstGuessLitres">Where to start.</param>
    /// <param name="primeTo">Volumes of gas to reach with sugar; 0 for none.</param>
    public static PlanOutcome Solve(RunPlan plan, int unknown, double wishedLitres, double firstGuessLitres, double primeTo)
    {
        double[] figures = new double[plan.PortionCount * Figures.Count];
        if (unknown < 0)
        {
            double fixedLitres = 0;
            for (int i = 0; i < 3; i++)
            {
                fixedLitres = Packaged(plan, figures, primeTo);
            }

            return new PlanOutcome(fixedLitres > 0, 3, fixedLitres, Litres(plan, 0), fixedLitres > 0 ? null : "nothing is left to package");
        }

        double most = MostPackages * wishedLitres;
        double before = 0;
        double beforePackaged = double.NaN;
        double liquor = Math.Clamp(firstGuessLitres, 0, most);
        for (int run = 1; ; run++)
        {
            plan.Liquors[unknown] = liquor * Wort.WaterKilogramsPerLitre;
            double packaged = Packaged(plan, figures, primeTo);
            if (Math.Abs(packaged - wishedLitres) <= LitresClose)
            {
                return new PlanOutcome(true, run, packaged, liquor, null);
            }

            double next = Next(before, beforePackaged, liquor, packaged, wishedLitres, most);
            if (run == MostRuns || next == liquor)
            {
                return new PlanOutcome(false, run, packaged, liquor, Binding(packaged, wishedLitres, next, most));
            }

            (before, beforePackaged, liquor) = (liquor, packaged, next);
        }
    }

    /// <summary>One secant step within the bounds; where nothing came out at all, further up by what was wished.</summary>
    private static double Next(double before, double beforePackaged, double liquor, double packaged, double wished, double most)
    {
        if (!(packaged > 0))
        {
            return Math.Min(liquor + wished, most);
        }

        double slope = (packaged - beforePackaged) / (liquor - before);
        double step = (wished - packaged) / (slope > 0.2 && slope < 5 ? slope : 1);
        return Math.Clamp(liquor + step, 0, most);
    }

    /// <summary>Runs once, and moves each portion's priming to where its carbonation is met.</summary>
    private static double Packaged(RunPlan plan, double[] figures, double primeTo)
    {
        NoLog log = default;
        Run.Through(plan, plan.Medians, figures, ref log);
        double litres = 0;
        for (int row = 0; row < plan.Packages.Length; row++)
        {
            Figures read = new(figures);
            int portion = plan.Packaged[row];
            double packaged = read[portion, Figure.PackagedLitres];
            litres += packaged;
            if (primeTo > 0 && packaged > 0)
            {
                double missing = primeTo - read[portion, Figure.CarbonationVolumes];
                double sugar = missing * Carbonation.GramsPerLitreInOneVolume / 1000 * packaged / GasPerSugar(plan);
                plan.Packages[row].Priming = Math.Max(0, plan.Packages[row].Priming + sugar);
            }
        }

        return litres;
    }

    private static double GasPerSugar(RunPlan plan) =>
        plan.Reactions.Conditioning[0].Terms.Single(t => t.Component == Component.CarbonDioxide).PerKilogram;

    private static double Litres(RunPlan plan, int row) => plan.Liquors[row] / Wort.WaterKilogramsPerLitre;

    private static string Binding(double packaged, double wished, double next, double most) =>
        next <= 0 ? "even without this liquor more than the wish is packaged"
        : next >= most ? $"even {MostPackages:0} times the package in liquor does not fill it"
        : double.IsFinite(packaged) && packaged < wished ? "the plan did not settle; too much is lost on the way"
        : "the plan did not settle";
}
