using Gylebook.Gyles.Cellar;
using Gylebook.Pictures;
using Gylebook.Pictures.Courses;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>A row of the table that says what the drawing shows.</summary>
/// <param name="Key">Once in the table.</param>
/// <param name="Day">Days since the pitch.</param>
/// <param name="Gravity">Gravity, or its ends.</param>
/// <param name="Warmth">How warm.</param>
/// <param name="By">Who says so, and what is odd about it.</param>
/// <param name="Entry">The entry of the log, to be taken back; null where it is none.</param>
/// <param name="IsForeseen">Whether it has yet to come.</param>
public sealed record CourseRow(string Key, string Day, string Gravity, string Warmth, string By, Guid? Entry, bool IsForeseen);

/// <summary>A fermentation turned into what is drawn of it, and into the table beside it.</summary>
internal static class CourseShown
{
    private const int MostOfDevices = 40, Foreseen = 6;
    private const double HoursADay = 24, LeastWide = 0.5;

    /// <summary>The drawing.</summary>
    public static CoursePicture Picture(Fermentation of, string title, Shown shown, IReadOnlyList<(double, string)> notes, string? done, string? between)
    {
        double days = of.Fan.Hours[^1] / HoursADay;
        return new CoursePicture
        {
            Title = title, Shown = shown, Days = days, Today = Day(of, of.Now), Notes = notes,
            Fan = [.. of.Fan.Hours.Select((hours, place) => Span(of.Fan.Gravities[place], hours / HoursADay))],
            Planned = [.. of.Planned.Hours.Select((hours, place) => (hours / HoursADay, of.Planned.Gravities[place].Middle))],
            Read = [.. Gravities(of, CellarSource.Hand).Select(point => Mark(of, point))],
            Sent = [.. Gravities(of, CellarSource.Device).GroupBy(point => point.Instrument).Select(IReadOnlyList<CourseMark> (own) => [.. own.Select(point => Mark(of, point))])],
            Warmth = [.. of.Series.Points.Where(point => point.TemperatureC is not null && !point.Flags.HasFlag(Oddities.TemperatureSpike) && Day(of, point.At) is >= 0 and var day && day <= days).Select(point => (Day(of, point.At), point.TemperatureC!.Value))],
            Done = done is not null && between is not null && of.Done is var (low, likely, high)
                ? (new(0, Day(of, low), Day(of, likely), Math.Min(days, Math.Max(Day(of, high), Day(of, low) + LeastWide))), done, between) : null,
        };
    }

    /// <summary>The table: what hands read, some of what devices sent, and where it goes.</summary>
    public static IEnumerable<CourseRow> Rows(Fermentation of, OpenGyle gyle, Shown shown)
    {
        CellarPoint[] sent = [.. of.Series.Points.Where(point => point.Source == CellarSource.Device)];
        int every = Math.Max(1, sent.Length / MostOfDevices);
        IEnumerable<CellarPoint> told = of.Series.Points.Where(point => point.Source == CellarSource.Hand).Concat(sent.Where((_, place) => place % every == 0)).OrderBy(point => point.At);
        int number = 0;
        foreach (CellarPoint point in told)
        {
            Guid? entry = point.Source == CellarSource.Hand ? gyle.Log.Readings.FirstOrDefault(reading => reading.At == point.At && reading.Stage == "ferment")?.EntryId : null;
            string odd = Odd(point.Flags);
            yield return new(
                Invariant($"read {number++}"), shown.Number(Day(of, point.At), 1), point.GravitySg is { } gravity ? shown.Gravity(gravity) : "", point.TemperatureC is { } celsius ? shown.Celsius(celsius) : "",
                odd.Length > 0 ? $"{By(point)}: {odd}" : By(point), entry, false);
        }

        int[] ahead = [.. Enumerable.Range(0, of.Fan.Hours.Count).Where(place => of.At(of.Fan.Hours[place]) > of.Now)];
        foreach (int place in ahead.Where((_, at) => at % Math.Max(1, ahead.Length / Foreseen) == 0))
        {
            Quantiles band = of.Fan.Gravities[place];
            yield return new(Invariant($"ahead {place}"), shown.Number(of.Fan.Hours[place] / HoursADay, 1), $"{shown.Gravity(band.Low)} to {shown.Gravity(band.High)}", "", "foreseen", null, true);
        }
    }

    /// <summary>What is odd about a point, in words; empty for nothing.</summary>
    public static string Odd(Oddities flags) => string.Join(", ", new[]
    {
        (Oddities.Stuck, "it has not moved while all else did"), (Oddities.Spike, "far from its neighbours"), (Oddities.TemperatureSpike, "its warmth is far from its neighbours'"),
        (Oddities.BeforePitch, "before the pitch"), (Oddities.AfterPackage, "after packaging"), (Oddities.InFuture, "its clock is ahead"), (Oddities.AfterSilence, "after a silence"),
    }.Where(known => flags.HasFlag(known.Item1)).Select(known => known.Item2));

    private static string By(CellarPoint point) => point.Source == CellarSource.Hand ? Names.GetValueOrDefault(point.Instrument, point.Instrument) : point.Instrument;

    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal) { ["hydrometerNarrow"] = "narrow hydrometer", ["refractometerWort"] = "refractometer", ["floatingSensor"] = "float" };

    private static IEnumerable<CellarPoint> Gravities(Fermentation of, CellarSource source) => of.Series.Points.Where(point => point.Source == source && point.GravitySg is not null && Day(of, point.At) >= 0);

    private static double Day(Fermentation of, DateTimeOffset at) => (at - of.Pitched).TotalDays;

    private static CourseMark Mark(Fermentation of, CellarPoint point) => new(Day(of, point.At), point.GravitySg!.Value, point.GravitySd, !point.IsGoodGravity);

    private static CourseSpan Span(Quantiles band, double day) => new(day, band.Low, band.Middle, band.High);
}
