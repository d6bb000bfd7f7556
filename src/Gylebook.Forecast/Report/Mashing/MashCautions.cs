using System.Globalization;
using Gylebook.Engine.Stages;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.Report.Mashing;

/// <summary>Where the limit of attenuation should not be taken at its word.</summary>
internal static class MashCautions
{
    /// <summary>Less work than this is clearly less: kinetic models of a mash are good to about a tenth, and this is twice that. Our choice.</summary>
    private const double ClearlyLess = 0.8;

    /// <summary>All of them; none without a mash.</summary>
    public static IEnumerable<Caution> Of(BrewPlan brew)
    {
        if (brew.Plan!.Mash.GristKilograms <= 0 || brew.Recipe.Mash is not { Rests.Count: > 0 })
        {
            yield break;
        }

        RestCourse rests = brew.Plan.Mash.Rests;
        double celsius = rests.ConvertingCelsius;
        if (!AttenuationLimit.IsWithinPublishedRange(celsius))
        {
            yield return new("attenuation.range", Severity.Note, "mash", "The published series of attenuation against mash temperature runs from 65 to 80 °C; below it the limit is from memory.", "docs/science/mashing.md");
        }

        double share = rests.ShareOfAnHour(celsius);
        if (share < ClearlyLess)
        {
            string limit = Number(rests.PlannedLimitPercent, "0");
            yield return new("mash.shortRest", Severity.Note, "mash", $"The rests let beta-amylase do about {Number(100 * share, "0")} % of what it does in an hour at {Number(celsius, "0.#")} °C, and the limit of attenuation ({limit} %) is from mashes of an hour: yours may end lower, the beer sweeter. Rest longer, or ferment a sample out.", "first-order inactivation, one measurement at 65 °C; docs/science/mashing.md");
        }
    }

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
