using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using Gylebook.Pictures;
using Gylebook.Store;
using Gylebook.Web.Hosting.Entry;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.Hosting;

namespace Gylebook.Web.Features.Gyles;

/// <summary>What the brew-day page asks of the book while it is open: its log, taps to keep, and word of what others tapped.</summary>
internal static class BrewApi
{
    /// <summary>Answers the addresses under <c>/api/gyles/</c>.</summary>
    public static void Map(WebApplication site)
    {
        RouteGroupBuilder gyle = site.MapGroup("/api/gyles/{id:guid}").RequireAuthorization(Who.OnBrewDay);
        gyle.MapGet("/log", LogAsync);
        gyle.MapPost("/log", TakeAsync);
        gyle.MapGet("/changes", ChangesAsync);
        site.MapGet("/gyles/{id:guid}/brew/forecast", ForecastAsync).RequireAuthorization(Who.OnBrewDay);
    }

    /// <summary>The part of the page that a reading moves, as HTML.</summary>
    private static async Task<IResult> ForecastAsync(Guid id, GyleDesk desk, ReaderChoice usual, HttpRequest request, CancellationToken cancellation) =>
        await desk.OpenAsync(id, cancellation) is { } gyle
            ? new RazorComponentResult<BrewForecastPart>(new Dictionary<string, object?>
            {
                [nameof(BrewForecastPart.Gyle)] = gyle,
                [nameof(BrewForecastPart.Live)] = gyle.Moved(),
                [nameof(BrewForecastPart.Shown)] = new Shown(ReaderChoice.Read(request.Cookies[ReaderChoice.Cookie], usual).Units),
            })
            : Results.NotFound();

    private static async Task<IResult> LogAsync(Guid id, GyleDesk desk, CancellationToken cancellation) =>
        await desk.OpenAsync(id, cancellation) is { } gyle ? Results.Json(GyleIntake.LogOf(gyle.Log)) : Results.NotFound();

    private static async Task<IResult> TakeAsync(Guid id, IReadOnlyList<SentEntry> sent, GyleDesk desk, CancellationToken cancellation) =>
        sent.Count > GyleIntake.Most ? Results.Problem(Invariant($"{sent.Count} entries at once; at most {GyleIntake.Most} are taken."), statusCode: StatusCodes.Status413PayloadTooLarge)
        : await desk.OpenAsync(id, cancellation) is { } gyle ? Results.Json(await new GyleIntake(desk).TakeAsync(gyle, sent, cancellation)) : Results.NotFound();

    private static ServerSentEventsResult<string> ChangesAsync(Guid id, Book book, IHostApplicationLifetime life, HttpContext context) =>
        TypedResults.ServerSentEvents(Changes(id, book, life, context.RequestAborted));

    /// <summary>A word at once, so that the browser knows that somebody listens, and one for each change.</summary>
    private static async IAsyncEnumerable<SseItem<string>> Changes(Guid id, Book book, IHostApplicationLifetime life, [EnumeratorCancellation] CancellationToken gone)
    {
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(gone, life.ApplicationStopping);
        IAsyncEnumerable<BookChange> changes = book.Changes.WatchAsync(id, ended.Token);
        yield return new("here", "open");
        await foreach (BookChange _ in changes)
        {
            yield return new("changed", "changed");
        }
    }
}
