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

    /// <summary>A tenth of a milligram of priming sugar moves the package by less than the litres above.</summary>
    private const double KilogramsClose = 1e-7;
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
            return PrimeOnly(plan, figures, primeTo);
        }

        double most = MostPackages * wishedLitres;
        double before = 0;
        double beforePackaged = double.NaN;
        double liquor = Math.Clamp(firstGuessLitres, 0, most);
        for (int run = 1; ; run++)
        {
            plan.Liquors[unknown] = liquor * Wort.WaterKilogramsPerLitre;
            double packaged = Packaged(plan, figures, primeTo, out bool settled);
            if (settled && Math.Abs(packaged - wishedLitres) <= LitresClose)
            {
                return new PlanOutcome(true, run, packaged, liquor, null);
            }

            double next = Next(before, beforePackaged, liquor, packaged, wishedLitres, most);
            if (run == MostRuns || (next == liquor && settled))
            {
                return new PlanOutcome(false, run, packaged, liquor, Binding(packaged, wishedLitres, next, most));
            }

            (before, beforePackaged, liquor) = (liquor, packaged, next);
        }
    }

    /// <summary>The brewer has fixed the liquor: only the priming is to be found.</summary>
    private static PlanOutcome PrimeOnly(RunPlan plan, double[] figures, double primeTo)
    {
        for (int run = 1; ; run++)
        {
            double packaged = Packaged(plan, figures, primeTo, out bool settled);
            if (settled || run == MostRuns)
            {
                bool solved = settled && packaged > 0;
                return new PlanOutcome(solved, run, packaged, Litres(plan, 0), solved ? null : Binding(packaged, double.PositiveInfinity, 1, double.PositiveInfinity));
            }
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

    /// <summary>Runs once, and moves each portion's priming to where its carbonation is met, unless it is there already.</summary>
    /// <returns>Litres packaged; not a number when somewhere more leaves than there is.</returns>
    private static double Packaged(RunPlan plan, double[] figures, double primeTo, out bool settled)
    {
        settled = true;
        SoundLog log = default;
        Run.Through(plan, plan.Medians, figures, ref log);
        if (log.Broken is not null)
        {
            return double.NaN;
        }

        double litres = 0;
        for (int row = 0; row < plan.Packages.Length; row++)
        {
            Figures read = new(figures);
            int portion = plan.Packaged[row];
            double packaged = read[portion, Figure.PackagedLitres];
            litres += packaged;
            if (primeTo > 0 && packaged > 0 && plan.Ferments[row].HasYeast)
            {
                double missing = primeTo - read[portion, Figure.CarbonationVolumes];
                double sugar = missing * Carbonation.GramsPerLitreInOneVolume / 1000 * packaged / GasPerSugar(plan);
                double priming = Math.Max(0, plan.Packages[row].Priming + sugar);
                if (Math.Abs(priming - plan.Packages[row].Priming) > KilogramsClose)
                {
                    plan.Packages[row].Priming = priming;
                    settled = false;
                }
            }
        }

        return litres;
    }

    private static double GasPerSugar(RunPlan plan) =>
        plan.Reactions.Conditioning[0].Terms.Single(t => t.Component == Component.CarbonDioxide).PerKilogram;

    private static double Litres(RunPlan plan, int row) => plan.Liquors[row] / Wort.WaterKilogramsPerLitre;

    private static string Binding(double packaged, double wished, double next, double most) =>
        packaged <= 0 ? "nothing is left to package"
        : next <= 0 ? "even without this liquor more than the wish is packaged"
        : next >= most ? $"even {MostPackages:0} times the package in liquor does not fill it"
        : double.IsNaN(packaged) ? "somewhere more leaves than there is: look at evaporation, boil time and volumes"
        : packaged < wished ? "the plan did not settle; too much is lost on the way"
        : "the plan did not settle";
}
