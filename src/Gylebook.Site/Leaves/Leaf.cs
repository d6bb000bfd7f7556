using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Days;
using Gylebook.Gyles.Plans;
using Gylebook.Pictures;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Leaves;

/// <summary>A publication with all that its page tells: reckoned once, in both systems of units, with bands.</summary>
public sealed record Leaf
{
    /// <summary>Draws behind the bands.</summary>
    private const int Draws = 2000;

    private static readonly ReaderUnits Others = ReaderUnits.UnitedStates with { Gravity = GravityUnit.Plato, Colour = ColourUnit.Ebc };

    /// <summary>What is given out.</summary>
    public required Publication Published { get; init; }

    /// <summary>Its files, read.</summary>
    public required GyleInputs Inputs { get; init; }

    /// <summary>The forecast with its bands.</summary>
    public required BrewForecast Forecast { get; init; }

    /// <summary>In litres, kilograms and °C; gravity as 1.050.</summary>
    public required RecipeSheet Metric { get; init; }

    /// <summary>In US gallons, pounds and °F; gravity in °P, colour in EBC.</summary>
    public required RecipeSheet Other { get; init; }

    /// <summary>Brew day, step by step.</summary>
    public required IReadOnlyList<BrewStep> Steps { get; init; }

    /// <summary>The days after it.</summary>
    public required IReadOnlyList<GyleDay> Later { get; init; }

    /// <summary>Minutes of brew day that have a length of their own.</summary>
    public double BrewMinutes => Steps.Sum(step => step.Minutes ?? 0);

    /// <summary>Days from the pitch to packaging; null where the recipe does not say.</summary>
    public double? CellarDays => GyleDays.ToPackage(Inputs.Recipe);

    /// <summary>Reckons a publication.</summary>
    /// <returns>None, and why, where it cannot be brewed as it is.</returns>
    public static (Leaf? Leaf, IReadOnlyList<Finding> Findings) Of(Publication publication)
    {
        ArgumentNullException.ThrowIfNull(publication);
        if (GyleInputs.Of(publication.Files) is not { } inputs)
        {
            return (null, [new("publish.unreadable", Severity.Error, "recipe", "a file of this publication cannot be read: publish the recipe anew")]);
        }

        DateTimeOffset day = new(publication.Day, TimeOnly.MinValue, TimeSpan.Zero);
        (BrewPlan planned, BrewForecast forecast) = inputs.Drawn(publication.Name, Draws);
        if (GyleInputs.Frozen(publication.Name, publication.Version, day, publication.Files, planned, forecast) is not { } plan)
        {
            return (null, forecast.Findings);
        }

        return (new Leaf
        {
            Published = publication, Inputs = inputs, Forecast = forecast,
            Metric = RecipeSheet.Of(planned, forecast, ReaderUnits.Metric), Other = RecipeSheet.Of(planned, forecast, Others),
            Steps = plan.Steps, Later = [.. GyleDays.Of(plan, day, day).Where(one => one.AfterPitch is not null)],
        }, forecast.Findings);
    }

    /// <summary>The rows of the sheet in both units, by place.</summary>
    public IEnumerable<(SheetPart Metric, SheetPart Other)> Parts => Metric.Parts.Zip(Other.Parts);

    /// <summary>Everything that goes in, in a line each: <c>3.60 kg pale ale malt</c>.</summary>
    public IEnumerable<string> Ingredients => Metric.Parts.SelectMany(part => part.Rows).Where(row => row.Amount.Length > 0).Select(row => $"{row.Amount} {row.What}{(row.When.Length > 0 ? $", {row.When}" : "")}");
}
