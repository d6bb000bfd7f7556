using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Running;
using Gylebook.Forecast.Stages;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Telling;

/// <summary>Bitterness by hop, by both models.</summary>
/// <remarks>
/// Kinetics work on one pool of alpha acid. Its rates are of first order, so a run with one hop alone tells that hop's part;
/// where the solubility rule bends the sum, the parts are shrunk alike.
/// </remarks>
internal static class BitternessRows
{
    /// <summary>One row for each hop, dry hops too, in the order in which they went in.</summary>
    public static IReadOnlyList<HopBitterness> Of(LaidOut laidOut, RunRecord record, HeadlineFigures figures)
    {
        RunPlan plan = laidOut.Plan!;
        bool table = plan.Bitterness == BitternessModel.TimeGravity;
        List<int> hops = [.. Enumerable.Range(0, plan.Additions.Length).Where(i => laidOut.AdditionLines[i].Line.Kind == IngredientKind.Hop)];
        double[] milligrams = [.. hops.Select(i => record.Bitterness.GetValueOrDefault(i))];
        double[] byTable = Shared(milligrams, figures[table ? Figure.Bitterness : Figure.OtherBitterness]);
        double[] byKinetics = Shared(
            [.. hops.Select(i => Alone(plan, i))], figures[table ? Figure.OtherBitterness : Figure.Bitterness]);
        List<HopBitterness> rows = [];
        for (int n = 0; n < hops.Count; n++)
        {
            LaidLine line = laidOut.AdditionLines[hops[n]];
            (double shown, double other) = table ? (byTable[n], byKinetics[n]) : (byKinetics[n], byTable[n]);
            rows.Add(new HopBitterness(line.Name, Words.Of(line.Line.At), Words.Of(plan.Bitterness), shown)
            {
                Line = line.Number,
                OtherModel = Words.Of(table ? BitternessModel.Isomerisation : BitternessModel.TimeGravity),
                OtherIbu = other,
                AlphaPercent = 100 * line.Alpha,
            });
        }

        return rows;
    }

    private static double Alone(RunPlan plan, int addition)
    {
        if (plan.HopDoses[addition].Grams <= 0)
        {
            return 0;
        }

        HopDose[] doses = new HopDose[plan.HopDoses.Length];
        doses[addition] = plan.HopDoses[addition];
        double[] figures = new double[plan.PortionCount * Figures.Count];
        NoLog log = default;
        Run.Through(plan with { HopDoses = doses, Bitterness = BitternessModel.Isomerisation }, plan.Medians, figures, ref log);
        return new HeadlineFigures(plan.Packaged, figures)[Figure.Bitterness];
    }

    private static double[] Shared(double[] parts, double whole)
    {
        double sum = parts.Sum();
        return [.. parts.Select(part => sum > 0 ? whole * part / sum : 0)];
    }
}
