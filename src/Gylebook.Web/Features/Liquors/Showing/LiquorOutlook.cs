using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Report;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Liquors;
using Gylebook.Store;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Liquors.Showing;

/// <summary>What a water plan is carried out for: a recipe on the kit in use.</summary>
/// <param name="Id">Which recipe.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Recipe">The recipe; null while its draft cannot be read.</param>
/// <param name="Kit">The kit in use.</param>
/// <param name="Larder">The brewer's own sheets.</param>
public sealed record RecipeToBrew(Guid Id, string Name, Recipe? Recipe, Kit Kit, Larder Larder)
{
    /// <summary>The recipe of a plan, as it stands in the book now; null for a plan of none.</summary>
    public static async Task<RecipeToBrew?> OfAsync(Book book, WaterOf water)
    {
        if (water.RecipeId is not { } id)
        {
            return null;
        }

        Recipe? recipe = await book.Drafts.FindAsync(id) is { } draft && WholeText.DamageOf(draft) is null ? RecipeDraft.Of(draft.Document).Recipe : null;
        KitInUse kit = await KitInUse.FindAsync(book);
        return new RecipeToBrew(id, water.Recipe!, recipe, kit.Kit, await OwnLarder.OfAsync(book));
    }
}

/// <summary>What comes of a water plan: everything the page shows beside what was typed.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Source">The waters blended, before anything goes in.</param>
/// <param name="Outcome">What to weigh out, and what the liquor is then; null when nobody has said how much there is.</param>
/// <param name="Brew">The recipe brewed with it; null for a plan of no recipe.</param>
/// <param name="Findings">What was found in carrying it out.</param>
public sealed record LiquorOutlook(
    WaterPlan Plan, SourceLiquor Source, WaterOutcome? Outcome, BrewForecast? Brew, IReadOnlyList<Finding> Findings)
{
    /// <summary>Carries the plan out.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="brewed">The recipe it is for; null for the litres and the grist in the plan.</param>
    public static LiquorOutlook Of(WaterPlan plan, RecipeToBrew? brewed)
    {
        BrewForecast? brew = brewed?.Recipe is { } recipe ? Forecaster.Forecast(recipe, brewed.Kit, brewed.Larder, recipe.Name, plan) : null;
        List<Finding> findings = [];
        WaterOutcome? outcome = brew?.Water
            ?? (brewed is null && plan.Strike is not null && LiquorNeed.Of(plan, findings) is { } need ? WaterTreatment.TryOf(plan, need, findings) : null);
        SourceLiquor source = outcome?.Source ?? SourceLiquor.Of(plan, findings);
        return new LiquorOutlook(plan, source, outcome, brew, [.. findings, .. outcome?.Findings ?? []]);
    }
}
