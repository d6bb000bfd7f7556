using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Pictures.Sheets;

/// <summary>A recipe as it lies beside the kettle, all in words: what goes in, when, and what to look out for. Written by <see cref="RecipeSheetHtml"/>.</summary>
public sealed record RecipeSheet
{
    /// <summary>The recipe's name.</summary>
    public required string Name { get; init; }

    /// <summary>The kit's name; empty when nothing could be read.</summary>
    public string Kit { get; init; } = "";

    /// <summary>What the brewer wants to remember; empty for nothing.</summary>
    public string Notes { get; init; } = "";

    /// <summary>The numbers asked for first.</summary>
    public IReadOnlyList<SheetFigure> Figures { get; init; } = [];

    /// <summary>All that goes in, by where it goes in, in the order of the run.</summary>
    public IReadOnlyList<SheetPart> Parts { get; init; } = [];

    /// <summary>What must be told to people who cannot eat everything.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>Cautions that are not grave, in two or three words each: hazards first, then limits of the numbers.</summary>
    public IReadOnlyList<string> Marks { get; init; } = [];

    /// <summary>The run from water to glass; null when it cannot be brewed.</summary>
    public RunPicture? Run { get; init; }

    /// <summary>What is wrong or doubtful in what was entered.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>What failed when it could not be reckoned, for a log; null as a rule.</summary>
    public Exception? Failure { get; init; }

    /// <summary>Why it cannot be brewed as it is; empty when it can.</summary>
    public IEnumerable<Finding> Problems => Findings.Where(finding => finding.Severity == Severity.Error);

    /// <summary>The sheet of a recipe, forecast for it.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="kit">The kit.</param>
    /// <param name="larder">The brewer's own sheets; asked before the tables.</param>
    /// <param name="water">The water it is brewed with; null to count liquor as pure.</param>
    /// <param name="units">What the reader wants to see; null for metric ones.</param>
    /// <param name="asked">What the reader asks for besides; null for what everybody gets.</param>
    public static RecipeSheet Of(Recipe recipe, Kit kit, Larder larder, WaterPlan? water = null, ReaderUnits? units = null, ForecastRequest? asked = null)
    {
        (BrewPlan brew, WaterOutcome? treated) = Forecaster.Plan(recipe, kit, larder, water);
        BrewForecast forecast = Forecaster.Forecast(brew, recipe.Name, treated, asked);
        return Of(brew, forecast, units ?? ReaderUnits.Metric);
    }

    /// <summary>The sheet of a brew that is planned and forecast already.</summary>
    /// <param name="planned">The recipe on its kit.</param>
    /// <param name="forecast">Its forecast.</param>
    /// <param name="units">What the reader wants to see.</param>
    public static RecipeSheet Of(BrewPlan planned, BrewForecast forecast, ReaderUnits units) => new SheetReading(forecast, planned, new Shown(units)).Sheet();
}

/// <summary>A number of the headline.</summary>
/// <param name="Title">What.</param>
/// <param name="Value">The likely value with its unit.</param>
/// <param name="Ends">Between what it may lie; empty where nobody knows.</param>
public sealed record SheetFigure(string Title, string Value, string Ends);

/// <summary>One place of the brew: its own few words, and what goes in there.</summary>
/// <param name="Name">Of the place: <c>Mash</c>.</param>
/// <param name="Aside">Temperatures and times.</param>
/// <param name="Rows">What goes in, in order.</param>
/// <param name="Cautions">What must be read in full there.</param>
public sealed record SheetPart(string Name, string Aside, IReadOnlyList<SheetRow> Rows, IReadOnlyList<SheetCaution> Cautions);

/// <summary>Something that goes in.</summary>
/// <param name="What">Its name, with what tells it apart: <c>Fuggle, whole, 4.8 % alpha</c>.</param>
/// <param name="When">When, as recipes say it: <c>boil 60 min</c>; empty where the place says it already.</param>
/// <param name="Amount">How much to weigh or measure out.</param>
/// <param name="Brings">What it brings: its share of the grist, its bitterness; empty for nothing to tell.</param>
public sealed record SheetRow(string What, string When, string Amount, string Brings);

/// <summary>A caution, in brief and in full.</summary>
/// <param name="Mark">It in two or three words.</param>
/// <param name="Message">What to look out for, and what to do.</param>
public sealed record SheetCaution(string Mark, string Message);
