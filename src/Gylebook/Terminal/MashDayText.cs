using Gylebook.Engine.Readouts;
using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Recipes;
using Gylebook.Science.Water;

namespace Gylebook.Terminal;

/// <summary>The mash day and the ions of a forecast, as lines.</summary>
internal static class MashDayText
{
    /// <summary>Strike, each rest with the ways to reach it, rinse, boil and chilling: in the order they are done.</summary>
    public static IEnumerable<string> Heat(BrewForecast forecast) =>
    [
        .. forecast.MashSchedule is { } schedule ? Mash(schedule) : [],
        .. ChillText.Lines(forecast.Chilling),
    ];

    /// <summary>Ions by place.</summary>
    public static IEnumerable<string> Ions(BrewForecast forecast)
    {
        foreach ((string place, IReadOnlyDictionary<Ion, double> ions) in forecast.Ions is { } known
            ? new[] { ("mash", known.Mash), ("kettle", known.Kettle) } : [])
        {
            yield return $"{place}: {string.Join(", ", ions.Select(ion => Invariant($"{Words.Of(ion.Key)} {ion.Value:0}")))} mg/L";
        }

        if (forecast.Ions is { } table)
        {
            IEnumerable<(string Name, Band Band)> glass = [.. table.Glass.Select(ion => (Words.Of(ion.Key), ion.Value)), ("phosphorus", table.Phosphorus)];
            yield return $"glass, malt's own with them: {string.Join(", ", glass.Select(ion => Invariant($"{ion.Name} {ion.Band.Likely:0} ({ion.Band.Low:0} to {ion.Band.High:0})")))} mg/L";
        }
    }

    private static IEnumerable<string> Mash(MashSchedule schedule)
    {
        yield return Invariant($"Heat {schedule.StrikeLitres:0.0} L of liquor to {schedule.StrikeCelsius:0.0} °C{Taking(schedule.StrikeHeatMinutes)}");
        if (schedule.InfusionStrike is { } infused)
        {
            yield return Invariant($"If stepped with hot water, strike with {infused.Litres:0.0} L at {infused.Celsius:0.0} °C instead: the rest of the liquor comes as the steps");
        }

        foreach (MashRest rest in schedule.Rests)
        {
            yield return Rest(rest);
        }

        if (schedule.Rinse is { } rinse)
        {
            string at = rinse.Celsius is double celsius ? Invariant($" at {celsius:0.#} °C") : "";
            yield return Invariant($"{Spoken(rinse.Method)} {rinse.Litres:0.0} L of liquor{at}");
        }

        if (schedule.HasBoil)
        {
            yield return Invariant($"Heat {schedule.CopperUpLitres:0.0} L of wort to the boil at {schedule.BoilCelsius:0.0} °C{Taking(schedule.BoilHeatMinutes)}");
        }
    }

    private static string Rest(MashRest rest)
    {
        string[] ways =
        [
            .. rest.HeatMinutes is double minutes ? [Invariant($"{minutes:0} min of heat")] : Array.Empty<string>(),
            .. rest.InfusionLitres is double litres ? [Invariant($"{litres:0.0} L at {rest.InfusionCelsius:0} °C")] : Array.Empty<string>(),
            .. rest.DecoctionShare is double share ? [Invariant($"{100 * share:0} % of the mash boiled and given back ({rest.DecoctionKilograms:0.0} kg)")] : Array.Empty<string>(),
        ];
        string falls = rest.EndCelsius is double end ? Invariant($", falls to {end:0.0} °C") : "";
        string by = ways.Length > 0 ? "; reached by " + string.Join(", or ", ways) : "";
        return Invariant($"Rest at {rest.Celsius:0.#} °C for {rest.Minutes:0} min{falls}{by}; amylase left at its end: alpha {100 * rest.AlphaLeft:0} %, beta {Beta(rest)}");
    }

    /// <summary>The tough tenth of beta-amylase was measured at 65 °C; what a hotter rest leaves of it nobody knows.</summary>
    private static string Beta(MashRest rest) =>
        rest.BetaLeft > 0.1 ? Invariant($"{100 * rest.BetaLeft:0} %") : rest.Celsius > 65 ? "a tenth at most" : "about a tenth";

    private static string Spoken(SpargeMethod method) => method switch
    {
        SpargeMethod.Dunk => "Stir the grain about in",
        SpargeMethod.Batch => "Run off, then stir in",
        SpargeMethod.Continuous => "Trickle on as it runs off",
        _ => "Rinse the grain with",
    };

    private static string Taking(double? minutes) => minutes is double known ? Invariant($": {known:0} min") : "";
}
