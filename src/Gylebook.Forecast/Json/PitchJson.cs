using Gylebook.Forecast.Report.Pitching;

namespace Gylebook.Forecast.Json;

/// <summary>Writes how much yeast, in forecasts and by itself.</summary>
public static class PitchJson
{
    /// <summary>The advice, inside an object that is open already.</summary>
    public static void Write(JsonPen pen, PitchAdvice pitch)
    {
        pen.Texts("yeasts", pitch.Yeasts);
        pen.Number("millionCellsPerMlPlato", pitch.Rate, 2);
        pen.Number("cellsNeededBillions", pitch.CellsNeededBillions, 0);
        pen.Number("cellsBillions", pitch.CellsBillions, 0);
        pen.Number("cellsLowBillions", pitch.CellsLowBillions, 0);
        pen.Number("cellsHighBillions", pitch.CellsHighBillions, 0);
        pen.Number("oxygenMgPerL", pitch.OxygenMgPerL, 1);
        pen.Number("dryYeastG", pitch.DryYeastGrams, 1);
        pen.Number("slurryMl", pitch.SlurryMillilitres, 0);
        if (pitch.OfThisSlurryMillilitres is var (low, high))
        {
            pen.Number("ofThisSlurryLowMl", low, 0);
            pen.Number("ofThisSlurryHighMl", high, 0);
        }

        pen.List("starters", pitch.Starters, starter =>
        {
            pen.Text("handling", starter.Handling.ToString().ToLowerInvariant());
            pen.Flag("reaches", starter.Reaches);
            pen.List("steps", starter.Steps, step =>
            {
                pen.Number("litres", step.Litres, 2);
                pen.Number("dryExtractG", step.DryExtractGrams, 0);
                pen.Number("startBillions", step.StartBillions, 0);
                pen.Number("endBillions", step.EndBillions, 0);
            });
        });
        pen.Texts("harvestDoubts", pitch.HarvestDoubts);
    }
}
