using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Calendars;

namespace Gylebook.Verbs;

/// <summary>gylebook export GYLE --as ics: the days of a gyle of the book, for a calendar.</summary>
internal static class CalendarExport
{
    /// <summary>What follows <c>--as</c>.</summary>
    public const string Form = "ics";

    /// <summary>Writes them.</summary>
    public static async Task<int> RunAsync(ExportVerb.Settings settings, CancellationToken cancellation)
    {
        if (await settings.OpenAsync("with gyles in it", cancellation) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        IReadOnlyList<GyleLine> found = await book.Gyles.FindAsync(settings.Name, cancellation);
        if (found is not [var line])
        {
            return ExportVerb.Refuse(settings, [], found.Count == 0
                ? "there is no gyle of that name in the book; gylebook gyle list tells those there are."
                : $"it may be {string.Join(" or ", found.Select(gyle => $"\"{gyle.Name}\""))}: say which.");
        }

        if (await new GyleDesk(book, TimeProvider.System).OpenAsync(line.Id, cancellation) is not { } gyle)
        {
            return ExportVerb.Refuse(settings, [], "it has not started, or its plan cannot be read.");
        }

        string text = GyleCalendar.Write(gyle, TimeProvider.System.GetUtcNow());
        return ExportVerb.Give(settings, WrittenFile.Calendar, text, $"gyle \"{line.Name}\", as days for a calendar,", pen =>
        {
            pen.Text("kind", "gyle");
            pen.Text("name", line.Name);
        });
    }
}
