using System.Globalization;

namespace Gylebook.Forecast.Telling;

/// <summary>Where in the run a place lies, by its name: a stage, or a time to put something in.</summary>
internal static class RunOrder
{
    private static readonly string[] Places =
    [
        "strike", "mash", "mashReading", "lift", "run-off", "rinse", "sparge", "copper-up", "kettle", "sour", "boil", "knock-out", "stand", "chill", "cast", "pitch",
        "ferment", "crash", "rack", "package", "pour",
    ];

    /// <summary>Comes before another place when it is less: "boil 60 min" before "boil 10 min" before "ferment day 3".</summary>
    public static (int Place, double Within) Of(string where)
    {
        string[] words = where.Split(' ');
        int place = Array.IndexOf(Places, words[0]);
        double count = words.Select(word => double.TryParse(word, CultureInfo.InvariantCulture, out double number) ? number : 0).Sum();
        // Minutes count down to the end of the boil or the stand, days count up.
        return (place < 0 ? Places.Length : place, words[0] is "boil" or "stand" ? -count : count);
    }
}
