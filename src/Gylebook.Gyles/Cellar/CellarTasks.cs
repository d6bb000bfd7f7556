using Gylebook.Gyles.Days;

namespace Gylebook.Gyles.Cellar;

/// <summary>What to do while a beer ferments, and when.</summary>
/// <remarks>
/// <para>Reading again after two days, what helps a yeast that stopped, and the order of it: common practice, no source. The rest for diacetyl, 2 to 3 days
/// at 15 to 20 °C from two points of Plato above the end: from memory.</para>
/// </remarks>
internal static class CellarTasks
{
    private const double ReadEvery = 2, RestFrom = 0.008, RestBelow = 15;

    /// <summary>All of it, the next first.</summary>
    /// <param name="of">The fermentation.</param>
    /// <param name="days">The days of the plan.</param>
    /// <param name="done">Keys of those that are done with.</param>
    /// <param name="celsius">How warm it was to start, °C; null where nobody says.</param>
    public static IReadOnlyList<CellarTask> Of(Fermentation of, IReadOnlyList<GyleDay> days, IReadOnlySet<string> done, double? celsius)
    {
        Stillness? last = of.Read.FirstOrDefault();
        IEnumerable<CellarTask> now = of.Finished.Verdict switch
        {
            FinishedVerdict.NotRead => [Read("It is the only thing that tells.")],
            FinishedVerdict.NotYet => NotYet(of, last),
            FinishedVerdict.Stuck => Stuck(),
            FinishedVerdict.Doubtful => [Forced(), Read("Two days at one gravity more make it likelier to be the end.") with { At = of.Now.AddDays(ReadEvery) }],
            _ => [new(null, "Package it, or chill it to clear first.") { Why = "It is still, and where it was expected to end. Litres, sugar and pressure stand on the page of the package." }],
        };
        return [.. now.Concat(Diacetyl(of, last, celsius)).Concat(Planned(of, days, done)).OrderBy(task => task.At ?? DateTimeOffset.MinValue)];
    }

    private static CellarTask Read(string why) => new(null, "Read the gravity.")
    {
        Why = $"{why} Draw a small sample through the tap or with a clean thief, shake the gas out, and do not pour it back.",
    };

    private static IEnumerable<CellarTask> NotYet(Fermentation of, Stillness? last)
    {
        bool isOld = last is null || (of.Now - last.At).TotalDays >= ReadEvery;
        if (isOld)
        {
            yield return Read(last is null ? "" : "It was not read for two days.");
        }

        if (of.Done is not var (_, likely, high))
        {
            yield break;
        }

        DateTimeOffset first = likely > of.Now ? likely : of.Now.AddDays(isOld ? 0 : 1);
        if (likely > of.Now)
        {
            yield return new(likely, "Likely done: read the gravity.") { Until = high > likely ? high : null };
        }

        yield return new(first.AddDays(ReadEvery), "Read again. The same within a point? Then package. If not, wait two days and read.");
    }

    private static IEnumerable<CellarTask> Stuck() =>
    [
        new(null, "Look at the reading first.") { Why = "Shake the gas out, read at the temperature the hydrometer is marked for, and check it in water: it shows 1.000. A refractometer shows too much once there is alcohol." },
        new(null, "Warm it by two or three degrees, no warmer than the yeast likes.") { Why = "A yeast that has cooled sleeps. Warm slowly: gas comes out, and a full fermenter may foam.", Cautions = ["Warming drives gas out of a closed vessel: see that the airlock or the valve is open."] },
        new(null, "Swirl it gently, so that the yeast comes up again, and let no air in."),
        Forced(),
        new(null, "If the sample falls and the beer does not: pitch fresh yeast that is at work already.") { Why = "Started in a little wort, at full foam, and at the temperature of the beer. Do not bottle before it has stood still again." },
    ];

    private static CellarTask Forced() => new(null, "Start a forced ferment: a cup of it, much fresh yeast, covered and warm at 20 to 25 °C, shaken now and then, read until it is still.")
    {
        Why = "Where the sample ends is where the beer can. Write it in as a forced ferment.",
    };

    private static IEnumerable<CellarTask> Diacetyl(Fermentation of, Stillness? last, double? celsius)
    {
        if (celsius < RestBelow && last is not null && of.Finished.Verdict == FinishedVerdict.NotYet && last.Last - of.Fan.End.Middle is > 0 and <= RestFrom)
        {
            yield return new(null, "Let it warm to 15 to 20 °C for two or three days.") { Why = "Cold fermented beer is left its butter taste (diacetyl) otherwise. To test: keep a covered sample at 60 to 70 °C for 15 minutes, cool it and smell.", Cautions = ["Water at 60 to 70 °C scalds: warm the sample in a bath, and let it cool before you smell at it."] };
        }
    }

    /// <summary>What the plan has yet to come; packaging waits for the end, whatever its day was.</summary>
    private static IEnumerable<CellarTask> Planned(Fermentation of, IReadOnlyList<GyleDay> days, IReadOnlySet<string> done) => days
        .Where(day => day.AfterPitch is not null && day.Key != "package" && !done.Contains(day.Key) && (day.Items.Count > 0 || day.At > of.Now))
        .Select(day => new CellarTask(day.At, day.Sentence) { Day = day.Key, Cautions = day.Cautions });
}
