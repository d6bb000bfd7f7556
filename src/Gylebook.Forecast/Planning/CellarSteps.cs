using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Planning;

/// <summary>The moves from the fermenter to the glass, for each portion of the cast.</summary>
internal sealed class CellarSteps(Recipe recipe, StepList steps)
{
    /// <summary>A last rest near freezing is a crash. Common practice, no source.</summary>
    public static bool Crashes(Recipe recipe) => recipe.Ferment.Count > 1 && recipe.Ferment[^1].Temperature.Value.Celsius <= 5;

    /// <summary>Writes them.</summary>
    public void Write(IReadOnlyDictionary<string, FermentStep> yeastOfPortion)
    {
        WriteSplits();
        foreach (CastPortion portion in steps.Portions.All)
        {
            steps.Ferments.Add(yeastOfPortion[portion.Name ?? ""]);
            WritePortion(portion, steps.Ferments.Count - 1);
        }
    }

    private void WriteSplits()
    {
        double left = 1;
        foreach (CastPortion portion in steps.Portions.All.Skip(1))
        {
            steps.SplitShares.Add(portion.Share / left);
            steps.Do(Move.Divide, Stage.Split, StepList.Main, portion.Place, steps.SplitShares.Count - 1);
            left -= portion.Share;
        }
    }

    private void WritePortion(CastPortion portion, int row)
    {
        int place = portion.Place;
        AddAll(steps.At(AdditionPoint.Pitch), portion);
        steps.Do(Move.FermentOut, Stage.Ferment, place, row: row);
        foreach (IGrouping<double, PlannedLine> day in steps.At(AdditionPoint.Ferment).GroupBy(l => l.Line.At.Count).OrderBy(d => d.Key))
        {
            AddAll(day, portion);
            steps.Do(Move.FermentOut, Stage.Ferment, place, row: row);
        }

        steps.Do(Move.EndFermentation, Stage.Ferment, place);
        if (Crashes(recipe))
        {
            steps.Do(Move.Look, Stage.Crash, place);
        }

        steps.Do(Move.RackOff, Stage.Rack, place);
        AddAll(steps.At(AdditionPoint.Rack), portion);
        AddAll(steps.At(AdditionPoint.Package), portion);
        steps.Do(Move.Fill, Stage.Package, place, row: row);
        steps.Do(Move.MakeGas, Stage.Condition, place, row: row);
        steps.Do(Move.Look, Stage.Pour, place);
    }

    private void AddAll(IEnumerable<PlannedLine> lines, CastPortion portion)
    {
        foreach (PlannedLine line in lines)
        {
            if (portion.ShareOf(line) is double share)
            {
                steps.Add(line, portion.Place, share);
            }
        }
    }
}
