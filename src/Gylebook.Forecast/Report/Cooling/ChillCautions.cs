using Gylebook.Engine.State;
using System.Globalization;

namespace Gylebook.Forecast.Report.Cooling;

/// <summary>What can hurt somebody, or the beer, on the way down to the pitch.</summary>
internal static class ChillCautions
{
    /// <summary>Cooler than this nothing scalds at once. Common practice, no source.</summary>
    private const double Scalds = 60;

    /// <summary>A degree of doubt in a thermometer is no reason to speak up.</summary>
    private const double NearEnough = 1;

    /// <summary>All of them; none where nothing is chilled.</summary>
    public static IEnumerable<Caution> Of(Chilling? chilling) => chilling is null || chilling.FromCelsius < Scalds
        ? []
        : [.. chilling.IsAlone ? Alone() : WithWater(chilling), .. chilling.RunsThrough ? Through(chilling) : []];

    private static IEnumerable<Caution> WithWater(Chilling chilling)
    {
        string then = chilling.CoolantOutCelsius is double celsius ? $"; then comes water of about {Number(celsius)} °C" : "";
        yield return new("chill.scald", Stage.Chill, $"The first water out of the chiller scalds: what stood in it is as hot as the wort{then}. Tie its hose down where nobody stands, and start the water slowly.", Words.Trade);
    }

    private static IEnumerable<Caution> Through(Chilling chilling)
    {
        yield return new("chill.hoses", Stage.Chill, "Near-boiling wort runs through hoses: take such as are made for it, clamp every joint, open the water first, and never work on a hose that is full. What grew in the chiller goes into the wort: rinse it at once, and run it hot before use.", Words.Trade);
        if (chilling.WortOutCelsius is double celsius && celsius > chilling.ToCelsius + NearEnough)
        {
            string slower = chilling.MostWortLitresPerMinute is double most
                ? $"at {most.ToString("0.0", CultureInfo.InvariantCulture)} L/min it reaches the pitch"
                : "the water is too warm for the pitch at any speed";
            yield return new("chill.warm", Stage.Chill, $"At this flow the wort comes out at {Number(celsius)} °C, and {Number(chilling.ToCelsius)} are wanted: {slower}. Do not pitch into warm wort.", "heat balance, docs/science/mash-heat.md");
        }
    }

    private static IEnumerable<Caution> Alone()
    {
        yield return new("chill.hotVessel", Stage.Chill, "A closed vessel of hot wort scalds for hours, and draws a vacuum as it cools. Fill only what its maker made for boiling liquid: glass cracks, plastic goes soft and lets go. Move it once it is cold, or with two people and gloves.", Words.Trade);
        yield return new("chill.slow", Stage.Chill, "Warm wort is food for everything. Fill hot to the top, close at once, let in only clean air, and pitch as soon as it is cool. Do not store it unpitched: above pH 4.6 and without air, germs that make people very ill can grow in it.", Words.Trade);
    }

    private static string Number(double value) => value.ToString("0", CultureInfo.InvariantCulture);
}
