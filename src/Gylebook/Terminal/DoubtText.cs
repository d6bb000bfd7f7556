using System.Globalization;
using Gylebook.Forecast.Report;

namespace Gylebook.Terminal;

/// <summary>How sure a forecast is, in sentences.</summary>
internal static class DoubtText
{
    private const int MostReadings = 5;

    /// <summary>Where the doubt comes from, and what to measure next; nothing when nothing was drawn.</summary>
    public static IEnumerable<string> Lines(BrewForecast forecast)
    {
        if (forecast.HowSure is not { } sure)
        {
            return [];
        }

        string count = sure.DrawCount.ToString("N0", CultureInfo.InvariantCulture);
        return
        [
            $"Low to high: nine of ten brews, by {count} draws of all that is uncertain. Likely is the run with every figure at its middle.",
            .. sure.Causes.Select(doubt => $"{doubt.Readout.Title}: {doubt.Sentence}."),
            .. sure.IsAfterReadings ? ["Readings tie figures to each other, so these shares overlap."] : Array.Empty<string>(),
            .. sure.Causes.Where(doubt => doubt.Aside is not null).Select(doubt => $"{doubt.Readout.Title}: {doubt.Aside}."),
            .. sure.MeasureNext.Take(MostReadings).Select((advice, place) =>
                Invariant($"{(place == 0 ? "Measure next" : "Then")}: {advice.Words} ({advice.Reading.Instrument.Name}, {advice.Reading.Minutes:0} min): {advice.Sentence}.")),
        ];
    }
}
