using System.Text;
using Gylebook.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Features.Gyles.Calendars;

/// <summary>A gyle's days, given out as a calendar file.</summary>
internal static class CalendarDownloads
{
    /// <summary>Answers the addresses of <see cref="PageUrls.GyleCalendar"/>.</summary>
    public static void Map(WebApplication site) => site.MapGet("/gyles/{id:guid}/days.ics", GiveAsync);

    private static async Task<IResult> GiveAsync(Guid id, GyleDesk desk, TimeProvider clock, CancellationToken cancellation) =>
        await desk.OpenAsync(id, cancellation) is { } gyle
            ? Results.File(Encoding.UTF8.GetBytes(GyleCalendar.Write(gyle, clock.GetUtcNow())), GyleCalendar.MediaType, $"{FreeId.From(gyle.Plan.Name, "gyle")}.ics")
            : Results.NotFound();
}
