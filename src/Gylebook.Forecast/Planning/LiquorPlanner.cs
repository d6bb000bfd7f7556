using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Planning;

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

    /// <summary>Litres that a kilogram of sugar adds to beer; only the speed of the search hangs on it.</summary>
    private const double LitresOfSugar = 0.616;
    private const double MostPackages = 10;

    /// <summary>Finds the liquor that packages what is wished, and the priming that carbonates it.</summary>
    /// <param name="plan">The plan; its liquor and priming rows are filled in.</param>
    /// <param name="trace">Made for it; the last run is left in it.</param>
    /// <param name="unknown">Row of the liquor to find; below 0 when the brewer has fixed it.</param>
    /// <param name="wishedLitres">Litres at 20 °C to package.</param>
    /// <param name="firstGuessLitres">Where to start.</param>
    /// <param name="primeTo">Volumes of gas to reach with sugar; 0 for none.</param>
    public static PlanOutcome Solve(RunPlan plan, RunTrace trace, int unknown, double wishedLitres, double firstGuessLitres, double primeTo)
    {
        if (unknown < 0)
        {
            return PrimeOnly(plan, trace, primeTo);
        }

        double most = MostPackages * wishedLitres;
        double before = 0;
        Trial last = new(double.NaN, double.NaN, 0, false);
        double liquor = Math.Clamp(firstGuessLitres, 0, most);
        for (int run = 1; ; run++)
        {
            plan.Liquors[unknown] = liquor * Wort.WaterKilogramsPerLitre;
            Trial trial = Try(plan, trace, run > 1, primeTo, wishedLitres);
            if (trial.Settled && Math.Abs(trial.Litres - wishedLitres) <= LitresClose)
            {
                return new PlanOutcome(true, run, trial.Litres, liquor, null);
            }

            double next = Next(before, last, liquor, trial, wishedLitres, most);
            if (run == MostRuns || (next == liquor && trial.Settled))
            {
                return new PlanOutcome(false, run, trial.Litres, liquor, Binding(trial.Litres, wishedLitres, next, most));
            }

            (before, last, liquor) = (liquor, trial, next);
        }
    }

    /// <summary>The brewer has fixed the liquor: only the priming is to be found.</summary>
    private static PlanOutcome PrimeOnly(RunPlan plan, RunTrace trace, double primeTo)
    {
        for (int run = 1; ; run++)
        {
            Trial trial = Try(plan, trace, run > 1, primeTo, null);
            if (trial.Settled || run == MostRuns)
            {
                bool solved = trial.Settled && trial.Litres > 0;
                string? binding = solved ? null : Binding(trial.Litres, 0, 1, double.PositiveInfinity);
                return new PlanOutcome(solved, run, trial.Litres, Litres(plan, 0), binding);
            }
        }
    }

    /// <summary>One secant step within the bounds; where nothing came out at all, further up by what was wished.</summary>
    /// <remarks>Priming is known beforehand, so the secant is drawn through what the liquor alone packages.</remarks>
    private static double Next(double before, in Trial last, double liquor, in Trial trial, double wished, double most)
    {
        if (!(trial.Litres > 0))
        {
            return Math.Min(liquor + wished, most);
        }

        double slope = (trial.Unprimed - last.Unprimed) / (liquor - before);
        double missing = wished - (LitresOfSugar * trial.PrimingWanted) - trial.Unprimed;
        double step = missing / (slope > 0.2 && slope < 5 ? slope : 1);
        return Math.Clamp(liquor + step, 0, most);
    }

    /// <summary>Runs once, and moves each portion's priming to where its carbonation is met, unless it is there already.</summary>
    private static Trial Try(RunPlan plan, RunTrace trace, bool again, double primeTo, double? wishedLitres)
    {
        SoundLog log = new(trace);
        bool isWhole = again ? Run.Again(plan, plan.Medians, trace, ref log) : Run.Through(plan, plan.Medians, trace, ref log);
        if (!isWhole || log.Broken is not null)
        {
            return new Trial(double.NaN, double.NaN, 0, true);
        }

        RunView run = new(plan, plan.Medians, trace);
        double litres = BeerReadouts.PackagedLitres.Of(run);

        double unprimed = litres;
        double wanted = 0;
        bool settled = true;
        double grows = wishedLitres is double wish && litres > 0 ? wish / litres : 1;
        for (int row = 0; row < plan.Packages.Length; row++)
        {
            unprimed -= LitresOfSugar * plan.Packages[row].Priming;
            settled &= !MovePriming(run, row, primeTo, grows);
            wanted += plan.Packages[row].Priming;
        }

        return new Trial(litres, unprimed, wanted, settled);
    }

    /// <summary>Sets a portion's priming to what its package will want once it has grown.</summary>
    /// <returns>Whether it moved.</returns>
    private static bool MovePriming(in RunView run, int row, double primeTo, double grows)
    {
        RunPlan plan = run.Plan;
        int portion = plan.Packaged[row];
        double packaged = run.Wort(Stage.Package, portion).Litres;
        if (primeTo <= 0 || !(packaged > 0) || !plan.Ferments[row].HasYeast)
        {
            return false;
        }

        double missing = primeTo - BeerReadouts.CarbonationOf(run, portion);
        double sugar = missing * Carbonation.GramsPerLitreInOneVolume / 1000 * packaged / GasPerSugar(plan);
        double priming = Math.Max(0, (plan.Packages[row].Priming + sugar) * grows);
        if (Math.Abs(priming - plan.Packages[row].Priming) <= KilogramsClose)
        {
            return false;
        }

        plan.Packages[row].Priming = priming;
        return true;
    }

    private static double GasPerSugar(RunPlan plan) =>
        Array.Find(plan.Reactions.Conditioning[0].Terms, t => t.Component == Component.CarbonDioxide).PerKilogram;

    private static double Litres(RunPlan plan, int row) => plan.Liquors[row] / Wort.WaterKilogramsPerLitre;

    private static string Binding(double packaged, double wished, double next, double most) =>
        next >= most ? Invariant($"even {MostPackages:0} times the package in liquor does not fill it")
        : packaged <= 0 ? "nothing is left to package"
        : next <= 0 ? "even without this liquor more than the wish is packaged"
        : double.IsNaN(packaged) ? "somewhere more leaves than there is: look at evaporation, boil time and volumes"
        : packaged < wished ? "the plan did not settle; too much is lost on the way"
        : "the plan did not settle";

    /// <summary>What a run of the search gave.</summary>
    /// <param name="Litres">Packaged; not a number when somewhere more leaves than there is.</param>
    /// <param name="Unprimed">The same without the priming that went in.</param>
    /// <param name="PrimingWanted">Priming to go in next, kg.</param>
    /// <param name="Settled">Whether that is the priming that went in.</param>
    private readonly record struct Trial(double Litres, double Unprimed, double PrimingWanted, bool Settled);
}

/// <summary>The log that asks besides whether every stage leaves amounts that can be.</summary>
/// <param name="trace">Where what can be read of the run goes.</param>
internal struct SoundLog(RunTrace trace) : IRunLog
{
    private readonly TraceLog _kept = new(trace);

    /// <summary>The first stage that left less than nothing, or no number; null when all are sound.</summary>
    public Stage? Broken { get; private set; }

    /// <inheritdoc/>
    public readonly void Added(Stage stage, int portion, in Wort added) => _kept.Added(stage, portion, added);

    /// <inheritdoc/>
    public readonly void Lost(Stage stage, int portion, Loss what, in Wort lost) => _kept.Lost(stage, portion, what, lost);

    /// <inheritdoc/>
    public void Reached(Stage stage, int portion, in Portion state)
    {
        _kept.Reached(stage, portion, state);
        if (Broken is null && !state.Wort.IsSound)
        {
            Broken = stage;
        }
    }

    /// <inheritdoc/>
    public readonly void Bittered(int addition, double milligrams) => _kept.Bittered(addition, milligrams);
}
