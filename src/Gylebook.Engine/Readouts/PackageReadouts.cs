using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Science.Conditioning;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Quantities;

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

    /// <summary>Cells wanted for all that is to ferment, whether it went into the kettle or to the yeast, billions.</summary>
    public static Readout CellsNeeded { get; } = new(
        "cellsNeeded", "cells wanted", "billion", 0, new(Stage.Cast), static (in run) => CellsNeededOf(run));

    /// <summary>Living cells pitched by the harsher of two rules of ageing, billions.</summary>
    public static Readout CellsLow { get; } = new(
        "cellsLow", "living cells, harsher rule", "billion", 0, new(Stage.Cast), static (in run) => CellsOf(run, harsher: true));

    /// <summary>Living cells pitched by the milder, billions.</summary>
    public static Readout CellsHigh { get; } = new(
        "cellsHigh", "living cells, milder rule", "billion", 0, new(Stage.Cast), static (in run) => CellsOf(run, harsher: false));

    /// <summary>Volumes of gas that a stray yeast would make of the sugar this one has left, in the portion that has most of it.</summary>
    public static Readout StrayVolumes { get; } = new(
        "strayVolumes", "gas a stray yeast would make", "volumes", 2, new(Stage.Pour), static (in run) => run.Most(static (in r, p) => StrayVolumesOf(r, p)));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Readout> All { get; } = [GaugeBar, PrimingGrams, CellsNeeded, CellsLow, CellsHigh, StrayVolumes];

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

        double cells = 0;
        foreach (int portion in run.Plan.Packaged)
        {
            ref readonly Wort wort = ref run.Trace.Unfermented(portion);
            cells += PitchRate.BillionCells(pitch.Rate, wort.Litres, wort.RealExtractPlato);
        }

        return cells;
    }

    /// <summary>What an ordinary yeast still finds in a glass: all sugars but dextrin, and what the beer's own has refused.</summary>
    private static double StrayVolumesOf(in RunView run, int portion)
    {
        ref readonly Wort beer = ref run.Wort(Stage.Pour, portion);
        double gas = 0;
        foreach (Reaction row in run.Plan.Reactions.Conditioning)
        {
            double sugar = row.Reactant switch
            {
                Component.Dextrin => 0,
                Component.Maltose => beer[Component.Maltose] + beer[Component.UnusedSugar],
                _ => beer[row.Reactant],
            };
            foreach (ReactionTerm term in row.Terms)
            {
                gas += term.Component == Component.CarbonDioxide ? sugar * term.PerKilogram : 0;
            }
        }

        return run.Litres(Stage.Pour, portion) is > 0 and var litres ? 1000 * gas / Carbonation.GramsPerLitreInOneVolume / litres : 0;
    }

    private static double CellsOf(in RunView run, bool harsher)
    {
        if (run.Plan.Surroundings?.Pitch is not { } pitch)
        {
            return double.NaN;
        }

        double sum = 0;
        for (int i = 0; i < pitch.Yeasts.Count; i++)
        {
            PitchedYeast yeast = pitch.Yeasts[i];
            double fresh = yeast.CellsPerUnit is Known cells ? yeast.Amount * run.Draw[cells] / Billion : yeast.Billions ?? double.NaN;
            sum += fresh * (harsher ? yeast.ViableLow : yeast.ViableHigh);
        }

        return sum;
    }
}
