using System.Globalization;
using Gylebook.Forecast.Telling;
using Gylebook.Science.Water;

namespace Gylebook.Terminal;

/// <summary>The mash day and the ions of a forecast, as lines.</summary>
internal static class MashDayText
{
    /// <summary>Each rest with the ways to reach it, heating and chilling.</summary>
    public static IEnumerable<string> Heat(BrewForecast forecast)
    {
        foreach (string line in forecast.MashSchedule is { } schedule ? Rests(schedule) : [])
        {
            yield return line;
        }

        if (forecast.Chilling is { } chilling)
        {
            yield return chilling is { Minutes: double minutes, CoolantLitres: double litres }
                ? Text($"Chill from {chilling.FromCelsius:0} to {chilling.ToCelsius:0} °C: {minutes:0} min, stirred, with {litres:0} L of water; the first of it is near boiling")
                : Text($"Chill to {chilling.ToCelsius:0} °C: the cooling water is not that cold");
        }
    }

    /// <summary>Ions by place.</summary>
    public static IEnumerable<string> Ions(BrewForecast forecast)
    {
        foreach ((string place, IReadOnlyDictionary<Ion, double> ions) in forecast.Ions is { } known
            ? new[] { ("mash", known.Mash), ("kettle", known.Kettle), ("glass", known.Glass) } : [])
        {
            yield return $"{place}: {string.Join(", ", ions.Select(ion => Text($"{WaterJson.KeyOf(ion.Key)} {ion.Value:0}")))} mg/L";
        }
    }

    private static IEnumerable<string> Rests(MashSchedule schedule)
    {
        if (schedule.StrikeHeatMinutes is double strike)
        {
            yield return Text($"Heat the strike liquor: {strike:0} min");
        }

        foreach (MashRest rest in schedule.Rests)
        {
            string[] ways =
            [
                .. rest.HeatMinutes is double minutes ? [Text($"{minutes:0} min of heat")] : Array.Empty<string>(),
                .. rest.InfusionLitres is double litres ? [Text($"{litres:0.0} L at {rest.InfusionCelsius:0} °C")] : Array.Empty<string>(),
                .. rest.DecoctionShare is double share ? [Text($"{100 * share:0} % of the mash boiled and given back ({rest.DecoctionKilograms:0.0} kg)")] : Array.Empty<string>(),
            ];
            string falls = rest.EndCelsius is double end ? Text($", falls to {end:0.0} °C") : "";
            string by = ways.Length > 0 ? ": by " + string.Join(", or ", ways) : "";
            yield return Text($"Rest at {rest.Celsius:0.#} °C for {rest.Minutes:0} min{falls}{by}");
        }

        if (schedule.InfusionStrike is { } infused)
        {
            yield return Text($"If stepped with hot water, strike with {infused.Litres:0.0} L at {infused.Celsius:0.0} °C: the rest of the liquor comes as the steps");
        }

        if (schedule.BoilHeatMinutes is double boil)
        {
            yield return Text($"Heat to the boil: {boil:0} min");
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
