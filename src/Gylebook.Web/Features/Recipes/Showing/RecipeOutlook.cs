using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>What comes of a recipe on a kit: everything the page shows beside what was typed.</summary>
/// <param name="Recipe">The recipe it is of.</param>
/// <param name="Kit">The kit it is on.</param>
/// <param name="Forecast">The whole way from water to glass.</param>
/// <param name="Parts">What each line brings, by line.</param>
/// <param name="Picture">The run.</param>
public sealed record RecipeOutlook(
    Recipe Recipe, Kit Kit, BrewForecast Forecast, IReadOnlyDictionary<int, LinePart> Parts, RunPicture Picture)
{
    /// <summary>Whether there is a run to show.</summary>
    public bool HasRun => Forecast.Stages.Count > 0;

    /// <summary>Forecasts the recipe.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="kit">The kit it is on.</param>
    /// <param name="foods">The brewer's own foods, by id.</param>
    /// <param name="units">What the reader is used to.</param>
    /// <param name="water">Its water; null to count liquor as pure.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public static RecipeOutlook Of(
        Recipe recipe, Kit kit, Func<string, FoodMakeup?> foods, ReaderUnits units, WaterPlan? water = null, ForecastRequest? asked = null)
    {
        ForecastRequest request = asked ?? ForecastRequest.Usual;
        (BrewPlan planned, WaterOutcome? treated) = Forecaster.Plan(recipe, kit, foods, water);
        BrewPlan brew = planned with { Plan = planned.Plan is { } plan ? plan with { Bitterness = request.Bitterness } : null };
        BrewForecast forecast = Forecaster.Forecast(brew, recipe.Name, treated, request);
        return new RecipeOutlook(
            recipe, kit, forecast, LineParts.Of(brew).ToDictionary(p => p.Line), RunPicture.Of(forecast, units));
    }

    /// <summary>A headline number; null where unknown.</summary>
    public Band? this[string headline] => Forecast.Headline.FirstOrDefault(h => h.Name == headline)?.Band;
}
