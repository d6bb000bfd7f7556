using Gylebook.Forecast;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Gyles.Days;

/// <summary>The days of a gyle as far as its plan knows them.</summary>
/// <remarks>Day 0 of fermentation is the pitch; each rest follows the one before it, and the beer is packaged when the last has ended. A beer that is not ready then waits: these are plans.</remarks>
public static class GyleDays
{
    /// <summary>The days, the first first.</summary>
    /// <param name="plan">The frozen plan.</param>
    /// <param name="start">When brew day began.</param>
    /// <param name="pitched">When yeast was pitched; null while it was not, or nobody said: then the day counts from the start.</param>
    /// <param name="portion">What goes into that portion alone; null for all that goes in.</param>
    /// <returns>Brew day alone where this program can no longer read a file of the plan.</returns>
    public static IReadOnlyList<GyleDay> Of(GylePlan plan, DateTimeOffset start, DateTimeOffset? pitched, string? portion = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        GyleDay brewDay = new("brew-day", "Brew day", start) { Until = start.AddMinutes(plan.Steps.Sum(step => step.Minutes ?? 0)) };
        return GyleInputs.Of(plan) is not { } inputs ? [brewDay] : [brewDay, .. new AfterPitch(plan, inputs, pitched ?? start, portion).Days().OrderBy(day => day.At)];
    }

    /// <summary>How keys of days begin on which something goes into the fermenter.</summary>
    public const string Fermenting = "ferment-day-";

    /// <summary>Key of a day on which something goes into the fermenter.</summary>
    /// <param name="day">Days after the pitch.</param>
    public static string KeyOf(double day) => Invariant($"{Fermenting}{day:0.##}");

    /// <summary>Days from the pitch to packaging; null where the recipe says no rest of its fermentation.</summary>
    public static double? ToPackage(Recipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return recipe.Ferment.Count > 0 ? recipe.Ferment.Sum(rest => rest.Time.Value.Days) : null;
    }

    private sealed class AfterPitch(GylePlan plan, GyleInputs inputs, DateTimeOffset pitched, string? portion)
    {
        private readonly IReadOnlyList<FrozenCaution> _cautions = FrozenForecast.Of(plan).Cautions;
        private readonly IReadOnlyList<PlannedLine> _lines =
            [.. Forecaster.Plan(inputs.Recipe, inputs.Kit, inputs.Larder, inputs.Water).Brew.Lines.Where(line => portion is null || line.Line.Portion is not { } only || only == portion)];

        public IEnumerable<GyleDay> Days()
        {
            foreach (double day in At(AdditionPoint.Ferment).Select(line => line.Line.At.Count).Distinct())
            {
                AdditionTime at = new(AdditionPoint.Ferment, day);
                yield return Day(KeyOf(day), "Add to the fermenter", day, at);
            }

            double ends = 0;
            IReadOnlyList<Rest> rests = inputs.Recipe.Ferment;
            for (int i = 0; i < rests.Count; i++)
            {
                ends += rests[i].Time.Value.Days;
                string then = i + 1 < rests.Count ? $", then {rests[i + 1].Temperature.Text}" : "";
                yield return Day(Invariant($"rest-{i + 1}-ends"), $"{rests[i].Time.Text} at {rests[i].Temperature.Text} are over{then}", ends);
            }

            if (ToPackage(inputs.Recipe) is { } packaged)
            {
                yield return Day("package", $"Package ({inputs.Recipe.Package.In})", packaged, new(AdditionPoint.Rack), new(AdditionPoint.Package));
            }
        }

        private GyleDay Day(string key, string title, double days, params AdditionTime[] places) => new(key, title, pitched.AddDays(days))
        {
            AfterPitch = days,
            Items = [.. places.SelectMany(place => At(place.Point).Where(line => line.Line.At == place)).Select(line => $"{line.Line.Amount.Text} {line.Name}{(line.Line.Portion is { } portion ? $" ({portion})" : "")}")],
            Cautions = [.. places.SelectMany(place => _cautions.Where(caution => caution.IsWarning && caution.Where == Words.Of(place))).Select(caution => caution.Message)],
        };

        private IEnumerable<PlannedLine> At(AdditionPoint point) => _lines.Where(line => line.Line.At.Point == point && !line.Line.Amount.IsNothing);
    }
}
