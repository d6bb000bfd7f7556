using Gylebook.Forecast;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Gyles.Cellar;

/// <summary>What can be said of the end of a fermentation.</summary>
public enum FinishedVerdict
{
    /// <summary>No gravity was read since the pitch.</summary>
    NotRead,

    /// <summary>It goes on, or nobody has looked for long enough.</summary>
    NotYet,

    /// <summary>It stands still where it should not: sugar is left that this yeast was expected to take.</summary>
    Stuck,

    /// <summary>It stands still, a little high: whether sugar is left cannot be told from these readings.</summary>
    Doubtful,

    /// <summary>It stands still at its end.</summary>
    Finished,
}

/// <summary>A reason for or against.</summary>
/// <param name="Holds">Whether it speaks for the end.</param>
/// <param name="Text">What is so.</param>
/// <param name="Limit">What it is held against.</param>
public sealed record FinishedReason(bool Holds, string Text, string Limit);

/// <summary>"Finished?", answered with reasons. An airlock is none of them: it is silent where a lid leaks, and bubbles where a beer warms.</summary>
/// <param name="Verdict">The answer.</param>
/// <param name="Because">Why, in one sentence.</param>
/// <param name="Reasons">All that was looked at.</param>
public sealed record FinishedAnswer(FinishedVerdict Verdict, string Because, IReadOnlyList<FinishedReason> Reasons)
{
    /// <summary>As a heading says it.</summary>
    public string Heading => Verdict switch
    {
        FinishedVerdict.NotRead => "Finished? Nobody has looked.",
        FinishedVerdict.NotYet => "Finished? Not yet.",
        FinishedVerdict.Stuck => "Finished? No: it is stuck.",
        FinishedVerdict.Doubtful => "Finished? It cannot be told.",
        _ => "Finished? Yes.",
    };
}

/// <summary>Something that went into the fermenter, or is to go in.</summary>
/// <param name="What">As the recipe says it.</param>
/// <param name="Planned">When it was to go in.</param>
/// <param name="Done">When it went in; null where nobody said so.</param>
public sealed record FermenterAddition(string What, DateTimeOffset Planned, DateTimeOffset? Done);

/// <summary>What the question is answered from.</summary>
public sealed record FinishedQuestion
{
    /// <summary>What was read, by instrument, the one read last first.</summary>
    public required IReadOnlyList<Stillness> Read { get; init; }

    /// <summary>Where this wort and yeast were expected to end, SG, before any reading of the fermentation.</summary>
    public required Quantiles Expected { get; init; }

    /// <summary>Where a forced ferment ended, SG; null without one.</summary>
    public double? Forced { get; init; }

    /// <summary>Sugar that goes in meanwhile.</summary>
    public IReadOnlyList<FermenterAddition> Additions { get; init; } = [];

    /// <summary>How warm it is, °C; null where nobody says.</summary>
    public double? Celsius { get; init; }

    /// <summary>How warm it was to be, °C; null where the recipe does not say.</summary>
    public double? PlannedCelsius { get; init; }

    /// <summary>The time.</summary>
    public required DateTimeOffset Now { get; init; }
}

/// <summary>Answers "finished?".</summary>
/// <remarks>
/// <para>Finished is: still for two days within a point, within two points (0.5 °P) of the end that a forced ferment or else the forecast gives, nothing
/// sweet on its way, and not colder than planned by so much that the yeast may sleep. Source: the first two common practice, no source; the three
/// degrees and the three days after an addition are judged.</para>
/// <para>A gravity that stands still above the highest end that the forecast thinks likely (95 %) is stuck; between that and the two points it is doubtful,
/// and only a forced ferment tells.</para>
/// </remarks>
public static class FinishedCheck
{
    /// <summary>That near the end counts as the end, SG.</summary>
    public const double Near = 0.002;

    /// <summary>So many days after something sweet went in nothing is done.</summary>
    public const double DaysAfterSugar = 3;

    private const double Sleeps = 3;

    /// <summary>The answer.</summary>
    public static FinishedAnswer Of(FinishedQuestion asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        if (asked.Read is not [{ } last, ..])
        {
            return new(FinishedVerdict.NotRead, "No gravity was read since the pitch, and nothing else tells.", []);
        }

        // The hand's hydrometer and a float may differ in all but this: one that moves is enough to doubt the end.
        Stillness telling = asked.Read.FirstOrDefault(read => read.IsMoving) ?? asked.Read.FirstOrDefault(read => read.IsStill) ?? last;
        FinishedReason[] reasons = [Still(telling), End(telling, asked), .. asked.Additions.Select(addition => Gone(addition, asked.Now)), .. Awake(asked)];
        return new(Verdict(telling, asked, reasons), Because(telling, asked, reasons), reasons);
    }

    private static FinishedVerdict Verdict(Stillness telling, FinishedQuestion asked, FinishedReason[] reasons) =>
        !telling.IsStill || reasons.Skip(2).Any(reason => !reason.Holds) ? FinishedVerdict.NotYet
        : reasons[1].Holds ? FinishedVerdict.Finished
        : telling.Last > Highest(asked) ? FinishedVerdict.Stuck
        : FinishedVerdict.Doubtful;

    private static double Highest(FinishedQuestion asked) => asked.Forced is { } forced ? forced + Near : Math.Max(asked.Expected.High, asked.Expected.Middle + Near);

    private static FinishedReason Still(Stillness telling) => new(
        telling.IsStill,
        telling.IsMoving ? Invariant($"{(telling.Fallen >= 0 ? "Down" : "Up")} {Points(telling.Spread)} in {Days(telling.Days)}")
        : telling.IsLongEnough ? Invariant($"Still at {telling.Last:0.000} for {Days(telling.Days)}")
        : telling.Days > 0 ? Invariant($"Read over {Days(telling.Days)} only") : "Read once: that tells no movement",
        "still means: two days or more within one point");

    private static FinishedReason End(Stillness telling, FinishedQuestion asked)
    {
        double end = asked.Forced ?? asked.Expected.Middle, above = telling.Last - end;
        string limit = asked.Forced is { } forced
            ? Invariant($"a forced ferment of this wort ended at {forced:0.000}; within two points of it is the end")
            : Invariant($"{asked.Expected.Middle:0.000} likely, {asked.Expected.Low:0.000} to {asked.Expected.High:0.000}; within two points of likely is the end");
        bool isBelow = asked.Forced is null && telling.Last < asked.Expected.Low - Near;
        string text = isBelow ? Invariant($"{telling.Last:0.000}, {Points(asked.Expected.Low - telling.Last)} below the lowest end expected: something else may be at work, an enzyme, a wild yeast or one that eats dextrin")
            : Math.Abs(above) < 0.5 * Stillness.Point ? Invariant($"{telling.Last:0.000}, where it was expected to end")
            : Invariant($"{telling.Last:0.000}, {Points(Math.Abs(above))} {(above > 0 ? "above" : "below")} the end expected");
        return new(above <= Near + 1e-9 && !isBelow, text, limit);
    }

    private static FinishedReason Gone(FermenterAddition addition, DateTimeOffset now)
    {
        double days = (now - (addition.Done ?? addition.Planned)).TotalDays;
        return addition.Done is null
            ? new(false, days < 0 ? $"{addition.What} has yet to go in" : $"{addition.What} was to go in {Days(days)} ago, and nobody wrote that it did", "what is sweet ferments, and is seen in the gravity only after it went in")
            : new(days >= DaysAfterSugar, $"{addition.What} went in {Days(days)} ago", "three days and a still gravity after it");
    }

    private static IEnumerable<FinishedReason> Awake(FinishedQuestion asked)
    {
        if (asked.Celsius is { } now && asked.PlannedCelsius is { } planned)
        {
            yield return new(
                now >= planned - Sleeps,
                now >= planned - Sleeps ? Invariant($"Not cold: {now:0.0} °C") : Invariant($"Cold: {now:0.0} °C, and yeast may only sleep"),
                Invariant($"planned at {planned:0.0} °C; three degrees less may stop it"));
        }
    }

    private static string Because(Stillness telling, FinishedQuestion asked, FinishedReason[] reasons) => Verdict(telling, asked, reasons) switch
    {
        FinishedVerdict.Finished => Invariant($"Because it has not moved for {Days(telling.Days)}, and stands where this wort and yeast were expected to end."),
        FinishedVerdict.Stuck => Invariant($"Because it has not moved for {Days(telling.Days)}, {Points(telling.Last - (asked.Forced ?? asked.Expected.Middle))} above its likely end: sugar is left that will ferment when something wakes it, in a bottle too."),
        FinishedVerdict.Doubtful => Invariant($"Because it stands still, yet {Points(telling.Last - asked.Expected.Middle)} above its likely end: a forced ferment tells whether that is its end."),
        _ when telling.IsMoving => telling.Fallen >= 0 ? "Because it still falls." : "Because it rose: read again, shake the gas out of the sample, and look at what went in.",
        _ when !telling.IsLongEnough => "Because it was not read over two days yet: a gravity that was read once tells nothing of what it does.",
        _ => $"Because of this: {string.Join("; ", reasons.Where(reason => !reason.Holds).Select(reason => Words.WithinSentence(reason.Text)))}.",
    };

    private static string Points(double gravity)
    {
        double points = gravity / Stillness.Point;
        return points < 9.5 && Math.Abs(points - Math.Round(points)) > 0.25 ? Invariant($"{points:0.0} points") : Math.Round(points) == 1 ? "one point" : Invariant($"{points:0} points");
    }

    private static string Days(double days) => days < 1 ? Invariant($"{24 * days:0} hours") : Math.Round(days) == 1 ? "a day" : Invariant($"{days:0} days");
}
