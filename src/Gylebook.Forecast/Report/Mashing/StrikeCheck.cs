using System.Globalization;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;

namespace Gylebook.Forecast.Report.Mashing;

/// <summary>Can the strike be made? Liquor no hotter than the boil, and enough of it to stir the grist.</summary>
internal static class StrikeCheck
{
    /// <summary>L/kg below which a mash is thicker than brewers make it: they strike with 2 to 4. Common practice, no source.</summary>
    private const double Thick = 1.5;

    /// <summary>All that is wrong with it; nothing without a mash.</summary>
    public static IEnumerable<Finding> Findings(BrewPlan brew, MashSchedule? schedule)
    {
        if (schedule is null)
        {
            yield break;
        }

        string where = brew.Recipe.Liquor?.Strike is null ? "mash" : "liquor.strike";
        if (schedule.StrikeCelsius > schedule.BoilCelsius)
        {
            string wanted = Number(schedule.StrikeCelsius, "0.#", "°C"), boil = Number(schedule.BoilCelsius, "0.#", "°C");
            yield return new("strike.tooHot", Severity.Error, where,
                Invariant($"the strike liquor would have to be {wanted} to bring the grain to {schedule.Rests[0].Celsius:0.#} °C; water boils at {boil} here. Strike with more liquor, or at a cooler rest"), wanted, boil);
        }

        double grist = brew.Plan!.Mash.GristKilograms;
        double thickness = schedule.StrikeLitres / grist;
        if (grist > 0 && thickness < Thick)
        {
            (string code, Severity severity, double most, string why) = thickness < LiquorNeed.Thickest
                ? ("mash.tooThick", Severity.Error, LiquorNeed.Thickest, "cannot be stirred")
                : ("mash.thick", Severity.Warning, Thick, "is thicker than brewers mash; expect clumps and a poor yield");
            string has = Number(thickness, "0.##", "L/kg"), limit = Number(most, "0.##", "L/kg");
            yield return new(code, severity, where, $"{has} of liquor to the grist; less than {limit} {why} (common practice, no source)", has, limit);
        }
    }

    private static string Number(double value, string format, string unit) => $"{value.ToString(format, CultureInfo.InvariantCulture)} {unit}";
}
