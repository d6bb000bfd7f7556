using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Planning;

/// <summary>The moves from the liquor to the cast: mash, kettle, stand and cooling.</summary>
internal sealed class HotSteps(Recipe recipe, StepList steps, KettleHeat heat)
{
    /// <summary>A part mash is filled up with liquor; any other kettle when the brewer says so.</summary>
    private bool TopsUp => recipe.Mash?.Method == MashMethod.Part || recipe.Liquor?.TopUp is not null;

    /// <summary>Writes them.</summary>
    /// <param name="souring">How the wort is soured in the kettle; null when it is not.</param>
    public void Write(SourStep? souring)
    {
        WriteMash();
        if (TopsUp)
        {
            Do(Move.AddLiquor, Stage.TopUp, 1);
        }

        AddAll(AdditionPoint.CopperUp);
        Do(Move.Look, Stage.CopperUp);
        if (souring is { } step)
        {
            steps.Sourings.Add(step);
            Do(Move.MakeAcid, Stage.Sour);
        }

        WriteBoil();
        Do(Move.Settle, Stage.KnockOut);
        AddAll(AdditionPoint.KnockOut);
        if (recipe.Stand is not null)
        {
            WriteStand(recipe.Stand.Time.Value.Minutes);
        }

        WriteCooling();
        Do(Move.Look, Stage.Chill);
        Do(Move.CastOver, Stage.Cast);
    }

    private void WriteMash()
    {
        Do(Move.AddLiquor, Stage.Strike);
        if (recipe.Mash is null or { Method: MashMethod.None })
        {
            return;
        }

        AddAll(AdditionPoint.Mash);
        Do(Move.ConvertStarch, Stage.Mash);
        steps.Do(Move.PartGrain, Stage.Lift, StepList.Main, StepList.Bed);
        if (recipe.Mash.Sparge.Volume is not null)
        {
            steps.Do(Move.RinseGrain, Stage.Rinse, StepList.Bed, StepList.Main);
        }

        steps.Do(Move.DropGrain, Stage.Lift, StepList.Bed, StepList.Main);
    }

    private void WriteBoil()
    {
        double left = recipe.Boil?.Time.Value.Minutes ?? 0;
        foreach (PlannedLine line in LongestFirst(AdditionPoint.Boil))
        {
            BoilFor(left - line.Line.At.Count);
            left = line.Line.At.Count;
            Add(line);
        }

        BoilFor(left);
    }

    private void WriteStand(double left)
    {
        foreach (PlannedLine line in LongestFirst(AdditionPoint.Stand))
        {
            StandFor(left - line.Line.At.Count);
            left = line.Line.At.Count;
            Add(line);
        }

        StandFor(left);
        Do(Move.Look, Stage.Stand);
    }

    /// <summary>How fast so much wort cools is known when the liquor is planned; the plan is told then.</summary>
    private void WriteCooling()
    {
        if (heat.CoolsFromHot && steps.Additions.HaveHops)
        {
            Do(Move.Steep, Stage.Chill);
        }
    }

    private void BoilFor(double minutes)
    {
        if (minutes > 0)
        {
            steps.Boils.Add(heat.Boil(minutes));
            Do(Move.BoilOff, Stage.Boil, steps.Boils.Count - 1);
        }
    }

    /// <summary>Hops in hot wort; where none ever went in there is nothing to reckon.</summary>
    private void StandFor(double minutes)
    {
        if (minutes > 0 && steps.Additions.HaveHops)
        {
            steps.Stands.Add(heat.Stand(minutes));
            Do(Move.Steep, Stage.Stand, steps.Stands.Count - 1);
        }
    }

    private void Do(Move move, Stage stage, int row = 0) => steps.Do(move, stage, StepList.Main, row: row);

    private IEnumerable<PlannedLine> LongestFirst(AdditionPoint point) => steps.At(point).OrderByDescending(l => l.Line.At.Count);

    private void AddAll(AdditionPoint point)
    {
        foreach (PlannedLine line in steps.At(point))
        {
            Add(line);
        }
    }

    private void Add(PlannedLine line) => steps.Add(line, StepList.Main, 1);
}
