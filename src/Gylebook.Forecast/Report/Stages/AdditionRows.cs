using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Records;

namespace Gylebook.Forecast.Report.Stages;

/// <summary>Something that goes in.</summary>
/// <param name="Place">Where in the run.</param>
/// <param name="Portion">Name of the portion it goes into.</param>
/// <param name="What">Its name, or what it is for: <c>sparge liquor</c>.</param>
/// <param name="Kilograms">All of it.</param>
/// <param name="LitresAt20C">Clear liquid it brings by itself; starch that the mash has yet to dissolve is not in it.</param>
public sealed record AdditionRow(Place Place, string Portion, string What, double Kilograms, double LitresAt20C);

/// <summary>All that goes in, as rows to tell: the recipe's lines by name, and what the plan itself puts in.</summary>
internal static class AdditionRows
{
    /// <summary>One row an addition, in the order of the run; what goes in twice at one stage, as sparge liquor does, is told once.</summary>
    public static IReadOnlyList<AdditionRow> Of(BrewPlan brew, RunRecord record)
    {
        RunPlan plan = brew.Plan!;
        Queue<Step> lines = new(plan.Steps.Where(s => s.Move == Move.AddIngredient));
        List<AdditionRow> rows = new(record.Additions.Count);
        List<(int Row, Movement Sum)> planned = [];
        foreach (Movement movement in record.Additions)
        {
            // The log tells no names, but it keeps the order of the plan's steps: a line of the recipe is next, or it is
            // something that the plan put in by itself.
            if (lines.TryPeek(out Step next) && next.To == movement.Portion && plan.Additions[next.Row].Place.Stage == movement.Stage)
            {
                rows.Add(Row(brew, plan.Additions[next.Row].Place, brew.AdditionLines[lines.Dequeue().Row].Name, movement.What));
            }
            else if (movement.What.Mass > 0)
            {
                AddPlanned(brew, rows, planned, movement);
            }
        }

        return rows;
    }

    private static void AddPlanned(BrewPlan brew, List<AdditionRow> rows, List<(int Row, Movement Sum)> planned, Movement movement)
    {
        Place place = new(movement.Stage, null, movement.Portion);
        string name = PlannedName.GetValueOrDefault(movement.Stage, "liquor");
        int told = planned.FindIndex(its => its.Sum.Stage == movement.Stage && its.Sum.Portion == movement.Portion);
        if (told < 0)
        {
            planned.Add((rows.Count, movement));
            rows.Add(Row(brew, place, name, movement.What));
            return;
        }

        (int row, Movement before) = planned[told];
        Wort sum = before.What;
        sum.Add(movement.What);
        planned[told] = (row, before with { What = sum });
        rows[row] = Row(brew, place, name, sum);
    }

    private static AdditionRow Row(BrewPlan brew, Place place, string name, in Wort what) =>
        new(place, StageRows.PortionAt(brew, place.Stage, place.Portion), name, what.Mass, LitresOf(what));

    /// <summary>What enters without being a line of the recipe.</summary>
    private static readonly Dictionary<Stage, string> PlannedName = new()
    {
        [Stage.Strike] = "strike liquor",
        [Stage.Rinse] = "sparge liquor",
        [Stage.TopUp] = "top-up liquor",
        [Stage.Package] = "priming sugar",
        [Stage.Condition] = "carbon dioxide",
    };

    /// <summary>Clear liquid in it. Something with nothing dissolved or wet in it, as hops or grain dust, brings none.</summary>
    private static double LitresOf(in Wort what) => what.LiquidMass > 0 ? what.Litres : 0;
}
