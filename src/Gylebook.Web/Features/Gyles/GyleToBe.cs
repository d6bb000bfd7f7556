using Gylebook.Forecast.Report;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Shopping;
using Gylebook.Gyles.Vessels;
using Gylebook.Recipes;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Lots;
using Gylebook.Store;

namespace Gylebook.Web.Features.Gyles;

/// <summary>A gyle before it starts: what it would be brewed from, and its plan as it would be frozen.</summary>
public sealed record GyleToBe
{
    /// <summary>What was asked for.</summary>
    public required GyleOrder Order { get; init; }

    /// <summary>The planned gyle that it is; null for a new one.</summary>
    public required GyleLine? Planned { get; init; }

    /// <summary>What it would be called.</summary>
    public required string Name { get; init; }

    /// <summary>The recipe's text.</summary>
    public required string RecipeText { get; init; }

    /// <summary>Which kit of the book; null for the built-in one.</summary>
    public required Guid? KitId { get; init; }

    /// <summary>The kit.</summary>
    public required Kit Kit { get; init; }

    /// <summary>The brewer's own sheets.</summary>
    public required Larder Larder { get; init; }

    /// <summary>The water plan's text; null without one.</summary>
    public required string? WaterText { get; init; }

    /// <summary>The water plan; null without one.</summary>
    public required WaterPlan? Water { get; init; }

    /// <summary>When it would be frozen.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>Draws behind the bands of its plan.</summary>
    public int Draws => Order.IsDemo ? GyleInputs.LiveDraws : GyleInputs.PlanDraws;

    /// <summary>The recipe; null where it cannot be read.</summary>
    public Recipe? Recipe => Read.Value;

    /// <summary>The plan; null before it was reckoned, and where the recipe cannot be brewed as it is.</summary>
    public GylePlan? Plan { get; private init; }

    /// <summary>Why the recipe cannot be read; empty where it can.</summary>
    public IReadOnlyList<Finding> Unread => Read is { Value: null, Findings: var why } ? why : [];

    /// <summary>The vessels it is to stand in.</summary>
    public VesselPlan Vessels => Order.Vessels ?? new(
        Planned?.Stays.FirstOrDefault(stay => stay.Kind == VesselKind.Fermenter)?.Vessel, Planned?.Stays.FirstOrDefault(stay => stay.Kind == VesselKind.Keg)?.Vessel);

    /// <summary>What is wrong or doubtful.</summary>
    public IReadOnlyList<Finding> Findings { get; private init; } = [];

    /// <summary>Minutes that somebody knows: heating, rests, boil, stand, chilling, cleaning. Weighing and lifting come on top.</summary>
    public double Minutes => (Plan?.Steps ?? []).Sum(step => step.Minutes ?? 0);

    private Reading<Recipe> Read => RecipeFile.Read(RecipeText);

    /// <summary>The same with its plan; that of an earlier look where nothing has changed of which it was made.</summary>
    public GyleToBe Reckoned(GyleToBe? before = null)
    {
        Reading<Recipe> read = Read;
        if (read.Value is not { } recipe)
        {
            return this with { Plan = null, Findings = read.Findings };
        }

        if (before is { Plan: { } known } && IsOfTheSame(before))
        {
            return this with { Plan = known with { Frozen = Now }, Findings = before.Findings };
        }

        GyleFiles files = new(RecipeText, KitFile.Write(Kit), WaterText, [.. recipe.Ingredients.Select(line => Larder.Sheet(line.Kind, line.Of)).OfType<LarderSheet>().Distinct().Select(LarderFile.Write)]);
        (GylePlan? plan, IReadOnlyList<Finding> findings) = new GyleInputs(recipe, Kit, Larder, Water).Freeze(Name, 0, Now, files, Draws);
        return this with { Plan = plan, Findings = findings };
    }

    /// <summary>All that is weighed on brew day, in its order, and what the larder has of it.</summary>
    /// <param name="used">How much of each lot went into gyles already, kg.</param>
    public IReadOnlyList<ToWeigh> Weighing(IReadOnlyDictionary<string, double> used)
    {
        ArgumentNullException.ThrowIfNull(used);
        return [.. (Plan?.Steps ?? []).SelectMany(step => step.Items.Select(item => new ToWeigh(step.Title, item, LotOf(item), item.Lot is { } lot ? used.GetValueOrDefault(lot) : 0)))];
    }

    /// <summary>All that it takes, from the mash to the package, and what of it has to be bought.</summary>
    /// <param name="used">How much of each lot went into gyles already, kg.</param>
    public ShoppingList Shopping(IReadOnlyDictionary<string, double> used) =>
        Recipe is { } recipe ? ShoppingList.Of(Forecaster.Plan(recipe, Kit, Larder, Water).Brew, Plan?.Steps ?? [], used) : new ShoppingList([]);

    /// <summary>A vessel that would not hold what is cast, in a sentence; null where it would, or nobody knows.</summary>
    public string? TooSmall(VesselPlan vessels)
    {
        ArgumentNullException.ThrowIfNull(vessels);
        Vessel? vessel = Kit.Vessels.FirstOrDefault(vessel => vessel.Kind == VesselKind.Fermenter && vessel.Name == vessels.Fermenter);
        double? litres = Plan?.Steps.FirstOrDefault(step => step.Key == "cast")?.Aims.FirstOrDefault(aim => aim.Unit.StartsWith('L'))?.Likely;
        return vessel?.Holds is { } holds && litres > holds.Value.Litres ? Invariant($"{vessel.Name} holds {holds.Text}, and {litres:0.0} L are cast") : null;
    }

    private bool IsOfTheSame(GyleToBe other) =>
        other.Name == Name && other.Draws == Draws && other.RecipeText == RecipeText && other.WaterText == WaterText && KitFile.Write(other.Kit) == KitFile.Write(Kit)
        && other.Larder.Day == Larder.Day && other.Larder.Sheets.Select(LarderFile.Write).SequenceEqual(Larder.Sheets.Select(LarderFile.Write));

    private Lot? LotOf(StepItem item) => Larder.Sheets.SelectMany(sheet => sheet.EveryLot.Where(lot => LotKey.Of(sheet, lot) == item.Lot)).FirstOrDefault();
}

/// <summary>Something to weigh out.</summary>
/// <param name="Step">For which step.</param>
/// <param name="Item">What, and how much.</param>
/// <param name="Lot">The lot it is taken from; null where the recipe names none.</param>
/// <param name="UsedKilograms">How much of that lot is gone.</param>
public sealed record ToWeigh(string Step, StepItem Item, Lot? Lot, double UsedKilograms)
{
    /// <summary>What is left of the lot, kg; null where nobody wrote down how much was bought, or it is no weight.</summary>
    public double? LeftKilograms => Lot?.Kilograms() is { } bought ? Math.Max(0, bought - UsedKilograms) : null;
}
