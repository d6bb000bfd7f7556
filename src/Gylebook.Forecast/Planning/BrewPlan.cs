using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;

namespace Gylebook.Forecast.Planning;

/// <summary>A recipe laid out for a kit, liquor planned.</summary>
/// <param name="Recipe">The recipe.</param>
/// <param name="Kit">The kit.</param>
/// <param name="Lines">Its lines with what the tables know; a line of 0 g is nothing at all.</param>
/// <param name="Plan">What to run; null when a finding of severity error forbids it.</param>
/// <param name="AdditionLines">The line behind each of the plan's additions.</param>
/// <param name="PortionNames">Names by portion, for those that have one.</param>
/// <param name="Outcome">How planning backwards went.</param>
/// <param name="Findings">All that is wrong or doubtful.</param>
public sealed record BrewPlan(
    Recipe Recipe,
    Kit Kit,
    IReadOnlyList<PlannedLine> Lines,
    RunPlan? Plan,
    IReadOnlyList<PlannedLine> AdditionLines,
    IReadOnlyDictionary<int, string> PortionNames,
    PlanOutcome Outcome,
    IReadOnlyList<Finding> Findings)
{
    private ReadoutTable? _readouts;

    /// <summary>How many lines are the recipe's own; those after them are a water plan's.</summary>
    public int OwnLines { get; init; } = Recipe.Ingredients.Count;

    /// <summary>The brewer's own sheets it was laid out with.</summary>
    public Larder Larder { get; init; } = Larder.Empty;

    /// <summary>The liquors it was laid out with; null when nobody has said what they carry.</summary>
    public PlannedLiquors? Liquors { get; init; }

    /// <summary>All that can be told of it; null without a plan.</summary>
    public ReadoutTable? Readouts => _readouts ??= Plan is null ? null : new ReadoutTable(Plan);

    /// <summary>What failed when this could not be reckoned, for a log; null as a rule.</summary>
    public Exception? Failure { get; init; }

    /// <summary>A recipe that could not even be laid out.</summary>
    internal static BrewPlan NotReckoned(Recipe recipe, Kit kit, Finding finding, Exception failure) =>
        new(recipe, kit, [], null, [], new Dictionary<int, string>(), default, [finding]) { Failure = failure };
}

/// <summary>Liquors that were treated for a brew.</summary>
/// <param name="Carried">What a kilogram of each carries.</param>
/// <param name="MashPh">pH of the mash in them; null when nobody knows.</param>
/// <param name="StrikeLitres">How much strike liquor that was reckoned for, litres.</param>
public sealed record PlannedLiquors(Minerals Carried, Band? MashPh, double StrikeLitres);
