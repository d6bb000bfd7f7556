using System.Globalization;

namespace Gylebook.Web.Reading;

/// <summary>Instants in words.</summary>
public static class Instants
{
    /// <summary>How long ago, roughly; the date once that says more.</summary>
    public static string Ago(DateTimeOffset instant, TimeProvider clock)
    {
        TimeSpan since = clock.GetUtcNow() - instant;
        return since switch
        {
            { TotalMinutes: < 1 } => "just now",
            { TotalMinutes: < 2 } => "a minute ago",
            { TotalHours: < 1 } => string.Create(CultureInfo.InvariantCulture, $"{(int)since.TotalMinutes} minutes ago"),
            { TotalHours: < 2 } => "an hour ago",
            { TotalDays: < 1 } => string.Create(CultureInfo.InvariantCulture, $"{(int)since.TotalHours} hours ago"),
            { TotalDays: < 2 } => "a day ago",
            { TotalDays: < 14 } => string.Create(CultureInfo.InvariantCulture, $"{(int)since.TotalDays} days ago"),
            _ => Day(instant, clock),
        };
    }

    /// <summary>The day, as "4 December 2026".</summary>
    public static string Day(DateTimeOffset instant, TimeProvider clock) =>
        TimeZoneInfo.ConvertTime(instant, clock.LocalTimeZone).ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The time of day, as "12:04".</summary>
    public static string Clock(DateTimeOffset instant, TimeProvider clock) =>
        TimeZoneInfo.ConvertTime(instant, clock.LocalTimeZone).ToString("HH:mm", CultureInfo.InvariantCulture);
}
