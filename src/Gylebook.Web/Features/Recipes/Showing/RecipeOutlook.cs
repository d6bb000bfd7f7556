using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Pictures;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
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
    /// <param name="larder">The brewer's own sheets.</param>
    /// <param name="units">What the reader is used to.</param>
    /// <param name="water">Its water; null to count liquor as pure.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public static RecipeOutlook Of(
        Recipe recipe, Kit kit, Larder larder, ReaderUnits units, WaterPlan? water = null, ForecastRequest? asked = null)
    {
        ForecastRequest request = asked ?? ForecastRequest.Usual;
        (BrewPlan planned, WaterOutcome? treated) = Forecaster.Plan(recipe, kit, larder, water);
        BrewPlan brew = planned with { Plan = planned.Plan is { } plan ? plan with { Bitterness = request.Bitterness } : null };
        BrewForecast forecast = Forecaster.Forecast(brew, recipe.Name, treated, request);
        return new RecipeOutlook(
            recipe, kit, forecast, LineParts.Of(brew).ToDictionary(p => p.Line), RunPicture.Of(forecast, units))
        {
            Planned = brew,
        };
    }

    /// <summary>The recipe laid out, as it was run.</summary>
    public required BrewPlan Planned { get; init; }

    /// <summary>The same brew with some of its figures elsewhere than likely, and the likely run as a dashed line behind it.</summary>
    /// <param name="ways">By place of the figure: −1 its 5 %, 1 its 95 %.</param>
    public RecipeOutlook Supposing(IReadOnlyDictionary<int, double> ways)
    {
        BrewForecast supposed = Forecaster.Suppose(Planned, Forecast, ways);
        RunPicture picture = RunPicture.Of(supposed, Picture.Shown.Units);
        return this with
        {
            Forecast = supposed,
            Picture = picture with { Recipe = $"What if: {picture.Recipe}", Ghost = RunGhost.Of(Picture, "the likely run") },
            Before = null,
        };
    }

    /// <summary>Of the text before, with its bands: they stay in view until this one's are drawn.</summary>
    public RecipeOutlook? Before { get; init; }

    /// <summary>From where to where a headline number goes: of the text before until it is drawn anew; null where there is none.</summary>
    public Band? BandOf(string headline) => this[headline] is { Kind: not BandKind.Point } band ? band : Forecast.HowSure is null ? Before?.BandOf(headline) : null;

    /// <summary>A headline number; null where unknown.</summary>
    public Band? this[string headline] => Forecast.Headline.FirstOrDefault(h => h.Name == headline)?.Band;
}
