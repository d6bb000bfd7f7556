using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Planning;

/// <summary>The moves of a run in order, with the rows they point to.</summary>
/// <remarks>What happens up to the cast is written by <see cref="HotSteps"/>, all that follows by <see cref="CellarSteps"/>.</remarks>
internal sealed class StepList(
    Recipe recipe, IReadOnlyList<PlannedLine> lines, ParameterList parameters, KettleHeat heat, SourStep? souring, RestCourse rests)
{
    /// <summary>The portion all begins in.</summary>
    public const int Main = 0;

    /// <summary>Moves that few brews have more of, besides what goes in; only room is made by it.</summary>
    private const int MovesBesides = 32;

    /// <summary>Where the grain lies once it is off the wort.</summary>
    public const int Bed = 1;

    /// <summary>The moves.</summary>
    public List<Step> Steps { get; } = new(lines.Count + MovesBesides);

    /// <summary>What goes in.</summary>
    public AdditionList Additions { get; } = new(parameters, rests.WarmestCelsius, lines.Count);

    public List<SourStep> Sourings { get; } = [];

    public List<HeatStep> Boils { get; } = [];

    public List<HeatStep> Stands { get; } = [];

    public List<double> SplitShares { get; } = [];

    public List<FermentStep> Ferments { get; } = [];

    /// <summary>Liquor rows: the strike is row 0, the top-up row 1.</summary>
    public int LiquorCount { get; private set; }

    /// <summary>What the cast is shared out into.</summary>
    public CastPortions Portions { get; } = new(recipe);

    private readonly ILookup<AdditionPoint, PlannedLine> _at = lines.ToLookup(line => line.Line.At.Point);

    /// <summary>Writes all steps.</summary>
    public void Write(IReadOnlyDictionary<string, FermentStep> yeastOfPortion)
    {
        new HotSteps(recipe, this, heat).Write(souring);
        new CellarSteps(recipe, this).Write(yeastOfPortion);
    }

    /// <summary>Something done to a portion, or from one to another.</summary>
    /// <param name="move">What is done.</param>
    /// <param name="stage">At which stage.</param>
    /// <param name="from">The portion it happens to.</param>
    /// <param name="to">The portion that receives; null for the same.</param>
    /// <param name="row">Row of its figures, where the move has any.</param>
    public void Do(Move move, Stage stage, int from, int? to = null, int row = 0)
    {
        Steps.Add(new Step(move, stage, from, to ?? from, row));
        LiquorCount += move == Move.AddLiquor ? 1 : 0;
    }

    /// <summary>Lines that go in there, in the order written.</summary>
    public IEnumerable<PlannedLine> At(AdditionPoint point) => _at[point];

    /// <summary>That share of a line goes into a portion.</summary>
    public void Add(PlannedLine line, int portion, double share)
    {
        int row = Additions.Add(line, portion, share);
        Do(Move.AddIngredient, Additions.Rows[row].Place.Stage, portion, row: row);
    }
}

/// <summary>A part of the cast that goes its own way to the glass.</summary>
/// <param name="Place">Which portion of the run it is.</param>
/// <param name="Name">What the recipe calls it; null when there is just one.</param>
/// <param name="Share">Its share of the cast, 0 to 1.</param>
internal readonly record struct CastPortion(int Place, string? Name, double Share)
{
    /// <summary>What of a cellar addition goes into it: its share of the cast, or all of it if it is named; null for none.</summary>
    public double? ShareOf(PlannedLine line) => line.Line.Portion is null ? Share : line.Line.Portion == Name ? 1 : null;
}

/// <summary>What the cast is shared out into: the recipe's portions, or all of it as one.</summary>
internal sealed class CastPortions(Recipe recipe)
{
    /// <summary>The portions; the first stays where the wort was cast, the others lie behind the bed of grain.</summary>
    public IReadOnlyList<CastPortion> All { get; } = recipe.Portions.Count == 0
        ? [new(StepList.Main, null, 1)]
        : [.. recipe.Portions.Select((p, i) => new CastPortion(i == 0 ? StepList.Main : StepList.Bed + i, p.Name, p.Share.Value.Ratio))];

    /// <summary>Where they are in the run; each ends in a package.</summary>
    public int[] Places => [.. All.Select(p => p.Place)];

    /// <summary>How many portions the run needs for them.</summary>
    public int Room => All.Max(p => p.Place) + 1;
}
