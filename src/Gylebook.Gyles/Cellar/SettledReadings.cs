using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Portions;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Readings;

namespace Gylebook.Gyles.Cellar;

/// <summary>What of a log the balance of the whole brew may be held against.</summary>
/// <remarks>
/// A gravity of day three is a point of the course and not the end that a forecast tells: of those read while the beer ferments only the last counts, and
/// only once it stands still or the beer has moved on.
/// </remarks>
public static class SettledReadings
{
    /// <summary>The readings, as they were typed.</summary>
    /// <param name="log">The log.</param>
    public static IReadOnlyList<TakenReading> Of(GyleLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        (GyleReading Entry, TakenReading Taken)[] all =
        [
            .. log.Readings.Select(entry => (entry, Taken: entry.Typed is { } typed ? ReadingsFile.ReadEntry(typed).Reading : null)).Where(one => one.Taken is not null).Select(one => (one.entry, one.Taken!)),
        ];
        bool hasMovedOn = all.Any(one => one.Taken.At > ReadingPoint.Ferment);
        Division division = Division.ByHand(log);
        return [.. all.Where(one => one.Taken.At != ReadingPoint.Ferment).Concat(all.Where(one => one.Taken.At == ReadingPoint.Ferment).GroupBy(one => one.Taken.Portion).SelectMany(own => Last([.. own], hasMovedOn)))
            .OrderBy(one => one.Entry.At).SelectMany(one => Shared(one.Taken, division, all.Select(other => other.Taken)))];
    }

    /// <summary>What was read of the whole before hands divided it holds for each portion that was not read since.</summary>
    private static IEnumerable<TakenReading> Shared(TakenReading taken, Division division, IEnumerable<TakenReading> all) =>
        taken.Portion is not null || taken.At < ReadingPoint.Ferment || !division.IsDivided ? [taken]
        : division.Portions.Where(portion => !all.Any(other => other.Portion == portion.Name && other.At >= taken.At)).Select(portion => taken with { Portion = portion.Name });

    /// <summary>Before the pitch: what a forecast knew when the course began.</summary>
    public static IReadOnlyList<TakenReading> BeforePitch(GyleLog log) => [.. Of(log).Where(taken => taken.At < ReadingPoint.Ferment)];

    private static IEnumerable<(GyleReading Entry, TakenReading Taken)> Last((GyleReading Entry, TakenReading Taken)[] own, bool hasMovedOn)
    {
        (GyleReading Entry, TakenReading Taken)[] gravities = [.. own.Where(one => one.Taken.Gravity is not null).OrderBy(one => one.Entry.At)];
        bool isStill = gravities.Length > 0 && Stillness.Of(CellarSeries.Of([], [.. gravities.Select(one => one.Entry)], new CellarSpan(gravities[0].Entry.At, null), gravities[^1].Entry.At).Points) is [{ IsStill: true }, ..];
        return [.. hasMovedOn || isStill ? gravities.TakeLast(1) : [], .. own.Where(one => one.Taken.Gravity is null && (one.Taken.Ph ?? (object?)one.Taken.Volume) is not null)];
    }
}
