using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Acidity;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;

namespace Gylebook.Forecast.Report.Beer;

/// <summary>Is it a beer? Not so sour, nor so salt, that nobody could mean it; and some of each portion left to fill.</summary>
internal static class BeerCheck
{
    /// <summary>pH below which no sour beer goes: they end at 3.0 to 3.6. Common practice, no source.</summary>
    private const double Sourest = 3;

    /// <summary>pH of lemon juice, and below it: hard on teeth and gullet. From memory.</summary>
    private const double Corrosive = 2;

    /// <summary>Sodium beyond which a beer is brine, mg/L; salted wheat beers hold a third of it. Common practice, no source.</summary>
    private const double Salty = 1000;

    /// <summary>Sodium of which half a litre is an adult's whole day, mg/L: 2 g a day, WHO guideline on sodium (2012), from memory.</summary>
    private const double DayInHalfALitre = 4000;

    /// <summary>All that cannot be meant.</summary>
    public static IEnumerable<Finding> Findings(BrewPlan brew, RunOutcome run, PhReport ph) =>
        [.. Sour(ph), .. Salt(run), .. Empty(brew, run)];

    private static IEnumerable<Finding> Sour(PhReport ph)
    {
        if (ph.Beer is { } beer && beer.Likely < Sourest)
        {
            bool burns = beer.Likely < Corrosive;
            string value = Number(beer.Likely, "0.0", "pH"), limit = Number(burns ? Corrosive : Sourest, "0.0", "pH");
            string why = burns ? "it burns teeth and throat (from memory)" : "no sour beer goes so low (common practice, no source)";
            yield return new("beer.sour", burns ? Severity.Error : Severity.Warning, "ingredients",
                $"beer of about {value}, below {limit}: {why}. Look at the acids", value, limit);
        }
    }

    private static IEnumerable<Finding> Salt(RunOutcome run)
    {
        double sodium = run[BeerReadouts.Sodium];
        if (sodium > Salty)
        {
            bool day = sodium > DayInHalfALitre;
            string value = Number(sodium, "0", "mg/L"), limit = Number(day ? DayInHalfALitre : Salty, "0", "mg/L");
            string why = day
                ? "half a litre holds more than the 2 g that the WHO allows an adult in a day (from memory)"
                : "it tastes of brine (common practice, no source)";
            yield return new("beer.salt", day ? Severity.Error : Severity.Warning, "ingredients",
                $"{value} of sodium, above {limit}: {why}. Look at salt, and at foods that are salted", value, limit);
        }
    }

    private static IEnumerable<Finding> Empty(BrewPlan brew, RunOutcome run)
    {
        for (int i = 0; i < run.Plan.Packaged.Length; i++)
        {
            if (!(run.Trace.Wort(Stage.Package, run.Plan.Packaged[i]).Litres > 0))
            {
                string name = StageRows.NameOf(brew, run.Plan.Packaged[i]);
                yield return new("portion.nothing", Severity.Error, brew.Recipe.Portions.Count > i ? Invariant($"portions[{i}].share") : "package.volume",
                    $"nothing of the portion {name} is left to package: what racking leaves behind and the sludge take all of it", "0 L", "above 0 L");
            }
        }
    }

    private static string Number(double value, string format, string unit) => unit == "pH"
        ? $"pH {value.ToString(format, CultureInfo.InvariantCulture)}"
        : $"{value.ToString(format, CultureInfo.InvariantCulture)} {unit}";
}
