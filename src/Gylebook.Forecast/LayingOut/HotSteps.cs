using Gylebook.Forecast.Running;
using Gylebook.Forecast.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.LayingOut;

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
            Move(StepKind.TopUp, row: 1);
        }

        AddAll(AdditionPoint.CopperUp);
        Move(StepKind.CopperUp);
        if (souring is { } step)
        {
            steps.Sourings.Add(step);
            Move(StepKind.Sour);
        }

        WriteBoil();
        Move(StepKind.KnockOut);
        AddAll(AdditionPoint.KnockOut);
        if (recipe.Stand is not null)
        {
            WriteStand(recipe.Stand.Time.Value.Minutes);
        }

        WriteCooling();
        Move(StepKind.Chill);
        Move(StepKind.Cast);
    }

    private void WriteMash()
    {
        Move(StepKind.Strike);
        if (recipe.Mash is null or { Method: MashMethod.None })
        {
            return;
        }

        AddAll(AdditionPoint.Mash);
        Move(StepKind.Mash);
        steps.Move(StepKind.Lift, StepList.Main, StepList.Bed);
        if (recipe.Mash.Sparge.Volume is not null)
        {
            steps.Move(StepKind.Rinse, StepList.Bed, StepList.Main);
        }

        steps.Move(StepKind.SpentGrain, StepList.Bed, StepList.Main);
    }

    private void WriteBoil()
    {
        double left = recipe.Boil?.Time.Value.Minutes ?? 0;
        foreach (LaidLine line in LongestFirst(AdditionPoint.Boil))
        {
            BoilFor(left - line.Line.At.Count);
            left = line.Line.At.Count;
            Add(line);
        }

        BoilFor(left);
    }

    private void WriteStand(double left)
    {
        foreach (LaidLine line in LongestFirst(AdditionPoint.Stand))
        {
            Steep(heat.Stand(left - line.Line.At.Count));
            left = line.Line.At.Count;
            Add(line);
        }

        Steep(heat.Stand(left));
        Move(StepKind.Stand);
    }

    /// <summary>How fast so much wort cools is known when the liquor is planned; its row is filled in then.</summary>
    private void WriteCooling()
    {
        if (heat.CoolsFromHot && steps.Additions.HaveHops)
        {
            steps.CoolingSteep = steps.Steeps.Count;
            MoveSteep(IsomerisationStep.None);
        }
    }

    private void BoilFor(double minutes)
    {
        if (minutes > 0)
        {
            steps.BoilMinutes.Add(minutes);
            steps.BoilHeats.Add(heat.Boil(minutes));
            Move(StepKind.Boil, steps.BoilMinutes.Count - 1);
        }
    }

    /// <summary>Hops in hot wort; where none ever went in there is nothing to reckon.</summary>
    private void Steep(in IsomerisationStep step)
    {
        if (step != IsomerisationStep.None && steps.Additions.HaveHops)
        {
            MoveSteep(step);
        }
    }

    private void MoveSteep(in IsomerisationStep step)
    {
        steps.Steeps.Add(step);
        Move(StepKind.Steep, steps.Steeps.Count - 1);
    }

    private void Move(StepKind kind, int row = 0) => steps.Move(kind, StepList.Main, row: row);

    private IEnumerable<LaidLine> LongestFirst(AdditionPoint point) => steps.At(point).OrderByDescending(l => l.Line.At.Count);

    private void AddAll(AdditionPoint point)
    {
        foreach (LaidLine line in steps.At(point))
        {
            Add(line);
        }
    }

    private void Add(LaidLine line) => steps.Add(line, StepList.Main, 1);
}
