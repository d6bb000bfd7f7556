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
        List<(Place Place, string Name, int Line, Movement What)> named = [];
        foreach (Movement movement in record.Additions)
        {
            // The log tells no names, but it keeps the order of the plan's steps: a line of the recipe is next, or it is
            // something that the plan put in by itself.
            bool isLine = lines.TryPeek(out Step next) && next.To == movement.Portion && plan.Additions[next.Row].Place.Stage == movement.Stage;
            named.Add(isLine
                ? (plan.Additions[next.Row].Place, brew.AdditionLines[lines.Dequeue().Row].Name, next.Row, movement)
                : (new Place(movement.Stage, null, movement.Portion), PlannedName.GetValueOrDefault(movement.Stage, "liquor"), -1, movement));
        }

        return [.. named.Where(n => n.Line >= 0 || n.What.What.Mass > 0).GroupBy(n => (n.Place, n.Name, n.Line)).Select(group =>
        {
            Wort sum = default;
            foreach ((_, _, _, Movement movement) in group)
            {
                sum.Add(movement.What);
            }

            (Place place, string name, _) = group.Key;
            return new AdditionRow(place, StageRows.PortionAt(brew, place.Stage, place.Portion), name, sum.Mass, LitresOf(sum));
        })];
    }

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
