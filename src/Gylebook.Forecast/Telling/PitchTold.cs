using Gylebook.Engine.Readouts;
using Gylebook.Forecast.LayingOut;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;

namespace Gylebook.Forecast.Telling;

/// <summary>How much yeast a wort wants, how much there is, and how to come from the one to the other.</summary>
internal static class PitchTold
{
    private const double Billion = 1e9;

    /// <summary>Wort stronger than this is strong to yeast: the trade's line for more oxygen. Common practice, no source.</summary>
    internal const double StrongGravity = 1.075;

    /// <summary>The advice; null when nothing is pitched.</summary>
    public static PitchAdvice? Of(LaidOut laidOut, RunOutcome figures, ForecastRequest asked)
    {
        List<LaidLine> yeasts = [.. laidOut.Lines.Where(l => l.Yeast is not null && l.Line.At.Point == AdditionPoint.Pitch)];
        if (yeasts.Count == 0)
        {
            return null;
        }

        double rate = yeasts.Max(y => y.Yeast!.PitchRate);
        double plato = SucroseSolution.PlatoAt(figures[BeerReadouts.CastGravity]);
        double needed = PitchRate.BillionCells(rate, figures[BeerReadouts.CastLitres], plato);
        (double Low, double High)? cells = CellsOf(yeasts);
        bool allDry = yeasts.All(y => y.Line.Form == IngredientForm.Dry);
        return new PitchAdvice(needed, cells is { } c ? (c.Low + c.High) / 2 : null, allDry ? null : OxygenOf(rate, figures))
        {
            Yeasts = [.. yeasts.Select(y => y.Name)],
            Rate = rate,
            CellsLowBillions = cells?.Low,
            CellsHighBillions = cells?.High,
            DryYeastGrams = PitchRate.DryYeastGrams(needed, StartingValues.Of("yeast.dryCellsPerGram").Value / Billion),
            SlurryMillilitres = needed / (StartingValues.Of("yeast.slurryCellsPerMillilitre").Value / Billion),
            Starters = allDry || cells is not { Low: > 0 } there || there.Low >= needed ? [] : Starters(there.Low, needed, asked),
            HarvestDoubts = HarvestDoubt.Of(laidOut, figures),
        };
    }

    private static double OxygenOf(double rate, RunOutcome figures) => StartingValues.Of(
        rate > PitchRate.Ale || figures[BeerReadouts.OriginalGravity] > StrongGravity ? "yeast.oxygen.strong" : "yeast.oxygen.ale").Value;

    /// <summary>Living cells by both rules; null when one of the yeasts does not say how many it holds.</summary>
    private static (double Low, double High)? CellsOf(IReadOnlyList<LaidLine> yeasts)
    {
        (double Low, double High) sum = (0, 0);
        foreach (LaidLine yeast in yeasts)
        {
            if (FreshBillions(yeast) is not double fresh)
            {
                return null;
            }

            bool ages = yeast.Line.Form != IngredientForm.Dry && yeast.Line.Age is not null;
            (double low, double high) = ages ? YeastViability.Band(yeast.Line.Age!.Value.Value.Days) : (1, 1);
            sum = (sum.Low + (fresh * low), sum.High + (fresh * high));
        }

        return sum;
    }

    private static double? FreshBillions(LaidLine yeast) => yeast.Line switch
    {
        { Cells: { } cells } => cells.Billions,
        { Form: IngredientForm.Dry } => yeast.Kilograms * 1000 * StartingValues.Of("yeast.dryCellsPerGram").Value / Billion,

        // A slurry is weighed or poured: a millilitre is about a gram.
        { Form: IngredientForm.Slurry } => yeast.Kilograms * 1000 * StartingValues.Of("yeast.slurryCellsPerMillilitre").Value / Billion,
        _ => null,
    };

    private static List<StarterAdvice> Starters(double billions, double needed, ForecastRequest asked)
    {
        double solids = 1 - Sugars.Find("dry malt extract light").Match!.Water;
        return [.. Enum.GetValues<StarterHandling>().Select(handling =>
        {
            StarterPlan plan = StarterPlan.For(billions, needed, handling, asked.MostStarter.Litres);
            return new StarterAdvice(handling, plan.Reaches, [.. plan.Steps.Select(s =>
                new StarterAdviceStep(s.Litres, s.ExtractGrams / solids, s.StartBillions, s.EndBillions))]);
        })];
    }
}
