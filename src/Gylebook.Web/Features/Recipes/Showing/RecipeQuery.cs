using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>What the address of a recipe's page asks for.</summary>
public static class RecipeQuery
{
    /// <summary>The model of bitterness, by its name in files.</summary>
    public const string Bitterness = "bitterness";

    /// <summary>The style to compare with, by its id.</summary>
    public const string Style = "style";

    /// <summary>The line whose amount is to be typed over, from 0.</summary>
    public const string Line = "line";

    /// <summary>Reads it. An address is easily mistyped: what is not known asks for nothing.</summary>
    public static ForecastRequest Read(string? bitterness, string? style) => ForecastRequest.Usual with
    {
        Bitterness = Enum.GetValues<BitternessModel>().FirstOrDefault(model => Words.Of(model) == bitterness),
        Style = style is null ? null : StyleTable.All.FirstOrDefault(row => row.Id == style),
    };
}
