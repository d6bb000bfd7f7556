using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>What a recipe is looked at with: all that its numbers hang on besides its own text.</summary>
/// <param name="Kit">The kit in use.</param>
/// <param name="Larder">The brewer's own sheets.</param>
/// <param name="Shown">How this reader wants to see numbers.</param>
/// <param name="Water">The recipe's water; null to count liquor as pure.</param>
/// <param name="Asked">What the reader asks for besides: a model of bitterness, a style.</param>
internal sealed record RecipeSurroundings(Kit Kit, Larder Larder, Shown Shown, WaterPlan? Water, ForecastRequest Asked)
{
    private (object With, RunGhost Ghost)? _ghost;

    /// <summary>The version that was kept last, and what it is called; null when none was.</summary>
    public (Recipe Recipe, string Name)? Kept { get; init; }

    /// <summary>What comes of a recipe there.</summary>
    public RecipeOutlook OutlookOf(Recipe recipe)
    {
        RecipeOutlook outlook = RecipeOutlook.Of(recipe, Kit, Larder, Shown.Units, Water, Asked);
        return Kept is not (Recipe kept, string name)
            ? outlook
            : outlook with
            {
                Forecast = outlook.Forecast with
                {
                    Findings = [.. outlook.Forecast.Findings, .. KeptCheck.Findings(recipe, outlook.Forecast, kept, name, Kit, Larder)],
                },
                Picture = outlook.Picture with { Ghost = GhostOf(kept, name) },
            };
    }

    /// <summary>The run of the kept version here: reckoned once, and anew when something around it changes.</summary>
    private RunGhost GhostOf(Recipe kept, string name)
    {
        object with = (kept, name, Kit, Larder, Water);
        if (_ghost is not { } known || !known.With.Equals(with))
        {
            RunPicture run = RunPicture.Of(Forecaster.Forecast(kept, Kit, Larder, kept.Name, Water), Shown.Units);
            _ghost = known = (with, RunGhost.Of(run, name));
        }

        return known.Ghost;
    }

    /// <summary>A recipe and all that its numbers hang on, as text, for whoever has to mend a reckoning.</summary>
    public string Told(string recipe) => $"{recipe}\n{KitFile.Write(Kit)}\n{Water}\n{Asked}";
}
