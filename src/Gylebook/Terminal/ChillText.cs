using Gylebook.Forecast.Report.Cooling;

namespace Gylebook.Terminal;

/// <summary>Chilling, as lines.</summary>
internal static class ChillText
{
    /// <summary>What to do, and how long it takes; or what the kit would have to say.</summary>
    public static IEnumerable<string> Lines(Chilling? chilling) => chilling is null ? [] : [Line(chilling)];

    private static string Line(Chilling chilling)
    {
        string way = Invariant($"from {chilling.FromCelsius:0} to {chilling.ToCelsius:0.#} °C");
        return chilling switch
        {
            { IsAlone: true, Minutes: double minutes } => Invariant($"Let it cool by itself {way}: about {minutes / 60:0} h in a room of {chilling.CoolerCelsius:0.#} °C"),
            { RunsThrough: true, Minutes: double minutes } =>
                Invariant($"Run {chilling.WortLitresPerMinute:0.0} L/min of wort through the chiller: {minutes:0} min with {chilling.CoolantLitres:0} L of water; it comes out at {chilling.WortOutCelsius:0.#} °C, the water at {chilling.CoolantOutCelsius:0} °C"),
            { Minutes: double minutes } =>
                Invariant($"Chill {way}: {minutes:0} min, stirred, with {chilling.CoolantLitres:0} L of water, out at {chilling.CoolantOutCelsius:0} °C to begin with"),
            { Needs.Count: > 0 } => Invariant($"{Verb(chilling)} {way}: how long is not known; the kit does not say {string.Join(", nor ", chilling.Needs.Select(Words))}"),
            _ => Invariant($"{Verb(chilling)} {way}: cannot be; {Cooler(chilling)} is {chilling.CoolerCelsius:0.#} °C"),
        };
    }

    /// <summary>A key of the kit as a brewer would ask for it.</summary>
    private static string Words(string key) => key switch
    {
        "chiller.coolant" => "how cold the water is",
        "chiller.litresPerMinute" => "how much water runs in a minute",
        "chiller.kilowattsPerKelvin" => "how much heat the chiller carries",
        "chiller.kind" => "what kind of chiller it has",
        "wortCooling" => "how fast a closed vessel cools",
        _ => key,
    };

    private static string Verb(Chilling chilling) => chilling.IsAlone ? "Let it cool by itself" : "Chill";

    private static string Cooler(Chilling chilling) => chilling.IsAlone ? "the room" : "the water";
}
