using Gylebook.Gyles.Days;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Gylebook.Web.Features.Gyles.Calendars;

/// <summary>A gyle's days as a calendar file (iCalendar, RFC 5545).</summary>
/// <remarks>
/// Times are in UTC, so that no calendar has to know a time zone. An event's UID is the gyle's number and the day's key, the same in every
/// download, so that a calendar moves an event and does not double it. Reminders come a day before; what lasts minutes is no business of a calendar.
/// </remarks>
public static class GyleCalendar
{
    /// <summary>What the file is served as.</summary>
    public const string MediaType = "text/calendar";

    private const string Program = "-//Gylebook//Gyle//EN";

    /// <summary>The file's text: lines end in CRLF and are folded at 75 octets.</summary>
    /// <param name="gyle">The gyle.</param>
    /// <param name="now">When it is written.</param>
    public static string Write(OpenGyle gyle, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        Calendar calendar = new() { ProductId = Program };
        foreach (GyleDay day in GyleDays.Of(gyle.Plan, gyle.Start, gyle.Pitched))
        {
            calendar.Events.Add(EventOf(gyle, day, now));
        }

        return new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("The calendar came out as nothing.");
    }

    private static CalendarEvent EventOf(OpenGyle gyle, GyleDay day, DateTimeOffset now)
    {
        CalendarEvent its = new()
        {
            Uid = $"{gyle.Line.Id:D}.{day.Key}",
            DtStamp = InUtc(now),
            DtStart = InUtc(day.At),
            Summary = $"{gyle.Plan.Name}: {day.Title}",
            Description = string.Join("\n\n", new[] { day.Sentence }.Concat(day.Cautions)),
        };
        if (day.Until is { } until)
        {
            its.DtEnd = InUtc(until);
        }

        if (day.AfterPitch is >= 1)
        {
            its.Alarms.Add(new Alarm { Action = AlarmAction.Display, Description = its.Summary, Trigger = new Trigger(Duration.FromDays(-1)) });
        }

        return its;
    }

    /// <summary>To the second: a calendar knows no parts of it.</summary>
    private static CalDateTime InUtc(DateTimeOffset at) => new(DateTime.SpecifyKind(at.UtcDateTime.AddTicks(-(at.UtcTicks % TimeSpan.TicksPerSecond)), DateTimeKind.Utc));
}
