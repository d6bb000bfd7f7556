using System.Text;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Calendars;
using Ical.Net;
using Ical.Net.CalendarComponents;

namespace Gylebook.Web.Tests.Features;

/// <summary>A gyle's days as a calendar: read back by another's reader, and lines as RFC 5545 wants them.</summary>
public sealed class GyleCalendarTests : GylebookTestContext
{
    private const string Name = "Frühling; Ärger, \\ Öl – ein sehr langer Name, der über fünfundsiebzig Oktette hinausgeht";

    [Fact]
    public async Task What_is_read_back_is_what_the_recipe_says()
    {
        OpenGyle gyle = await StartedAsync("hedgerow-brown");
        CalendarEvent[] events = Read(GyleCalendar.Write(gyle, Clock.GetUtcNow()));
        Assert.Equal(
            new[] { "brew-day", "ferment-day-3", "rest-1-ends", "package" }.Select(key => $"{gyle.Line.Id:D}.{key}"), events.Select(its => its.Uid));
        Assert.All(events, its => Assert.StartsWith(Name + ": ", its.Summary!, StringComparison.Ordinal));
        Assert.All(events, its => Assert.True(its.DtStart!.IsUtc && its.DtStamp!.IsUtc));

        // Honey on day 3, bottles after 12 days, by samples/recipes/hedgerow-brown.json; to the second.
        double[] days = [0, 3, 12, 12];
        Assert.All(days.Zip(events), pair => Assert.InRange((gyle.Start.UtcDateTime.AddDays(pair.First) - pair.Second.DtStart!.AsUtc).TotalSeconds, 0, 1));
        Assert.Contains("500 g Buckwheat honey", events[1].Description!, StringComparison.Ordinal);
        Assert.Contains("stood still for three days", events[3].Description!, StringComparison.Ordinal);
        Assert.Empty(events[0].Alarms);
        Assert.All(events.Skip(1), its =>
        {
            Alarm alarm = Assert.Single(its.Alarms)!;
            Assert.Equal(("DISPLAY", -1.0), (alarm.Action, alarm.Trigger!.Duration!.Value.ToTimeSpanUnspecified().TotalDays));
        });
    }

    [Fact]
    public async Task Lines_end_in_CRLF_are_no_longer_than_75_octets_and_no_letter_is_cut()
    {
        string text = GyleCalendar.Write(await StartedAsync("hedgerow-brown"), Clock.GetUtcNow());
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        string[] lines = text.Split("\r\n");
        Assert.All(lines, line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.Contains(lines, line => line.StartsWith(' '));
        Assert.DoesNotContain('\uFFFD', Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text)));
    }

    [Fact]
    public async Task Uids_stay_when_the_days_move_with_the_pitch()
    {
        OpenGyle gyle = await StartedAsync("plain-bitter");
        CalendarEvent[] before = Read(GyleCalendar.Write(gyle, Clock.GetUtcNow()));
        BrewStep pitch = gyle.Plan.Steps.Single(step => step.Key == "pitch");
        DateTimeOffset pitched = gyle.Start.AddHours(9);
        await Gyles.DoAsync(gyle, [new BrewAction { At = pitched, EntryId = Guid.CreateVersion7(), What = "", Kind = ActionKind.Done, Step = pitch.Key, Stage = pitch.Stage }], Cancellation);
        CalendarEvent[] after = Read(GyleCalendar.Write((await Gyles.OpenAsync(gyle.Line.Id, Cancellation))!, Clock.GetUtcNow()));
        Assert.Equal(before.Select(its => its.Uid), after.Select(its => its.Uid));
        Assert.Equal(9, (after[^1].DtStart!.AsUtc - before[^1].DtStart!.AsUtc).TotalHours, 1e-3);
        Assert.Equal(before[0].DtStart!.AsUtc, after[0].DtStart!.AsUtc);
    }

    private static CalendarEvent[] Read(string text) => [.. Calendar.Load(text)!.Events];

    private async Task<OpenGyle> StartedAsync(string sample)
    {
        foreach (string food in Directory.GetFiles(RepositoryFile.PathOf("samples/recipes/foods"), "*.json"))
        {
            await Book.Files.PutAsync(File.ReadAllText(food), new ClashAnswer.Ask(), "test", Cancellation);
        }

        Guid recipe = await Book.Recipes.CreateAsync(File.ReadAllText(RepositoryFile.PathOf($"samples/recipes/{sample}.json")), cancellation: Cancellation);
        (GyleLine? gyle, _) = await Gyles.StartAsync(recipe, name: Name, cancellation: Cancellation);
        return (await Gyles.OpenAsync(gyle!.Id, Cancellation))!;
    }
}
