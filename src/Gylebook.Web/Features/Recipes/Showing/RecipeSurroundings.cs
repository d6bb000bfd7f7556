using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>What a recipe is looked at with: all that its numbers hang on besides its own text.</summary>
/// <param name="Kit">The kit in use.</param>
/// <param name="Foods">The brewer's own foods, by id.</param>
/// <param name="Shown">How this reader wants to see numbers.</param>
/// <param name="Water">The recipe's water; null to count liquor as pure.</param>
/// <param name="Asked">What the reader asks for besides: a model of bitterness, a style.</param>
internal sealed record RecipeSurroundings(Kit Kit, Func<string, FoodMakeup?> Foods, Shown Shown, WaterPlan? Water, ForecastRequest Asked)
{
    /// <summary>The version that was kept last, and what it is called; null when none was.</summary>
    public (Recipe Recipe, string Name)? Kept { get; init; }

    /// <summary>What comes of a recipe there.</summary>
    public RecipeOutlook OutlookOf(Recipe recipe)
    {
        RecipeOutlook outlook = RecipeOutlook.Of(recipe, Kit, Foods, Shown.Units, Water, Asked);
        return Kept is not (Recipe kept, string name)
            ? outlook
            : outlook with
            {
                Forecast = outlook.Forecast with
                {
                    Findings = [.. outlook.Forecast.Findings, .. KeptCheck.Findings(recipe, outlook.Forecast, kept, name, Kit, Foods)],
                },
            };
    }

    /// <summary>A recipe and all that its numbers hang on, as text, for whoever has to mend a reckoning.</summary>
    public string Told(string recipe) => $"{recipe}\n{KitFile.Write(Kit)}\n{Water}\n{Asked}";
}
