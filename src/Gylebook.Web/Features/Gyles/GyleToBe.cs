using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Lots;

namespace Gylebook.Web.Features.Gyles;

/// <summary>A gyle before it starts: what it would be brewed from, and its plan as it would be frozen.</summary>
public sealed record GyleToBe
{
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

    /// <summary>Draws behind the bands of its plan.</summary>
    public int Draws { get; init; } = GyleInputs.PlanDraws;

    /// <summary>When it would be frozen.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>The plan; null where the recipe cannot be brewed as it is.</summary>
    public GylePlan? Plan { get; private init; }

    /// <summary>What is wrong or doubtful.</summary>
    public IReadOnlyList<Finding> Findings { get; private init; } = [];

    internal static GyleToBe Of(string name, string recipe, Guid? kitId, Kit kit, string? waterText, WaterPlan? water, Larder larder, DateTimeOffset now, int draws) =>
        new GyleToBe { Name = name, RecipeText = recipe, KitId = kitId, Kit = kit, WaterText = waterText, Water = water, Larder = larder, Now = now, Draws = draws }.With(recipe);

    /// <summary>The same from another text of the recipe.</summary>
    internal GyleToBe With(string text)
    {
        Reading<Recipe> read = RecipeFile.Read(text);
        if (read.Value is not { } recipe)
        {
            return this with { RecipeText = text, Plan = null, Findings = read.Findings };
        }

        GyleFiles files = new(text, KitFile.Write(Kit), WaterText, [.. recipe.Ingredients.Select(line => Larder.Sheet(line.Kind, line.Of)).OfType<LarderSheet>().Distinct().Select(LarderFile.Write)]);
        (GylePlan? plan, IReadOnlyList<Finding> findings) = new GyleInputs(recipe, Kit, Larder, Water).Freeze(Name, 0, Now, files, Draws);
        return this with { RecipeText = text, Plan = plan, Findings = findings };
    }

    /// <summary>All that is weighed, in the order of the day, and what the larder has of it.</summary>
    /// <param name="used">How much of each lot went into gyles already, kg.</param>
    public IReadOnlyList<ToWeigh> Weighing(IReadOnlyDictionary<string, double> used)
    {
        ArgumentNullException.ThrowIfNull(used);
        return [.. (Plan?.Steps ?? []).SelectMany(step => step.Items.Select(item => new ToWeigh(step.Title, item, LotOf(item), item.Lot is { } lot ? used.GetValueOrDefault(lot) : 0)))];
    }

    /// <summary>Minutes that somebody knows: heating, rests, boil, stand, chilling. Weighing, lifting and cleaning come on top.</summary>
    public double Minutes => (Plan?.Steps ?? []).Sum(step => step.Minutes ?? 0);

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
    public double? LeftKilograms => Lot?.Amount?.Mass is { } bought ? Math.Max(0, bought.Value.Kilograms - UsedKilograms) : null;

    /// <summary>How much has to be bought, kg; 0 where the lot has enough; null where nobody knows.</summary>
    public double? ToBuyKilograms => LeftKilograms is { } left && Item.Kilograms is { } wanted ? Math.Max(0, wanted - left) : null;
}
