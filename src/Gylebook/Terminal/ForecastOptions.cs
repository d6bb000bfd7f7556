using System.Globalization;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Recipes.Data;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Quantities;

namespace Gylebook.Terminal;

/// <summary>Options of a forecast, read from what was typed.</summary>
internal static class ForecastOptions
{
    private const double ThinnestGlass = 0.001;
    private const double ThickestGlass = 1;
    private const double LeastStarter = 0.1;

    /// <summary>Reads them; what is null was not typed.</summary>
    /// <returns>False when one cannot be: <paramref name="problem"/> says which, with its limits.</returns>
    public static bool TryRead(
        string? bitterness, string? style, string? glass, string? starter, string? draws, out ForecastRequest asked, out string problem)
    {
        asked = ForecastRequest.Usual;
        return Model(bitterness, ref asked, out problem)
            && Style(style, ref asked, out problem)
            && Glass(glass, ref asked, out problem)
            && Starter(starter, ref asked, out problem)
            && Draws(draws, ref asked, out problem);
    }

    /// <summary>Draws for whoever reads a forecast to the end.</summary>
    public const string UsualDraws = "4000";

    private const int FewestDraws = 100;
    private const int MostDraws = 100_000;

    private static bool Model(string? typed, ref ForecastRequest asked, out string problem)
    {
        problem = "";
        foreach (BitternessModel model in Enum.GetValues<BitternessModel>())
        {
            if (typed is null || string.Equals(typed, Words.Of(model), StringComparison.OrdinalIgnoreCase))
            {
                asked = asked with { Bitterness = model };
                return true;
            }
        }

        problem = $"--bitterness: {typed}; must be {string.Join(" or ", Enum.GetValues<BitternessModel>().Select(Words.Of))}.";
        return false;
    }

    private static bool Style(string? typed, ref ForecastRequest asked, out string problem)
    {
        problem = "";
        if (typed is null)
        {
            return true;
        }

        Found<StyleStatistics> found = StyleTable.Find(typed);
        asked = asked with { Style = found.Match };
        problem = found.Match is null ? $"--style: {typed}; not in the table. Nearest: {string.Join(", ", found.Nearest)}." : "";
        return found.Match is not null;
    }

    private static bool Glass(string? typed, ref ForecastRequest asked, out string problem)
    {
        problem = "";
        if (typed is null)
        {
            return true;
        }

        if (!UnitTable.TryParse(typed, out Entered<Length> glass, out problem))
        {
            problem = $"--glass: {problem}";
            return false;
        }

        bool fits = glass.Value.Metres is >= ThinnestGlass and <= ThickestGlass;
        problem = fits ? "" : $"--glass: {typed}; must be from 1 mm to 1 m.";
        asked = fits ? asked with { Glass = glass.Value } : asked;
        return fits;
    }

    private static bool Starter(string? typed, ref ForecastRequest asked, out string problem)
    {
        problem = "";
        if (typed is null)
        {
            return true;
        }

        if (!UnitTable.TryParse(typed, out Entered<VolumeAt20C> starter, out problem))
        {
            problem = $"--starter: {problem}";
            return false;
        }

        bool fits = starter.Value.Litres is >= LeastStarter and <= StarterGrowth.MostLitres;
        problem = fits ? "" : Invariant($"--starter: {typed}; must be from {LeastStarter} L to {StarterGrowth.MostLitres:0} L, where the published table of starters ends.");
        asked = fits ? asked with { MostStarter = starter.Value } : asked;
        return fits;
    }

    private static bool Draws(string? typed, ref ForecastRequest asked, out string problem)
    {
        problem = "";
        if (typed is null)
        {
            return true;
        }

        bool fits = TryReadDraws(typed, mayBeNone: true, out int draws, out problem);
        asked = fits ? asked with { Draws = draws } : asked;
        return fits;
    }

    /// <summary>Reads how many draws.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="mayBeNone">Whether 0 is a number of them.</param>
    /// <param name="draws">How many.</param>
    /// <param name="problem">What is wrong, with the limits; empty when nothing.</param>
    public static bool TryReadDraws(string typed, bool mayBeNone, out int draws, out string problem)
    {
        bool fits = int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out draws) && (draws is >= FewestDraws and <= MostDraws || (mayBeNone && draws == 0));
        problem = fits ? "" : Invariant($"--draws: {typed}; must be {(mayBeNone ? "0, or " : "")}from {FewestDraws} to {MostDraws}.");
        return fits;
    }
}
