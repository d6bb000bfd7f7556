using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Days;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Gyles.Portions;

/// <summary>What a gyle really became of: the files of its plan, and in the recipe what hands changed after the pitch.</summary>
/// <remarks>
/// Beer that was divided by hand counts as if the cast had been divided so: whatever went in before, each portion has its share of. What was put in besides is a
/// line of the recipe on its day; what was left out is none. So forecast, "finished?", package, label and allergens follow from the one recipe, and
/// the frozen plan stays as it is. Nothing of brew day is planned anew.
/// </remarks>
public static class AsBrewed
{
    /// <summary>The inputs; null where this program can no longer read the files of the plan, or what was changed.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="log">The log.</param>
    public static GyleInputs? Of(GylePlan plan, GyleLog log)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(log);
        return GyleInputs.Of(Files(plan, log, [.. log.Actions.Where(action => action.Kind == ActionKind.Given)]));
    }

    /// <summary>Why something cannot be put in besides; empty where it can.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="log">The log.</param>
    /// <param name="wanted">What is to be put in: an action of its kind.</param>
    public static IReadOnlyList<Finding> Wrong(GylePlan plan, GyleLog log, BrewAction wanted)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(log);
        return [.. RecipeFile.Read(Files(plan, log, [wanted]).Recipe).Findings.Where(finding => finding.Severity == Severity.Error)
            .Select(finding => finding with { Where = finding.Where[(finding.Where.LastIndexOf('.') + 1)..] })];
    }

    private static GyleFiles Files(GylePlan plan, GyleLog log, IReadOnlyList<BrewAction> given)
    {
        Division division = Division.ByHand(log);
        if (!division.IsDivided && given.Count == 0 && !log.Actions.Any(IsLeftOut))
        {
            return new GyleFiles(plan.Recipe, plan.Kit, plan.Water, plan.Larder);
        }

        RecipeDraft recipe = Poured(RecipeDraft.Of(plan.Recipe), plan);
        foreach (DividedPortion portion in division.Portions)
        {
            recipe = recipe.AddItem("portions", ("name", portion.Name), ("share", Invariant($"{100 * portion.Share:0.##} %")), ("from", "cast")).After;
        }

        recipe = LeftOut(recipe, log, Division.Of(plan, log));
        List<string> sheets = [.. plan.Larder];
        foreach (BrewAction action in given)
        {
            if (GivenAddition.Read(action.Detail) is { } put)
            {
                recipe = With(recipe, put, action, log.Pitched ?? action.At);
                sheets.AddRange(put.Sheet is { } sheet && !sheets.Contains(sheet) ? [sheet] : []);
            }
        }

        return new GyleFiles(recipe.Text, plan.Kit, plan.Water, sheets);
    }

    /// <summary>The liquor was poured long ago: it stays what the plan had, whatever the package gets now.</summary>
    private static RecipeDraft Poured(RecipeDraft recipe, GylePlan plan)
    {
        if (GyleInputs.Of(plan) is not { } inputs || Forecaster.Plan(inputs.Recipe, inputs.Kit, inputs.Larder, inputs.Water).Brew.Plan is not { } planned)
        {
            return recipe;
        }

        string field = inputs.Recipe.Mash?.Method == MashMethod.Part ? "liquor.topUp" : "liquor.strike";
        double kilograms = planned.Liquors[field == "liquor.topUp" ? 1 : 0];
        return recipe[field] is not null ? recipe : recipe.Changed("", [(field, Invariant($"{kilograms / Wort.WaterKilogramsPerLitre:0.##########} L"))])?.After ?? recipe;
    }

    private static RecipeDraft With(RecipeDraft recipe, GivenAddition put, BrewAction action, DateTimeOffset pitched)
    {
        AdditionTime at = new(AdditionPoint.Ferment, Math.Max(0, Math.Floor((action.At - pitched).TotalDays)));
        RecipeDraft after = recipe.Add(put.Kind, put.Of, put.Amount, at).After;
        return action.Portion is not { } portion ? after : Into(after, after.Lines.Last(line => line.Of == put.Of && line.Time == at).Number, portion);
    }

    private static RecipeDraft Into(RecipeDraft recipe, int line, string portion) => recipe.Changed("", [(Invariant($"ingredients[{line}].portion"), portion)])?.After ?? recipe;

    private static bool IsLeftOut(BrewAction action) => action is { Kind: ActionKind.Skipped, Step: { } step } && step.StartsWith(GyleDays.Fermenting, StringComparison.Ordinal);

    /// <summary>Takes out what was left out. What was to go into all portions and was left out of all but one goes into that.</summary>
    private static RecipeDraft LeftOut(RecipeDraft recipe, GyleLog log, Division division)
    {
        foreach (DraftLine line in recipe.Lines.Where(line => line.Time.Point == AdditionPoint.Ferment).Reverse())
        {
            string day = GyleDays.KeyOf(line.Time.Count);
            string?[] of = line.Portion is { } only ? [only] : [.. division.Names];
            string?[] stays = [.. of.Where(portion => log.ActionsOf(portion).LastOrDefault(action => action.Step == day && action.Kind is ActionKind.Done or ActionKind.Skipped or ActionKind.Reopened) is not { Kind: ActionKind.Skipped })];
            recipe = stays.Length == 0 ? recipe.Remove(line.Number).After : stays is [{ } one] && of.Length > 1 ? Into(recipe, line.Number, one) : recipe;
        }

        return recipe;
    }
}
