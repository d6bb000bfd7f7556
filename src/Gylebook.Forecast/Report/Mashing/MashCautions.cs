using System.Globalization;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.Report.Mashing;

/// <summary>Where the limit of attenuation should not be taken at its word.</summary>
internal static class MashCautions
{
    /// <summary>Less work than this is clearly less: kinetic models of a mash are good to about a tenth, and this is twice that. Our choice.</summary>
    private const double ClearlyLess = 0.8;

    /// <summary>Half an hour in this range converts a modern malt. Common practice, no source.</summary>
    private const double CoolestSure = 60, HottestSure = 72, SureMinutes = 30;

    /// <summary>Litres of liquor for a kilogram of malt: thinner mashes than this were measured. Our choice, below the 2.5 that was.</summary>
    private const double ThickestMeasured = 2;

    /// <summary>All of them; none without starch in a mash.</summary>
    public static IEnumerable<Caution> Of(BrewPlan brew)
    {
        if (!IsMashed(brew))
        {
            yield break;
        }

        RestCourse rests = brew.Plan!.Mash.Rests;
        double celsius = rests.ConvertingCelsius;
        if (!AttenuationLimit.IsWithinPublishedRange(celsius))
        {
            yield return new("attenuation.range", Stage.Mash, "The published series of attenuation against mash temperature runs from 65 to 80 °C; below it the limit is from memory.", "docs/science/mashing.md");
        }

        foreach (Caution caution in Conversion(brew))
        {
            yield return caution;
        }

        double share = rests.ShareOfAnHour(celsius);
        if (share < ClearlyLess)
        {
            string limit = Number(rests.PlannedLimitPercent, "0");
            yield return new("mash.shortRest", Stage.Mash, $"The rests let beta-amylase do about {Number(100 * share, "0")} % of what it does in an hour at {Number(celsius, "0.#")} °C, and the limit of attenuation ({limit} %) is from mashes of an hour: yours may end lower, the beer sweeter. Rest longer, or ferment a sample out.", "first-order inactivation, one measurement at 65 °C; docs/science/mashing.md");
        }
    }

    /// <summary>Whether nothing in print says how much this mash converts: its number is the most there can be.</summary>
    public static bool ConversionIsABound(BrewPlan brew) => IsMashed(brew) && SureMinutesOf(brew) < SureMinutes;

    /// <summary>Whether a mash has starch to convert: caramel and roasted malts alone have none.</summary>
    private static bool IsMashed(BrewPlan planned) => planned.Plan!.Mash.GristKilograms > 0 && planned.Recipe.Mash is { Rests.Count: > 0 }
        && planned.Lines.Any(line => line.Line.At.Point == AdditionPoint.Mash && line.Makeup[Component.Starch] > 0);

    private static double SureMinutesOf(BrewPlan brew) =>
        brew.Plan!.Mash.Rests.Rests.Where(rest => rest.Celsius is >= CoolestSure and <= HottestSure).Sum(rest => rest.Minutes);

    /// <summary>Where no rate of conversion is published, the number is the most there can be, and this says so.</summary>
    private static IEnumerable<Caution> Conversion(BrewPlan brew)
    {
        RestCourse rests = brew.Plan!.Mash.Rests;
        if (ConversionIsABound(brew))
        {
            double sure = SureMinutesOf(brew);
            double most = rests.PlannedOpenShare * rests.PlannedAlphaShare;
            string cold = rests.Rests.All(rest => rest.Celsius < CoolestSure) ? " Below 60 °C the table of gelatinisation has no barley starch open at all." : "";
            yield return new(
                "mash.conversion", Stage.Mash,
                $"Between 60 and 72 °C this mash rests for {Number(sure, "0.#")} min; half an hour there is sure to convert. How fast starch converts otherwise is not published: {Number(100 * most, "0.#")} % of it is counted, the most that opens and that the enzyme lasts for, and it may be anything from none to that.{cold} Test with iodine, or rest longer at 62 to 69 °C.",
                "opening and fading by Brandam et al. 2003, from memory; docs/science/mashing.md")
            {
                Severity = most < ClearlyLess ? Severity.Warning : Severity.Note,
            };
        }

        double malt = brew.Plan.Mash.Malts.Sum(m => m.Kilograms);
        double litres = brew.Plan.Liquors[0] / Wort.WaterKilogramsPerLitre;
        if (litres < ThickestMeasured * malt)
        {
            yield return new(
                "mash.thick", Stage.Mash,
                $"{Number(litres / malt, "0.0")} L of liquor for a kilogram of malt: what is published of conversion and attenuation was measured at 2.5 and 3. A thicker mash may convert less, and sticks; by how much nobody has printed.",
                "docs/science/mashing.md");
        }
    }

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
