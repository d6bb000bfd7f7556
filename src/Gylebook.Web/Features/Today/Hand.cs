using System.Globalization;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Days;
using Gylebook.Gyles.Shopping;
using Gylebook.Store;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Today;

/// <summary>Something that wants a hand: the step of a brew day, a day of fermentation, a brew that is planned.</summary>
/// <param name="At">When.</param>
/// <param name="When">The same in a word or two: "Now", "Tomorrow", "Saturday".</param>
/// <param name="Title">What.</param>
/// <param name="Says">More about it.</param>
/// <param name="Does">What its button says.</param>
/// <param name="Url">Where that leads.</param>
public sealed record Hand(DateTimeOffset At, string When, string Title, string Says, string Does, string Url)
{
    /// <summary>Days ahead for which a weekday says it all.</summary>
    private const int Weekdays = 6;

    /// <summary>Days after the pitch from which a gravity is worth a look, and days after which it is worth another: common practice, no source.</summary>
    private const double LookAfter = 3, LookEvery = 2;

    /// <summary>Whether it is brew day.</summary>
    public bool IsNow { get; init; }

    /// <summary>Clocks that run, the next to end first.</summary>
    public IReadOnlyList<RunningTimer> Timers { get; init; } = [];

    /// <summary>Part of the demo.</summary>
    public bool IsDemo { get; init; }

    /// <summary>All that wants a hand, the next first.</summary>
    /// <param name="gyles">The gyles of the book.</param>
    /// <param name="desk">Opens them.</param>
    /// <param name="clock">The time.</param>
    public static async Task<IReadOnlyList<Hand>> AllAsync(IReadOnlyList<GyleLine> gyles, GyleDesk desk, TimeProvider clock)
    {
        List<Hand> hands = [];
        foreach (GyleLine gyle in gyles)
        {
            hands.AddRange((await OfAsync(gyle, desk, clock)).OfType<Hand>().Select(hand => hand with { IsDemo = gyle.IsDemo }));
        }

        return [.. hands.OrderByDescending(hand => hand.IsNow).ThenBy(hand => hand.At)];
    }

    private static async Task<IReadOnlyList<Hand?>> OfAsync(GyleLine gyle, GyleDesk desk, TimeProvider clock)
    {
        if (gyle.Status == GyleStatus.Planned)
        {
            return [await PlannedAsync(gyle, desk, clock)];
        }

        if (gyle.Status is not (GyleStatus.Brewing or GyleStatus.Fermenting or GyleStatus.Packaged) || await desk.OpenAsync(gyle.Id) is not { } open)
        {
            return [];
        }

        if (gyle.Status == GyleStatus.Brewing)
        {
            return [Brewing(open, clock)];
        }

        List<Hand?> hands = [];
        foreach (string? portion in open.Division.Names)
        {
            hands.Add(open.PackagedOf(portion) is { } packaged ? Packaged(open, portion, packaged, clock) : await FermentingAsync(open, portion, desk, clock));
        }

        return hands;
    }

    private static Hand Brewing(OpenGyle gyle, TimeProvider clock)
    {
        int all = gyle.Log.Steps.Count, done = gyle.Log.Steps.Count(step => step.State != StepState.Open);
        string begun = $"begun at {Instants.Clock(gyle.Start, clock)}", url = PageUrls.BrewDay(gyle.Line.Id);
        return gyle.Log.Current is { } next
            ? new(clock.GetUtcNow(), "Now", $"{gyle.Line.Name}: {Gylebook.Forecast.Words.WithinSentence(next.Step.Title)}", Invariant($"{next.Step.Say} Step {done + 1} of {all}, {begun}."), "Go on brewing", url) { IsNow = true, Timers = gyle.Log.Timers }
            : new(clock.GetUtcNow(), "Now", $"{gyle.Line.Name}: brew day is done", $"Every step is done or left out, and nothing says that yeast went in; {begun}.", "Brew day", url) { IsNow = true, Timers = gyle.Log.Timers };
    }

    /// <summary>The next of its days; the last of them when all are past, for a beer waits until somebody packages it.</summary>
    private static async Task<Hand?> FermentingAsync(OpenGyle gyle, string? portion, GyleDesk desk, TimeProvider clock)
    {
        DateTimeOffset now = clock.GetUtcNow();
        string name = NameOf(gyle, portion), url = PageUrls.Fermenter(gyle.Line.Id, portion);
        if (gyle.Pitched is { } pitched && (now - pitched).TotalDays >= LookAfter)
        {
            CellarSeries series = await new CellarDesk(desk, clock).SeriesAsync(gyle, portion, pitched, now);
            Stillness? read = Stillness.Of(series.Points).FirstOrDefault();
            if (read is { IsStill: true })
            {
                return new(now, "Today", $"{name}: it stands still", Invariant($"At {read.Last:0.000} for {read.Days:0} days. Whether that is its end stands on its page."), "Finished?", url);
            }

            if (read is null || (now - read.At).TotalDays >= LookEvery)
            {
                return new(now, "Today", $"{name}: read the gravity", read is null ? "Nobody has looked since the pitch." : Invariant($"It was {read.Last:0.000} {(now - read.At).TotalDays:0} days ago."), "Put it down", url);
            }
        }

        DateTimeOffset midnight = clock.GetLocalNow().Subtract(clock.GetLocalNow().TimeOfDay);
        GyleDay[] days = [.. GyleDays.Of(gyle.Plan, gyle.Start, gyle.Pitched, portion).Where(day => day.AfterPitch is not null)];
        return (days.FirstOrDefault(day => day.At >= midnight) ?? days.LastOrDefault()) is not { } next ? null
            : new(next.At, Words(next.At, clock), $"{name}: {Gylebook.Forecast.Words.WithinSentence(next.Title)}", next.Items.Count > 0 ? next.Sentence : "By the plan; the gravity has the last word.", "Open it", url);
    }

    /// <summary>Bottles want a look after a week and are ready after two: common practice, no source. Later they want none.</summary>
    private static Hand? Packaged(OpenGyle gyle, string? portion, DateTimeOffset packaged, TimeProvider clock)
    {
        DateTimeOffset ready = packaged.AddDays(ReadyAfter);
        return ready < clock.GetUtcNow().AddDays(-ReadyAfter) ? null
            : new(ready, Words(ready, clock), $"{NameOf(gyle, portion)}: ready to taste", "Open one cold, over the sink. Glass that gushes is moved to the cold with eye protection on.", "In the glass", PageUrls.Glass(gyle.Line.Id));
    }

    private static string NameOf(OpenGyle gyle, string? portion) => portion is null ? gyle.Line.Name : $"{gyle.Line.Name}, {portion}";

    private const double ReadyAfter = 14;

    private static async Task<Hand> PlannedAsync(GyleLine gyle, GyleDesk desk, TimeProvider clock)
    {
        string stands = gyle.Stays.Count > 0 ? $"In {string.Join(" and ", gyle.Stays.Select(stay => stay.Vessel))}. " : "";
        ShoppingList? list = (await desk.SketchAsync(new GyleOrder(gyle.RecipeId) { GyleId = gyle.Id }))?.Shopping(await desk.UsedOfLotsAsync());
        string buy = list?.ToBuy.ToArray() is { Length: > 0 } missing ? $"To buy: {string.Join(", ", missing.Select(item => item.What))}." : "";
        return new(gyle.Planned ?? DateTimeOffset.MaxValue, gyle.Planned is { } day ? Words(day, clock) : "Some day", $"Brew {gyle.Name}", $"{stands}{buy}", "What it takes", PageUrls.StartGyle(gyle.RecipeId, gyle.Id));
    }

    private static string Words(DateTimeOffset at, TimeProvider clock)
    {
        DateTime day = TimeZoneInfo.ConvertTime(at, clock.LocalTimeZone).Date;
        return (day - clock.GetLocalNow().Date).Days switch
        {
            < 0 => $"Since {day.ToString("d MMMM", CultureInfo.InvariantCulture)}",
            0 => "Today",
            1 => "Tomorrow",
            <= Weekdays => day.ToString("dddd", CultureInfo.InvariantCulture),
            _ => day.ToString("d MMMM", CultureInfo.InvariantCulture),
        };
    }
}
