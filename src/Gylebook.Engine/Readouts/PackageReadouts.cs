using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Science.Conditioning;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;

namespace Gylebook.Engine.Readouts;

/// <summary>Gas in the package, and the yeast that is pitched.</summary>
public static class PackageReadouts
{
    private const double Billion = 1e9;

    /// <summary>What the regulator reads to keep the gas in, bar above the air.</summary>
    public static Readout GaugeBar { get; } = new(
        "gaugeBar", "pressure on the gauge", "bar", 2, new(Stage.Package),
        static (in run) => run.Plan.Surroundings?.Keg is { } keg ? KegPressure.GaugeBar(BeerReadouts.CarbonationVolumes.Of(run), keg.Celsius, keg.AirBar) : double.NaN);

    /// <summary>Priming sugar that was planned, g.</summary>
    public static Readout PrimingGrams { get; } = new(
        "primingGrams", "priming sugar", "g", 0, new(Stage.Package), static (in run) => PrimingOf(run.Plan));

    /// <summary>Cells wanted, billions.</summary>
    public static Readout CellsNeeded { get; } = new(
        "cellsNeeded", "cells wanted", "billion", 0, new(Stage.Cast), static (in run) => CellsNeededOf(run));

    /// <summary>Living cells pitched by the harsher of two rules of ageing, billions.</summary>
    public static Readout CellsLow { get; } = new(
        "cellsLow", "living cells, harsher rule", "billion", 0, new(Stage.Cast), static (in run) => CellsOf(run, static yeast => yeast.ViableLow));

    /// <summary>Living cells pitched by the milder, billions.</summary>
    public static Readout CellsHigh { get; } = new(
        "cellsHigh", "living cells, milder rule", "billion", 0, new(Stage.Cast), static (in run) => CellsOf(run, static yeast => yeast.ViableHigh));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Readout> All { get; } = [GaugeBar, PrimingGrams, CellsNeeded, CellsLow, CellsHigh];

    private static double PrimingOf(RunPlan plan)
    {
        double kilograms = 0;
        foreach (Stages.PackageStep package in plan.Packages)
        {
            kilograms += package.Priming;
        }

        return 1000 * kilograms;
    }

    private static double CellsNeededOf(in RunView run)
    {
        if (run.Plan.Surroundings?.Pitch is not { } pitch)
        {
            return double.NaN;
        }

        return PitchRate.BillionCells(pitch.Rate, run.Litres(Stage.Cast), SucroseSolution.PlatoAt(run.Gravity(Stage.Cast)));
    }

    private static double CellsOf(in RunView run, Func<PitchedYeast, double> viable)
    {
        if (run.Plan.Surroundings?.Pitch is not { } pitch)
        {
            return double.NaN;
        }

        double sum = 0;
        foreach (PitchedYeast yeast in pitch.Yeasts)
        {
            double fresh = yeast.CellsPerUnit is Known cells ? yeast.Amount * run.Draw[cells] / Billion : yeast.Billions ?? double.NaN;
            sum += fresh * viable(yeast);
        }

        return sum;
    }
}
